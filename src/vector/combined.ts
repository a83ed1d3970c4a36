import { convertAmplitude, derivedAmplitude, linearTypeOf } from "../amplitude/index";
import { same, VeladisError } from "../core/index";
import { isUncertain, type Step, union } from "../reading/index";
import { uncertainOf, uncertaintyOfPhase } from "../uncertainty/index";
import { vectorAnswer } from "./answer";
import { sine, withinTurn } from "./degrees";
import { commonName } from "./names";
import { orderText } from "./texts";
import type { Vector, VectorAnswer } from "./vector";

/** What is taken for granted of any two vectors. */
const ONE_MARK = "both phases count from one mark on the shaft";

/** An uncertainty goes through with the phases as they were given, which no answer may hide. */
const exactPhases = {
  0: "the phases are exact: neither was given with a ±",
  1: "one phase is exact: it was not given with a ±",
} as const;

/** What is taken for granted of two phases, where anything has an uncertainty. */
function exactness(...vectors: readonly Vector[]): string[] {
  const histories = vectors.map(({ amplitude: { history = [] } }) => history);
  if (!histories.some(isUncertain)) return [];
  const known = histories.filter((steps) => steps.some(({ phaseUncertainty }) => phaseUncertainty !== undefined));
  return known.length === 2 ? [] : [exactPhases[known.length as 0 | 1]];
}

const NO_PHASE =
  "phase not determined: the vector may be nothing, or point any way, within its uncertainty, and the phase beside it says nothing";

/** Refuses two vectors that are not at one order of one shaft speed. */
export function requireOneOrder(a: Vector, b: Vector): void {
  if (a.order === b.order && same(a.speed, b.speed)) return;
  throw new VeladisError("wrong-frequency", {
    expected: "two vectors at one order of one shaft speed",
    received: `${orderText(a)} and ${orderText(b)}`,
  });
}

/**
 * The first vector less the second, in the type of the first; with a turn of 180 degrees, their sum: a vector added is
 * its opposite taken off.
 */
export function combined(a: Vector, b: Vector, turn: 0 | 180, note?: string): VectorAnswer {
  const type = linearTypeOf(a.amplitude);
  const off = convertAmplitude(b.amplitude, type);
  const angle = withinTurn(b.phase - a.phase + turn);
  // seen from the first vector, and by half the angle, so that nothing is lost between two that are nearly alike
  const along = a.amplitude.value - off.value + 2 * off.value * sine(angle / 2) ** 2;
  const across = -off.value * sine(angle);
  const value = Math.hypot(along, across);
  // of nothing there is no phase
  const turned = value === 0 ? -a.phase : (Math.atan2(across, along) * 180) / Math.PI;
  const phase = withinTurn(a.phase + turned);
  const amplitude = derivedAmplitude([a.amplitude, off], value, {
    does: "vector difference",
    by: angle,
    phase,
    assumed: ["one-frequency"],
    ...(note !== undefined && { note }),
  });
  const history = amplitude.history as readonly Step[];
  const isLost = isUncertain(history) && uncertaintyOfPhase(uncertainOf({ history }), phase, "first order") === null;
  const probe = commonName(a.probe, b.probe);
  const direction = commonName(a.direction, b.direction);
  const slowRolls = [a, b].flatMap(({ slowRollSpeed }) => slowRollSpeed ?? []);
  return vectorAnswer({
    amplitude,
    phase,
    order: a.order,
    speed: a.speed,
    ...(probe !== undefined && { probe }),
    ...(direction !== undefined && { direction }),
    ...(slowRolls.length > 0 && { slowRollSpeed: Math.max(...slowRolls) }),
    assumedFacts: [...union(a.assumedFacts, b.assumedFacts), ONE_MARK, ...exactness(a, b)],
    cautions: [...union(a.cautions, b.cautions).filter((text) => text !== NO_PHASE), ...(isLost ? [NO_PHASE] : [])],
  });
}
