import type { OptionRows } from "./option-row";

/** The record of changes beside a list, for commands that hold one against the other. */
export const recordOptions = {
  changes: {
    argument: "<csv>",
    help: "the record of changes, as veladis plant change writes it: what was changed without an entry, bypasses that are over, what was never put back",
    example: "plant-changes.csv",
  },
  before: {
    argument: "<file>",
    help: "beside --changes the list as it was before the first entry: a change of which no entry is left is found too",
    example: "plant-january.csv",
  },
} as const satisfies OptionRows;
