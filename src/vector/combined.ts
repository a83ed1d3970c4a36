import { convertAmplitude, derivedAmplitude, linearTypeOf } from "../amplitude/index";
import { same, VeladisError } from "../core/index";
import { isUncertain, union } from "../reading/index";
import { vectorAnswer } from "./answer";
import { sine, withinTurn } from "./degrees";
import { commonName } from "./names";
import { orderText } from "./texts";
import type { Vector, VectorAnswer } from "./vector";

/** What is taken for granted of any two vectors. */
const ONE_MARK = "both phases count from one mark on the shaft";

/** An uncertainty goes through with the phases as they are, which no answer may hide. */
const EXACT = "the phases are exact: an uncertainty of theirs is not carried";

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
  const isKnown = [a, b].some(({ amplitude }) => isUncertain(amplitude.history ?? []));
  const off = convertAmplitude(b.amplitude, type);
  const angle = withinTurn(b.phase - a.phase + turn);
  // seen from the first vector, and by half the angle, so that nothing is lost between two that are nearly alike
  const along = a.amplitude.value - off.value + 2 * off.value * sine(angle / 2) ** 2;
  const across = -off.value * sine(angle);
  const amplitude = derivedAmplitude([a.amplitude, off], Math.hypot(along, across), {
    does: "vector difference",
    by: angle,
    assumed: ["one-frequency"],
    ...(note !== undefined && { note }),
  });
  // of nothing there is no phase
  const turned = amplitude.value === 0 ? -a.phase : (Math.atan2(across, along) * 180) / Math.PI;
  const probe = commonName(a.probe, b.probe);
  const direction = commonName(a.direction, b.direction);
  const slowRolls = [a, b].flatMap(({ slowRollSpeed }) => slowRollSpeed ?? []);
  return vectorAnswer({
    amplitude,
    phase: withinTurn(a.phase + turned),
    order: a.order,
    speed: a.speed,
    ...(probe !== undefined && { probe }),
    ...(direction !== undefined && { direction }),
    ...(slowRolls.length > 0 && { slowRollSpeed: Math.max(...slowRolls) }),
    assumedFacts: [...union(a.assumedFacts, b.assumedFacts), ONE_MARK, ...(isKnown ? [EXACT] : [])],
    cautions: union(a.cautions, b.cautions),
  });
}
