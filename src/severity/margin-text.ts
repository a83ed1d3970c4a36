import {
  FLOAT_NOISE,
  requireChoice,
  requireKnownOptions,
  requireShape,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { format } from "../reading/index";
import type { Judgement } from "./judgement";
import { limitWords, schemeKinds } from "./kinds";

/** A distance; what rounds to nothing is said to be little, not nothing. */
function awayText(decibels: number): string {
  const text = Math.abs(decibels).toFixed(2);
  return text === "0.00" ? "less than 0.01 dB" : `${text} dB`;
}

const shape = {
  kind: (kind: unknown) => requireChoice(kind, schemeKinds, "the kind of a scheme"),
  limit: { name: "text" },
  margin: (margin: { decibels?: unknown } | null | undefined) => {
    // JSON writes an infinite margin as null
    const decibels = margin?.decibels;
    if (decibels === null || (typeof decibels === "number" && !Number.isNaN(decibels))) return;
    throw new VeladisError("wrong-type", { expected: "judgement.margin: a margin in dB", received: shown(margin) });
  },
} as const;

/**
 * How far a reading is from the limit next to it, in words: below the limit that ends its zone upwards, or above the
 * last one that it exceeds. A limit of grades is named by the grade that it ends.
 *
 * @param judgement - what `classify` or `judge` answered
 * @param settings - `digits`: significant digits of the limit, 3 if not given
 * @throws {@link VeladisError} `missing-option`, `wrong-type`, `unknown-option`, `out-of-range` for the digits
 * @example
 * ```ts
 * import { classify, marginText } from "veladis/severity";
 *
 * const pump = { scheme: "iso-10816-7-2009", machine: "pump 90 kW category II 2980 r/min" } as const;
 * marginText(classify("4.1 mm/s rms", pump)); // => "1.90 dB below the limit B/C, 5.10 mm/s rms"
 * const gear = { scheme: "gear-housing-handbook", machine: "gear drive class high-speed" } as const;
 * marginText(classify("0.15 in/s pk", gear)); // => '2.50 dB below the upper limit of "acceptable", 0.200 in/s pk'
 * ```
 */
export function marginText(
  judgement: Pick<Judgement, "kind" | "limit" | "margin">,
  settings: { readonly digits?: number } = {},
): string {
  return withParameters({ settings, judgement }, () => {
    requireShape(judgement, shape, "judgement");
    requireKnownOptions(
      settings,
      { digits: true },
      {
        what: "an option of a margin in words",
        form: "options such as { digits: 4 }",
        place: {
          parameter: "settings",
        },
      },
    );
    const { kind, limit, margin } = judgement;
    const named = `the ${limitWords(kind, limit.name)}, ${format(limit, settings)}`;
    const decibels = margin.decibels as number | null;
    if (decibels === null || decibels === Number.POSITIVE_INFINITY) return `below ${named}`;
    if (Math.abs(decibels) <= 20 * Math.log10(1 + FLOAT_NOISE)) return `at ${named}`;
    return `${awayText(decibels)} ${decibels > 0 ? "below" : "above"} ${named}`;
  });
}
