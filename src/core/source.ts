import type { Provenance } from "./provenance";

/** Where a value comes from, however it is known. */
interface SourceText {
  /** Title of the standard or book, with its edition. */
  readonly title: string;
  /** Where in it: table, clause or page. */
  readonly where?: string;
  readonly note?: string;
  /** Of a confirmed value, and what is added to one: what the table had before, where the printed copy has another value. */
  readonly shipped?: string;
}

/** Where a value comes from that nobody confirmed against a printed copy. */
export interface UnconfirmedSource extends SourceText {
  readonly provenance: Exclude<Provenance, "confirmed">;
  /** The page on which the value was read, if it is known by reading. */
  readonly page?: string;
  /** What else is printed there, by another source or by the same: which value was taken, and why. */
  readonly disputed?: string;
  readonly by?: undefined;
  readonly on?: undefined;
  readonly second?: undefined;
}

/** Where a value was confirmed: page, name and day are never left out. */
export interface ConfirmedSource extends SourceText {
  readonly provenance: "confirmed";
  /** The page of the printed copy on which the value stands. */
  readonly page: string;
  /** Who checked it there. */
  readonly by: string;
  /** The day on which it was checked, as `2024-03-04`. */
  readonly on: string;
  /** Who else read it there. */
  readonly second?: string;
  readonly disputed?: undefined;
}

/** Where a value comes from: title and place, how it is known, and of a confirmed value who read it, when and where. */
export type Source = UnconfirmedSource | ConfirmedSource;
