import { frozen } from "../core/index";

/** What is held against a record of changes. */
export interface ChangeRuleEntry {
  readonly severity: "error" | "warning" | "note";
  readonly says: string;
  readonly why: string;
  readonly mend: string;
}

/** Days from the first to the last day of a bypass beyond which it is long; common practice, no source. */
export const LONG_BYPASS_DAYS = 30;

/** The rules by which a record of changes is read, all of them common practice without a source. To add one, add its row here. */
// biome-ignore format: a row of a table is a line
export const changeRules = /* @__PURE__ */ frozen({
  "bypass expired": { severity: "error", says: "a bypass that was not lifted by its expiry", why: "the machine has no protection from it, longer than anyone approved", mend: "lift the bypass and record it, or have it approved anew with a reason and an expiry" },
  "bypass without expiry": { severity: "error", says: "a bypass that stands and has no expiry", why: "the machine has no protection from it, and nothing says until when", mend: "lift the bypass and record it, or have it approved with an expiry" },
  "bypass not approved": { severity: "error", says: "a bypass that nobody approved", why: "whoever answers for the machine may not know that it has no protection", mend: "have the person who answers for the machine approve it, or lift it" },
  "never put back": { severity: "error", says: "a change for a time that was not put back by its end", why: "the machine runs by a setting that was approved for a time alone", mend: "put the old value back and record it, or record who approved that it stays" },
  "changed without a record": { severity: "error", says: "a cell of the list that is not what the record says last", why: "nobody can tell who changed it, why, and whether it was approved", mend: "find out who changed it and why; put it back, or record it with its approval" },
  "broken chain": { severity: "error", says: "an entry whose old value is not the new value of the one before", why: "a change between the two has no entry", mend: "find the missing change and record it; never change an earlier row" },
  "in the future": { severity: "error", says: "an entry with a day that lies ahead", why: "it cannot have been done yet, so that what stands now is not what the record says", mend: "find out the right day, and say so in a new row" },
  "unknown tag": { severity: "error", says: "an entry on a machine that the list does not have", why: "it is held against nothing", mend: "correct the tag, or put the machine back into the list" },
  "tag of several rows": { severity: "error", says: "an entry on a tag that several rows of the list have", why: "which of them it means is not known, so that it is held against none", mend: "give each machine a tag of its own" },
  "refused row": { severity: "error", says: "an entry on a machine whose row was refused", why: "it is held against nothing", mend: "mend the row of the list" },
  "no cells": { severity: "error", says: "an entry on a machine whose cells are not at hand", why: "it is held against nothing", mend: "read the list with parsePlant, which keeps the cells" },
  "not approved": { severity: "warning", says: "a change that nobody approved", why: "whoever answers for the machine may not know of it", mend: "have the person who answers for the machine approve it, or put it back" },
  "approved by oneself": { severity: "warning", says: "a change approved by the person who made it", why: "nobody else has looked at it", mend: "have another person look at it and approve it" },
  "long bypass": { severity: "warning", says: "a bypass approved for more than 30 days", why: "a bypass is for a short work; one that stands for long is a machine without protection that nobody looks at any more", mend: "end it sooner, or have it approved anew from time to time, with what protects the machine meanwhile" },
  "ended late": { severity: "warning", says: "a bypass or a change for a time that was put back after its end", why: "for these days it stood without approval", mend: "look at what protected the machine in these days" },
  "machine gone": { severity: "warning", says: "a machine that the list had before, and has no more", why: "a machine that is in no list is checked by nobody", mend: "put its row back, or keep a note of why it went" },
  "replaced, not put back": { severity: "note", says: "a change for a time that another value replaced", why: "the value that stands there now follows one that was to go", mend: "make sure that it was approved to stay" },
  "stands for a time": { severity: "note", says: "a change for a time that is not over", why: "it has to be put back", mend: "put the old value back by then, and record it" },
  "bypassed now": { severity: "note", says: "a bypass that is not over", why: "the machine has no protection from it", mend: "keep to what protects the machine meanwhile; lift the bypass by its expiry, and record it" },
} as const satisfies Record<string, ChangeRuleEntry>);

/** A rule that a record of changes breaks: a key of {@link changeRules}. */
export type ChangeRule = keyof typeof changeRules;
