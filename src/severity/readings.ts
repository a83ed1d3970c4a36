import { inPlace, VeladisError } from "../core/index";
import { type Amplitude, amplitudeOf, requireFollowing } from "../reading/index";

/** A reading in words or taken apart, or several of one measurement, one a quantity. */
export type ReadingRef = string | Amplitude | readonly (string | Amplitude)[];

const readingOf = (one: string | Amplitude): Amplitude => requireFollowing(amplitudeOf(one));

/**
 * The readings taken apart.
 *
 * @throws {@link VeladisError} `missing-option` for none, `out-of-range` for two of one quantity and detector
 */
export function readingsOf(given: ReadingRef): readonly Amplitude[] {
  if (!Array.isArray(given)) return [readingOf(given as string | Amplitude)];
  const list = given as readonly (string | Amplitude)[];
  if (list.length === 0) {
    throw new VeladisError("missing-option", {
      ...{ expected: "one reading or more", received: "an empty list", parameter: "reading" },
    });
  }
  // not `map`, which passes over the holes of a list
  const readings = Array.from(list, (one, index) => inPlace({ parameter: "reading", index }, () => readingOf(one)));
  const kinds = readings.map(({ quantity, detector }) => `${quantity} ${detector}`);
  const twice = kinds.find((kind, i) => kinds.indexOf(kind) < i);
  if (twice === undefined) return readings;
  throw new VeladisError("out-of-range", {
    expected: "one reading of a quantity and detector, of several directions the largest",
    received: `two of ${twice}`,
    parameter: "reading",
  });
}
