import { multipliedAmplitude } from "../amplitude/index";
import {
  FLOAT_NOISE,
  inPlace,
  parseNumeral,
  requireFinite,
  requireGiven,
  requireKnownOptions,
  requirePositive,
  requireText,
  shown,
  VeladisError,
} from "../core/index";
import { type Frequency, hertz } from "../frequency/index";
import { type Amplitude, format, plainNumber, significant } from "../reading/index";
import type { ProposedSetpoint } from "./proposal";
import type { RaisedSetpoints } from "./raised-setpoints";
import { setpointRules } from "./reason";

/** A range of speeds, passed at start-up and run-down, in which the setpoints are multiplied. */
export interface RaisedRange {
  /** How many times: above 1, at most 3. */
  readonly factor: number;
  readonly from: Frequency;
  readonly to: Frequency;
  /** How long the device holds them up at the most, in s. */
  readonly seconds: number;
}

const FORM =
  'a raised setpoint such as "2 times from 1900 to 2600 r/min for 30 s" or { factor: 2, from: "1900 r/min", to: "2600 r/min", seconds: 30 }';
const PLACE = { option: "raised" };
/** The highest factor met in API 670, 5th edition, from memory: 2 or 3. */
const MOST = 3;
/** Where a range of speeds that are passed ends, over the running speed; common practice, no source. */
const NEAR = 0.9;

const keys: Readonly<Record<keyof RaisedRange, true>> = /* @__PURE__ */ Object.freeze({
  factor: true,
  from: true,
  to: true,
  seconds: true,
});

/** Whether a text begins as a raised setpoint does. */
export function saysRaised(text: string): boolean {
  return /^\s*[\d.]+\s*(?:x|times)?\s+from\s/i.test(text);
}

/** What a text says of a raised setpoint; of the time, nothing where it says none. */
function written(text: string): Omit<RaisedRange, "seconds"> & { readonly seconds?: number } {
  const [, factor, from, to, seconds] =
    /^([\d.]+)\s*(?:x|times)?\s+from\s+(\S.*?)\s+to\s+(\S.*?)(?:\s+for\s+([\d.]+)\s*s)?$/i.exec(
      requireText(text, FORM, PLACE).trim().replace(/\s+/g, " "),
    ) ?? [];
  if (factor === undefined || from === undefined || to === undefined)
    throw new VeladisError("syntax", { expected: FORM, received: shown(text), ...PLACE });
  const unit = to.replace(/^[\d.\s]+/, "");
  return {
    factor: parseNumeral(factor, "a factor"),
    from: (/^[\d.]+$/.test(from) ? `${from} ${unit}` : from) as "1 Hz",
    to: to as "1 Hz",
    ...(seconds !== undefined && { seconds: parseNumeral(seconds, "a time in s") }),
  };
}

/** A range of speeds and a factor, in hertz. */
export interface CheckedRange {
  readonly factor: number;
  readonly range: readonly [number, number];
  readonly seconds: number;
}

/**
 * The range and the factor of a raised setpoint.
 *
 * @throws {@link VeladisError} `syntax`, `missing-option` without a time too, `unknown-option`, `out-of-range` for a factor
 *   not above 1 or above 3 and for a range that does not rise
 */
export function requireRaised(given: RaisedRange | string): CheckedRange {
  const raised = requireKnownOptions(typeof given === "string" ? written(given) : given, keys, {
    what: "a part of a raised setpoint",
    form: FORM,
    place: PLACE,
  });
  const factor = requireFinite(raised.factor, "a factor for a raised setpoint", PLACE);
  if (factor <= 1 || factor > MOST)
    throw new VeladisError("out-of-range", {
      expected: `a factor above 1 and at most ${MOST} for a raised setpoint: more is a bypass`,
      received: shown(factor),
      ...PLACE,
    });
  const [from, to] = [raised.from, raised.to].map((end) =>
    inPlace(PLACE, () => hertz(requireGiven(end, "a speed at either end of the range, as in 1900 r/min"))),
  ) as [number, number];
  if (!(from < to))
    throw new VeladisError("out-of-range", {
      expected: "a range of speeds that rises, for a raised setpoint",
      received: `from ${significant(from * 60, 4)} to ${significant(to * 60, 4)} r/min`,
      ...PLACE,
    });
  const { seconds } = raised;
  if (seconds === undefined)
    throw new VeladisError("missing-option", {
      expected:
        "the time in s after which the device ends a raised setpoint, as in for 30 s: without it a machine that hangs within its speeds stays without its trip",
      received: "no time",
      ...PLACE,
    });
  return {
    factor,
    range: [from, to],
    seconds: requirePositive(seconds, "a time above zero in s, for a raised setpoint", PLACE),
  };
}

