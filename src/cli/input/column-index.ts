import { plainNumeral, shown, unknownOption, VeladisError } from "../../core/index";

/** Of a file that is no table the header can be anything: as much of it as helps. */
const MOST = 100;
const LONGEST = 40;

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
  const columns = header.slice(0, MOST).map((name) => (name.length > LONGEST ? `${name.slice(0, LONGEST)}…` : name));
  throw unknownOption(column, columns, "a column of the header, by name or number");
}

/**
 * The same where the first line has to be a header. A number there is no name but a value that would be lost, unless
 * it was asked for by that name.
 *
 * @throws {@link VeladisError} `missing-fact` without a header, `unknown-option`
 */
export function headedColumn(header: readonly string[], column: string): number {
  const index = columnIndex(header, column);
  const name = (header[index] as string).trim();
  const asked = name === column && Number(column) - 1 !== index;
  if (asked || !plainNumeral.test(name)) return index;
  throw new VeladisError("missing-fact", {
    expected: "a header line above the first row",
    received: `${shown(name)} in its place`,
  });
}
