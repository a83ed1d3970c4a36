import { frozen } from "../core/index";

/** The columns of a record of changes, in the order of the file. */
// biome-ignore format: a row of a table is a line
export const changeColumns = /* @__PURE__ */ frozen({
  date: { needed: true, says: "the day on which it was changed", example: "2026-03-12" },
  tag: { needed: true, says: "the machine, as the list calls it", example: "LU-01" },
  setting: { needed: true, says: "the column of the list that was changed, or bypass", example: "trip" },
  old: { needed: false, says: "the cell as it was before; empty where nothing stood there", example: "9 mm/s rms" },
  new: { needed: false, says: "the cell as it is now; of a bypass, what is bypassed", example: "8.6 mm/s rms" },
  reason: { needed: true, says: "why", example: "new baseline after the bearing was changed" },
  who: { needed: true, says: "who changed it", example: "shift B" },
  "approved by": { needed: false, says: "the person who answers for the machine, or who acts for them", example: "plant engineer" },
  until: { needed: false, says: "the last day of a bypass or of a change for a time; empty where it stays", example: "2026-03-19" },
  "put back": { needed: false, says: "the day on which the old state was restored", example: "2026-03-18" },
} as const satisfies Record<string, { needed: boolean; says: string; example: string }>);

/** A heading of a record of changes: a key of {@link changeColumns}. */
export type ChangeColumn = keyof typeof changeColumns;

/** The headings, in the order of the file. */
export const changeTitles = /* @__PURE__ */ (() =>
  Object.freeze(Object.keys(changeColumns)) as readonly ChangeColumn[])();
