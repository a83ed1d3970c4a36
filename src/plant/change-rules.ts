import { frozen } from "../core/index";

/** What a finding on a record of changes says besides its reason. */
export interface ChangeRuleEntry {
  readonly grade: "error" | "warning" | "note";
  readonly what: string;
  readonly mend: string;
}

/** What is held against a record of changes, all of it common practice without a source. To add a rule, add its row here. */
// biome-ignore format: a row of a table is a line
export const changeRules = /* @__PURE__ */ frozen({
  "bypass expired": { grade: "error", what: "still bypassed after its expiry", mend: "lift the bypass and record it, or have it approved anew with a reason and an expiry" },
  "bypass without expiry": { grade: "error", what: "bypassed without an expiry", mend: "lift the bypass and record it, or have it approved with an expiry" },
  "never put back": { grade: "error", what: "changed for a time and never put back", mend: "put the old value back and record it, or record who approved that it stays" },
  "changed without a record": { grade: "error", what: "changed without a record", mend: "find out who changed it and why; put it back, or record it with its approval" },
  "broken chain": { grade: "error", what: "the record does not fit together: a change between two entries has none", mend: "find the missing change and record it; never change an earlier row" },
  "in the future": { grade: "error", what: "the record has a day that lies ahead", mend: "correct the day by a new row that says so" },
  "unknown tag": { grade: "error", what: "the record names a machine that the list does not have", mend: "correct the tag, or put the machine back into the list" },
  "refused row": { grade: "error", what: "the record cannot be held against the list: the row of the machine was refused", mend: "mend the row of the list" },
  "machine gone": { grade: "warning", what: "a machine that the list had before, and has no more", mend: "put its row back, or keep a note of why it went" },
  "no cells": { grade: "error", what: "the record cannot be held against the list: what its row says is not at hand", mend: "read the list with parsePlant" },
  "bypass not approved": { grade: "error", what: "a bypass that nobody approved", mend: "have the person who answers for the machine approve it, or lift it" },
  "not approved": { grade: "warning", what: "a change that nobody approved", mend: "have the person who answers for the machine approve it, or put it back" },
  "approved by oneself": { grade: "warning", what: "approved by the person who made the change", mend: "have another person look at it and approve it" },
  "ended late": { grade: "warning", what: "put back after its expiry", mend: "look at what protected the machine in these days" },
  "replaced, not put back": { grade: "note", what: "changed for a time and replaced by another value, not put back", mend: "make sure that the value that stands there now was approved to stay" },
  "stands for a time": { grade: "note", what: "changed for a time that is not over", mend: "put the old value back by then, and record it" },
  "bypassed now": { grade: "note", what: "bypassed at present", mend: "keep to what protects the machine meanwhile; lift the bypass by its expiry, and record it" },
} as const satisfies Record<string, ChangeRuleEntry>);

/** A rule that a record of changes breaks: a key of {@link changeRules}. */
export type ChangeRule = keyof typeof changeRules;
