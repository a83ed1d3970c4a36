import { frozen } from "../core/index";

/** The columns of the results of checks, in the order of the file that goes with the sheets. */
// biome-ignore format: a row of a table is a line
export const resultColumns = /* @__PURE__ */ frozen({
  number: { needed: true, says: "the number of the sheet", example: "LU-01-2026-12-01" },
  tag: { needed: true, says: "the machine, as the list and the sheet call it", example: "LU-01" },
  date: { needed: true, says: "the day on which it was checked", example: "2026-12-03" },
  known: { needed: true, says: "the known level, with its frequency", example: "7 mm/s rms at 79.4 Hz" },
  "as found": { needed: true, says: "what the device showed before anything was adjusted", example: "6.8 mm/s rms" },
  "as left": { needed: false, says: "what it showed at the end; empty where nothing was adjusted", example: "7 mm/s rms" },
  tolerance: { needed: false, says: "the largest error allowed, as in the list", example: "5 %" },
  by: { needed: true, says: "who checked it", example: "shift B" },
} as const satisfies Record<string, { needed: boolean; says: string; example: string }>);

/** A heading of the results of checks: a key of {@link resultColumns}. */
export type ResultColumn = keyof typeof resultColumns;

/** The headings, in the order of the file. */
export const resultTitles = /* @__PURE__ */ (() =>
  Object.freeze(Object.keys(resultColumns)) as readonly ResultColumn[])();
