import type { Source } from "../../core/index";
import type { AmplitudeType } from "../../reading/index";
import type { Fact } from "../facts";
import type { Interval } from "../interval";
import type { SchemeKind } from "../kinds";
import type { Condition, Criterion, LimitValue, MachineClass } from "../scheme";

/** A cell of a row: what the machine must be, or a limit. */
type Cell = string | readonly string[] | Interval | LimitValue;

/** Columns of limits in one unit, with where they come from. */
interface Columns<K extends SchemeKind> extends Omit<Criterion<K>, "limits" | "ceilings"> {
  readonly as: AmplitudeType;
  /** The names of the columns, in the order of the print. */
  readonly limits: readonly string[];
  /** The source of two columns more at the right: the highest alarm and trip settings. */
  readonly ceilings?: Source;
}

/** What is said of one row beside its cells. */
interface Beside<K extends SchemeKind> {
  readonly note?: string;
  readonly within?: Condition;
  /** The source of all limits of the row. */
  readonly source?: Source;
  /** The source of its limits in one unit. */
  readonly sources?: { readonly [As in AmplitudeType]?: Source };
  /** The sources of single limits, by unit and name: `{ "mm/s rms": { "C/D": LOWER } }`. */
  readonly limitSources?: { readonly [As in AmplitudeType]?: Criterion<K>["limitSources"] };
  /** The measuring band of its limits in one unit, in hertz. */
  readonly bands?: { readonly [As in AmplitudeType]?: Criterion<K>["band"] };
  /** What its limits rise by with the height of the measuring point. */
  readonly height?: Criterion<K>["height"];
  /** Criteria that the row has besides. */
  readonly also?: readonly Criterion<K>[];
}

/** A table as it stands in print: headings once, then a row a line. */
export interface FlatTable<K extends SchemeKind> {
  /** The columns at the left: what the machine must be. */
  readonly machine: readonly Fact[];
  /** What a cell at the left means, where it is more than the fact of its column: by fact and cell. */
  readonly means?: {
    readonly [F in Fact]?: Readonly<Record<string, Pick<MachineClass, "named" | "by" | "when" | "within" | "note">>>;
  };
  /** The columns of limits, by unit from left to right. */
  readonly columns: readonly Columns<K>[];
  /** Criteria that every row has besides. */
  readonly also?: readonly Criterion<K>[];
  /** Cells at the left, limits from left to right, and at the end what is said beside; null where the print has none. */
  readonly rows: readonly (readonly [...Cell[], Cell | Beside<K>])[];
}

/** The parts of a class that its cells at the left say. */
function classParts<K extends SchemeKind>(
  table: FlatTable<K>,
  cells: readonly unknown[],
): Omit<MachineClass, "criteria"> {
  const parts = table.machine.flatMap((fact, i) => {
    const cell = cells[i];
    if (cell === null) return [];
    return [table.means?.[fact]?.[cell as string] ?? { when: { [fact]: cell } as Condition }];
  });
  const united = (part: "named" | "by" | "when" | "within") => {
    const all = Object.assign({}, ...parts.map((one) => one[part])) as Condition;
    return Object.keys(all).length > 0 ? { [part]: all } : {};
  };
  const note = parts.find((one) => one.note !== undefined)?.note;
  return {
    ...united("named"),
    ...united("by"),
    ...united("when"),
    ...united("within"),
    ...(note !== undefined && { note }),
  };
}

/** What stands over the columns of limits, from left to right. */
function headings(columns: readonly { as: string; limits: readonly string[]; ceilings?: Source }[]): string[] {
  return columns.flatMap(({ as, limits, ceilings }) =>
    [...limits, ...(ceilings ? ["alarm", "trip"] : [])].map((name) => `${name} ${as}`),
  );
}

/** A cell as a sentence says it. */
function cellWords(cell: unknown): string {
  return typeof cell === "object" ? JSON.stringify(cell) : String(cell);
}

