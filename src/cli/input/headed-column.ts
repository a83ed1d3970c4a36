import { shown, VeladisError } from "../../core/index";
import { columnIndex } from "../delimited/column-index";
import type { WrittenAs } from "../delimited/written-as";
import { saysValue } from "./says-value";

/**
 * Index of the column that a name or a number from 1 means, where the first row has to be the header. A value there is
 * no heading but would be lost, unless it was asked for by that name, or the line of the header was told.
 *
 * @param column - as it was told, or the index of one that was not
 * @throws {@link VeladisError} `missing-fact` without a header, and what {@link columnIndex} throws
 */
export function headedColumn(
  header: readonly string[],
  column: string | number,
  { headerLine, decimalComma }: WrittenAs,
): number {
  const index = typeof column === "number" ? column : columnIndex(header, column);
  const name = (header[index] as string).trim();
  const asked = typeof column === "string" && name === column.trim() && Number(column) - 1 !== index;
  if (asked || headerLine !== undefined || !saysValue(name, decimalComma)) return index;
  throw new VeladisError("missing-fact", {
    expected: "a header line above the first row, or --header-line 1 to say that the first row is the header",
    received: `${name === "" ? "an empty cell" : shown(name)} in column ${index + 1} of the first row, which may be a value`,
  });
}
