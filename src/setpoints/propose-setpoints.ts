import { type Amplitude, amplitudeIn, convertAmplitude, format } from "../amplitude/index";
import { cautions, given, held as holdable, knownKeys, nonNegative, positive, VeladisError } from "../core/index";
import { type Device, deviceType, requireDevice, type StoredSetpoint, storedSetpoint } from "../device/index";
import { hertz as hertzOf } from "../frequency/index";
import { type MachineRef, parseMachine, type SchemeRef } from "../severity/index";
import type { Baseline } from "./baseline";
import { caseWarnings } from "./case-warnings";
import { type DelayAdvice, delayAdvice } from "./delay-advice";
import { numberWarnings } from "./number-warnings";
import { baselineOf, inDevice } from "./proposal-baseline";
import { type Reason, setpointRules } from "./reason";
import { limitsOfScheme, limitsOfSite, type OwnLimits } from "./setpoint-limits";
import { alarmTarget, hysteresisFor, type Target, tripTarget } from "./setpoint-targets";
import type { SensorLimits, SetpointWarning } from "./setpoint-warnings";

/** What {@link proposeSetpoints} is told. */
export interface ProposalRequest {
  /** Statistics by {@link baseline}, one reading such as `"2 mm/s rms"`, or `"none"`. */
  readonly baseline: Baseline | Amplitude | string;
  /** The severity table, by id or as data. */
  readonly scheme?: SchemeRef;
  /** Limits of the maker or the site, in place of a scheme. */
  readonly limits?: OwnLimits;
  /** The machine, as the scheme asks for it; its type and speed also decide the delays. */
  readonly machine?: MachineRef;
  readonly sensor?: SensorLimits;
  readonly device?: Device;
  /** Standard deviations above the mean of the statistical alternative; 3 if not given. */
  readonly k?: number;
  /** On-delay of the trip that is planned, in seconds, to be judged. */
  readonly onDelay?: number;
}

const keys: Readonly<Record<keyof ProposalRequest, true>> = /* @__PURE__ */ Object.freeze({
  baseline: true,
  scheme: true,
  limits: true,
  machine: true,
  sensor: true,
  device: true,
  k: true,
  onDelay: true,
});

const sensorKeys: Readonly<Record<keyof SensorLimits, true>> = /* @__PURE__ */ Object.freeze({
  noiseFloor: true,
  fullScale: true,
  loop: true,
});

/** A proposed setpoint: what the rules give, what to enter and what the device holds. */
export interface ProposedSetpoint extends StoredSetpoint {
  /** The level below which the output clears, in the device's unit, with the proposed hysteresis. */
  readonly reset: Amplitude;
  /** The lowest and highest that the rules allow, in the device's unit. */
  readonly range: readonly [lowest: number, highest: number];
  readonly reasons: readonly Reason[];
}

/** Proposed settings with the reason and the source of every number. */
export interface Proposal {
  /** Unit and detector of the setpoints. */
  readonly as: string;
  /** Baseline level the rules started from, in the device's unit; null without one. */
  readonly baseline: number | null;
  readonly alarm: ProposedSetpoint | null;
  readonly trip: ProposedSetpoint | null;
  /** Mean + k standard deviations, beside the rule; null for a baseline without scatter. */
  readonly statistical: {
    readonly k: number;
    /** Of all steady readings. */
    readonly value: number;
    /** The same without the readings flagged as outliers. */
    readonly withoutOutliers: number;
    readonly reasons: readonly Reason[];
  } | null;
  readonly delay: DelayAdvice;
  /** Percent of the threshold. */
  readonly hysteresis: { readonly percent: number; readonly reasons: readonly Reason[] };
  readonly warnings: readonly SetpointWarning[];
  readonly assumed: readonly string[];
  /** False when a limit or rule used is recalled and was not read in print. */
  readonly verified: boolean;
  readonly cautions: readonly string[];
}

/**
 * Alarm and trip for a machine, with delay, hysteresis, warnings, and the reason and source of every number.
 *
 * ALARM is the baseline plus a quarter of the upper limit of zone B, at most 1.25 times that limit. TRIP is the upper
 * limit of zone C; the range it may lie in ends at 1.25 times that limit. Both are rounded down to the steps of the
 * device. Without a scheme or limits of the maker only a statistical alarm is given, and no trip.
 *
 * @throws {@link VeladisError} `missing-fact`, `missing-frequency`, and as {@link limitsFor} and {@link storedSetpoint}
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { proposeSetpoints } from "veladis/protection";
 *
 * const proposal = proposeSetpoints({
 *   baseline: "2 mm/s rms",
 *   limits: { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker of the circulation pump" },
 *   machine: "pump 1490 r/min",
 *   device: { step: "0.1 mm/s rms" },
 * });
 * proposal.alarm?.asked.value; // => 3.125
 * proposal.alarm && format(proposal.alarm.stored, { digits: 2 }); // => "3.1 mm/s rms"
 * proposal.trip?.stored.value; // => 7.1
 * proposal.trip?.range; // => [4.5, 8.875]
 * proposal.delay.trip; // => 3
 * proposal.warnings.map(({ code }) => code); // => ["unverified limits", "single baseline"]
 * ```
 */
