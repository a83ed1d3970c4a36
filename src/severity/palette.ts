import { requireFinite, requirePositive, withParameters } from "../core/index";

/**
 * Colours for zones, best to worst: one hue from light to dark, so that they are told apart by lightness alone, by
 * colour-blind readers and in grey print. They come second to the letter and the word, never alone.
 */
export const severityPalette = /* @__PURE__ */ Object.freeze(["#e6eef5", "#a9c3da", "#5c84ab", "#1d3557"] as const);

/**
 * The colour of a zone, by its place from best to worst.
 *
 * @param at - 0 for the best zone
 * @param count - how many zones there are
 * @throws {@link VeladisError} `wrong-type`, `not-a-number`, `not-finite`, `not-positive`
 * @example
 * ```ts
 * import { severityColour } from "veladis/severity";
 *
 * severityColour(0, 4); // => "#e6eef5"
 * severityColour(1, 2); // => "#1d3557"
 * ```
 */
export function severityColour(at: number, count: number): string {
  return withParameters({ at, count }, () => {
    requireFinite(at, "the place of a zone, 0 for the best", { parameter: "at" });
    requirePositive(count, "how many zones there are", { parameter: "count" });
    const last = severityPalette.length - 1;
    const share = count > 1 ? Math.min(Math.max(at / (count - 1), 0), 1) : 0;
    return severityPalette[Math.round(share * last)] as string;
  });
}