/** What is wrong with the cells of a row, in words; undefined when there are as many as headings and limits where they belong. */
function rowFault(row: readonly unknown[], i: number, left: number, heads: readonly string[]): string | undefined {
  const asked = left + heads.length;
  const named = `row ${i + 1} (${row.slice(0, left).map(cellWords).join(", ") || "of any machine"})`;
  const last = row[asked];
  const beside = row.length === asked + 1 && typeof last === "object" && last !== null && !("rootOf" in last);
  if (row.length < asked || (row.length > asked && !beside))
    return `${named} has ${row.length} cells; ${asked} are asked for: ${left} at the left, then ${heads.join(", ")}`;
  const wrong = row.slice(left, asked).findIndex((cell) => {
    if (typeof cell === "object" && cell !== null) return !("rootOf" in cell);
    return cell !== null && typeof cell !== "number";
  });
  return wrong < 0 ? undefined : `${named} has no limit under ${heads[wrong]}: ${cellWords(row[left + wrong])}`;
}

/** A class without limits that says why, so that the tests name table and row and no limit is dropped in silence. */
function faulty(note: string): { note: string; criteria: [] } {
  return { note, criteria: [] };
}

/**
 * The classes that a table as it stands in print says, a row a class. A row with too few or too many cells becomes a
 * class without criteria whose note says what is wrong.
 */
export function flatTable<K extends SchemeKind>(table: FlatTable<K>): readonly MachineClass<K>[] {
  const left = table.machine.length;
  const heads = headings(table.columns);
  return table.rows.map((row, i) => {
    const fault = rowFault(row, i, left, heads);
    if (fault !== undefined) return faulty(fault);
    const beside = (row[left + heads.length] ?? {}) as Beside<K>;
    let at = left;
    const criteria = table.columns.flatMap(({ limits: names, ceilings: most, ...column }) => {
      const limits = Object.fromEntries(names.map((name) => [name, row[at++] as LimitValue]));
      const [alarm, trip] = most === undefined ? [] : [row[at++] as number, row[at++] as number];
      if (Object.values(limits).every((limit) => limit === null)) return [];
      const source = beside.sources?.[column.as] ?? beside.source;
      const own = beside.limitSources?.[column.as];
      const band = beside.bands?.[column.as];
      return [
        {
          ...column,
          limits,
          ...(source !== undefined && { source }),
          ...(own !== undefined && { limitSources: own }),
          ...(band !== undefined && { band }),
          ...(beside.height !== undefined && { height: beside.height }),
          ...(most !== undefined && { ceilings: { alarm, trip, source: most } }),
        } as Criterion<K>,
      ];
    });
    const { note, within, ...parts } = classParts(table, row);
    const said = beside.note ?? note;
    const bounds = { ...within, ...beside.within };
    return {
      ...parts,
      ...(Object.keys(bounds).length > 0 && { within: bounds }),
      ...(said !== undefined && { note: said }),
      criteria: [...criteria, ...(table.also ?? []), ...(beside.also ?? [])],
    };
  });
}

/** Steps with names of their own as they stand in print: a row a step, its upper ends from left to right. */
export interface FlatGrades {
  /** The columns, by unit from left to right. */
  readonly columns: readonly Omit<Criterion<"grades">, "limits" | "ceilings">[];
  /** The name of the step, then its upper end in each unit. */
  readonly rows: readonly (readonly [name: string, ...LimitValue[]])[];
}

/** The one class that a table of steps says; one with a fault in a row says so as {@link flatTable} does. */
export function flatGrades({ columns, rows }: FlatGrades): readonly MachineClass<"grades">[] {
  const heads = columns.map(({ as }) => as);
  const faults = rows.flatMap((row, i) => {
    const fault = rowFault(row, i, 1, heads);
    return fault === undefined && row.length === 1 + heads.length ? [] : [fault ?? `row ${i + 1} has a cell too many`];
  });
  if (faults[0] !== undefined) return [faulty(faults[0])];
  return [
    {
      criteria: columns.map((column, i) => ({
        ...column,
        limits: Object.fromEntries(rows.map(([name, ...ends]) => [name, ends[i] as LimitValue])),
      })),
    },
  ];
}
