import { frozen } from "../core/index";

/** What a state of a check means, in the order of urgency. */
export interface DueStateEntry {
  /** Whether the device is to be checked now. */
  readonly due: boolean;
  readonly what: string;
  readonly mend: string;
}

/** States of a check, the most urgent first. To add one, add its row here. */
// biome-ignore format: a row of a table is a line
export const dueStates = /* @__PURE__ */ frozen({
  "left out of tolerance": { due: true, what: "left out of tolerance, or not within it for certain, at the last check", mend: "adjust or replace it and check it again before it is relied on" },
  "never checked": { due: true, what: "never checked against a known vibration", mend: "check it, and write date and readings into the list" },
  "date ahead": { due: true, what: "the check date lies ahead of the day asked for, which proves nothing", mend: "correct the check date, or check it" },
  overdue: { due: true, what: "check overdue", mend: "check it against a known vibration" },
  due: { due: true, what: "check due on this day", mend: "check it against a known vibration" },
  "due soon": { due: true, what: "check due within the days asked for", mend: "take it along in this round" },
  "no interval": { due: false, what: "checked, and no interval in the list says when again", mend: "write the months from one check to the next into the list" },
  "not due": { due: false, what: "check not due", mend: "nothing" },
  "nothing to check": { due: false, what: "neither setpoint nor sensor nor loop in the list: no device to check", mend: "write the device into the list, if there is one" },
} as const satisfies Record<string, DueStateEntry>);

/** How urgent a check is: a key of {@link dueStates}. */
export type DueState = keyof typeof dueStates;
