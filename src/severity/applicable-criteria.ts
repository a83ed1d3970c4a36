import { VeladisError } from "../core/index";
import type { Detector } from "../detectors/index";
import type { Amplitude } from "../reading/index";
import { criterionType } from "./criterion-type";
import { contains, type Interval } from "./interval";
import type { KnownFacts } from "./machine";
import type { PlacedMachine } from "./placed-machine";
import type { Criterion } from "./scheme";

/** A criterion, and the reading that it judges. */
export interface Applicable {
  readonly criterion: Criterion;
  readonly reading: Amplitude;
}

/** A criterion that could not be applied, with the reason. */
export interface Unjudged {
  readonly as: string;
  readonly because: string;
}

/** How well a detector suits a column: itself, of its family (peak values, or means), or not. */
function suits(column: Detector, reading: Detector): number {
  if (column === reading) return 2;
  const peak = (detector: Detector): boolean => detector === "pk" || detector === "pp";
  return peak(column) === peak(reading) ? 1 : 0;
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
  if (when === undefined) return true;
  const { speed } = known;
  if (typeof speed !== "number") return undefined;
  return contains(when.speed as Interval, speed);
}

/** Why a criterion cannot judge its reading, if it cannot. */
function obstacle({ criterion, reading }: Applicable, crestFactor: number | undefined): string | undefined {
  if (reading.quantity === criterionType(criterion).quantity) return undefined;
  if (crestFactor !== undefined) return "a crest factor cannot be carried to another quantity";
  return reading.hertz === undefined ? `needs the frequency of the ${reading.quantity}` : undefined;
}

/**
 * The criteria of a machine's class that apply, each with its reading; those that do not, with the reason.
 *
 * Where a table prints two columns of one quantity, peak and RMS, the one that matches the reading's detector. Of the
 * readings it counts what they are written in and whether their frequency is known, not how large they are.
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
  const columns = new Map<string, Applicable>();
  for (const criterion of criteria) {
    const doesApply = applies(criterion, facts);
    if (doesApply === false) continue;
    if (doesApply === undefined) {
      unjudged.push({ as: criterion.as, because: "needs the running speed: it is for slow machines only" });
      continue;
    }
    const reading = bestReading(criterion, readings);
    const { quantity, detector } = criterionType(criterion);
    const other = columns.get(quantity);
    const better =
      other === undefined ||
      suits(detector, reading.detector) > suits(criterionType(other.criterion).detector, other.reading.detector);
    if (better) columns.set(quantity, { criterion, reading });
  }
  const applicable: Applicable[] = [];
  for (const one of columns.values()) {
    const because = obstacle(one, crestFactor);
    if (because === undefined) applicable.push(one);
    else unjudged.push({ as: one.criterion.as, because });
  }
  if (applicable.length > 0) return { applicable, unjudged };
  const wanted = criteria.map(({ as }) => as).join(" or ");
  throw new VeladisError(crestFactor === undefined ? "missing-frequency" : "not-a-sine", {
    expected: `a reading in a quantity the table limits (${wanted}), or the frequency of the vibration, as in "at 1500 r/min"`,
    received: `${readings.map(({ quantity }) => quantity).join(" and ")} ${crestFactor === undefined ? "without its frequency" : "with a crest factor"}`,
  });
}
