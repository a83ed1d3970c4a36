import { VeladisError } from "../../core/index";
import { type Confirmation, confirmedSchemes, type Scheme } from "../../severity/index";

/** What refuses some confirmations, if anything does. */
function refusalOf(confirmations: readonly Confirmation[], schemes: readonly Scheme[]): VeladisError | undefined {
  try {
    confirmedSchemes(confirmations, schemes);
    return undefined;
  } catch (error) {
    if (error instanceof VeladisError) return error;
    throw error;
  }
}

function rowOf({ scheme, row }: Confirmation): string {
  return `${scheme}\t${row}`.toLowerCase();
}

/**
 * Whether a refusal is of the confirmation itself, whatever others of its row say. The library looks at each by itself,
 * then for one given twice, then at rows: so of two alike it gives only the first kind again.
 */
function isItsOwn(one: Confirmation, { expected }: VeladisError, schemes: readonly Scheme[]): boolean {
  return refusalOf([one, one], schemes)?.expected === expected;
}

/**
 * All that is wrong with confirmations, a fault for each that is refused: the library stops at the first. One that is
 * refused alone because another of its row was taken away is none.
 */
export function confirmationFaults(confirmations: readonly Confirmation[], schemes: readonly Scheme[]): VeladisError[] {
  const faults: VeladisError[] = [];
  for (const id of new Set(confirmations.map(({ scheme }) => scheme))) {
    const left = confirmations.filter(({ scheme }) => scheme === id);
    const torn = new Set<string>();
    for (let found = refusalOf(left, schemes); found !== undefined; found = refusalOf(left, schemes)) {
      const { expected } = found;
      const at = left.findIndex(({ readAt }) => expected.startsWith(`${readAt?.slice(0, 120)}:`));
      const [one] = at < 0 ? [] : left.splice(at, 1);
      // of the scheme as a whole
      if (one === undefined) return [...faults, found];
      if (!torn.has(rowOf(one)) || isItsOwn(one, found, schemes)) faults.push(found);
      torn.add(rowOf(one));
    }
  }
  return faults;
}
