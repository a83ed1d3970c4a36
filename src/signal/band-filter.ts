import type { Band } from "./band";
import { butterworth } from "./butterworth";
import { derivativeTaps, runTaps, TAPS_BACK } from "./derivative-taps";
import { restingState, runSections, type Section } from "./second-order-sections";

/** A causal band-pass that also integrates or differentiates, for blocks of samples one after the other. */
export interface BandFilter {
  /** The second-order sections, integrations included. */
  readonly sections: readonly Section[];
  /** Samples until a transient has died down to a ten-thousandth. */
  readonly settling: number;
  /** Filters the first `count` samples in place, going on from the block before. */
  run(x: Float64Array, count: number): void;
}

/** Below this a state is silence; numbers near the least one would slow the processor a hundredfold. */
const SILENCE = 1e-250;

/** A transient has died down when its slowest part is this small. */
const DIED_DOWN = 1e-4;

/** Samples until the slowest pole has died down. */
function settlingOf(sections: readonly Section[]): number {
  const radius = sections.map(({ a: [a1, a2] }) => {
    const inside = a1 * a1 - 4 * a2;
    return inside < 0 ? Math.sqrt(a2) : (Math.abs(a1) + Math.sqrt(inside)) / 2;
  });
  return Math.ceil(Math.log(DIED_DOWN) / Math.log(Math.max(...radius)));
}

/**
 * Sections with as many zeros at 0 Hz taken out as there are integrations.
 *
 * An integration is a pole at 0 Hz, and a band-pass of order n has n zeros there. Cancelled against one another before
 * anything runs, they leave a filter that integrates within its band and cannot drift.
 */
function integrating(sections: readonly Section[], integrations: number, rate: number): Section[] {
  return sections.map(({ b, a }, i) => {
    if (i >= integrations) return { b, a };
    const gain = b[0] / rate;
    return { b: [gain, gain, 0], a };
  });
}

/** What a filter is made for. */
interface BandFilterSettings {
  readonly band: Band;
  readonly order: number;
  readonly rate: number;
  /** Differentiations, -2 to 2; below zero they are integrations. */
  readonly steps: number;
  /** The most samples that a block has. */
  readonly blockLength: number;
}

/**
 * The filter for a band of a sampling rate.
 */
export function bandFilter({ band, order, rate, steps, blockLength }: BandFilterSettings): BandFilter {
  const plain = butterworth({ kind: "band-pass", order, edges: band, rate });
  const sections = steps < 0 ? integrating(plain, -steps, rate) : plain;
  const state = restingState(sections);
  const taps = steps === 0 ? undefined : derivativeTaps[`${steps as -2 | -1 | 1 | 2}`].taps;
  const line = new Float64Array(blockLength + TAPS_BACK);
  const last = new Float64Array(2);

  const differentiate = (x: Float64Array, count: number, at: number): void => {
    let before = last[at] as number;
    for (let i = 0; i < count; i++) {
      const v = x[i] as number;
      x[i] = rate * (v - before);
      before = v;
    }
    last[at] = before;
  };

  const run = (x: Float64Array, count: number): void => {
    runSections(x, count, sections, state);
    for (let i = 0; i < state.length; i++) if (Math.abs(state[i] as number) < SILENCE) state[i] = 0;
    for (let at = 0; at < steps; at++) differentiate(x, count, at);
    if (taps === undefined) return;
    line.set(count === x.length ? x : x.subarray(0, count), TAPS_BACK);
    runTaps(line, x, count, taps);
  };
  return { sections, settling: settlingOf(plain), run };
}
