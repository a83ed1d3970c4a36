import { same, shown, VeladisError } from "../../core/index";
import type { Detector } from "../../detectors/index";
import type { FrequencyUnitSymbol } from "../../frequency/index";
import { parsedType, type ReadingType } from "../../reading/index";
import { type UnitSymbol, units } from "../../units/index";
import { headingSays, type Said } from "./heading-says";
import { isSameSignal, signalUnitsIn } from "./heading-spellings";
import type { TimeUnitSymbol } from "./time-units";
import type { WrittenAs } from "./written-as";

/** What is told of the numbers in a column. */
export interface ColumnTold {
  /** What tells it, e.g. `--from "mm/s rms"`. */
  readonly by: string;
  readonly unit?: UnitSymbol;
  /** Left out where it is not told, or stands in a column of its own. */
  readonly detector?: Detector;
  /** Decibels with their reference, in the place of a unit. */
  readonly level?: ReadingType;
  readonly frequency?: FrequencyUnitSymbol;
  /** The unit of a signal, such as mV or mA. */
  readonly signal?: string;
  /** Whether they are times. */
  readonly isTime?: true;
  /** Whether they are samples of a waveform, which have no detector: as the command takes them, or told by `--waveform`. */
  readonly isWaveform?: "taken" | "told";
}

/** What a reading type tells of a column. */
export function typeTold(by: string, type: string): ColumnTold {
  const { type: whole, unit, detector, reference } = parsedType(type);
  return reference > 0 ? { by, level: whole } : { by, unit, detector };
}

/** Units of time that are as often the lowest of some readings (min), a direction or a letter. */
const unsure: readonly TimeUnitSymbol[] = ["min", "h", "d"];

/** Whether two types of levels have one reference: 1 nm/s is 1e-9 m/s. */
function isSameLevel(a: string, b: string): boolean {
  const [one, other] = [parsedType(a), parsedType(b)];
  return (
    one.quantity === other.quantity &&
    same((one.reference * one.num) / one.den, (other.reference * other.num) / other.den)
  );
}

/** Whether what is told is another quantity than a word names; nobody measures times or speeds in one. */
function quantityDiffers({ unit, level, frequency, isTime }: ColumnTold, { quantity }: Said): boolean {
  if (quantity === undefined || frequency !== undefined) return false;
  if (isTime || level !== undefined) return level === undefined || parsedType(level).quantity !== quantity;
  return unit !== undefined && units[unit].quantity !== quantity;
}

function unitDiffers(told: ColumnTold, said: Said): boolean {
  const { written, unit, level, frequency, time, signal, axis } = said;
  if (signal !== undefined) return told.signal === undefined || !isSameSignal(signal, told.signal);
  if (told.signal !== undefined && (unit ?? level) !== undefined) return true;
  if (said.overTime) return told.isWaveform === "taken";
  if (axis !== undefined)
    return axis !== (told.isTime ? "time" : told.frequency === undefined ? undefined : "frequency");
  if (told.isTime) return unit !== undefined || level !== undefined || frequency !== undefined;
  if (told.frequency !== undefined) {
    const isRate = unit !== undefined && written.includes("/");
    return isRate || level !== undefined || (frequency !== undefined && frequency !== told.frequency);
  }
  if (frequency !== undefined || (time !== undefined && !unsure.includes(time))) return true;
  if (told.level !== undefined)
    return unit !== undefined || (level !== undefined && level !== "dB" && !isSameLevel(level, told.level));
  return level !== undefined || (unit !== undefined && unit !== told.unit);
}

function detectorDiffers(told: ColumnTold, { detector }: Said): boolean {
  if (told.isWaveform) return told.isWaveform === "taken" && detector !== undefined;
  const wanted = told.level === undefined ? told.detector : "rms";
  if (wanted === undefined || detector === undefined || detector === wanted) return false;
  // a heading seldom says how a peak was found
  return !(wanted === "true pk" && detector === "pk");
}

