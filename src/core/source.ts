import type { Provenance } from "./provenance";

/** Where a value comes from. */
export interface Source {
  /** Title of the standard or book, with its edition. */
  readonly title: string;
  /** Where in it: table, clause or page. */
  readonly where?: string;
  readonly provenance: Provenance;
  /** The page on which the value was read, if it is known by reading. */
  readonly page?: string;
  readonly note?: string;
  /** Of a confirmed value: who checked it against the printed copy. */
  readonly by?: string;
  /** Of a confirmed value: the day on which it was checked, as `2024-03-04`. */
  readonly on?: string;
  /** Of a confirmed value: who else read it there. */
  readonly second?: string;
  /** Of a confirmed value: what the table had before, where the printed copy has another value. */
  readonly shipped?: string;
}
