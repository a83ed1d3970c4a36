import { VeladisError } from "../../core/index";
import type { RowsReader } from "../delimited/rows-reader";
import { secondsIn } from "../delimited/time-units";
import type { SamplesTold } from "./csv-samples";
import { type EvenTimes, evenTimes, lastDigit } from "./even-times";
import { levelCell, takeTime } from "./level-cell";
import { readSeries } from "./read-series";
import { TimeColumn } from "./time-column";
import { requireTimeUnit, type TimedColumns, type TimedSettings, timedColumns } from "./timed-columns";

/** A record with its own times. */
export interface TimedSamples extends SamplesTold {
  readonly samples: Float64Array;
  /** In seconds from the first. */
  readonly times: Float64Array;
  readonly even: EvenTimes;
  /** Whether they are bare numbers whose heading says no unit, so that they are taken as seconds. */
  readonly taken: boolean;
}

/** The longest record that is held with its times, in samples. */
const LONGEST = 2 ** 24;

/**
 * The samples of a column with their times, held whole.
 *
 * @param longest - the most samples that are held
 * @throws {@link VeladisError} for cells that are no sample or no time, all told together, for times that fall, stand still
 *   or may mean two things, and for columns that are not told
 */
export async function timedSamples(
  rows: RowsReader,
  settings: TimedSettings,
  longest: number = LONGEST,
): Promise<TimedSamples> {
  const { file, written, scale } = settings;
  const { decimalComma } = written;
  const samples: number[] = [];
  let columns: TimedColumns = { time: 0, sample: 1, said: undefined };
  let times = new TimeColumn(undefined, decimalComma);
  let digit = Number.POSITIVE_INFINITY;
  const series = await readSeries(
    rows,
    { file, written, skipBad: { cannot: "none can be left out" } },
    {
      what: "a time and a sample",
      overRange: "over range is a signal beyond what can be read: the record is clipped",
      header(cells, headings) {
        columns = timedColumns(cells, headings, settings);
        times = new TimeColumn(undefined, decimalComma, columns.said ?? "s");
      },
      row(cells, line) {
        const sample = levelCell(cells[columns.sample] as string, decimalComma);
        if (typeof sample !== "number") return sample;
        const cell = cells[columns.time] as string;
        const unread = takeTime(cell, () => times.add(cell, line));
        if (unread !== undefined) return unread;
        digit = Math.min(digit, lastDigit(cell, decimalComma));
        if (samples.length === longest) {
          throw new VeladisError("out-of-range", {
            expected: `a record of at most ${longest} samples where it is piped in, resampled, or has times of day; even times of a file, in seconds or dates that begin with the year, are read at any length`,
            received: "a longer one",
          });
        }
        samples.push(sample * scale);
        return undefined;
      },
    },
  );
  const read = times.read();
  const isBare = read.told.as === "seconds";
  const { seconds: begin = 0 } = read.begins ?? {};
  const last = begin + (read.times.at(-1) as number);
  if (isBare) requireTimeUnit(columns.said, begin, last);
  return {
    samples: Float64Array.from(samples),
    times: read.times,
    even: evenTimes(read.times, isBare ? secondsIn(columns.said ?? "s", digit) : 0),
    taken: isBare && columns.said === undefined,
    account: series.account,
    counts: series.counts,
  };
}
