import { requireList, unknownOption } from "../core/index";
import { confirmScheme, placeOf } from "./confirm-scheme";
import type { Confirmation } from "./confirmation";
import type { Scheme } from "./scheme";
import { builtInSchemes } from "./schemes/index";

/**
 * All built-in schemes, those of which limits were confirmed in their confirmed form: what `schemes` of {@link judge} and
 * the others takes, so that the facts of a machine choose among all of them as they do without it.
 *
 * @param confirmations - of any schemes, as {@link confirmScheme} takes them
 * @throws {@link VeladisError} as {@link confirmScheme}, and `unknown-option` for a scheme that there is none of
 * @example
 * ```ts
 * import { confirmedSchemes, judge } from "veladis/severity";
 *
 * const read = { scheme: "iso-10816-7-2009", edition: "2009", row: "category I, power up to 200 kW", as: "mm/s rms" };
 * const signed = { page: "12", by: "J. Example", on: "2024-03-04" };
 * const schemes = confirmedSchemes([{ ...read, limit: "C/D", printed: 6.3, ...signed }]);
 * const { judgements, cautions } = judge("6.4 mm/s rms", "pump 90 kW 2980 r/min category I", { schemes });
 * judgements.map(({ scheme, zone }) => `${scheme} ${zone}`); // => ["iso-10816-7-2009 D"]
 * cautions[0]?.startsWith("DIFFERS FROM THE TABLE AS SHIPPED: category I, power up to 200 kW, C/D"); // => true
 * ```
 */
export function confirmedSchemes(confirmations: readonly Confirmation[]): readonly Scheme[] {
  const byScheme = new Map<string, Confirmation[]>();
  const ids: readonly string[] = builtInSchemes.map(({ id }) => id);
  requireList(confirmations, "confirmations as a list").forEach((one, i) => {
    const at = placeOf(one, i);
    const { scheme } = one;
    const id =
      typeof scheme === "string" ? ids.find((known) => known.toLowerCase() === scheme.trim().toLowerCase()) : undefined;
    if (id === undefined) throw unknownOption(scheme, ids, `${at}: the id of a built-in scheme`);
    // its number in the list, not among those of its scheme
    byScheme.set(id, [...(byScheme.get(id) ?? []), { ...one, readAt: at }]);
  });
  return Object.freeze(
    builtInSchemes.map((scheme: Scheme) => {
      const own = byScheme.get(scheme.id);
      return own === undefined ? scheme : confirmScheme(scheme, own);
    }),
  );
}
