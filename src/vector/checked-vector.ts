import {
  requireFinite,
  requireGiven,
  requireKnownKeys,
  requireList,
  requirePositive,
  requireText,
  shown,
  VeladisError,
} from "../core/index";
import { type DetectorEntry, detectors } from "../detectors/index";
import { type Amplitude, agreedHertz, amplitudeOf, format, isClipped } from "../reading/index";
import { VECTOR_FORM } from "./form";
import { checkedName } from "./names";
import { phasedAmplitude } from "./phased-amplitude";
import { orderText, phaseText, speedText } from "./texts";
import type { Vector } from "./vector";

/** The parts that a vector or an answer may have; `assumed` and `history` repeat those of the amplitude. */
const PARTS: Readonly<Record<string, true>> = /* @__PURE__ */ Object.freeze({
  amplitude: true,
  phase: true,
  order: true,
  speed: true,
  probe: true,
  direction: true,
  slowRollSpeed: true,
  assumedFacts: true,
  cautions: true,
  assumed: true,
  history: true,
});

/** Refuses an amplitude that is none of one sine, or that nobody knows. */
function requireSine(amplitude: Amplitude): void {
  const { detector, level, crestFactor, state } = amplitude;
  const { ofWaveform }: DetectorEntry = detectors[detector];
  if (ofWaveform || (crestFactor !== undefined && Math.abs(crestFactor - Math.SQRT2) > 0.01)) {
    throw new VeladisError("not-a-sine", {
      expected: "an amplitude of one sine (pk, pp, rms or avg), since only a sine has one phase",
      received: ofWaveform ? format(amplitude) : `${format(amplitude)} with a crest factor of ${crestFactor}`,
    });
  }
  if (level !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: 'a linear amplitude for a vector, such as "3 mil pp"',
      received: format(amplitude),
    });
  }
  if (isClipped(state)) {
    throw new VeladisError("out-of-range", {
      expected: "an amplitude within the range of the loop that it came by",
      received: `one ${state}`,
    });
  }
}

/** A phase lag in degrees; a whole turn is none. */
export function requirePhase(phase: number): number {
  const place = { fact: "phase" };
  requireFinite(requireGiven(phase, 'a phase lag in degrees, as in "∠ 45°"', place), "a phase lag in degrees", place);
  if (phase >= 0 && phase <= 360) return phase % 360;
  throw new VeladisError("out-of-range", {
    expected: "a phase lag of 0 to 360 degrees (a lead of 45 degrees is a lag of 315)",
    received: shown(phase),
    fact: "phase",
  });
}

/** A whole order: against a mark that comes by once a turn no other has a phase that stays. */
export function requireOrder(order: number): number {
  const given = requireGiven(order, 'an order of a stated shaft speed, as in "at 1x of 3600 r/min"', { fact: "order" });
  if (Number.isInteger(given) && given >= 1) return given;
  throw new VeladisError(typeof given === "number" ? "out-of-range" : "wrong-type", {
    expected: "a whole order of the shaft speed, 1 or more, since no other has a phase that stays",
    received: shown(order),
    fact: "order",
  });
}

/** The speed of a slow roll that was taken off a vector: slower than its own, at 1x. */
function requireSlowRollSpeed(slowRoll: number, order: number, speed: number): number {
  const given = requirePositive(slowRoll, "the shaft speed of a slow roll above zero, in hertz", {
    option: "slowRollSpeed",
  });
  if (order === 1 && given < speed) return given;
  throw new VeladisError("out-of-range", {
    expected: `a vector at 1x of more than the ${speedText(given)} of the slow roll that was taken off it`,
    received: orderText({ order, speed }),
  });
}

/** Texts that an answer carries along, copied. */
function texts(list: readonly string[], what: string, option: string): readonly string[] {
  return Object.freeze(
    requireList(list, what, { option }).map((text, index) => requireText(text, what, { option, index })),
  );
}

/**
 * A vector that was taken apart, held against the rules of its parts; copied and frozen.
 *
 * @throws {@link VeladisError} `missing-fact`, `wrong-type`, `unknown-option`, `syntax`, `not-a-sine`, `not-a-number`,
 *   `not-finite`, `not-positive`, `out-of-range`, and as `parseAmplitude`
 */
export function checkedVector(parts: Vector): Vector {
  if (typeof requireGiven(parts, VECTOR_FORM) !== "object") {
    throw new VeladisError("wrong-type", { expected: VECTOR_FORM, received: shown(parts) });
  }
  requireKnownKeys(parts, PARTS, "a part of a vector");
  const { probe, direction, slowRollSpeed, assumedFacts, cautions } = parts;
  const amplitude = amplitudeOf(
    requireGiven(parts.amplitude, 'the amplitude of a vector, such as "3.0 mil pp"', { option: "amplitude" }),
  );
  requireSine(amplitude);
  const phase = requirePhase(parts.phase);
  const order = requireOrder(parts.order);
  const speed = requirePositive(
    requireGiven(parts.speed, 'the shaft speed of a vector, as in "at 1x of 3600 r/min"', { fact: "speed" }),
    "a shaft speed above zero, in hertz",
    { fact: "speed" },
  );
  const hertz = order * speed;
  agreedHertz(amplitude.hertz, { hertz });
  const told = `∠ ${phaseText(phase, 12)} at ${orderText({ order, speed })}`;
  return Object.freeze({
    amplitude: phasedAmplitude({ ...amplitude, hertz }, phase, told),
    phase,
    order,
    speed,
    ...(probe !== undefined && { probe: checkedName(probe, "probe") }),
    ...(direction !== undefined && { direction: checkedName(direction, "direction") }),
    ...(slowRollSpeed !== undefined && { slowRollSpeed: requireSlowRollSpeed(slowRollSpeed, order, speed) }),
    ...(assumedFacts !== undefined && {
      assumedFacts: texts(assumedFacts, "what a vector takes for granted", "assumedFacts"),
    }),
    ...(cautions !== undefined && { cautions: texts(cautions, "a caution of a vector", "cautions") }),
  });
}
