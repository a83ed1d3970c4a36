import {
  parseNumeral,
  requireText,
  shown,
  splitNumeral,
  VeladisError,
  type VeladisErrorCode,
  withParameters,
} from "../core/index";
import { type FrequencyText, findFrequencyUnit, hertz, splitOrder } from "../frequency/index";
import type { Uncertainty } from "../reading/index";
import { parseUncertain, uncertaintyNote } from "../uncertainty/index";
import { checkedVector, requireOrder, requirePhase } from "./checked-vector";
import { ANGLE, VECTOR_FORM } from "./form";
import { phasedAmplitude } from "./phased-amplitude";
import { orderText, phaseText } from "./texts";
import { uncertainPhase, uncertainSpeed } from "./uncertain-parts";
import type { Vector } from "./vector";

/** Beyond any vector a person writes; keeps junk from being searched. */
const LONGEST = 300;

const PHASE = 'a phase lag in degrees, as in "∠ 45°" (a lead of 45 degrees is a lag of 315)';

function refuse(code: VeladisErrorCode, expected: string, received: string, fact?: string): never {
  throw new VeladisError(code, { expected, received: shown(received), fact });
}

const ORDER = '"at 1x of 3600 r/min"';

const BEHIND =
  'a probe, a direction and a slow roll behind a vector, each once, as in ", probe 1Y, direction vertical, slow roll taken off at 300 r/min"';

/** What stands behind a vector, `, probe 1Y, direction vertical, slow roll taken off at 300 r/min`, each once. */
function behindIn(parts: readonly string[]): Pick<Vector, "probe" | "direction" | "slowRollSpeed"> {
  const found: { probe?: string; direction?: string; slowRollSpeed?: number } = {};
  for (const part of parts) {
    const [, kind = "", said = ""] = /^(probe|direction|slow roll taken off at)\s+(.+)$/is.exec(words(part)) ?? [];
    const key = kind === "" ? undefined : /^slow/i.test(kind) ? "slowRollSpeed" : kind.toLowerCase();
    if (key === undefined || key in found) refuse("syntax", BEHIND, part);
    if (key === "slowRollSpeed") found.slowRollSpeed = hertz(said as FrequencyText);
    else found[key as "probe" | "direction"] = said;
  }
  return found;
}

/** A text with single spaces. */
function words(text: string): string {
  return text.trim().replace(/\s+/g, " ");
}

/** How an order is written, of the frequency that a text says if it says one. */
function orderFor(at: string): string {
  const [digits, unit] = splitNumeral(at.trim());
  const symbol = findFrequencyUnit(unit);
  return digits === "" || symbol === undefined ? ORDER : `"at 1x of ${digits} ${symbol}"`;
}

/** The phase that a text begins with, how well it is known, and what stands behind it. */
function phaseIn(text: string): [phase: number, rest: string, uncertainty?: Uncertainty | undefined] {
  const [told = ""] = text.split(/(?:^|[\s,]+)at\s|[\s,]*@/i);
  const known = uncertainPhase(told);
  if (known !== undefined) return [requirePhase(known[0]), text.slice(told.length), known[1]];
  const [digits, unit] = splitNumeral(text);
  const phase = parseNumeral(digits === "" ? text.replace(/[\s°º˚].*$/s, "") : digits, "a phase lag in degrees");
  const degrees = /^(?:[°º˚]|degrees?(?![a-z])|deg(?![a-z]))\s*(?:lag(?![a-z]))?/i.exec(unit)?.[0];
  const rest = unit.slice(degrees?.length ?? 0);
  if (degrees !== undefined && /^[\s,]*(?:$|at\s|@)/i.test(rest)) return [requirePhase(phase), rest];
  return refuse(/^(?:$|at\s|@)/i.test(unit) ? "missing-unit" : "syntax", PHASE, text);
}

