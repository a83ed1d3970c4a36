import type { Readable } from "node:stream";
import { VeladisError } from "../../core/index";
import type { UnitSymbol } from "../../units/index";
import { columnsListed } from "../delimited/column-index";
import { requireHeadingAgrees, timeUnitSaid } from "../delimited/heading-agrees";
import { headingSays } from "../delimited/heading-says";
import { secondsIn, type TimeUnitSymbol } from "../delimited/time-units";
import type { WrittenAs } from "../delimited/written-as";
import type { SamplesTold } from "./csv-samples";
import { type EvenTimes, evenTimes, lastDigit } from "./even-times";
import { headedColumn } from "./headed-column";
import { cellShown, levelCell } from "./level-cell";
import { readSeries } from "./read-series";
import { TimeColumn } from "./time-column";

/** How a record with its own times is to be read. */
export interface TimedSettings {
  readonly file: string;
  readonly written: WrittenAs;
  /** Name or number of the column of samples, and of that of times. */
  readonly column: string | undefined;
  readonly time: string | undefined;
  readonly scale: number;
  readonly unit: UnitSymbol;
  readonly waveform: boolean;
}

/** A record with its own times. */
export interface TimedSamples extends SamplesTold {
  readonly samples: Float64Array;
  /** In seconds from the first. */
  readonly times: Float64Array;
  readonly even: EvenTimes;
}

/** The longest record that is held with its times, in samples. */
const LONGEST = 2 ** 25;

/** The column of times: the one that is told, else the only one that its heading tells. */
function timeIndex(
  header: readonly string[],
  headings: readonly string[],
  time: string | undefined,
  written: WrittenAs,
) {
  if (time !== undefined) return headedColumn(header, time, written);
  const found = headings.flatMap((heading, i) => {
    const says = headingSays(heading);
    const isTime = says.some((said) => said.time !== undefined || said.axis === "time");
    return isTime && !says.some(({ unit, frequency }) => unit !== undefined || frequency !== undefined) ? [i] : [];
  });
  if (found.length === 1) return found[0] as number;
  throw new VeladisError("missing-option", {
    expected: "--rate such as 25600: sampling rate in Hz, or --time, the column of times that says it",
    received: found.length === 0 ? "no column that its heading tells to be of times" : `${found.length} of them`,
    allowed: columnsListed(header),
  });
}

/** The column of samples: the one that is told, else the only other one. */
function sampleIndex(header: readonly string[], column: string | undefined, time: number, written: WrittenAs): number {
  if (column !== undefined) {
    const index = headedColumn(header, column, written);
    if (index !== time) return index;
  }
  const others = header.flatMap((_, i) => (i === time ? [] : [i]));
  if (column === undefined && others.length === 1) return others[0] as number;
  throw new VeladisError("missing-option", {
    expected: "which of the columns holds the samples, as in --column acceleration",
    received: column === undefined ? `${others.length} columns beside that of times` : "that of times",
    allowed: columnsListed(header),
  });
}

/**
 * The samples of a column with their times, held whole.
 *
 * @throws {@link VeladisError} for cells that are no sample or no time, all told together, for times that fall, stand still
 *   or may mean two things, and for columns that are not told
 */
export async function timedSamples(stream: Readable, settings: TimedSettings): Promise<TimedSamples> {
  const { file, written, scale, unit, waveform } = settings;
  const { decimalComma } = written;
  const samples: number[] = [];
  let at = { time: 0, sample: 1 };
  let said: TimeUnitSymbol | undefined;
  let times = new TimeColumn(undefined, decimalComma);
  let digit = Number.POSITIVE_INFINITY;
  const series = await readSeries(
    stream,
    { file, written, skipBad: { cannot: "none can be left out" } },
    {
      what: "a time and a sample",
      overRange: "over range is a signal beyond what can be read: the record is clipped",
      header(cells, headings) {
        const time = timeIndex(cells, headings, settings.time, written);
        at = { time, sample: sampleIndex(cells, settings.column, time, written) };
        const told = { by: `--unit ${unit}`, unit, isWaveform: waveform ? ("told" as const) : ("taken" as const) };
        requireHeadingAgrees(headings, at.sample, told, written);
        said = timeUnitSaid(headings, time, undefined, written);
        times = new TimeColumn(undefined, decimalComma, said);
      },
      row(cells, line) {
        const sample = levelCell(cells[at.sample] as string, decimalComma);
        if (typeof sample !== "number") return sample;
        const cell = cells[at.time] as string;
        try {
          times.add(cell, line);
        } catch (error) {
          if (!(error instanceof VeladisError)) throw error;
          return { what: `time ${cellShown(cell.trim())}`, expected: error.expected };
        }
        digit = Math.min(digit, lastDigit(cell, decimalComma));
        if (samples.length === LONGEST) {
          throw new VeladisError("out-of-range", {
            expected: `a record of at most ${LONGEST} samples where times are read; --rate streams any length`,
            received: "a longer one",
          });
        }
        samples.push(sample * scale);
        return undefined;
      },
    },
  );
  const read = times.read();
  const written_ = read.told.as === "seconds" ? secondsIn(said ?? "s", digit) : 0;
  return {
    samples: Float64Array.from(samples),
    times: read.times,
    even: evenTimes(read.times, written_),
    account: series.account,
    counts: series.counts,
  };
}
