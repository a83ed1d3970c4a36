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
}
