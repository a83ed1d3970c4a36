import { frozen, nearest, shown, unknownOption, VeladisError } from "../core/index";
import { isReadingType } from "../reading/index";
import { type PlantColumn, type PlantColumnEntry, plantColumns } from "./columns";

/** A column that is none of the list's: its heading and where it stands. */
export interface OwnColumn {
  readonly heading: string;
  readonly index: number;
}

/** Where the columns of a list stand. */
export interface PlantHeadings {
  readonly columns: ReadonlyMap<PlantColumn, number>;
  readonly own: readonly OwnColumn[];
}

/** Small letters, with one blank for blanks, underscores, hyphens and brackets: so headings are compared. */
function plainHeading(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[\s_()[\]\u2010-\u2013-]+/g, " ")
    .trim();
}

/** The headings of all columns as they are compared, with the column of each. */
function plainNames(): ReadonlyMap<string, PlantColumn> {
  const entries = Object.entries<PlantColumnEntry>(plantColumns);
  return new Map(
    entries.flatMap(([column, { also = [] }]) =>
      [column, ...also].map((name) => [plainHeading(name), column as PlantColumn] as const),
    ),
  );
}

/** What stands behind the name of a column where its unit is written there, which this list has in its cells. */
const unit =
  /^(?:[km]?w|hp|ps|(?:[mcuµ]?m|in|mils?)(?:\/s2?)?|inch(?:es)?|ips|rpm|cpm|r\/min|1\/min|k?hz|%|g|m?v|ma|ms|s|secs?|seconds?|min|minutes?|h|hours?|d|days?|weeks?|months?|years?)$/i;

/** The columns whose headings a heading is nearly, best first; none for one of one's own. */
function nearColumns(heading: string, names: ReadonlyMap<string, PlantColumn>): readonly PlantColumn[] {
  const plain = plainHeading(heading);
  const isSized = (rest: string): boolean => unit.test(rest) || isReadingType(rest);
  const sized = [...names].flatMap(([name, column]) => {
    // of "trip delay s" also "trip delay ms"; of "trip" also "trip mm/s rms"
    const stem = plantColumns[column].holds === "number" ? name.replace(/ \S+$/, "") : name;
    const rest = plain.startsWith(`${stem} `) ? plain.slice(stem.length + 1) : undefined;
    return rest !== undefined && isSized(rest) ? [column] : [];
  });
  const near = nearest(plain, names.keys()).map((name) => names.get(name) as PlantColumn);
  return [...new Set([...sized, ...near])];
}

function twice(heading: string): VeladisError {
  return new VeladisError("syntax", { expected: "each column of the list once", received: `${shown(heading)} twice` });
}

/** The headings that are said to be one's own, as they are compared; each must be there and be no column of the list. */
function ownNames(
  heading: readonly string[],
  own: readonly string[],
  names: ReadonlyMap<string, PlantColumn>,
): ReadonlySet<string> {
  const there = heading.map(plainHeading);
  for (const one of own) {
    if (names.has(plainHeading(one))) {
      throw new VeladisError("unknown-option", {
        expected: "a column of one's own, which the list does not have",
        received: shown(one),
        option: "own",
      });
    }
    if (!there.includes(plainHeading(one))) {
      throw unknownOption(one, heading, "the heading of a column of one's own", { option: "own" });
    }
  }
  return new Set(own.map(plainHeading));
}

/**
 * Where the columns of a list stand, in any order, without regard to case, blanks, underscores and hyphens.
 *
 * @param own - headings that are one's own although they are nearly those of the list
 * @throws {@link VeladisError} `syntax` for a column twice, `missing-fact` without tag or kind, `unknown-option` for a heading
 *   that is nearly one of the list's
 */
export function plantHeadings(heading: readonly string[], own: readonly string[] = []): PlantHeadings {
  const names = plainNames();
  const stated = ownNames(heading, own, names);
  const columns = new Map<PlantColumn, number>();
  const others: OwnColumn[] = [];
  for (const [index, text] of heading.entries()) {
    const plain = plainHeading(text);
    const column = names.get(plain);
    if (column !== undefined) {
      if (columns.has(column)) throw twice(column);
      columns.set(column, index);
      continue;
    }
    const near = plain === "" || stated.has(plain) ? [] : nearColumns(text, names);
    if (near.length > 0) {
      throw new VeladisError("unknown-option", {
        expected: `a heading of the list, which names no unit of its own, or one that is told to be your own (column ${index + 1})`,
        received: shown(text),
        didYouMean: near,
      });
    }
    const named = plain === "" ? `column ${index + 1}` : text.trim();
    if (others.some((one) => plainHeading(one.heading) === plainHeading(named))) throw twice(text);
    others.push({ heading: named, index });
  }
  const lacks = (["tag", "kind"] as const).filter((column) => !columns.has(column));
  if (lacks.length === 0) return frozen({ columns, own: others });
  throw new VeladisError("missing-fact", {
    expected: `a list of machines with the ${lacks.length === 1 ? "column" : "columns"} ${lacks.join(" and ")}`,
    received:
      heading.length === 0
        ? "nothing"
        : heading
            .map((text) => text.slice(0, 20))
            .join(", ")
            .slice(0, 200),
  });
}
