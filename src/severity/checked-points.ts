import { inPlace, requireList, requireText, shown, VeladisError } from "../core/index";
import { amplitudeOf } from "../reading/index";
import { type PointReading, requireDistinct } from "./points";

/** Points that were made elsewhere, held against what a point is. */
export function checkedPoints(given: readonly PointReading[]): readonly PointReading[] {
  return inPlace({ parameter: "points" }, () => pointsOf(given));
}

function pointsOf(given: readonly PointReading[]): readonly PointReading[] {
  // not `map`, which passes over the holes of a list
  const list = Array.from(requireList(given, "points with their readings as a list"), (one, index) => {
    if (typeof one !== "object" || one === null) {
      throw new VeladisError("wrong-type", { expected: "a point with its reading", received: shown(one), index });
    }
    return {
      point: requireText(one.point, "the name of a point", { option: "point", index }),
      reading: inPlace({ option: "reading", index }, () => amplitudeOf(one.reading)),
    };
  });
  if (list.length === 0) {
    throw new VeladisError("missing-option", { expected: "one point or more", received: "an empty list" });
  }
  requireDistinct(list.map(({ point }) => point));
  return list;
}
