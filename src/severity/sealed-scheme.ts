import { withParameters } from "../core/index";
import type { SchemeInput } from "./define-scheme";
import { requireCriterion } from "./require-criterion";
import { requireObject } from "./require-parts";
import type { Scheme } from "./scheme";
import { schemeOf } from "./scheme-of";
import { sealOf } from "./seal";

/**
 * A scheme of your own as a text to store, with a seal in front: proof for {@link exactZone} that all was checked and
 * nothing has slipped in since. Make it where the scheme is kept, once.
 *
 * @param input - as for {@link defineScheme}
 * @throws {@link VeladisError} as {@link defineScheme}; `out-of-range` for the id of a built-in scheme, and the standard and
 *   edition of one with other limits, and for limits that are informative
 * @example
 * ```ts
 * import { iso10816Part3Of2009, sealedScheme } from "veladis/severity";
 *
 * const own = { ...iso10816Part3Of2009, standard: "Hollowmere site rule 9, invented" };
 * sealedScheme({ ...own, id: "hollowmere-pumps" }).endsWith("}"); // => true
 * sealedScheme(own); // throws out-of-range
 * ```
 */
export function sealedScheme(input: SchemeInput): string {
  return withParameters({ input }, () => {
    const given = requireObject(input, "a scheme with id, kind, standard and classes");
    const scheme = schemeOf(given as unknown as Scheme);
    requireCriterion(scheme);
    const text = JSON.stringify(scheme);
    return `${sealOf(text)} ${text}`;
  });
}
