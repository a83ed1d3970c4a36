import type { Source } from "../core/index";
import { type ChangeRule, type ChangeRuleEntry, changeRules } from "./change-rules";
import type { PlantChange } from "./plant-change";
import type { PlantMachine } from "./plant-machine";
import { COMMON_PRACTICE } from "../setpoints/index";

/** Something in a record of changes, or between it and the list, that someone should look at. */
export interface ChangeFinding {
  readonly tag: string;
  /** Line of the machine in the list; 0 where it is in none. */
  readonly line: number;
  readonly severity: ChangeRuleEntry["severity"];
  readonly code: ChangeRule;
  readonly what: string;
  readonly why: string;
  readonly mend: string;
  readonly source: Source;
}

/** A finding on a machine by a rule. */
export function changeFinding(code: ChangeRule, { tag, line }: Pick<PlantMachine, "tag" | "line">, what: string): ChangeFinding {
  const { severity, why, mend } = changeRules[code];
  return Object.freeze({ tag, line, severity, code, what, why, mend, source: COMMON_PRACTICE });
}

/** An entry in words: `line 4 of the record (2026-03-12, shift B)`. */
export function entryWords({ line, date, who }: PlantChange): string {
  return `line ${line} of the record (${date}, ${who})`;
}

/** A cell in words. */
export function cellWords(cell: string): string {
  return cell.trim() === "" ? "nothing" : cell.trim();
}
