import { type ConvertedAmplitude, convertedAt } from "../amplitude/index";
import {
  cautions,
  differencesOf,
  isVerified,
  requireNonNegative,
  signaturesOf,
  withParameters,
  worstProvenance,
} from "../core/index";
import { deviceType } from "../device/index";
import { type Amplitude, type Assumption, union } from "../reading/index";
import { parseMachine } from "../severity/index";
import { baselineOf } from "./baseline-of-request";
import { caseWarnings } from "./case-warnings";
import { type DelayAdvice, delayAdvice } from "./delay-advice";
import { firstWarnings } from "./first-warnings";
import { limitsOfRequest } from "./limits-of-request";
import { modeWarnings } from "./mode-warnings";
import { lowestMode } from "./modes";
import { multipleTarget } from "./multiple-target";
import { STATED_MULTIPLES } from "./multiples";
import { carriedMost, numberWarnings } from "./number-warnings";
import { placedSetpoint } from "./placed-setpoint";
import type { Proposal } from "./proposal";
import { type ProposalRequest, requireRequest } from "./proposal-request";
import { raisedSetpoints } from "./raised";
import { readingsAtTrip } from "./readings-at-trip";
import { setpointRules } from "./reason";
import { fixedHertz, runningSpeed } from "./running-speed";
import { alarmTarget, hysteresisFor, type Target, tripTarget } from "./setpoint-targets";
import type { SetpointWarning } from "./setpoint-warnings";
import { statisticAmplitude } from "./statistic-amplitude";
import { statisticalAlarm } from "./statistical-alarm";
import { uncertainWarnings } from "./uncertain-warnings";
import { rulesAmong } from "./unverified-warnings";

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
    const {
      limits: own,
      machine,
      sensor,
      device,
      k,
      onDelay,
      multiples,
      raised: range,
      ...given
    } = requireRequest(request);
    const facts = typeof machine === "string" ? parseMachine(machine) : machine;
    const hertz = fixedHertz(facts);
    const { statistics, level, type: baselineType } = baselineOf(given.baseline, own);
    const as = deviceType(device, baselineType ?? "mm/s rms");
    const here = (amplitude: Amplitude): ConvertedAmplitude => convertedAt(amplitude, as, hertz);
    const base = level === null ? null : here(level);
    const limits = limitsOfRequest(request, as, hertz);
    const inDevice = (value: number): number => here(statisticAmplitude(value, "scatter", level as Amplitude)).value;
    const ofModes = statistics === null ? [] : modeWarnings(statistics, limits, inDevice);
    const statisticalOf = (readings: Parameters<typeof statisticalAlarm>[0]) =>
      here(statisticalAlarm(readings, level as Amplitude, k));
    const statistical =
      statistics === null || statistics.modesDiffer || statistics.standardDeviation === 0
        ? null
        : {
            all: statisticalOf(statistics),
            withoutOutliers: statisticalOf(statistics.withoutOutliers),
            reasons: [setpointRules.statistical],
          };
    const warnings: SetpointWarning[] = [];
    const byMultiple = (name: "alarm" | "trip", byRules: Target | null): Target | null => {
      const times = multiples[name];
      if (times === undefined) return byRules;
      const { target, warnings: ofMultiple } = multipleTarget({ name, times, base, limits, byRules });
      warnings.push(...ofMultiple);
      return target;
    };
    const alarmByRules: Target | null =
      limits !== null
        ? alarmTarget(base, limits)
        : statistical === null
          ? null
          : {
              amplitude: statistical.all,
              range: [Math.min(base?.value ?? 0, statistical.all.value), statistical.all.value],
              reasons: statistical.reasons,
            };
    const alarmWanted = byMultiple("alarm", alarmByRules);
    const spread = statistics === null ? undefined : inDevice((lowestMode(statistics) ?? statistics).spread);
    const hysteresis = hysteresisFor(spread, alarmWanted?.amplitude.value);
    const placing = {
      device,
      hertz,
      base,
      hysteresis: hysteresis.percent,
      warn: (one: SetpointWarning) => warnings.push(one),
    };
    const alarm = alarmWanted && placedSetpoint(alarmWanted, "alarm", placing);
    const below = [base, alarm?.stored ?? alarmWanted?.amplitude];
    const tripWanted = byMultiple("trip", limits === null ? null : tripTarget(limits, below));
    const trip = tripWanted && placedSetpoint(tripWanted, "trip", placing);
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
    const raised =
      range === undefined
        ? null
        : raisedSetpoints(range, {
            ...{ alarm, trip, type: as, running: runningSpeed(facts)?.hertz, longest: delay.longest },
            carried: carriedMost({ sensor, device, hertz, type: as }),
          });
    const used = [
      ...(limits?.compared ?? []),
      ...rulesAmong(
        [alarm ?? alarmWanted, trip ?? tripWanted, statistical, raised].flatMap((one) => one?.reasons ?? []),
      ),
      ...(Object.keys(multiples).length > 0 ? [{ text: "multiples of the baseline", source: STATED_MULTIPLES }] : []),
      ...delay.reasons.map(({ source }) => ({ text: "delays", source })),
      ...hysteresis.reasons.map(({ source }) => ({ text: "hysteresis", source })),
    ];
    const sources = used.map(({ source }) => source);
    const provenance = worstProvenance(sources.map((one) => one.provenance));
    warnings.unshift(
      ...firstWarnings(alarm, trip, base),
      ...readingsAtTrip(trip, statistics, inDevice),
      ...uncertainWarnings({ alarm, trip }, base),
    );
    warnings.push(
      ...caseWarnings({ limits, used, base, statistics, as, alarm: alarm ?? alarmWanted }),
      ...ofModes,
      ...numbers.warnings,
      ...(raised?.unprotected ?? []).map((text) => ({ code: "raised setpoint", text }) as const),
      ...delayWarning(onDelay, delay, facts?.type),
    );
    for (const text of differencesOf(sources)) warnings.unshift({ code: "differing copy", text });
    const parts = [base, limits, statistical?.all, alarm, trip, numbers];
    return Object.freeze({
      as,
      baseline: base?.value ?? null,
      alarm,
      trip,
      ...(limits && {
        limits: {
          kind: limits.kind,
          lower: limits.lower.amplitude.value,
          upper: limits.upper?.amplitude.value ?? null,
        },
      }),
      ...(raised && { raised }),
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
