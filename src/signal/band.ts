import { frozen, requireChoice, requireFinite, shown, VeladisError } from "../core/index";

/** A band of frequencies in hertz, both edges belonging to it. */
export type Band = readonly [low: number, high: number];

/** How a band ends. */
export const bandEdges = /* @__PURE__ */ frozen({
  ideal: "everything within the band counts whole, its edges included, and nothing outside",
  "-3 dB": "as an instrument has it: 0.707 of the amplitude at the edges, falling off outside (Butterworth)",
});

/** How a band ends: a key of {@link bandEdges}. */
export type BandEdges = keyof typeof bandEdges;

/** The name of an edge rule, if it is one. */
export function requireBandEdges(name: string): BandEdges {
  return requireChoice(name, Object.keys(bandEdges) as BandEdges[], "how the band ends", { parameter: "edges" });
}

function refuse(expected: string, received: string): never {
  throw new VeladisError("out-of-range", { expected, received, parameter: "band" });
}

/**
 * The band, if a signal of this sampling rate and resolution can hold it.
 *
 * @param resolution - spacing of the bins in hertz; 0 when there are none
 * @throws {@link VeladisError} `wrong-type`, `not-a-number`, `not-finite`, or `out-of-range` for a band that is upside
 *   down, begins below the resolution or at zero, or ends above half the sampling rate
 */
export function requireBand(band: Band, rate: number, resolution: number): Band {
  if (!Array.isArray(band) || band.length !== 2) {
    throw new VeladisError("wrong-type", {
      expected: "a band as [low, high] in Hz",
      received: shown(band),
      parameter: "band",
    });
  }
  const low = requireFinite(band[0], "a lower edge of the band, in Hz", { parameter: "band", index: 0 });
  const high = requireFinite(band[1], "an upper edge of the band, in Hz", { parameter: "band", index: 1 });
  const edges = `${low} to ${high} Hz`;
  if (!(low > 0 && low < high)) refuse("a band that begins above 0 Hz and ends higher", edges);
  if (high > (rate / 2) * (1 + 1e-12)) {
    refuse(`a band that ends at or below ${rate / 2} Hz, half the sampling rate`, edges);
  }
  if (low < resolution * (1 - 1e-9)) {
    refuse(
      `a band that begins at or above ${resolution} Hz, the resolution; a longer record (1/${low} s at the least) resolves it`,
      edges,
    );
  }
  return [low, high];
}

/** Tolerance in bins, so that an edge on a bin takes the bin in, whatever the rounding. */
const ON_EDGE = 1e-9;

/**
 * First and last bin of a band: those with `low <= frequency <= high`.
 *
 * @throws {@link VeladisError} `out-of-range` when no bin lies in the band
 */
export function binsOf([low, high]: Band, resolution: number): [first: number, last: number] {
  const first = Math.ceil((low / resolution) * (1 - ON_EDGE));
  const last = Math.floor((high / resolution) * (1 + ON_EDGE));
  if (!(first <= last && Number.isFinite(last)))
    refuse(`a band that holds a bin, at a resolution of ${resolution} Hz`, `${low} to ${high} Hz`);
  return [first, last];
}
