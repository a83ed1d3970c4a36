import { basename } from "node:path";
import { parseNumeral, VeladisError } from "../../core/index";
import { type CsvLevels, csvLevels } from "../input/csv-levels";
import type { Io } from "../input/io";
import { inputStream, namedFile } from "../input/open-file";
import { requireOption } from "../options/option-values";
import { type GivenHistory, seriesSettings } from "./simulate-settings";

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
