import { shown, unknownOption, VeladisError } from "../../core/index";

/** Of a file that is no table the header can be anything: as much of it as helps. */
const MOST = 100;
const LONGEST = 40;

/** The columns there are, as a refusal lists them. */
export function columnsListed(header: readonly string[]): string[] {
  return header.slice(0, MOST).map((title) => (title.length > LONGEST ? `${title.slice(0, LONGEST)}…` : title));
}

/**
 * Index of the column that a name or a number from 1 means. Names are compared without white space about them; a name goes
 * before a number, but for a number behind `#`, which is one where no column is called so.
 *
 * @throws {@link VeladisError} `unknown-option` with the columns there are, `syntax` for a name that several have
 */
export function columnIndex(header: readonly string[], column: string): number {
  const name = column.trim();
  const named = header.flatMap((title, i) => (title.trim() === name ? [i] : []));
  if (named.length > 1) {
    throw new VeladisError("syntax", {
      expected: `a column by its number, ${named.map((i) => `${/^\d+$/.test(name) ? "#" : ""}${i + 1}`).join(" or ")}, where several have one name`,
      received: shown(name),
    });
  }
  const numbered = /^#?\d+$/.test(name) ? Number(name.replace("#", "")) - 1 : -1;
  const index = named[0] ?? numbered;
  if (index >= 0 && index < header.length) return index;
  throw unknownOption(column, columnsListed(header), "a column of the header, by name or number");
}
