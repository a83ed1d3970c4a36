import type { Source } from "../core/index";
import { withParameters } from "../core/index";
import { limitPlaces } from "./confirmable-limits";
import { type SchemeRef, schemeOf } from "./scheme-of";

/**
 * Where the confirmed copies of schemes print other values than the tables had, a text each; none where all agree.
 *
 * @param schemes - a scheme, or several such as {@link confirmedSchemes} gives
 * @throws {@link VeladisError} as {@link defineScheme}
 * @example
 * ```ts
 * import { confirmedDifferences, confirmScheme } from "veladis/severity";
 *
 * const read = { scheme: "iso-10816-7-2009", edition: "2009", row: "category I, power up to 200 kW", as: "mm/s rms" };
 * const signed = { page: "12", by: "J. Example", second: "K. Example", on: "2024-03-04" };
 * confirmedDifferences(confirmScheme("iso-10816-7-2009", [{ ...read, limit: "C/D", printed: 6.6, ...signed }]));
 * // => ["category I, power up to 200 kW, C/D: the copy prints 6.6 mm/s rms, the table as shipped has 6.5 (reported): this RAISES the limit"]
 * confirmedDifferences("iso-10816-7-2009"); // => []
 * ```
 */
export function confirmedDifferences(schemes: SchemeRef | readonly SchemeRef[]): readonly string[] {
  return withParameters({ schemes }, () => {
    const list: readonly SchemeRef[] = Array.isArray(schemes) ? schemes : [schemes as SchemeRef];
    const sources = list.flatMap((one): Source[] => limitPlaces(schemeOf(one)).map(({ source }) => source));
    return [
      ...new Set(sources.flatMap(({ shipped, note }) => (shipped === undefined || note === undefined ? [] : [note]))),
    ];
  });
}
