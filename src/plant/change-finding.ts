import { type ChangeRule, changeRules } from "./change-rules";
import type { PlantFinding } from "./finding";
import type { PlantChange } from "./plant-change";
import type { PlantMachine } from "./plant-machine";
import { PRACTICE } from "./practice";

/** A finding on an entry of a record of changes; its line is that of the machine in the list, 0 where it is in none. */
export function changeFinding(
  rule: ChangeRule,
  change: PlantChange,
  machine: Pick<PlantMachine, "line"> | undefined,
  why: string,
): PlantFinding {
  const { grade, what, mend } = changeRules[rule];
  const { tag, setting } = change;
  return Object.freeze({
    ...{ tag, line: machine?.line ?? 0 },
    ...(setting !== "bypass" && { column: setting }),
    ...{ grade, what, why, source: PRACTICE, mend },
  });
}

/** An entry in words: `line 4 of the record (2026-03-12, shift B)`. */
export function entryWords({ line, date, who }: PlantChange): string {
  return `line ${line} of the record (${date}, ${who})`;
}

/** A cell in words. */
export function cellWords(cell: string): string {
  return cell.trim() === "" ? "nothing" : cell.trim();
}
