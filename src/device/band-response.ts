import { inPlace, requireGiven, requireKnownKeys, requirePositive, VeladisError, withParameters } from "../core/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";

/** A measuring band by its -3 dB edges. */
export interface DeviceBand {
  readonly lowest: Frequency;
  readonly highest: Frequency;
  /** Order of the Butterworth high-pass and low-pass at its edges; 3 if not given. */
  readonly order?: number;
}

const keys: Readonly<Record<keyof DeviceBand, true>> = /* @__PURE__ */ Object.freeze({
  lowest: true,
  highest: true,
  order: true,
});

/**
 * The share of a sine that a device with a measuring band nominally reads.
 *
 * Each edge is a Butterworth filter. A band is named by its -3 dB edges: at 10 Hz a device of 10 Hz to 1000 Hz reads
 * 0.707. The tolerance of ISO 2954, +10 % and -10 % over most of the band, lies about this nominal curve. The third
 * order is from memory; the edge values were read in a survey that quotes ISO 2954:2012.
 *
 * @throws {@link VeladisError} `out-of-range` unless the band rises, and as {@link hertz}
 * @example
 * ```ts
 * import { bandResponse } from "veladis/protection";
 *
 * const band = { lowest: "10 Hz", highest: "1000 Hz" } as const;
 * bandResponse("600 r/min", band).toFixed(3); // => "0.707"
 * bandResponse("12.6 Hz", band).toFixed(3); // => "0.894"
 * ```
 */
export function bandResponse(at: Frequency, band: DeviceBand): number {
  return withParameters({ at, band }, () => {
    const {
      lowest,
      highest,
      order = 3,
    } = requireKnownKeys(
      requireGiven(band, "a band with its lowest and highest frequency", { parameter: "band" }),
      keys,
      "a part of a band",
    );
    const [low, high] = Object.entries({ lowest, highest }).map(([option, edge]) =>
      inPlace({ parameter: "band", option }, () => hertzOf(edge)),
    ) as [number, number];
    const hertz = hertzOf(at);
    if (!(low < high)) {
      throw new VeladisError("out-of-range", {
        expected: "a band whose highest frequency is above the lowest",
        received: `${low} Hz to ${high} Hz`,
        parameter: "band",
        option: "highest",
      });
    }
    const power = 2 * requirePositive(order, "an order of the filter above zero", { option: "order" });
    return 1 / Math.sqrt((1 + (low / hertz) ** power) * (1 + (hertz / high) ** power));
  });
}
