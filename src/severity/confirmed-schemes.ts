import { requireList, shown, unknownOption, VeladisError, withParameters } from "../core/index";
import { confirmScheme, placeOf } from "./confirm-scheme";
import type { Confirmation } from "./confirmation";
import type { Scheme } from "./scheme";
import { type SchemeRef, schemeOf } from "./scheme-of";
import { builtInSchemes } from "./schemes/index";

/** Schemes by their ids, in lower case. */
function byOwnId(schemes: readonly SchemeRef[]): ReadonlyMap<string, Scheme> {
  const byId = new Map<string, Scheme>();
  for (const scheme of requireList(schemes, "schemes as a list", { parameter: "schemes" }).map(schemeOf)) {
    const id = scheme.id.trim().toLowerCase();
    if (byId.has(id)) {
      throw new VeladisError("out-of-range", { expected: "schemes with an id each", received: `${shown(id)} twice` });
    }
    byId.set(id, scheme);
  }
  return byId;
}

/**
 * All built-in schemes, those of which limits were confirmed in their confirmed form: what `schemes` of {@link judge} and
 * the others takes, so that the facts of a machine choose among all of them as they do without it.
 *
 * @param confirmations - of any of the schemes, as {@link confirmScheme} takes them
 * @param all - the schemes: the built-in ones, where nothing else is said; name your own beside them
 * @throws {@link VeladisError} as {@link confirmScheme}, `unknown-option` for a scheme that there is none of, and
 *   `out-of-range` for two with one id
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
export function confirmedSchemes(
  confirmations: readonly Confirmation[],
  all: readonly SchemeRef[] = builtInSchemes,
): readonly Scheme[] {
  return withParameters({ all, confirmations }, () => {
    const byScheme = new Map<Scheme, Confirmation[]>();
    const byId = byOwnId(all);
    requireList(confirmations, "confirmations as a list", { parameter: "confirmations" }).forEach((one, i) => {
      const at = placeOf(one, i);
      const { scheme } = one;
      const known = typeof scheme === "string" ? byId.get(scheme.trim().toLowerCase()) : undefined;
      if (known === undefined) {
        const ids = [...byId.values()].map(({ id }) => id);
        throw unknownOption(
          scheme,
          ids,
          `${at}: the id of a built-in scheme, or of one of your own that is named too`,
          {
            option: "scheme",
          },
        );
      }
      // its number in the list, not among those of its scheme
      byScheme.set(known, [...(byScheme.get(known) ?? []), { ...one, readAt: at }]);
    });
    return Object.freeze(
      [...byId.values()].map((scheme) => {
        const own = byScheme.get(scheme);
        return own === undefined ? scheme : confirmScheme(scheme, own);
      }),
    );
  });
}
