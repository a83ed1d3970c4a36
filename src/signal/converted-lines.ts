import { requireKnownOptions, requireNonNegative, shown, VeladisError } from "../core/index";
import { finiteLevels } from "./finite-level";
import type { Spectrum } from "./spectrum-type";

/**
 * The lowest frequency that a converted spectrum or density gives.
 *
 * @throws {@link VeladisError} `missing-frequency` when the quantity changes without one, `out-of-range` when it is
 *   below the resolution
 */
export function lowestFrequency(from: number | undefined, steps: number, resolution: number): number {
  if (from === undefined) {
    if (steps === 0) return 0;
    throw new VeladisError("missing-frequency", {
      expected: "a lowest frequency, as in { lowest: 10 }, since the quantity changes line by line",
      received: "nothing",
      option: "lowest",
    });
  }
  const lowest = requireNonNegative(from, "a lowest frequency of zero or more, in Hz", { option: "lowest" });
  if (steps < 0 && lowest < resolution) {
    throw new VeladisError("out-of-range", {
      expected: `a lowest frequency of ${resolution} Hz, the resolution, or more, since integration divides by it`,
      received: shown(from),
      option: "lowest",
    });
  }
  return lowest;
}

/** Refuses options of a converted spectrum or density but the lowest frequency. */
export function requireConversion<Options extends { readonly lowest?: number }>(options: Options): Options {
  return requireKnownOptions(
    options,
    { lowest: true },
    { what: "an option of converted lines", form: "options such as { lowest: 10 }" },
  );
}

/** First line at or above a frequency. */
export function firstLine(from: number, resolution: number): number {
  return Math.ceil((from / resolution) * (1 - 1e-9));
}

/**
 * Lines multiplied with a factor and with a power of their own angular frequency; those below `from` are 0.
 *
 * @param power - of `2 pi f`: how many times the lines are differentiated, for a density twice as many
 */
export function convertedLines(
  { values, resolution }: Pick<Spectrum, "values" | "resolution">,
  factor: number,
  power: number,
  from: number,
): Float64Array {
  const first = firstLine(from, resolution);
  return finiteLevels(
    values.map((value, k) =>
      k < first ? 0 : value * factor * (power === 0 ? 1 : (2 * Math.PI * k * resolution) ** power),
    ),
  );
}
