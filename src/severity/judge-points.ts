import { requireList, requireText, shown, VeladisError } from "../core/index";
import { amplitudeOf } from "../reading/index";
import { classify } from "./classify";
import { badnessOf, possibleOf } from "./combined-judgements";
import { type JudgeOptions, judge } from "./judge";
import type { Zone } from "./kinds";
import type { MachineRef } from "./machine-facts";
import { type PointReading, parsePoints, requireDistinct } from "./points";
import { isOrWorse, type PossibleZones, possibleZones } from "./possible-zones";
import { requireOptions } from "./require-options";
import type { SchemeRef } from "./scheme-of";
import { unreadDirections } from "./unread-directions";
import type { Verdict } from "./verdict-of";
import { zoneLevel } from "./zone-level";

/** How points are judged: as {@link judge} is told, or by one scheme. */
export interface JudgePointsOptions extends JudgeOptions {
  /** The one scheme to judge by; those that the machine's facts admit, if not given. */
  readonly scheme?: SchemeRef;
}

const keys: Readonly<Record<keyof JudgePointsOptions, true>> = /* @__PURE__ */ Object.freeze({
  scheme: true,
  schemes: true,
  assume: true,
  crestFactor: true,
  background: true,
});

/** A point with its verdict. */
export interface PointVerdict extends PointReading {
  readonly verdict: Verdict;
}

/** The verdict on a machine by all its points: the worst governs. */
export interface PointsVerdict extends PossibleZones {
  readonly zone: Zone;
  /** The point that governs. */
  readonly governing: PointVerdict;
  /** All points, in the order they were given. */
  readonly points: readonly PointVerdict[];
  /** Directions of the bearings named that were not read; the worst of them could be worse. */
  readonly notRead: readonly string[];
}

/** Points that were made elsewhere, held against what a point is. */
function checkedPoints(given: readonly PointReading[]): readonly PointReading[] {
  // not `map`, which passes over the holes of a list
  const list = Array.from(requireList(given, "points with their readings as a list"), (one) => {
    if (typeof one !== "object" || one === null) {
      throw new VeladisError("wrong-type", { expected: "a point with its reading", received: shown(one) });
    }
    return { point: requireText(one.point, "the name of a point"), reading: amplitudeOf(one.reading) };
  });
  if (list.length === 0) {
    throw new VeladisError("missing-fact", { expected: "one point or more", received: "an empty list" });
  }
  requireDistinct(list.map(({ point }) => point));
  return list;
}

/** The zones of the machine: none better than the best that every point leaves, none worse than the worst of any. */
function united(points: readonly PointVerdict[], { verdict }: PointVerdict): PossibleZones {
  const verdicts = points.map((one) => one.verdict);
  const { kind, zones } = verdict;
  const least = Math.max(...verdicts.map(({ possible }) => zoneLevel(kind, possible[0] as Zone)));
  const possible = possibleOf(verdicts).filter((zone) => zoneLevel(kind, zone) >= least);
  if (possible.join() === verdict.possible.join()) return verdict;
  const open = verdicts.find(isOrWorse);
  const [from, to] = [possible[0], possible.at(-1)].map((zone) => zones.indexOf(zone as Zone)) as [number, number];
  return possibleZones(kind, zones)(from, to, open?.word);
}

/**
 * The verdict on a machine by readings of several of its points, of which the worst governs.
 *
 * @param points - as {@link parsePoints} takes or gives them
 * @param machine - the machine, as data or in words
 * @throws {@link VeladisError} as {@link parsePoints} and {@link judge}; with a scheme, as {@link classify}
 * @example
 * ```ts
 * import { judgePoints } from "veladis/severity";
 *
 * const machine = "pump 90 kW 2980 r/min category II";
 * const { headline, governing, notRead } = judgePoints("DE-H 3.1, DE-V 2.2, NDE-H 5.9 mm/s rms", machine);
 * headline; // => "zone C"
 * governing.point; // => "NDE-H"
 * notRead; // => ["DE-A", "NDE-V", "NDE-A"]
 * ```
 */
export function judgePoints(
  points: string | readonly PointReading[],
  machine: MachineRef,
  options: JudgePointsOptions = {},
): PointsVerdict {
  const { scheme, ...rest } = requireOptions(options, keys);
  const { schemes, ...told } = rest;
  if (scheme !== undefined && schemes !== undefined) {
    throw new VeladisError("wrong-type", {
      expected: "scheme, the one to judge by, or schemes, those to choose from",
      received: "both",
    });
  }
  const list = typeof points === "string" ? parsePoints(points) : checkedPoints(points);
  const judged = list.map(({ point, reading }): PointVerdict => {
    if (scheme === undefined) return Object.freeze({ point, reading, verdict: judge(reading, machine, rest) });
    const judgement = classify(reading, { ...told, scheme, machine });
    const verdict: Verdict = Object.freeze({ ...judgement, judgements: [judgement], deciding: [] });
    return Object.freeze({ point, reading, verdict });
  });
  const [governing] = [...judged].sort((a, b) => badnessOf(b.verdict) - badnessOf(a.verdict)) as [PointVerdict];
  const { possible, worst, headline, word } = united(judged, governing);
  return Object.freeze({
    ...{ headline, word, possible, worst, zone: governing.verdict.zone, governing },
    points: Object.freeze(judged),
    notRead: Object.freeze(unreadDirections(judged.map(({ point }) => point))),
  });
}
