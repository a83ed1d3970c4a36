import { shown, VeladisError } from "../core/index";
import { type Amplitude, amplitudeOf } from "../reading/index";
import { checkedPoints } from "./checked-points";
import { folded } from "./label";
import { type PointReading, parsePoints } from "./points";

/** Readings with the machine stopped: one for all points, or one for each, as points are written. */
export type BackgroundOfPoints = string | Amplitude | readonly PointReading[];

/** Whether a text names points: a reading alone begins with its number. */
export function namesPoints(text: string): boolean {
  return /^\s*\p{L}/u.test(text);
}

/**
 * The reading at rest of each of some points, in their order; undefined where none was given.
 *
 * @throws {@link VeladisError} `missing-fact` for a point without one, `unknown-option` for one of a point that was not read
 */
export function backgroundOfPoints(
  points: readonly PointReading[],
  given: BackgroundOfPoints | undefined,
): readonly (Amplitude | undefined)[] {
  if (given === undefined) return points.map(() => undefined);
  const own = typeof given === "string" && namesPoints(given) ? parsePoints(given) : given;
  if (typeof own === "string" && /[,;]\s/.test(own)) {
    throw new VeladisError("syntax", {
      expected:
        'one reading with the machine stopped for all points, or one each behind the name of its point, such as "DE-H 0.4, DE-V 0.3 mm/s rms"',
      received: shown(own),
    });
  }
  if (!Array.isArray(own)) {
    const one = amplitudeOf(own as string | Amplitude);
    return points.map(() => one);
  }
  const atRest = new Map(checkedPoints(own as readonly PointReading[]).map((one) => [folded(one.point), one]));
  const found = points.map(({ point }) => {
    const reading = atRest.get(folded(point))?.reading;
    atRest.delete(folded(point));
    if (reading !== undefined) return reading;
    throw new VeladisError("missing-fact", {
      expected: "a reading with the machine stopped for each point, or one for all of them",
      received: `none for ${point}`,
    });
  });
  const [other] = atRest.values();
  if (other === undefined) return found;
  throw new VeladisError("unknown-option", {
    expected: "readings with the machine stopped of the points that are judged",
    received: `one of ${other.point}`,
    allowed: points.map(({ point }) => point),
  });
}
