import { shown, VeladisError } from "../../core/index";
import { columnIndex } from "../delimited/column-index";
import { headingSays, type Said } from "../delimited/heading-says";

/** The columns of a route, by the words that head them. To add one, add its row here. */
const headings = {
  tag: ["tag"],
  point: ["point"],
  reading: ["reading", "value", "level"],
  unit: ["unit", "units"],
  detector: ["detector"],
  date: ["date"],
  at: ["at", "frequency"],
} as const;

/** Columns that say a fact of the machine, held against the list. */
const factHeadings = ["kind", "power", "speed", "support", "place", "shaft height", "nameplate"];

/** A unit behind the heading of a fact, as in `speed r/min` or `power [kW]`. */
const FACT_UNIT = /^(.*?)\s*[([]?\s*(r\/min|rpm|1\/min|Hz|kW|MW|hp|mm)\s*[)\]]?\s*$/i;

/** A column that says a fact of the machine. */
export interface FactColumn {
  readonly index: number;
  readonly heading: string;
  /** The unit of bare numbers in it; nothing where the heading says none. */
  readonly unit: string;
}

/** The columns that say facts of the machine. */
function factColumnsOf(header: readonly string[]): readonly FactColumn[] {
  return header.flatMap((title, index) => {
    const [, before = title, unit = ""] = FACT_UNIT.exec(title.trim()) ?? [];
    const heading = (unit === "" ? plainHeading(title) : before.trim()).toLowerCase();
    return factHeadings.includes(heading) ? [{ index, heading, unit }] : [];
  });
}

/** A column of a route. */
type RouteColumn = keyof typeof headings;

/** Where the columns of a route stand. */
export type RouteColumns = { readonly [Column in Exclude<RouteColumn, "tag" | "reading">]?: number } & {
  readonly tag: number;
  readonly reading: number;
  /** Columns whose cells are held against the machine of the list. */
  readonly facts: readonly FactColumn[];
  /** Headings of columns that play no part. */
  readonly unread: readonly string[];
};

/** A heading without what says a unit behind it, in small letters. */
function plainHeading(title: string): string {
  return title
    .replace(/\s*(?:\(.*\)|\[.*\]|,.*)\s*$/, "")
    .trim()
    .toLowerCase();
}

/** Whether a heading says a whole reading type. */
function saysType(says: readonly Said[]): boolean {
  return says.some(
    ({ unit, detector, level }) => (unit !== undefined && detector !== undefined) || level !== undefined,
  );
}

/** The one column with these words as its heading, or that begins with one and says a unit behind it. */
function columnOf(header: readonly string[], titles: readonly string[], column: RouteColumn): number | undefined {
  const words: readonly string[] = headings[column];
  const isHeaded = (title: string, i: number): boolean => {
    const plain = plainHeading(title);
    if (words.includes(plain)) return true;
    return (
      column === "reading" &&
      words.some((word) => plain.startsWith(`${word} `)) &&
      saysType(headingSays(titles[i] as string))
    );
  };
  const found = header.flatMap((title, i) => (isHeaded(title, i) ? [i] : []));
  if (found.length < 2) return found[0];
  throw new VeladisError("syntax", {
    expected: `one column of a route for its ${column}`,
    received: found.map((i) => shown(header[i]?.trim())).join(" and "),
  });
}

/** The column of the readings: by its word, else the only one whose heading says unit and detector. */
function readingColumn(header: readonly string[], titles: readonly string[]): number {
  const headed = columnOf(header, titles, "reading");
  if (headed !== undefined) return headed;
  const typed = titles.flatMap((title, i) => (saysType(headingSays(title)) ? [i] : []));
  if (typed.length === 1) return typed[0] as number;
  throw new VeladisError("missing-fact", {
    expected:
      "a column of readings, headed reading or value, or the only one whose heading says unit and detector, as in velocity mm/s rms; or --column to name it",
    received:
      typed.length === 0
        ? `the columns ${header.map(shown).join(", ")}`.slice(0, 300)
        : typed.map((i) => shown(header[i]?.trim())).join(" and "),
    option: "column",
  });
}

/**
 * The columns of a route.
 *
 * @param titles - the headings with the units of a row below them
 * @param column - the column of the readings, where it is named
 * @throws {@link VeladisError} without a column of tags or readings, and for two that are headed alike
 */
export function routeColumns(
  header: readonly string[],
  titles: readonly string[],
  column: string | undefined,
): RouteColumns {
  const tag = columnOf(header, titles, "tag");
  if (tag === undefined) {
    throw new VeladisError("missing-fact", {
      expected: "a column headed tag, with the tags of the list",
      received: `the columns ${header.map(shown).join(", ")}`.slice(0, 300),
    });
  }
  const reading = column === undefined ? readingColumn(header, titles) : columnIndex(header, column);
  const others = (["point", "unit", "detector", "date", "at"] as const).flatMap((name) => {
    const index = columnOf(header, titles, name);
    return index === undefined || index === reading ? [] : [[name, index] as const];
  });
  const taken = [tag, reading, ...others.map(([, index]) => index)];
  const facts = factColumnsOf(header).filter(({ index }) => !taken.includes(index));
  const used = [...taken, ...facts.map(({ index }) => index)];
  return {
    ...Object.fromEntries(others),
    tag,
    reading,
    facts,
    unread: header.filter((_, i) => !used.includes(i)).map((title) => title.trim()),
  };
}
