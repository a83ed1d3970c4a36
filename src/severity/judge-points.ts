import { inPlace, VeladisError, withParameters } from "../core/index";
import { NOT_RELIABLE } from "./background";
import { type BackgroundOfPoints, backgroundOfPoints } from "./background-of-points";
import { checkedPoints } from "./checked-points";
import { classify } from "./classify";
import { badnessOf, possibleOf } from "./combined-judgements";
import { isOfDirection, towards } from "./in-direction";
import { type JudgeOptions, judge } from "./judge";
import type { Zone } from "./kinds";
import { type MachineRef, machineFacts } from "./machine-facts";
import { parseMachine } from "./parse-machine";
import { type PointReading, parsePoints, requirePlacedName } from "./points";
import { isOrWorse, type PossibleZones, possibleZones } from "./possible-zones";
import { requireOptions } from "./require-options";
import type { SchemeRef } from "./scheme-of";
import { directionOf, directionsOf, unreadDirections } from "./unread-directions";
import type { Verdict } from "./verdict-of";
import { zoneLevel } from "./zone-level";

/** How points are judged: as {@link judge} is told, or by one scheme. */
export interface JudgePointsOptions extends Omit<JudgeOptions, "background"> {
  /** Readings with the machine stopped: one for all points, or `"DE-H 0.4, DE-V 0.3 mm/s rms"`, one for each. */
  readonly background?: BackgroundOfPoints;
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
  /** What to know of all points together, before the cautions of each. */
  readonly cautions: readonly string[];
}

const ONE_SUPPORT =
  "one support or natural frequency serves points of several directions; the support may differ by direction: tell it by direction, as in rigid horizontally, flexible axially";

/** What to say where points of several directions rest on one support that was stated or computed. */
function supportCautions(judged: readonly PointVerdict[]): readonly string[] {
  const rests = judged.some(({ verdict: { judgements } }) =>
    judgements.some(
      ({ machineClass, machine, assumedFacts }) =>
        machineClass.support !== undefined && machine.support !== undefined && !assumedFacts.some(isOfDirection),
    ),
  );
  return rests && directionsOf(judged.map(({ point }) => point)).length > 1 ? [ONE_SUPPORT] : [];
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
 * @param machine - the machine, as data or in words; a support told by direction is taken by the direction of each point
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
  return withParameters({ points, options, machine }, () => {
    const { scheme, background, ...rest } = requireOptions(options, keys);
    const { schemes, ...told } = rest;
    if (scheme !== undefined && schemes !== undefined) {
      throw new VeladisError("wrong-type", {
        expected: "scheme, the one to judge by, or schemes, those to choose from",
        received: "both",
      });
    }
    const list =
      typeof points === "string" ? inPlace({ parameter: "points" }, () => parsePoints(points)) : checkedPoints(points);
    const whole = typeof machine === "string" ? parseMachine(machine) : machine;
    const machineAt = (point: string): MachineRef =>
      whole?.byDirection === undefined ? machine : towards(whole, directionOf(point));
    const atRest = backgroundOfPoints(list, background);
    const judged = list.map(({ point, reading }, i): PointVerdict => {
      const rested = atRest[i] === undefined ? {} : { background: atRest[i] };
      const own = machineAt(point);
      if (scheme === undefined) {
        const verdict = judge(reading, own, { ...rest, ...rested });
        requirePlaced(point, own, verdict);
        return Object.freeze({ point, reading, verdict });
      }
      const judgement = classify(reading, { ...told, ...rested, scheme, machine: own });
      const verdict: Verdict = Object.freeze({ ...judgement, judgements: [judgement], deciding: [] });
      requirePlaced(point, own, verdict);
      return Object.freeze({ point, reading, verdict });
    });
    return pointsVerdict(judged);
  });
}

/** Refuses a point whose name says that its reading is none of the place that is judged. */
function requirePlaced(point: string, machine: MachineRef, { judgements }: Verdict): void {
  const { place } = machineFacts(machine);
  inPlace({ parameter: "points" }, () =>
    requirePlacedName(
      point,
      place,
      judgements.map(({ measuredOn }) => measuredOn),
    ),
  );
}

/** The verdict on a machine by verdicts on its points. */
export function pointsVerdict(judged: readonly PointVerdict[]): PointsVerdict {
  const [governing] = [...judged].sort((a, b) => badnessOf(b.verdict) - badnessOf(a.verdict)) as [PointVerdict];
  const { possible, worst, headline, word } = united(judged, governing);
  const unsure = judged.filter(({ verdict }) => verdict.background?.valid === false).map(({ point }) => point);
  const isAll = unsure.length === judged.length;
  const plain = headline.replace(`, ${NOT_RELIABLE}`, "");
  const behind = unsure.length === 0 ? "" : `, ${NOT_RELIABLE}${isAll ? "" : ` at ${unsure.join(", ")}`}`;
  return Object.freeze({
    ...{ headline: `${plain}${behind}`, word, possible, worst, zone: governing.verdict.zone, governing },
    points: Object.freeze(judged),
    notRead: Object.freeze(unreadDirections(judged.map(({ point }) => point))),
    cautions: Object.freeze(supportCautions(judged)),
  });
}
