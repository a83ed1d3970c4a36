import { dataText, inPlace, requireFinite, shown, unknownOption, VeladisError } from "../core/index";
import { type Fact, facts, isNumberFact, type TextFact } from "./facts";
import type { Interval } from "./interval";
import { closedLabels } from "./machine";
import { requireKeys, requireList, requireObject } from "./require-parts";

function requireInterval(given: unknown, where: string): void {
  const interval = requireObject(given, `${where}: a range such as { above: 15, to: 300 }`) as Interval;
  requireKeys(interval, ["from", "above", "to", "below", "oneOf"], `the range in ${where}`);
  for (const [bound, value] of Object.entries(interval)) {
    if (bound === "oneOf")
      for (const one of requireList(value, `${where}: a list of numbers`, { option: bound }))
        requireFinite(one as number, `${where}: a list of numbers`, { option: bound });
    else requireFinite(value, `${where}: a finite number for ${bound}`, { option: bound });
  }
  const { from, above, to, below } = interval;
  const low = from ?? above ?? Number.NEGATIVE_INFINITY;
  const high = to ?? below ?? Number.POSITIVE_INFINITY;
  const twice = (from !== undefined && above !== undefined) || (to !== undefined && below !== undefined);
  if (!twice && (low < high || (low === high && from !== undefined && to !== undefined))) return;
  throw new VeladisError("out-of-range", {
    expected: `${where}: one lower bound below one upper bound`,
    received: dataText(given),
  });
}

/**
 * Refuses what is no condition on a machine.
 *
 * @throws {@link VeladisError} `wrong-type`, `unknown-option`, `out-of-range`
 */
export function requireCondition(given: unknown, where: string): void {
  const condition = requireObject(given, `${where}: facts such as { support: "rigid" }`);
  requireKeys(condition, Object.keys(facts), `the facts in ${where}`);
  for (const [fact, wanted] of Object.entries(condition)) {
    inPlace({ option: fact }, () => requireWanted(fact as Fact, wanted, `${fact} in ${where}`));
  }
}

/** Refuses what is no condition on a fact. */
function requireWanted(fact: Fact, wanted: unknown, what: string): void {
  if (isNumberFact(fact)) {
    requireInterval(wanted, what);
    return;
  }
  const allowed = closedLabels[fact as TextFact];
  const list = typeof wanted === "string" ? [wanted] : requireList(wanted, `${what}: a label, or a list of labels`);
  for (const label of list) {
    const known = allowed === undefined || allowed.includes(label as string);
    if (typeof label === "string" && label.trim() !== "" && known) continue;
    if (typeof label === "string" && allowed !== undefined) throw unknownOption(label, allowed, `${what}: a label`);
    throw new VeladisError("wrong-type", {
      expected: `${what}: a label, or a list of labels`,
      received: shown(label),
    });
  }
}
