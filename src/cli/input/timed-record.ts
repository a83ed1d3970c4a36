import type { Readable } from "node:stream";
import { VeladisError } from "../../core/index";
import type { EvenTimes } from "./even-times";
import { resampled } from "./resampled";
import { type TimedSamples, type TimedSettings, timedSamples } from "./timed-samples";

/** A record whose times say its rate. */
export interface TimedRecord {
  readonly samples: Float64Array;
  readonly rate: number;
  readonly told: TimedSamples;
  /** What became of the times, in words. */
  readonly how: string;
  /** The highest frequency that may be read of it, where its samples were moved to even times. */
  readonly highest?: number;
}

/** How far a rate that is told may lie from that of the times. */
const SHARE = 0.01;
/** Of the rate that the longest step stands for; up to here a cubic spline keeps tones within 1 %. */
const PART = 0.2;

function short(value: number): string {
  return String(Number(value.toPrecision(4)));
}

function steps({ shortest, longest }: EvenTimes): string {
  return `steps of ${short(shortest)} to ${short(longest)} s`;
}

/**
 * A record from a file with a column of times: as it is where they are even, by a spline at even times where that is asked.
 *
 * @param rate - samples a second as they are told; undefined where the times alone say it
 * @throws {@link VeladisError} `unknown-option` for a rate that the times contradict, `out-of-range` for uneven times that
 *   are not to be made even
 */
export async function timedRecord(
  stream: Readable,
  settings: TimedSettings,
  { rate, resample }: { readonly rate: number | undefined; readonly resample: boolean },
): Promise<TimedRecord> {
  const told = await timedSamples(stream, settings);
  const { samples, times, even } = told;
  if (rate !== undefined && !(Math.abs(even.rate / rate - 1) <= SHARE)) {
    throw new VeladisError("unknown-option", {
      expected: "a rate as the times of the file say it, within 1 %, or none, so that they say it alone",
      received: `--rate ${rate}, and times with ${short(even.rate)} samples a second`,
    });
  }
  if (even.farthest <= even.room) {
    const off = `each within ${short(100 * even.farthest * even.rate)} % of a step of even`;
    const nothing = resample ? "; they are even, so nothing was resampled" : "";
    return { samples, rate: rate ?? nearWhole(even), told, how: `times of the file: ${off}${nothing}` };
  }
  if (!resample) {
    throw new VeladisError("out-of-range", {
      expected: `evenly spaced times, each within ${short(even.room)} s of its place; --resample takes samples at even times from a cubic spline through them`,
      received: `sample ${even.index + 1} off by ${short(even.farthest)} s: ${steps(even)}`,
    });
  }
  const highest = PART / even.longest;
  return {
    samples: resampled(times, samples),
    rate: even.rate,
    told,
    how: `resampled to even times by a cubic spline: ${steps(even)}, good to ${short(highest)} Hz`,
    highest,
  };
}

/** The rate that even times say: the whole number that lies within what their last digit leaves open. */
function nearWhole({ rate, room }: EvenTimes): number {
  const whole = Math.round(rate);
  return whole > 0 && Math.abs(whole / rate - 1) <= Math.min(1e-3, room * rate * 1e-3) ? whole : rate;
}
