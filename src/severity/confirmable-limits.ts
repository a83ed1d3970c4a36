import { type Provenance, requireText, type Source, withParameters } from "../core/index";
import { namesOf } from "./limit";
import { conditionOf, conditionText } from "./machine-class";
import type { Criterion, LimitValue, MachineClass, Scheme } from "./scheme";
import { type SchemeRef, schemeOf } from "./scheme-of";

/** One limit of a scheme as a printed page has it: what a confirmation names, and what the scheme has there. */
export interface ConfirmableLimit {
  /** The id of the scheme. */
  readonly scheme: string;
  readonly standard: string;
  readonly edition: string;
  /** The row of the table, in words, e.g. `"category I, power up to 200 kW"`. */
  readonly row: string;
  /**
   * The limit by name, e.g. `"C/D"`; `"alarm at most"` and `"trip at most"` for the highest settings. A limit that falls
   * with speed has a row for each number of its law: `"A/B over root n"` for 4800 in 4800/root n, `"A/B root of"` for
   * 12000 in root(12000/n), and `"A/B at most"` for its cap.
   */
  readonly limit: string;
  /** Unit and detector, e.g. `"mm/s rms"`. */
  readonly as: string;
  /** The value that the scheme has. */
  readonly shipped: number;
  readonly provenance: Provenance;
  readonly source: Source;
  /** What else is printed there, as its source tells: read this limit with care. */
  readonly disputed?: string;
}

/** A number of a limit: the limit itself, or a part of a law of speed. */
type LimitPart = "value" | "over root n" | "root of" | "at most";

/** A number of the table, with where it stands. */
export interface LimitPlace extends ConfirmableLimit {
  readonly criteria: readonly Criterion[];
  readonly at: { readonly name: string; readonly part: LimitPart } | { readonly ceiling: "alarm" | "trip" };
}

/** The numbers of a limit, each with its name on the sheet. */
function partsOf(name: string, limit: LimitValue): { limit: string; part: LimitPart; shipped: number }[] {
  if (limit === null) return [];
  if (typeof limit === "number") return [{ limit: name, part: "value", shipped: limit }];
  const root = Math.sqrt(limit.rootOf);
  // a page that prints 4800/root n has the root, one that prints root(12000/n) the number under it
  const part = Number.isInteger(root) ? "over root n" : "root of";
  return [
    { limit: `${name} ${part}`, part, shipped: part === "over root n" ? root : limit.rootOf },
    ...(limit.atMost === undefined
      ? []
      : [{ limit: `${name} at most`, part: "at most" as const, shipped: limit.atMost }]),
  ];
}

function knownBy(source: Source): Pick<ConfirmableLimit, "provenance" | "source" | "disputed"> {
  const { provenance, disputed } = source;
  return { provenance, source, ...(disputed !== undefined && { disputed }) };
}

/** A criterion of every row stands once in print; by what it says, so that a copy of the scheme has the same. */
const textOf = (criterion: Criterion): string => JSON.stringify(criterion);

/** The criteria of a scheme by the row in which they stand in print, a row's own first. */
function rowsOf({ classes }: Scheme): { row: string; criterion: Criterion; criteria: readonly Criterion[] }[] {
  const texts = classes.map(({ criteria }) => criteria.map(textOf));
  const isShared = (text: string): boolean => classes.length > 1 && texts.every((all) => all.includes(text));
  const when = ({ when }: Criterion): string => (when === undefined ? "" : conditionText(when));
  const named = (one: MachineClass, criterion: Criterion): string =>
    [conditionText(conditionOf(one)), when(criterion)].filter(Boolean).join(", ") || "any machine";
  const own = classes.flatMap((one) =>
    one.criteria
      .filter((criterion) => !isShared(textOf(criterion)))
      .map((criterion) => ({ row: named(one, criterion), criterion, criteria: [criterion] })),
  );
  const shared = (classes[0] as MachineClass).criteria
    .filter((criterion) => isShared(textOf(criterion)))
    .map((criterion) => ({
      row: ["every row", when(criterion)].filter(Boolean).join(", "),
      criterion,
      criteria: classes.flatMap((one) => one.criteria.filter((other) => textOf(other) === textOf(criterion))),
    }));
  return [...own, ...shared];
}

/** Every number of a scheme, in the order of its rows, with where it stands. */
export function limitPlaces(scheme: Scheme): readonly LimitPlace[] {
  const { id, standard, edition } = scheme;
  return rowsOf(scheme).flatMap(({ row, criterion, criteria }) => {
    const common = { scheme: id, standard, edition, row, as: criterion.as, criteria };
    const limits = namesOf(scheme).flatMap((name) => {
      const source = criterion.limitSources?.[name] ?? criterion.source;
      return partsOf(name, criterion.limits[name] ?? null).map(({ limit, part, shipped }) => ({
        ...{ ...common, limit, shipped, ...knownBy(source) },
        at: { name, part },
      }));
    });
    const { ceilings } = criterion;
    if (ceilings === undefined) return limits;
    const { source } = ceilings;
    const highest = (["alarm", "trip"] as const).map((ceiling) => ({
      ...{ ...common, limit: `${ceiling} at most`, shipped: ceilings[ceiling] },
      ...{ ...knownBy(source), at: { ceiling } },
    }));
    return [...limits, ...highest];
  });
}

/**
 * Every limit of a scheme as its printed page has it, a row each: what a check sheet lists, and what
 * {@link confirmScheme} takes the names of.
 *
 * @param scheme - the id of a built-in scheme, or a scheme
 * @throws {@link VeladisError} as {@link schemeById} and {@link defineScheme}
 * @example
 * ```ts
 * import { confirmableLimits } from "veladis/severity";
 *
 * const [first] = confirmableLimits("iso-10816-7-2009");
 * first?.row; // => "category I, power up to 200 kW"
 * first?.limit; // => "A/B"
 * first?.as; // => "mm/s rms"
 * first?.shipped; // => 2.5
 * confirmableLimits("iso-10816-7-2009")[2]?.disputed?.split(";")[0]; // => "the extract prints 6.5"
 * confirmableLimits("iso-7919-3-2009")[0]?.limit; // => "A/B over root n"
 * ```
 */
export function confirmableLimits(scheme: SchemeRef): readonly ConfirmableLimit[] {
  return withParameters({ scheme }, () => {
    if (typeof scheme === "string") requireText(scheme, "a scheme", { parameter: "scheme" });
    return limitPlaces(schemeOf(scheme)).map(({ criteria: _, at: __, ...one }) => Object.freeze(one));
  });
}
