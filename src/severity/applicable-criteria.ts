import { type Amplitude, amplitudeOf, parsedType } from "../amplitude/index";
import { VeladisError } from "../core/index";
import type { Detector } from "../detectors/index";
import { contains, type Interval } from "./interval";
import type { KnownFacts } from "./machine";
import type { Criterion, MachineClass } from "./scheme";

/** A reading in words or taken apart, or several of one measurement, one a quantity. */
export type ReadingRef = string | Amplitude | readonly (string | Amplitude)[];

/** A criterion, and the reading that it judges. */
export interface Applied {
  readonly criterion: Criterion;
  readonly reading: Amplitude;
}

/** A criterion that could not be applied, with the reason. */
export interface Unjudged {
  readonly as: string;
  readonly because: string;
}

/** The readings taken apart. */
export function readingsOf(given: ReadingRef): Amplitude[] {
  const list = Array.isArray(given) ? (given as readonly (string | Amplitude)[]) : [given as string | Amplitude];
  if (list.length === 0) {
    throw new VeladisError("missing-fact", { expected: "one reading or more", received: "an empty list" });
  }
  // not `map`, which passes over the holes of a list
  const readings = Array.from(list, amplitudeOf);
  const kinds = readings.map(({ quantity, detector }) => `${quantity} ${detector}`);
  const twice = kinds.find((kind, i) => kinds.indexOf(kind) < i);
  if (twice === undefined) return readings;
  throw new VeladisError("out-of-range", {
    expected: "one reading of a quantity and detector, of several directions the largest",
    received: `two of ${twice}`,
  });
}

/** How well a detector suits a column: itself, of its family (peak values, or means), or not. */
function suits(column: Detector, reading: Detector): number {
  if (column === reading) return 2;
  const peak = (detector: Detector): boolean => detector === "pk" || detector === "pp";
  return peak(column) === peak(reading) ? 1 : 0;
}

/** The reading to judge by a criterion: of its quantity, of its detector, or else one whose frequency is known. */
function bestReading(criterion: Criterion, readings: readonly Amplitude[]): Amplitude {
  const { quantity, detector } = parsedType(criterion.as);
  const score = (one: Amplitude): number =>
    (one.quantity === quantity ? 8 : one.hertz !== undefined ? 4 : 0) + suits(detector, one.detector);
  return readings.reduce((best, one) => (score(one) > score(best) ? one : best));
}

/** Whether a criterion applies to the machine; undefined when that is not known. */
export function applies({ when }: Criterion, known: KnownFacts): boolean | undefined {
  if (when === undefined) return true;
  const { speed } = known;
  if (typeof speed !== "number") return undefined;
  return contains(when.speed as Interval, speed);
}

/**
 * The criteria of a class that apply, each with its reading; those that do not, with the reason.
 *
 * Where a table prints two columns of one quantity, peak and RMS, the one that matches the reading's detector.
 *
 * @param crestFactor - one that was stated; it cannot be carried to another quantity
 * @throws {@link VeladisError} `missing-frequency` when nothing can be applied
 */
export function appliedCriteria(
  { criteria }: MachineClass,
  readings: readonly Amplitude[],
  known: KnownFacts,
  crestFactor: number | undefined,
): { applied: Applied[]; unjudged: Unjudged[] } {
  const unjudged: Unjudged[] = [];
  const columns = new Map<string, Applied>();
  for (const criterion of criteria) {
    const doesApply = applies(criterion, known);
    if (doesApply === false) continue;
    if (doesApply === undefined) {
      unjudged.push({
        as: criterion.as,
        because: "needs the running speed: it is for slow machines only",
      });
      continue;
    }
    const reading = bestReading(criterion, readings);
    const { quantity, detector } = parsedType(criterion.as);
    const other = columns.get(quantity);
    const better =
      other === undefined ||
      suits(detector, reading.detector) > suits(parsedType(other.criterion.as).detector, other.reading.detector);
    if (better) columns.set(quantity, { criterion, reading });
  }
  const applied: Applied[] = [];
  for (const one of columns.values()) {
    const { quantity } = parsedType(one.criterion.as);
    const crosses = one.reading.quantity !== quantity;
    if (!crosses) applied.push(one);
    else if (crestFactor !== undefined)
      unjudged.push({ as: one.criterion.as, because: "a crest factor cannot be carried to another quantity" });
    else if (one.reading.hertz === undefined)
      unjudged.push({
        as: one.criterion.as,
        because: `needs the frequency of the ${one.reading.quantity}`,
      });
    else applied.push(one);
  }
  if (applied.length > 0) return { applied, unjudged };
  const wanted = criteria.map(({ as }) => as).join(" or ");
  throw new VeladisError(crestFactor === undefined ? "missing-frequency" : "not-a-sine", {
    expected: `a reading in a quantity the table limits (${wanted}), or the frequency of the vibration, as in "at 1500 r/min"`,
    received: `${readings.map(({ quantity }) => quantity).join(" and ")} ${crestFactor === undefined ? "without its frequency" : "with a crest factor"}`,
  });
}
