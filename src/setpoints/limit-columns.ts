import { type ParsedType, parsedType } from "../reading/index";
import type { CriterionLimits } from "../severity/index";

const isPeak = ({ detector }: ParsedType): boolean => detector !== "rms" && detector !== "avg";

/** How well a column of limits suits a type: its detector, one of its family, or neither. */
function suits(column: ParsedType, type: ParsedType): number {
  if (column.detector === type.detector) return 2;
  return isPeak(column) === isPeak(type) ? 1 : 0;
}

/**
 * Of the columns of limits of a class, one for each quantity: as a judgement takes them, the one whose detector suits the
 * setpoints best, the first of several that suit alike.
 */
export function limitColumns(criteria: readonly CriterionLimits[], type: ParsedType): readonly CriterionLimits[] {
  const columns = new Map<string, CriterionLimits>();
  for (const one of criteria) {
    const known = columns.get(one.quantity);
    if (known === undefined || suits(parsedType(one.as), type) > suits(parsedType(known.as), type)) {
      columns.set(one.quantity, one);
    }
  }
  return [...columns.values()];
}
