import { VeladisError } from "../../core/index";
import type { RowsReader } from "../delimited/rows-reader";
import { csvSamples, type SamplesTold } from "./csv-samples";
import type { EvenTimes } from "./even-times";
import { resampled } from "./resampled";
import { steadyTimes } from "./steady-times";
import type { TimedSettings } from "./timed-columns";
import { timedSamples } from "./timed-samples";

/** A record whose times say its rate. */
export interface TimedRecord {
  readonly chunks: AsyncGenerator<Float64Array>;
  readonly rate: number;
  /** What became of the rows, when all samples are taken. */
  told(): SamplesTold | undefined;
  /** What became of the times, in words. */
  readonly how: string;
  /** The highest frequency that may be read of it, where its samples were moved to even times. */
  readonly highest?: number;
}

/** What is told of the times. */
export interface TimesAsked {
  /** Samples a second as they are told; undefined where the times alone say it. */
  readonly rate: number | undefined;
  readonly resample: boolean;
  /** Whether the rows can be read a second time. */
  readonly again: boolean;
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

/** One portion, as a stream of them. */
async function* portion(samples: Float64Array): AsyncGenerator<Float64Array> {
  yield samples;
}

function requireRateOf({ rate: said }: EvenTimes, rate: number | undefined): void {
  if (rate === undefined || Math.abs(said / rate - 1) <= SHARE) return;
  throw new VeladisError("unknown-option", {
    expected: "a rate as the times of the file say it, within 1 %, or none, so that they say it alone",
    received: `--rate ${rate}, and times with ${short(said)} samples a second`,
  });
}

/** A step of more than this many median ones is a hole, where a spline only makes up what was: common practice, no source. */
const HOLE = 4;

/** Refuses to resample across a hole in the times. */
function requireNoGap(times: Float64Array): void {
  const steps = times.subarray(1).map((time, i) => time - (times[i] as number));
  const median = Float64Array.from(steps).sort()[steps.length >> 1] as number;
  const at = steps.findIndex((step) => step > HOLE * median);
  if (at < 0) return;
  throw new VeladisError("out-of-range", {
    expected: `times for --resample without a hole of more than ${HOLE} median steps of ${short(median)} s: a spline would make up what vibrated there`,
    received: `${short(steps[at] as number)} s behind sample ${at + 1}, ${short(times[at] as number)} s from the first`,
  });
}

/** The rate that even times say: the whole number that lies within what their last digit leaves open. */
function nearWhole({ rate, room }: EvenTimes): number {
  const whole = Math.round(rate);
  return whole > 0 && Math.abs(whole / rate - 1) <= Math.min(1e-3, room * rate * 1e-3) ? whole : rate;
}

function isEven({ farthest, room }: EvenTimes): boolean {
  return farthest <= room;
}

/** What even times are, in words. */
function evenText(even: EvenTimes, taken: boolean, resample: boolean): string {
  const off = `each within ${short(100 * even.farthest * even.rate)} % of a step of even`;
  const unit = taken ? ", taken as seconds, which the heading does not say" : "";
  return `times of the file${unit}: ${off}${resample ? "; they are even, so nothing was resampled" : ""}`;
}

/** A record whose times are read first and its samples after them, so that it may be of any length. */
async function streamed(rows: RowsReader, settings: TimedSettings, rate: number | undefined) {
  const times = await steadyTimes(rows, settings);
  if (times === undefined) return undefined;
  const { even, columns, taken } = times;
  requireRateOf(even, rate);
  if (!isEven(even)) throw uneven(even);
  const { file, written, scale, unit, waveform } = settings;
  const used = rate ?? nearWhole(even);
  let told: SamplesTold | undefined;
  const spacing = { by: "the column of times", seconds: 1 / used, sampled: true } as const;
  const column = columns.sample;
  const chunks = csvSamples(rows, { file, written, headed: true, column, scale, unit, spacing, waveform }, (all) => {
    if (all.counts.answered !== even.count) {
      throw new VeladisError("unreadable", {
        expected: `${even.count} samples, as there were times`,
        received: `${all.counts.answered}: ${file} was changed while it was read`,
      });
    }
    told = all;
  });
  return { chunks, rate: used, told: () => told, how: evenText(even, taken, false) };
}

function uneven(even: EvenTimes): VeladisError {
  return new VeladisError("out-of-range", {
    expected: `evenly spaced times, each within ${short(even.room)} s of its place; --resample takes samples at even times from a cubic spline through them`,
    received: `sample ${even.index + 1} off by ${short(even.farthest)} s: ${steps(even)}`,
  });
}

/**
 * A record from a file with a column of times: as it is where they are even, by a spline at even times where that is asked.
 *
 * @throws {@link VeladisError} `unknown-option` for a rate that the times contradict, `out-of-range` for uneven times that
 *   are not to be made even
 */
export async function timedRecord(
  rows: RowsReader,
  settings: TimedSettings,
  { rate, resample, again }: TimesAsked,
): Promise<TimedRecord> {
  const long = again && !resample ? await streamed(rows, settings, rate) : undefined;
  if (long !== undefined) return long;
  const read = await timedSamples(rows, settings);
  const { samples, times, even, taken } = read;
  requireRateOf(even, rate);
  const told = () => read;
  if (isEven(even)) {
    return { chunks: portion(samples), rate: rate ?? nearWhole(even), told, how: evenText(even, taken, resample) };
  }
  if (!resample) throw uneven(even);
  requireNoGap(times);
  const highest = PART / even.longest;
  const unit = taken ? "; times taken as seconds, which the heading does not say" : "";
  return {
    chunks: portion(resampled(times, samples)),
    rate: even.rate,
    told,
    how: `resampled to even times by a cubic spline: ${steps(even)}, good to ${short(highest)} Hz; what vibrates above that is not taken off and leaks into the lines below${unit}`,
    highest,
  };
}