/** The first of these where all differ: of several that are named, one that agrees is enough. */
function allDiffer(named: readonly Said[], differs: (one: Said) => boolean): Said | undefined {
  return named.every(differs) ? named[0] : undefined;
}

/** The first of these that what is told contradicts; of detectors and of quantities where all do. */
export function contradicted(told: ColumnTold, says: readonly Said[]): Said | undefined {
  return (
    says.find((one) => unitDiffers(told, one)) ??
    allDiffer(
      says.filter(({ detector }) => detector !== undefined),
      (one) => detectorDiffers(told, one),
    ) ??
    allDiffer(
      says.filter(({ quantity }) => quantity !== undefined),
      (one) => quantityDiffers(told, one),
    )
  );
}

/** The unit of another signal in the heading of a column of signals, where all that it names are others. */
function otherSignal({ signal }: ColumnTold, heading: string): Said | undefined {
  if (signal === undefined) return undefined;
  const named = signalUnitsIn(heading).map((written) => ({ written, signal: written }));
  return allDiffer(named, (one) => !isSameSignal(one.written, signal));
}

/** The error for a heading that says something else than what was told. */
export function headingRefused(by: string, { written }: Said, heading: string, index: number): VeladisError {
  const says = written === heading.trim() ? "" : `, which says ${shown(written)}`;
  return new VeladisError("unknown-option", {
    expected: "what is told as the heading of the column says it, or --file-units none where the heading is wrong",
    received: `${by}, and the heading ${shown(heading.trim())} of column ${index + 1}${says}`,
  });
}

/** What a file of samples holds, and where to go with another. */
const SAMPLES =
  "samples of the waveform in the unit that is told, one instant a row; levels are for veladis table or veladis judge, " +
  "a trend of them for veladis setpoints, a spectrum is for bandOverall of veladis/signal; ";

/**
 * Refuses a column whose heading contradicts what is told of it.
 *
 * @throws {@link VeladisError} `unknown-option` with both
 */
export function requireHeadingAgrees(
  header: readonly string[],
  index: number,
  told: ColumnTold,
  { fileUnits }: WrittenAs,
): void {
  if (fileUnits === "none") return;
  const heading = header[index] as string;
  const other = contradicted(told, headingSays(heading)) ?? otherSignal(told, heading);
  if (other === undefined) return;
  const { unit, detector, level, frequency, time, axis, overTime } = other;
  const isNoSample = (detector ?? level ?? frequency ?? time ?? axis ?? overTime) !== undefined;
  if (!told.isWaveform || !isNoSample) throw headingRefused(told.by, other, heading, index);
  const { received } = headingRefused(told.by, other, heading, index);
  const maySample = overTime === true || (detector !== undefined && (unit === undefined || unit === told.unit));
  const howToTell = maySample
    ? "--waveform where they are samples all the same"
    : "--file-units none where the heading is wrong";
  throw new VeladisError("unknown-option", { expected: SAMPLES + howToTell, received });
}

/**
 * The unit of time that the heading of a column of times says, where it says one.
 *
 * @param asked - what tells how times are written, and the unit that it means; left out where nothing does
 * @throws {@link VeladisError} `unknown-option` for a heading of another kind, or of another unit than was told
 */
export function timeUnitSaid(
  header: readonly string[],
  index: number,
  asked: { readonly by: string; readonly unit: TimeUnitSymbol } | undefined,
  { fileUnits }: WrittenAs,
): TimeUnitSymbol | undefined {
  if (fileUnits === "none") return undefined;
  const heading = header[index] as string;
  const says = headingSays(heading);
  const other = contradicted({ by: "", isTime: true }, says);
  if (other !== undefined) throw headingRefused("a column of times", other, heading, index);
  const times = says.filter(({ time }) => time !== undefined);
  const unit = asked?.unit ?? times[0]?.time;
  const differs = times.find(({ time }) => time !== unit);
  if (differs !== undefined) throw headingRefused(asked?.by ?? "one unit of time", differs, heading, index);
  return unit;
}
