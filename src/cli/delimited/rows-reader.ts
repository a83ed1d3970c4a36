import type { RowAccount } from "./row-account";
import type { DelimitedVisitor } from "./row-reading";

/**
 * Shows the rows of a file to a visitor, from the first on, however often it is called. Yields after each portion with the
 * bytes read so far, or what stands for them; returns what became of the rows.
 */
export type RowsReader = (visitor: DelimitedVisitor) => AsyncGenerator<number, RowAccount>;
