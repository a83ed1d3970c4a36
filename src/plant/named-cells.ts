import { nearest, shown, unknownOption, VeladisError } from "../core/index";
import { unguarded } from "./unguarded";

/** A heading without regard to case, blanks, underscores and hyphens. */
export function plainTitle(heading: string): string {
  return heading.trim().toLowerCase().replace(/[\s_-]+/g, " ");
}

/**
 * Where the columns of a file stand that has those of a table, all of them, in any order. Columns of one's own stay where
 * they are; one that is nearly a column of the table was mistyped.
 *
 * @throws {@link VeladisError} `unknown-option`, `syntax` for a column twice, `missing-fact` without one
 */
export function namedColumns<Title extends string>(
  heading: readonly string[],
  titles: readonly Title[],
  file: string,
): ReadonlyMap<Title, number> {
  const found = new Map<Title, number>();
  for (const [index, text] of heading.entries()) {
    const name = plainTitle(text);
    const title = titles.find((one) => one === name);
    if (title === undefined) {
      if (nearest(name, titles).length === 0) continue;
      throw unknownOption(text.trim(), titles, `a heading of ${file}`);
    }
    if (found.has(title)) {
      throw new VeladisError("syntax", { expected: `each column of ${file} once`, received: `${shown(title)} twice` });
    }
    found.set(title, index);
  }
  const lacks = titles.filter((one) => !found.has(one));
  if (lacks.length === 0) return found;
  throw new VeladisError("missing-fact", {
    expected: `${file} with the ${lacks.length === 1 ? "column" : "columns"} ${lacks.join(", ")}`,
    received: heading.length === 0 ? "nothing" : heading.map((text) => text.slice(0, 20)).join(", ").slice(0, 200),
  });
}

/**
 * The cells of a row by title, without blanks about them and without what guards them against a spreadsheet.
 *
 * @throws {@link VeladisError} `length-mismatch` for a torn row
 */
export function namedCells<Title extends string>(
  row: readonly string[],
  heading: readonly string[],
  columns: ReadonlyMap<Title, number>,
): Readonly<Record<Title, string>> {
  if (row.length !== heading.length) {
    throw new VeladisError("length-mismatch", {
      expected: `${heading.length} cells, as there are headings`,
      received: `${row.length}`,
    });
  }
  return Object.fromEntries([...columns].map(([title, at]) => [title, unguarded(row[at] as string)])) as Record<Title, string>;
}
