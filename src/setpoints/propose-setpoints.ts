import { type ConvertedAmplitude, convertedAt, multipliedAmplitude } from "../amplitude/index";
import {
  cautions,
  differencesOf,
  isVerified,
  requireNonNegative,
  signaturesOf,
  VeladisError,
  withParameters,
  worstProvenance,
} from "../core/index";
import { type Device, deviceType, setpointInDevice } from "../device/index";
import { type Amplitude, type Assumption, format, union } from "../reading/index";
import { parseMachine } from "../severity/index";
import { limitsOfApiShaft } from "./api-shaft-limits";
import { baselineOf } from "./baseline-of-request";
import { caseWarnings } from "./case-warnings";
import { type DelayAdvice, delayAdvice } from "./delay-advice";
import { firstWarnings, reaches } from "./first-warnings";
import { limitsOfMachine } from "./machine-limits";
import { numberWarnings } from "./number-warnings";
import { limitsOfSite } from "./own-limits";
import type { Proposal, ProposedSetpoint } from "./proposal";
import { type ProposalRequest, requireRequest } from "./proposal-request";
import { setpointRules } from "./reason";
import { fixedHertz, runningSpeed } from "./running-speed";
import { limitsOfScheme } from "./scheme-limits";
import type { SetpointLimits } from "./setpoint-limits";
import { alarmTarget, hysteresisFor, type Target, tripTarget } from "./setpoint-targets";
import type { SetpointWarning } from "./setpoint-warnings";
import { statisticAmplitude } from "./statistic-amplitude";
import { statisticalAlarm } from "./statistical-alarm";
import { uncertainWarnings } from "./uncertain-warnings";
import { rulesAmong } from "./unverified-warnings";

/** How a target is brought to a device. */
interface Placing {
  readonly device: Device;
  readonly hertz: number | undefined;
  /** The level that the machine runs at. */
  readonly base: Amplitude | null;
  /** Percent of the setpoint. */
  readonly hysteresis: number;
  readonly warn: (warning: SetpointWarning) => void;
}

/** A target as the device holds it; null, with a warning, where it cannot. */
function placed(
  target: Target,
  name: string,
  { device, hertz, base, hysteresis, warn }: Placing,
): ProposedSetpoint | null {
  const { amplitude, range } = target;
  const own = amplitude.hertz ?? hertz;
  const asked = own === undefined ? amplitude : { ...amplitude, hertz: own };
  try {
    const inSteps = setpointInDevice(asked, device, own === undefined ? undefined : { hertz: own }, "down");
    const reset = multipliedAmplitude(inSteps.stored, 1 - hysteresis / 100, `less a hysteresis of ${hysteresis} %`);
    const reasons = inSteps.difference === 0 ? target.reasons : [...target.reasons, setpointRules["device steps"]];
    if (inSteps.difference !== 0 && inSteps.stored.value < asked.value * 0.9) {
      warn({ code: "coarse steps", text: `${name}: ${inSteps.effect}` });
    }
    return Object.freeze({
      ...inSteps,
      reset,
      range,
      atOnce: reaches(base, inSteps.stored),
      reasons: Object.freeze(reasons),
    });
  } catch (error) {
    if (!(error instanceof VeladisError) || error.code !== "out-of-range") throw error;
    warn({ code: "beyond device", text: `${name} of ${format(asked)}: ${error.message}` });
    return null;
  }
}

/** The warning for a planned delay that is longer than suits the machine. */
function delayWarning(planned: number | undefined, { longest }: DelayAdvice, kind = "machine"): SetpointWarning[] {
  if (planned === undefined || requireNonNegative(planned, "onDelay: a time of zero or more, in s") <= longest)
    return [];
  return [
    {
      code: "long delay",
      text: `a trip delay of ${planned} s is longer than the ${longest} s that suit a ${kind}: damage may be done by then`,
    },
  ];
}

/** The limits to set from: those of the site, of the scheme that is named, or of those that the machine's facts admit. */
function limitsOf(
  { limits: own, scheme, schemes, machine, rule }: ProposalRequest,
  type: string,
  hertz: number | undefined,
): SetpointLimits | null {
  if (rule !== undefined) return limitsOfApiShaft(typeof machine === "string" ? parseMachine(machine) : machine, type);
  if (own !== undefined) return limitsOfSite(own, type, hertz);
  if (scheme === "none") return null;
  const question = { type, running: runningSpeed(machine) };
  if (scheme !== undefined) return limitsOfScheme({ ...question, scheme, machine });
  return machine === undefined ? null : limitsOfMachine(machine, question, schemes);
}

