import { type SignalSource, wayOfSignal } from "../../amplitude/index";
import { parseNumeral, shown, VeladisError } from "../../core/index";
import type { Amplitude } from "../../reading/index";
import { type Baseline, baseline, type ModesOptions } from "../../setpoints/index";
import { writtenAs } from "../delimited/written-as";
import { csvLevels } from "../input/csv-levels";
import type { Io } from "../input/io";
import { levelCell } from "../input/level-cell";
import { type LongestGap, longestGap } from "../input/longest-gap";
import { inputStream, namedFile } from "../input/open-file";
import type { SeriesTold } from "../input/series-told";
import { signalColumn } from "../input/signal-column";
import type { ParsedOptions } from "../options/option-row";
import { requireOption } from "../options/option-values";
import { signalSource, vibrationOf } from "../options/signal-options";
import type { setpointsPage } from "./setpoints-page";

type GivenMachine = ParsedOptions<typeof setpointsPage.options>;

/** Options of a file of readings that stand beside one. */
const ofFile = ["modes", "mode"] as const;

/** Different numbers of a column up to which they may be the names of modes. */
const MOST_NAMES = 6;

/** Refuses a word among measured numbers: as names each number would be a mode by itself, too few to be compared. */
function requireNumbersAlone(cells: readonly string[], numbers: readonly unknown[]): void {
  const found = numbers.filter((one) => typeof one === "number");
  if (found.length === cells.length || found.length * 2 <= cells.length || new Set(found).size <= MOST_NAMES) return;
  throw new VeladisError("not-a-number", {
    expected: "a number for each mode where most are numbers: leave such rows out, or give all of them names",
    received: shown(cells[numbers.findIndex((one) => typeof one !== "number")]),
    option: "modes",
  });
}

/** The operating modes of a column: numbers where all of its cells are. */
function modesOf(cells: readonly string[], only: string | undefined, decimalComma: boolean): ModesOptions {
  const numbers = cells.map((cell) => levelCell(cell, decimalComma));
  requireNumbersAlone(cells, numbers);
  const readings = numbers.every((one) => typeof one === "number") ? numbers : cells;
  return { readings, ...(only !== undefined && { only }) };
}

/** The baseline that is told, or that of a file with what is told of its rows. */
export interface KnownBaseline {
  readonly known: Baseline | string | Amplitude;
  readonly read?: SeriesTold;
  readonly gap?: LongestGap;
}

/** That of sensor and loop which reads a file in such a signal; else they tell the setpoints alone. */
function sourceOf(from: string, values: GivenMachine["values"]): SignalSource {
  const way = wayOfSignal(`12 ${from}`);
  const told = way && values[way];
  return way === undefined || told === undefined ? {} : { [way]: told };
}

/** The baseline of a file, or the one reading that is told. */
export async function baselineFrom(given: GivenMachine, io: Io): Promise<KnownBaseline> {
  const { values } = given;
  const { file, times: timesAs } = values;
  const beside = ofFile.find((name) => values[name] !== undefined);
  if (beside !== undefined && (file === undefined || values.modes === undefined))
    throw new VeladisError("missing-option", {
      expected: file === undefined ? `--file beside --${beside}` : "--modes, the column of the modes, beside --mode",
      received: `--${beside} ${shown(values[beside])}`,
      option: beside,
    });
  if (file === undefined) return { known: vibrationOf(requireOption(given, "baseline"), signalSource(values)) };
  const written = requireOption(given, "from");
  const source = sourceOf(written, values);
  const as = signalColumn(written, source)?.type ?? written;
  const first = values["start-up"];
  const timed = first !== undefined || values.time !== undefined;
  if (!timed && timesAs !== undefined) {
    throw new VeladisError("missing-option", {
      expected: "--time or --start-up beside --times: without them no times are read",
      received: "--times alone",
    });
  }
  const from = first === undefined ? 0 : parseNumeral(first, "the end of start-up in s");
  const stream = await inputStream(io, file);
  if (stream === undefined) {
    throw new VeladisError("missing-option", {
      expected: "readings that are piped in, for --file -",
      received: "nothing",
    });
  }
  const { levels, times, modes, told } = await csvLevels(stream, {
    file: namedFile(file) ?? "standard input",
    from: written,
    source,
    written: writtenAs(values),
    skipBad: values["skip-bad"] ? "given" : "not given",
    column: values.column,
    mode: values.modes,
    faults: "never",
    timed,
    time: values.time,
    ...(timesAs !== undefined && { times: timesAs }),
  });
  const known = baseline(levels, {
    as,
    ...(first !== undefined && { time: { readings: times, start: from } }),
    ...(values.modes !== undefined && { modes: modesOf(modes, values.mode, values["decimal-comma"]) }),
  });
  const gap = timed ? longestGap(times) : undefined;
  return { known, read: told, ...(gap !== undefined && { gap }) };
}
