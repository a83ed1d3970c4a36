import type { CalendarDay, RefusedRow } from "../../plant/index";

/** What a report is of, and what of its files could not be read. */
export interface ReportHead {
  /** What the plant is called. */
  readonly name: string;
  /** The day for which it answers. */
  readonly on: CalendarDay;
  /** The files it was made from. */
  readonly from: readonly string[];
  readonly refused: readonly (RefusedRow & { readonly file: string })[];
  /** Tags on the route that the list does not have, and the like, in words. */
  readonly strangers: readonly string[];
}
