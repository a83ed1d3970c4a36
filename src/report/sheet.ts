import type { SheetPicture } from "./sheet-request";

/** A table of a sheet: titles and rows of text. */
export interface SheetTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** One part of a sheet: text, a table or a list, in this order. */
export interface SheetSection {
  readonly title: string;
  readonly text?: readonly string[];
  readonly table?: SheetTable;
  readonly list?: readonly string[];
}

/** A sheet as plain data, before it is written as Markdown or HTML. */
export interface Sheet {
  readonly title: string;
  /** What it is about, under the title. */
  readonly subject: string;
  readonly cautions: readonly string[];
  readonly sections: readonly SheetSection[];
  /** A picture in front of what is signed. */
  readonly picture?: SheetPicture;
  /** Lines to fill in by hand. */
  readonly blanks: readonly string[];
  /** What the sheet was made of, as data. */
  readonly data: object;
}
