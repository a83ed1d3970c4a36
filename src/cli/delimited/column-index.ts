import { plainNumeral, shown, unknownOption, VeladisError } from "../../core/index";

/** Of a file that is no table the header can be anything: as much of it as helps. */
const MOST = 100;
const LONGEST = 40;

/**
 * Index of the column that a name or a number from 1 means. Names are compared without white space about them.
 *
 * @throws {@link VeladisError} `unknown-option` with the columns there are, `syntax` for a name that several have
 */
export function columnIndex(header: readonly string[], column: string): number {
  const name = column.trim();
  const named = header.flatMap((title, i) => (title.trim() === name ? [i] : []));
  if (named.length > 1) {
    throw new VeladisError("syntax", {
      expected: `a column by its number, ${named.map((i) => i + 1).join(" or ")}, where several have one name`,
      received: shown(name),
    });
  }
  const numbered = /^\d+$/.test(name) ? Number(name) - 1 : -1;
  const index = named[0] ?? numbered;
  if (index >= 0 && index < header.length) return index;
  const columns = header
    .slice(0, MOST)
    .map((title) => (title.length > LONGEST ? `${title.slice(0, LONGEST)}…` : title));
  throw unknownOption(column, columns, "a column of the header, by name or number");
}

/**
 * The same where the first line has to be a header. A number there is no name but a value that would be lost, unless
 * it was asked for by that name.
 *
 * @throws {@link VeladisError} `missing-fact` without a header, and what {@link columnIndex} throws
 */
export function headedColumn(header: readonly string[], column: string): number {
  const index = columnIndex(header, column);
  const name = (header[index] as string).trim();
  const asked = name === column.trim() && Number(column) - 1 !== index;
  if (asked || !plainNumeral.test(name)) return index;
  throw new VeladisError("missing-fact", {
    expected: "a header line above the first row",
    received: `${shown(name)} in its place`,
  });
}
