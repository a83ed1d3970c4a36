import { VeladisError } from "../../core/index";
import { columnsListed } from "../delimited/column-index";
import type { WrittenAs } from "../delimited/written-as";
import { headedColumn } from "./headed-column";

/** The columns of a series as they were told: name or number, from 1. */
export interface ColumnsTold {
  /** That of the levels. */
  readonly column?: string | undefined;
  /** Those of the levels of further channels. */
  readonly others?: readonly string[] | undefined;
  /** That of the operating mode at each level. */
  readonly mode?: string | undefined;
  /** That of their times. */
  readonly time?: string | undefined;
  /** Whether times are read. */
  readonly timed: boolean;
}

/**
 * Indices of the columns of levels and, where they are read, of times. Where they are not told, the times stand in the
 * first and the levels in the second of two columns; levels alone may stand in the only one.
 *
 * @throws {@link VeladisError} `missing-option` where that leaves more than one, or one for both; and what
 *   {@link headedColumn} throws
 */
export function seriesColumns(
  header: readonly string[],
  { column, others = [], mode, time, timed }: ColumnsTold,
  written: WrittenAs,
): {
  readonly level: number;
  readonly others: readonly number[];
  readonly mode: number | undefined;
  readonly time: number | undefined;
} {
  if (column === undefined && header.length > 2) {
    throw new VeladisError("missing-option", {
      expected: "which of the columns holds the levels, as in --column 2",
      received: `${header.length} columns`,
      allowed: columnsListed(header),
    });
  }
  const level = headedColumn(header, column ?? Math.min(1, header.length - 1), written);
  const more = others.map((one) => headedColumn(header, one, written));
  const modes = mode === undefined ? undefined : headedColumn(header, mode, written);
  if (modes === level)
    throw new VeladisError("missing-option", {
      expected: "a column of operating modes beside that of the levels",
      received: `column ${level + 1} for both`,
      allowed: columnsListed(header),
    });
  if (!timed) return { level, others: more, mode: modes, time: undefined };
  const times = headedColumn(header, time ?? 0, written);
  if (times !== level && !more.includes(times)) return { level, others: more, mode: modes, time: times };
  throw new VeladisError("missing-option", {
    expected: "a column of times and another of levels, as in --time 1 and --column 2",
    received: `column ${times + 1} for both`,
    allowed: columnsListed(header),
  });
}
