import { unknownOption } from "../core/index";

/**
 * Index of the column that a name or a number from 1 means.
 *
 * @throws {@link VeladisError} `unknown-option` with the columns there are
 */
export function columnIndex(header: readonly string[], column: string): number {
  const named = header.indexOf(column);
  const numbered = /^\d+$/.test(column) ? Number(column) - 1 : -1;
  const index = named >= 0 ? named : numbered;
  if (index >= 0 && index < header.length) return index;
  throw unknownOption(column, header, "a column of the header, by name or number");
}
