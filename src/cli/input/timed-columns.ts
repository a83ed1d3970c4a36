import { VeladisError } from "../../core/index";
import type { UnitSymbol } from "../../units/index";
import { columnsListed } from "../delimited/column-index";
import { requireHeadingAgrees, timeUnitSaid } from "../delimited/heading-agrees";
import { headingSays } from "../delimited/heading-says";
import type { TimeUnitSymbol } from "../delimited/time-units";
import type { WrittenAs } from "../delimited/written-as";
import { maySerial, NO_SECONDS } from "./bare-times";
import { headedColumn } from "./headed-column";

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

/** Where the times and the samples of a row stand, and the unit of times where the heading says one. */
export interface TimedColumns {
  readonly time: number;
  readonly sample: number;
  readonly said: TimeUnitSymbol | undefined;
}

/** The column of times: the one that is told, else the only one that its heading tells. */
function timeIndex(
  header: readonly string[],
  headings: readonly string[],
  time: string | undefined,
  written: WrittenAs,
): number {
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
 * The columns of a record with its own times.
 *
 * @throws {@link VeladisError} for columns that are not told, and headings that contradict what is
 */
export function timedColumns(
  header: readonly string[],
  headings: readonly string[],
  { column, time: told, written, unit, waveform }: TimedSettings,
): TimedColumns {
  const time = timeIndex(header, headings, told, written);
  const sample = sampleIndex(header, column, time, written);
  const isWaveform = waveform ? ("told" as const) : ("taken" as const);
  requireHeadingAgrees(headings, sample, { by: `--unit ${unit}`, unit, isWaveform }, written);
  return { time, sample, said: timeUnitSaid(headings, time, undefined, written) };
}

/**
 * Refuses bare times that may be another thing than seconds, where their heading does not say.
 *
 * @throws {@link VeladisError} `missing-option`
 */
export function requireTimeUnit(said: TimeUnitSymbol | undefined, first: number, last: number): void {
  const isSerial = maySerial(first) && maySerial(last);
  if (said !== undefined || !(isSerial || first >= NO_SECONDS)) return;
  throw new VeladisError("missing-option", {
    expected: "the unit of the times in their heading, as in time [s]",
    received: `${first}, which may be ${isSerial ? "the serial date of a spreadsheet" : "milliseconds, or the digits of a date"}`,
  });
}
