import { basename } from "node:path";
import { parseNumeral, VeladisError } from "../../core/index";
import type { TripSettings } from "../../device/index";
import { frequency } from "../../frequency/index";
import { type LevelGaps, levelGaps } from "../../trip/index";
import { type CsvLevels, csvLevels } from "../input/csv-levels";
import type { Io } from "../input/io";
import { inputStream, namedFile } from "../input/open-file";
import { type SignalColumn, signalColumn } from "../input/signal-column";
import { requireOption } from "../options/option-values";
import { signalSource } from "../options/signal-options";
import { type GivenHistory, longestGapOf, seriesSettings } from "./simulate-settings";

/** A recorded history as it was read. */
export interface HistoryFile {
  readonly name: string;
  readonly history: CsvLevels;
  /** The time between levels in s, or the time of each. */
  readonly dt: number | Float64Array;
}

/** Whether cells without a level are sensor faults. */
export const hasFaults = ({ values }: GivenHistory): boolean => values["sensor-fault"] !== undefined;

/**
 * The levels of the file, or of what is piped.
 *
 * @param column - that of the levels, as it was told; those of further channels are `others`
 */
export async function historyFile(
  given: GivenHistory,
  io: Io,
  { column, others }: { readonly column: string | undefined; readonly others?: readonly string[] },
): Promise<HistoryFile> {
  const { values } = given;
  const every = values.every === undefined ? undefined : parseNumeral(values.every, "a time between levels in s");
  const file = namedFile(values.file);
  const stream = await inputStream(io, file);
  if (stream === undefined) {
    throw new VeladisError("missing-option", {
      expected: "--file with a CSV of time and level, or piped CSV",
      received: "nothing",
    });
  }
  const name = file === undefined ? "standard input" : basename(file);
  const history = await csvLevels(stream, {
    file: name,
    from: requireOption(given, "from"),
    source: signalSource(values),
    ...seriesSettings(given),
    column,
    others,
    faults: !hasFaults(given) ? "none" : values["sensor-fault"] === "alarm" ? "said or over range" : "said",
    even: every === undefined ? undefined : { by: `--every ${values.every}`, seconds: every },
    timed: values.every === undefined,
    time: values.time,
  });
  return { name, history, dt: every ?? history.times };
}

/** How the levels become vibrations, where they are a signal. */
function signalOf(given: GivenHistory): SignalColumn | undefined {
  return signalColumn(requireOption(given, "from"), signalSource(given.values));
}

/** What the levels of a history are written in, for those who run it. */
export function writtenOf(given: GivenHistory) {
  const { at } = given.values;
  return {
    as: signalOf(given)?.type ?? requireOption(given, "from"),
    ...(at !== undefined && { at: frequency(at) }),
    ...(hasFaults(given) && { nan: "sensor fault" as const }),
  };
}

/** The same in words, with how levels follow one another. */
export function levelsText(given: GivenHistory): string {
  const { from, at, every } = given.values;
  const beside = at === undefined ? "" : ` at ${at}`;
  return `in ${signalOf(given)?.words ?? from}${beside}; each stands ${every === undefined ? "until the next" : `for ${every} s`}`;
}

/** The gaps between levels that have times; undefined for those that are evenly spaced. */
export function gapsOf(
  given: GivenHistory,
  settings: TripSettings,
  levels: Float64Array,
  times: Float64Array,
): LevelGaps | undefined {
  if (given.values.every !== undefined) return undefined;
  const longest = longestGapOf(given);
  return levelGaps(settings, levels, times, { ...writtenOf(given), ...(longest !== undefined && { longest }) });
}