/** What a raised setpoint is held against. */
export interface RaisedCase {
  readonly alarm: ProposedSetpoint | null;
  readonly trip: ProposedSetpoint | null;
  /** The lowest running speed, in hertz; undefined where none is known. */
  readonly running: number | undefined;
  /** The most that sensor, loop or device carry, in the type of the setpoints; undefined where nothing is said of it. */
  readonly carried: number | undefined;
  readonly type: string;
  /** The longest delay of a trip that suits the machine, in s. */
  readonly longest: number;
}

/** Refuses a range in which the machine runs, or nearly: by slip or load it may run slower than is said. */
function requireBelowRunning([from, to]: readonly [number, number], running: number | undefined): void {
  const range = `${significant(from * 60, 4)} to ${significant(to * 60, 4)} r/min`;
  if (running === undefined)
    throw new VeladisError("missing-fact", {
      expected: "the running speed of the machine beside a raised setpoint, since its range must lie below it",
      received: "a machine without speed",
      fact: "speed",
      ...PLACE,
    });
  if (to <= running * NEAR * (1 + FLOAT_NOISE)) return;
  throw new VeladisError("out-of-range", {
    expected:
      "a range that ends at or below 90 % of the running speed (common practice, no source), passed at start-up and run-down, for a raised setpoint: where the machine runs, its own setpoint stands",
    received: `${range} of a machine that runs at ${significant(running * 60, 4)} r/min`,
    ...PLACE,
  });
}

/** Refuses a trip that nothing could reach: it would be a bypass. */
function requireReachable(trip: Amplitude, { carried, type }: RaisedCase): void {
  if (carried === undefined || trip.value <= carried) return;
  throw new VeladisError("out-of-range", {
    expected: `a raised trip that sensor, loop and device can reach (${significant(carried, 4)} ${type}): beyond it, it would be a bypass`,
    received: format(trip),
    ...PLACE,
  });
}

/**
 * Alarm and trip within a range of speeds, what is left unprotected there told.
 *
 * @throws {@link VeladisError} `missing-fact` without a running speed or a trip, `out-of-range` for a range in which the
 *   machine runs and for a trip that cannot be reached
 */
export function raisedSetpoints({ factor, range, seconds }: CheckedRange, given: RaisedCase): RaisedSetpoints {
  const { running, carried } = given;
  requireBelowRunning(range, running);
  if (given.trip === null)
    throw new VeladisError("missing-fact", { expected: "a trip to be raised", received: "none", ...PLACE });
  const raised = (setpoint: ProposedSetpoint): Amplitude =>
    multipliedAmplitude(setpoint.stored, factor, "raised within a range of speeds");
  const trip = raised(given.trip);
  requireReachable(trip, given);
  const alarm = given.alarm === null ? null : raised(given.alarm);
  const speed = [range[0] * 60, range[1] * 60] as const;
  const where = `from ${significant(speed[0], 4)} to ${significant(speed[1], 4)} r/min`;
  return Object.freeze({
    factor,
    hertz: Object.freeze(range),
    speed: Object.freeze(speed),
    seconds,
    alarm,
    trip,
    unprotected: Object.freeze([
      `${where} nothing trips below ${format(trip)}: at running speed it would at ${format(given.trip.stored)}`,
      `a device that does not end the raised setpoint after ${plainNumber(seconds)} s leaves the machine without its trip for as long as it hangs within its speeds: prove it on the bench`,
      ...(seconds > given.longest
        ? [
            `raised for ${plainNumber(seconds)} s, longer than the ${plainNumber(given.longest)} s of delay that suit the machine: damage may be done by then; no longer than passing these speeds takes`,
          ]
        : []),
      "no limit of a scheme is for speeds that are passed: whether the machine stands the raised trip there is for its maker to say",
      ...(carried === undefined
        ? ["no full scale of sensor or loop is stated: whether anything can reach the raised trip is not known"]
        : []),
    ]),
    reasons: Object.freeze([setpointRules["raised setpoint"]]),
  });
}