/**
 * The vector that a text says: an amplitude, a phase, and the order of a stated shaft speed at which it is.
 *
 * The phase is a **lag**: the part of a cycle, in degrees, from the mark on the shaft to the next positive peak, so that more
 * is later, as API 670 has it (from memory). It stands behind `∠`, `/_`, `angle` or `phase`, from 0 to 360. A negative one is
 * refused: some write a lag with a minus and some a lead, and nobody can tell which was meant. Names of the probe and of the
 * direction may stand behind it, and `slow roll taken off at 300 r/min`. Amplitude, phase and speed may each have a ± with its
 * coverage factor, as in `parseUncertain` of `veladis/uncertainty`; without a factor it is a bound. It stays with the history.
 *
 * @param written - e.g. `"3.0 mil pp ∠ 45° at 1x of 3600 r/min"`, `"76 um pp /_ 45 deg at 1x of 60 Hz, probe 1Y"`
 * @returns the vector taken apart, frozen; its speed in hertz
 * @throws {@link VeladisError} `missing-fact` without a phase, an order or a speed, `missing-unit` without degrees,
 *   `not-a-sine` for a true peak, `out-of-range` for a level, a phase beyond one turn and an order that is not whole, `syntax`,
 *   `not-a-number`, `not-finite`, and as `parseAmplitude` and `hertz`
 * @example
 * ```ts
 * import { parseVector } from "veladis/vector";
 *
 * const { amplitude, phase, order, speed } = parseVector("40 um pp ∠ 60° at 1x of 5400 r/min");
 * [amplitude.value, amplitude.unit, amplitude.hertz]; // => [40, "um", 90]
 * [phase, order, speed]; // => [60, 1, 90]
 * parseVector("40 um pp, angle 60 deg at 1x of 5400 r/min, probe 1Y").probe; // => "1Y"
 * const known = parseVector("3.0 ± 0.1 mil pp (k=2) ∠ 45 ± 3° (k=2) at 1x of 1480 r/min");
 * known.amplitude.history?.[0]?.phaseUncertainty?.standard; // => 1.5
 * parseVector("40 um pp ∠ 60° at 5400 r/min"); // throws missing-fact
 * parseVector("40 um pp ∠ -60° at 1x of 5400 r/min"); // throws out-of-range
 * ```
 */
export function parseVector(written: string): Vector {
  return withParameters({ written }, () => {
    const whole = requireText(written, VECTOR_FORM, { parameter: "written" }).trim();
    if (whole.length > LONGEST) refuse("syntax", VECTOR_FORM, whole);
    const [main = "", ...others] = whole.split(/,(?=\s*(?:probe|direction|slow\s+roll)(?:\s|$))/i);
    const [before = "", behind, ...more] = main.split(ANGLE);
    if (behind === undefined) refuse("missing-fact", 'a phase behind the amplitude, as in "∠ 45°"', whole, "phase");
    if (more.length > 0) refuse("syntax", 'one phase, as in "∠ 45°"', whole);
    const [phase, rest, phaseUncertainty] = phaseIn(behind.trim());
    const reading = `${before.replace(/[\s,]+$/, "")} ${rest.replace(/^[\s,]+/, "")}`.trim();
    const [subject = "", at = "", ...places] = reading.split(/\sat\s|@/i);
    if (places.length > 0) refuse("syntax", `one order of one shaft speed, as in ${ORDER}`, whole, "speed");
    const [order, ofSpeed] = splitOrder(at.trim());
    if (order === undefined)
      refuse("missing-fact", `an order of a stated shaft speed, as in ${orderFor(at)}`, whole, "order");
    requireOrder(order);
    if (/^(?:of)?$/i.test(ofSpeed)) refuse("missing-fact", `the shaft speed behind the order, as in ${ORDER}`, whole);
    const amplitude = parseUncertain(subject);
    const [speed, hertzUncertainty] = uncertainSpeed(ofSpeed, order);
    const note = phaseUncertainty === undefined ? "" : ` ${uncertaintyNote(phaseUncertainty)}`;
    const atSpeed = hertzUncertainty === undefined ? "" : ` ${uncertaintyNote(hertzUncertainty)}`;
    const told = `∠ ${phaseText(phase, 12)}${note} at ${orderText({ order, speed })}${atSpeed}`;
    const known = {
      ...(phaseUncertainty !== undefined && { phaseUncertainty }),
      ...(hertzUncertainty !== undefined && { hertzUncertainty }),
    };
    return checkedVector({
      amplitude: phasedAmplitude({ ...amplitude, hertz: order * speed }, phase, told, known),
      phase,
      order,
      speed,
      ...behindIn(others),
    });
  });
}

/** The vector itself, read if it is a text, held against the rules if it is taken apart. */
export function vectorOf(vector: string | Vector): Vector {
  return typeof vector === "string" ? parseVector(vector) : checkedVector(vector);
}
