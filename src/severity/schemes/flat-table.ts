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

/** The classes that a table as it stands in print says, a row a class. */
export function flatTable<K extends SchemeKind>(table: FlatTable<K>): readonly MachineClass<K>[] {
  const width = table.columns.reduce(
    (sum, { limits, ceilings }) => sum + limits.length + (ceilings ? 2 : 0),
    table.machine.length,
  );
  return table.rows.map((row) => {
    const beside = (row.length > width ? row[width] : {}) as Beside<K>;
    let at = table.machine.length;
    const criteria = table.columns.flatMap(({ limits: names, ceilings: most, ...column }) => {
      const limits = Object.fromEntries(names.map((name) => [name, row[at++] as LimitValue]));
      const [alarm, trip] = most === undefined ? [] : [row[at++] as number, row[at++] as number];
      if (Object.values(limits).every((limit) => limit === null)) return [];
      const source = beside.sources?.[column.as] ?? beside.source;
      const own = beside.limitSources?.[column.as];
      return [
        {
          ...column,
          limits,
          ...(source !== undefined && { source }),
          ...(own !== undefined && { limitSources: own }),
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
      criteria: [...criteria, ...(table.also ?? [])],
    };
  });
}
