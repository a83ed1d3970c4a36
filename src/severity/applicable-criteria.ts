import { VeladisError } from "../core/index";
import { type Detector, detectors, suits } from "../detectors/index";
import type { Amplitude } from "../reading/index";
import { quantities } from "../units/index";
import { criterionType } from "./criterion-type";
import type { Interval } from "./interval";
import type { FactValue, KnownFacts } from "./machine";
import { forTruePeak } from "./peak-meaning";
import type { PlacedMachine } from "./placed-machine";
import type { Criterion } from "./scheme";
import { verdict } from "./verdict";

/**
 * How a criterion judges its reading: as it is, or as the least or the most that the vibration can be in the
 * criterion's quantity while nothing of it lies below running speed.
 */
export type Bound = "exact" | "least" | "most";

/** A criterion, and the reading that it judges. */
export interface Applicable {
  readonly criterion: Criterion;
  readonly reading: Amplitude;
  readonly bound: Bound;
  /** The running frequency by which the reading is carried to the criterion, where it is a bound. */
  readonly hertz?: number;
  /** The crest factor by which an RMS reading is carried to a limit in true peak, where none was stated. */
  readonly crestFactor?: number;
}

/** A criterion that could not be applied, with the reason. */
export interface Unjudged {
  readonly as: string;
  readonly because: string;
}

/** The reading to judge by a criterion: of its quantity, of its detector, or else one whose frequency is known. */
function bestReading(criterion: Criterion, readings: readonly Amplitude[]): Amplitude {
  const { quantity, detector } = criterionType(criterion);
  const score = (one: Amplitude): number =>
    (one.quantity === quantity ? 8 : one.hertz !== undefined ? 4 : 0) + suits(detector, one.detector);
  return readings.reduce((best, one) => (score(one) > score(best) ? one : best));
}

/** Whether a criterion applies to the machine; undefined when that is not known. */
export function applies({ when }: Criterion, known: KnownFacts): boolean | undefined {
  if (when?.speed === undefined) return true;
  const found = verdict(when as { speed: Interval }, "speed", known);
  return found === "unknown" ? undefined : found === "met";
}

/** The lowest running frequency that is possible, in hertz. */
function lowestRunning(speed: FactValue | undefined): number | undefined {
  if (speed === undefined) return undefined;
  return (typeof speed === "number" ? speed : (speed[0] as number)) / 60;
}

/** How a criterion judges a reading, or why it cannot. */
function judgedAs(
  criterion: Criterion,
  reading: Amplitude,
  { speed }: KnownFacts,
  crestFactor: number | undefined,
): Applicable | string {
  const { quantity, detector } = criterionType(criterion);
  const isOfWaveform = (one: Detector): boolean => detectors[one as "true pk"].ofWaveform === true;
  const isUnrelated = detector !== reading.detector && (isOfWaveform(detector) || isOfWaveform(reading.detector));
  if (reading.quantity === quantity) {
    if (!isUnrelated || (crestFactor ?? reading.crestFactor) !== undefined)
      return { criterion, reading, bound: "exact" };
    // a sine has the lowest crests that vibration is known to have
    // no smaller than the peak as of a sine: judged as it stands it is on the safe side
    if (reading.detector === "true pk" && detector === "pk")
      return { criterion: forTruePeak(criterion), reading, bound: "exact" };
    if (reading.detector === "rms") return { criterion, reading, bound: "least", crestFactor: Math.SQRT2 };
    return "a true peak is related to other values by its crest factor alone";
  }
  if (isOfWaveform(detector) || isOfWaveform(reading.detector)) {
    return "a true peak cannot be carried to another quantity";
  }
  if (crestFactor !== undefined || reading.crestFactor !== undefined) {
    return "a crest factor cannot be carried to another quantity";
  }
  if (reading.hertz !== undefined) return { criterion, reading, bound: "exact" };
  const hertz = lowestRunning(speed);
  if (hertz === undefined) return `needs the frequency of the ${reading.quantity}, or the running speed`;
  return { criterion, reading, bound: quantities[quantity] > quantities[reading.quantity] ? "least" : "most", hertz };
}

/**
 * The criteria of a machine's class that apply, each with its reading; those that do not, with the reason.
 *
 * Where a scheme prints two columns of one quantity, peak and RMS, the one that matches the reading's detector. Of the
 * readings it counts what they are written in and whether their frequency is known, not how large they are. A reading
 * of another quantity without a frequency is a bound by the running speed: a displacement d means a velocity of at
 * least 2 pi f d, a velocity v a displacement of at most v/(2 pi f), as long as nothing lies below running speed.
 *
 * @param crestFactor - one that was stated; it cannot be carried to another quantity
 * @throws {@link VeladisError} `missing-frequency` when nothing can be applied
 */
export function applicableCriteria(
  { chosen: { criteria }, facts }: PlacedMachine,
  readings: readonly Amplitude[],
  crestFactor: number | undefined,
): { applicable: Applicable[]; unjudged: Unjudged[] } {
  const unjudged: Unjudged[] = [];
  const columns = new Map<string, { criterion: Criterion; reading: Amplitude }>();
  for (const criterion of criteria) {
    const doesApply = applies(criterion, facts);
    if (doesApply === false) continue;
    const reading = bestReading(criterion, readings);
    const { quantity, detector } = criterionType(criterion);
    if (doesApply === undefined && reading.quantity !== quantity) {
      unjudged.push({ as: criterion.as, because: "needs the running speed: it is for slow machines only" });
      continue;
    }
    const other = columns.get(quantity);
    const better =
      other === undefined ||
      suits(detector, reading.detector) > suits(criterionType(other.criterion).detector, other.reading.detector);
    if (better) columns.set(quantity, { criterion, reading });
  }
  const applicable: Applicable[] = [];
  for (const { criterion, reading } of columns.values()) {
    const found = judgedAs(criterion, reading, facts, crestFactor);
    if (typeof found === "string") unjudged.push({ as: criterion.as, because: found });
    else applicable.push(found);
  }
  if (applicable.some(({ bound }) => bound !== "most")) return { applicable, unjudged };
  const wanted = criteria.map(({ as }) => as).join(" or ");
  const isOfWaveform = readings.some(({ detector }) => detectors[detector as "true pk"].ofWaveform === true);
  throw new VeladisError(crestFactor === undefined && !isOfWaveform ? "missing-frequency" : "not-a-sine", {
    expected: `a reading in a quantity the scheme limits (${wanted}), or the frequency of the vibration, as in "at 1500 r/min"`,
    received: `${readings.map(({ quantity }) => quantity).join(" and ")} ${isOfWaveform ? "in true peak" : crestFactor === undefined ? "without its frequency" : "with a crest factor"}`,
    // the frequency belongs to the reading, or stands in the options of what is compiled for many
    ...(isOfWaveform
      ? { parameter: "reading" }
      : crestFactor === undefined
        ? { parameter: "reading", option: "at" }
        : { option: "crestFactor" }),
  });
}
