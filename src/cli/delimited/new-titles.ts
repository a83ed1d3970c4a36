import { shown, VeladisError } from "../../core/index";

/**
 * The titles of columns to add, which the header must not have.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function requireNewTitles(header: readonly string[], titles: readonly string[]): readonly string[] {
  const names = header.map((title) => title.trim());
  const twice = titles.find((title, i) => names.includes(title) || titles.indexOf(title) !== i);
  if (twice === undefined) return titles;
  throw new VeladisError("syntax", {
    expected: "a table without the columns that are added, and each added once",
    received: `a second column ${shown(twice)}`,
  });
}