export function proposeSetpoints(request: ProposalRequest): Proposal {
  const {
    scheme,
    limits: own,
    machine,
    sensor = {},
    device = {},
    k = 3,
  } = given(request, "a request with baseline, and scheme or limits");
  knownKeys(request, keys, "a part of a request for setpoints");
  requireDevice(device);
  knownKeys(
    given(sensor, 'limits of a sensor such as { fullScale: "50 g pk" }; {} where nothing is known of it'),
    sensorKeys,
    "a limit of a sensor",
  );
  positive(k, "a number of standard deviations above zero");
  const facts = typeof machine === "string" ? parseMachine(machine) : machine;
  const hertz = facts?.speed === undefined ? undefined : hertzOf(facts.speed);
  const { statistics, level, type: baselineType } = baselineOf(request.baseline, own);
  const as = deviceType(device, baselineType ?? "mm/s rms");
  const at = hertz === undefined ? {} : { at: { hertz } };
  const assumed = new Set<string>();
  const here = (value: number): number => {
    const answer = convertAmplitude(amplitudeIn(baselineType ?? as, value), as, at);
    for (const name of answer.assumed) assumed.add(name);
    return answer.value;
  };
  const base = level === null ? null : here(level);
  const limits =
    own !== undefined
      ? limitsOfSite(own, as, hertz)
      : scheme === undefined
        ? null
        : limitsOfScheme(scheme, machine, as, hertz);

  const limitOf = ({ mean, standardDeviation }: Baseline["withoutOutliers"]): number =>
    here(holdable(mean + k * standardDeviation));
  for (const name of limits?.assumed ?? []) assumed.add(name);
  const statistical =
    statistics === null || statistics.standardDeviation === 0
      ? null
      : {
          k,
          value: limitOf(statistics),
          withoutOutliers: limitOf(statistics.withoutOutliers),
          reasons: [setpointRules.statistical],
        };
  const alarmWanted: Target | null =
    limits !== null
      ? alarmTarget(base, limits)
      : statistical === null
        ? null
        : { value: statistical.value, range: [base ?? 0, statistical.value], reasons: statistical.reasons };
  const tripWanted = limits === null ? null : tripTarget(limits);
  const scatter = statistics === null ? null : inDevice(statistics, here, as);
  const hysteresis = hysteresisFor(scatter, alarmWanted?.value);
  const warnings: SetpointWarning[] = [];

  const placed = (target: Target | null, name: string): ProposedSetpoint | null => {
    if (target === null) return null;
    const asked = amplitudeIn(as, target.value, hertz);
    try {
      const held = storedSetpoint(asked, device, hertz === undefined ? undefined : { hertz }, "down");
      const reset = { ...held.stored, value: held.stored.value * (1 - hysteresis.percent / 100) };
      const reasons = held.difference === 0 ? target.reasons : [...target.reasons, setpointRules["device steps"]];
      if (held.difference !== 0 && held.stored.value < target.value * 0.9) {
        warnings.push({ code: "coarse steps", text: `${name}: ${held.effect}` });
      }
      return Object.freeze({ ...held, reset, range: target.range, reasons: Object.freeze(reasons) });
    } catch (error) {
      if (!(error instanceof VeladisError) || error.code !== "out-of-range") throw error;
      warnings.push({ code: "beyond device", text: `${name} of ${format(asked)}: ${error.message}` });
      return null;
    }
  };
  const alarm = placed(alarmWanted, "alarm");
  const trip = placed(tripWanted, "trip");

  const delay = delayAdvice(facts?.type, hertz);
  warnings.push(...caseWarnings({ limits, ofSite: own !== undefined, base, statistics, as }));
  warnings.push(
    ...numberWarnings({
      baseline: scatter,
      alarm: alarm?.stored ?? null,
      trip: trip?.stored ?? null,
      hertz,
      sensor,
      device,
      type: as,
    }),
  );
  const planned =
    request.onDelay === undefined ? undefined : nonNegative(request.onDelay, "onDelay: a time of zero or more, in s");
  if (planned !== undefined && planned > delay.longest) {
    warnings.push({
      code: "long delay",
      text: `a trip delay of ${planned} s is longer than the ${delay.longest} s that suit a ${facts?.type ?? "machine"}: damage may be done by then`,
    });
  }
  return Object.freeze({
    as,
    baseline: base,
    alarm,
    trip,
    statistical,
    delay,
    hysteresis,
    warnings: Object.freeze(warnings),
    assumed: Object.freeze([...assumed]),
    verified:
      alarm !== null &&
      [...alarm.reasons, ...(trip?.reasons ?? [])].every(({ source }) => source.provenance === "published"),
    cautions,
  });
}