/**
 * Alarm and trip for a machine, with delay, hysteresis, warnings, and the reason and source of every number.
 *
 * ALARM is the baseline plus a quarter of the upper limit of zone B, at most 1.25 times that limit. TRIP is the upper
 * limit of zone C; the range it may lie in ends at 1.25 times that limit. Both are rounded down to the steps of the
 * device. Without a scheme and limits of the maker, the schemes are those by which {@link judge} judges the machine: of
 * several that its facts admit, the lowest limits; facts not given are taken for their lower limits, and named, and so is
 * the lower of housing and shaft for a displacement of unknown place. Where a scheme limits other quantities too, its
 * limits are carried to that of the setpoints by the running speed, the lowest of a range, and the lowest of all govern.
 * Without a machine, or with the scheme `"none"`, only a statistical alarm is given, and no trip.
 *
 * @throws {@link VeladisError} `missing-fact`, `missing-frequency`, and as {@link limitsFor} and {@link storedSetpoint}
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { explain } from "veladis/explain";
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
 * proposal.alarm && explain(proposal.alarm.asked).text.split("\n");
 * // => ["2 mm/s rms  (baseline)", "4.5 mm/s rms  (B/C of maker of the circulation pump)",
 * //   "4.5 mm/s rms x 0.25 = 1.125 mm/s rms  (a quarter of the limit)",
 * //   "2 mm/s rms + 1.125 mm/s rms = 3.125 mm/s rms  (alarm)"]
 * proposal.trip?.stored.value; // => 7.1
 * proposal.trip?.range; // => [4.5, 8.875]
 * proposal.delay.trip; // => 3
 * proposal.warnings.map(({ code }) => code); // => ["unverified limits or rules", "single baseline"]
 * // velocity is limited too, and at running speed its limit is the lower
 * const { trip } = proposeSetpoints({ baseline: "30 um pp", machine: "motor 400 kW 3570 r/min rigid housing" });
 * trip?.stored.value.toFixed(1); // => "53.7"
 * trip?.reasons[1]?.text; // => "C/D of velocity 7.10 mm/s rms, at running speed 59.5 Hz, of ISO 20816-3:2022"
 * const machine = "pump 90 kW 2980 r/min category II";
 * proposeSetpoints({ baseline: "2.2 mm/s rms", machine }).schemes.map(({ scheme }) => scheme); // => ["iso-10816-7-2009"]
 * ```
 */
export function proposeSetpoints(request: ProposalRequest): Proposal {
  return withParameters({ request }, () => {
    const { limits: own, machine, sensor, device, k, onDelay, ...given } = requireRequest(request);
    const facts = typeof machine === "string" ? parseMachine(machine) : machine;
    const hertz = fixedHertz(facts);
    const { statistics, level, type: baselineType } = baselineOf(given.baseline, own);
    const as = deviceType(device, baselineType ?? "mm/s rms");
    const here = (amplitude: Amplitude): ConvertedAmplitude => convertedAt(amplitude, as, hertz);
    const base = level === null ? null : here(level);
    const limits = limitsOf(request, as, hertz);
    const statisticalOf = (readings: Parameters<typeof statisticalAlarm>[0]) =>
      here(statisticalAlarm(readings, level as Amplitude, k));
    const statistical =
      statistics === null || statistics.standardDeviation === 0
        ? null
        : {
            all: statisticalOf(statistics),
            withoutOutliers: statisticalOf(statistics.withoutOutliers),
            reasons: [setpointRules.statistical],
          };
    const alarmWanted: Target | null =
      limits !== null
        ? alarmTarget(base, limits)
        : statistical === null
          ? null
          : {
              amplitude: statistical.all,
              range: [Math.min(base?.value ?? 0, statistical.all.value), statistical.all.value],
              reasons: statistical.reasons,
            };
    const inDevice = (value: number): number => here(statisticAmplitude(value, "scatter", level as Amplitude)).value;
    const spread = statistics === null ? undefined : inDevice(statistics.spread);
    const hysteresis = hysteresisFor(spread, alarmWanted?.amplitude.value);
    const warnings: SetpointWarning[] = [];
    const placing = {
      device,
      hertz,
      base,
      hysteresis: hysteresis.percent,
      warn: (one: SetpointWarning) => warnings.push(one),
    };
    const alarm = alarmWanted && placed(alarmWanted, "alarm", placing);
    const tripWanted = limits === null ? null : tripTarget(limits, [base, alarm?.stored ?? alarmWanted?.amplitude]);
    const trip = tripWanted && placed(tripWanted, "trip", placing);
    const delay = delayAdvice(facts?.type, hertz);
    const numbers = numberWarnings({
      scatter:
        statistics === null || base === null || spread === undefined
          ? null
          : Math.max(base.value + 3 * spread, inDevice(statistics.percentile.value)),
      alarm: alarm?.stored ?? null,
      trip: trip?.stored ?? null,
      ...{ hertz, sensor, device, type: as },
    });
    const used = [
      ...(limits?.compared ?? []),
      ...rulesAmong([alarm ?? alarmWanted, trip ?? tripWanted, statistical].flatMap((one) => one?.reasons ?? [])),
      ...delay.reasons.map(({ source }) => ({ text: "delays", source })),
      ...hysteresis.reasons.map(({ source }) => ({ text: "hysteresis", source })),
    ];
    const sources = used.map(({ source }) => source);
    const provenance = worstProvenance(sources.map((one) => one.provenance));
    warnings.unshift(...firstWarnings(alarm, trip, base), ...uncertainWarnings({ alarm, trip }, base));
    warnings.push(
      ...caseWarnings({ limits, used, base, statistics, as }),
      ...numbers.warnings,
      ...delayWarning(onDelay, delay, facts?.type),
    );
    for (const text of differencesOf(sources)) warnings.unshift({ code: "differing copy", text });
    const parts = [base, limits, statistical?.all, alarm, trip, numbers];
    return Object.freeze({
      as,
      baseline: base?.value ?? null,
      alarm,
      trip,
      statistical: statistical && {
        k,
        value: statistical.all.value,
        withoutOutliers: statistical.withoutOutliers.value,
        reasons: statistical.reasons,
      },
      delay,
      hysteresis,
      warnings: Object.freeze(warnings),
      schemes: Object.freeze(limits?.schemes ?? []),
      assumedFacts: Object.freeze(limits?.assumedFacts ?? []),
      setAside: Object.freeze(limits?.setAside ?? []),
      assumed: parts.reduce<readonly Assumption[]>((all, one) => union(all, one?.assumed), []),
      provenance,
      verified: isVerified(provenance),
      confirmed: Object.freeze(signaturesOf(sources)),
      cautions,
    });
  });
}
