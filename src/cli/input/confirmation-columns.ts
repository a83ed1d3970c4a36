import { frozen } from "../../core/index";

/** The columns of a file of confirmations, in the order of the sheet; those of `print` are told, those of `person` filled in. */
// biome-ignore format: a row of a table is a line
export const confirmationColumns = /* @__PURE__ */ frozen({
  scheme:  { from: "print",  needed: true,  tells: "id of the scheme" },
  edition: { from: "print",  needed: true,  tells: "edition of the standard; yours must be the same" },
  row:     { from: "print",  needed: true,  tells: "row of the table" },
  limit:   { from: "print",  needed: true,  tells: "limit by name" },
  as:      { from: "print",  needed: true,  tells: "unit and detector" },
  shipped: { from: "print",  needed: false, tells: "value that the table has" },
  grade:   { from: "print",  needed: false, tells: "how that value is known" },
  where:   { from: "print",  needed: false, tells: "where it stands in the standard, where that is known" },
  agrees:  { from: "person", needed: false, tells: "yes, where your copy prints the same value" },
  printed: { from: "person", needed: false, tells: "the value that your copy prints, where it is another; a point for decimals" },
  page:    { from: "person", needed: true,  tells: "page of your copy" },
  by:      { from: "person", needed: true,  tells: "your name" },
  on:      { from: "person", needed: true,  tells: "the day, as 2024-03-04" },
  second:  { from: "person", needed: false, tells: "name of a second person who read it, where the value raises the limit" },
  reread:  { from: "person", needed: false, tells: "yes, where you read the page again because the value looks like a slip" },
} as const satisfies Record<string, { from: "print" | "person"; needed: boolean; tells: string }>);

/** A column of a file of confirmations. */
export type ConfirmationColumn = keyof typeof confirmationColumns;

export const confirmationTitles = /* @__PURE__ */ (() =>
  Object.keys(confirmationColumns) as readonly ConfirmationColumn[])();
