import { isUncertain, type Step, significant } from "../reading/index";
import {
  plusMinusText,
  type Uncertain,
  type UncertaintyMethod,
  type UncertaintyOfPhase,
  uncertainOf,
  uncertainText,
  uncertaintyBy,
  uncertaintyOfPhase,
} from "../uncertainty/index";
import { phaseText, speedText } from "./texts";
import type { Vector } from "./vector";

const UNDETERMINED = "not determined";

/** A method that is told, or none. */
type Method = UncertaintyMethod | undefined;

/** An amplitude with its ±; of one of which nothing may be left, what it is at most. As it was given nothing is reckoned: what was stated is written. */
function amplitudeText(uncertain: Uncertain, method: Method, phase: string, digits: number | undefined): string {
  const known = uncertaintyBy(uncertain, [], method);
  const { value, type, standard, expanded, interval } = known;
  if (phase === UNDETERMINED && interval[0] === 0 && expanded > 0) {
    return `${significant(value, digits ?? 3)} ${type}, 95 % at most ${significant(interval[1], digits ?? 3)}`;
  }
  // twice the standard uncertainty may be more than the reading, which nobody can state
  if (method !== undefined && expanded > value) return `${plusMinusText(value, standard, digits)} ${type} (k=1)`;
  return uncertainText(known, "", digits);
}

/** True where the draws lie unevenly about the phase. */
function isSkewed({ method, value, interval: [low, high] }: UncertaintyOfPhase): boolean {
  const [below, above] = [value - low, high - value];
  return method === "Monte Carlo" && Math.max(below, above) > 1.2 * Math.min(below, above);
}

/** A phase with its ±. */
function uncertainPhaseText(uncertain: Uncertain, method: Method, phase: number, digits: number | undefined): string {
  const known = uncertaintyOfPhase(uncertain, phase, method);
  if (known === null) return UNDETERMINED;
  if (known.expanded === 0) return phaseText(phase, digits ?? 3);
  if (isSkewed(known)) {
    const [low, high] = known.interval.map((end) => phaseText(end, digits ?? 3));
    return `${phaseText(phase, digits ?? 3)}, 95 % within ${low} to ${high}`;
  }
  const text = plusMinusText(phase, known.expanded, digits);
  // 359.97 may have become a whole turn, which is none
  const whole = Number(text.split(" ")[0]) >= 360 ? plusMinusText(0, known.expanded, digits) : text;
  return `${whole}° (k=2)`;
}

/** How well the frequency of a vector is known, in % of it, by the least well known of the readings at that frequency. */
function speedUncertainty(history: readonly Step[], hertz: number, digits: number | undefined): string {
  const most = history.reduce(
    (all, { hertzUncertainty, hertz: own }) =>
      hertzUncertainty !== undefined && own !== undefined && Math.abs(own / hertz - 1) < 1e-6
        ? Math.max(all, hertzUncertainty.standard)
        : all,
    0,
  );
  return most === 0 ? "" : ` ± ${significant((200 * most) / hertz, digits ?? 2)} % (k=2)`;
}

/** The parts of a vector as they are written where one of them has a ±; none where nothing has. */
export function uncertainTexts(
  vector: Vector,
  digits: number | undefined,
): { amplitude: string; phase: string; orderOfSpeed: string } | undefined {
  const { amplitude, order, speed } = vector;
  const { history = [] } = amplitude;
  if (!isUncertain(history)) return undefined;
  const uncertain = uncertainOf({ history });
  // as it was given nothing is reckoned
  const method = history.length === 1 ? "first order" : undefined;
  const phase = uncertainPhaseText(uncertain, method, vector.phase, digits);
  return {
    amplitude: amplitudeText(uncertain, method, phase, digits),
    phase,
    orderOfSpeed: `${order}x of ${speedText(speed)}${speedUncertainty(history, order * speed, digits)}`,
  };
}
