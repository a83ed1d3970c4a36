import { knownText } from "../core/index";
import { type Amplitude, format, parsedType, significant } from "../reading/index";
import type { Baseline } from "./baseline";
import { rangeWarnings } from "./loop-states";
import { LOWER_PLACE } from "./machine-limits";
import { differingModesText } from "./modes";
import { type Reason, setpointRules } from "./reason";
import type { SetpointLimits } from "./setpoint-limits";
import type { SetpointWarning } from "./setpoint-warnings";
import { unverifiedWarnings } from "./unverified-warnings";

/** What decides the warnings about limits and baseline. */
export interface LimitCase {
  readonly limits: SetpointLimits | null;
  /** All that the numbers rest on: limits, rules, delays, hysteresis. */
  readonly used: readonly Reason[];
  /** Level of the baseline, in `as`. */
  readonly base: Amplitude | null;
  readonly statistics: Baseline | null;
  /** The alarm that is proposed, if any. */
  readonly alarm: { readonly reasons: readonly Reason[] } | null;
  readonly as: string;
}

/** What of the other quantities that are limited too a setpoint in one quantity does not see. */
function quantityWarnings({ leftOut, atSpeedOnly, speedVaries }: SetpointLimits, as: string): SetpointWarning[] {
  const { quantity } = parsedType(as);
  const [speed, more] = speedVaries
    ? ["the lowest running speed", "speeds and frequencies"]
    : ["running speed", "frequencies"];
  const unguarded = `trip in ${quantity} alone leaves ${leftOut.join(" and ")} unguarded, which the scheme limits too: state the running speed, and its limits are taken in`;
  const above = `${atSpeedOnly.join(" and ")} is taken in at ${speed} only: what of it lies at higher ${more}, a trip in ${quantity} does not guard`;
  return [...(leftOut.length > 0 ? [unguarded] : []), ...(atSpeedOnly.length > 0 ? [above] : [])].map((text) => ({
    code: "other quantities",
    text,
  }));
}

/** What there is for an alarm where there are no limits. */
function alarmWithoutLimits({ alarm, statistics }: LimitCase): string {
  if (alarm?.reasons.includes(setpointRules["multiple of baseline"])) return "the alarm is a multiple of the baseline";
  if (statistics === null) return "one reading without limits gives no alarm either";
  if (statistics.standardDeviation === 0) return "readings that are all alike give no alarm either";
  return "the alarm is statistical";
}

const SHAFT_RULE =
  'rule "api shaft" knows no bearing: hold the trip against the clearance of the bearing; run-out of the shaft is in the reading unless it was subtracted; the handbook names neither the API standard nor its edition';

/** What is said of a highest setting below the limit that it has to be above: one of the two is wrong. */
function ceilingWarnings({ kind, lower, upper, ceilings }: SetpointLimits): SetpointWarning[] {
  if (kind === "operation" || ceilings === null) return [];
  const pairs = [[ceilings.alarm, lower] as const, ...(upper === null ? [] : [[ceilings.trip, upper] as const])];
  return pairs
    .filter(([ceiling, limit]) => ceiling.amplitude.value < limit.amplitude.value)
    .map(([ceiling, limit]) => ({
      code: "ceiling below limit",
      text: `the ${ceiling.text} (${format(ceiling.amplitude)}, ${knownText(ceiling.source)}) is below ${limit.text} (${knownText(limit.source)}): one of them is wrong; the lower is taken; check both against the same printed copy`,
    }));
}

/** What the table lacks, where there is no trip; whose the table is, and of which class. */
function noShutdownText({ schemes: [first], lower }: SetpointLimits): string {
  const table =
    first === undefined
      ? lower.text
      : `${first.standard} (${first.edition})${first.machineClass && `, ${first.machineClass}`}`;
  return `no trip: ${table} as it is here has no upper limit of zone C and no shutdown limit; take the maker's, or set it from the machine's history`;
}

/** The warning of a machine that runs above the limits; the uppermost that it is above is named. */
function zoneWarnings({ lower, upper }: SetpointLimits, base: Amplitude | null, as: string): SetpointWarning[] {
  if (base === null || base.value <= lower.amplitude.value) return [];
  const isBeyond = upper !== null && base.value > upper.amplitude.value;
  const limit = isBeyond ? upper : lower;
  return [
    {
      code: isBeyond ? "baseline in zone D" : "baseline in zone C",
      text: `the baseline of ${significant(base.value)} ${as} is above ${limit.text}: find the cause before setting an alarm from it`,
    },
  ];
}

function limitWarnings(given: LimitCase): SetpointWarning[] {
  const { limits, used, base, as } = given;
  const warnings = unverifiedWarnings(used);
  if (limits === null) {
    const text = `without a scheme or limits of the maker there is no trip to propose; ${alarmWithoutLimits(given)}`;
    return [{ code: "no limits", text }, ...warnings];
  }
  if (limits.rule === setpointRules["api shaft"]) warnings.unshift({ code: "shaft rule", text: SHAFT_RULE });
  warnings.push(...ceilingWarnings(limits));
  const { upper, schemes, assumedFacts, setAside, peaks = [] } = limits;
  if (schemes.length > 1) {
    const all = schemes.map(
      ({ scheme, upper: trip }) => `${scheme} ${trip === null ? "no trip" : `${significant(trip)} ${as}`}`,
    );
    warnings.push({
      code: "several schemes",
      text: `the facts given admit ${schemes.length} schemes, and the lowest trip is taken: ${all.join(", ")}`,
    });
  }
  const facts = assumedFacts.filter((text) => text !== LOWER_PLACE);
  if (facts.length < assumedFacts.length) warnings.push({ code: "unknown place", text: LOWER_PLACE });
  if (facts.length > 0) warnings.push({ code: "assumed facts", text: `assumed: ${facts.join("; ")}` });
  if (setAside.length > 0) warnings.push({ code: "set aside", text: `set aside: ${setAside.join("; ")}` });
  warnings.push(...peaks.map((text) => ({ code: "which peak", text }) as const));
  warnings.push(...zoneWarnings(limits, base, as));
  if (upper === null) {
    warnings.push({
      code: "no shutdown",
      text: noShutdownText(limits),
    });
  }
  warnings.push(...quantityWarnings(limits, as));
  return warnings;
}

/** The warnings that limits and baseline call for. */
export function caseWarnings(given: LimitCase): SetpointWarning[] {
  const warnings = limitWarnings(given);
  const { base, statistics } = given;
  if (base?.value === 0) {
    warnings.push({
      code: "baseline of zero",
      text: "a baseline of zero: a dead sensor or a stopped machine reads zero",
    });
  }
  if (base === null) warnings.push({ code: "no baseline", text: setpointRules["no baseline"].text });
  else if (statistics === null) {
    warnings.push({ code: "single baseline", text: "the baseline is one reading: nothing is known of its scatter" });
  }
  const ofReading = base?.state === undefined ? [] : rangeWarnings([base.state], 1);
  // what modes do to the setpoints is told by a warning of its own
  const ofModes = statistics?.modesDiffer ? differingModesText(statistics.modes ?? [], statistics.as) : undefined;
  const ofBaseline = statistics?.warnings.filter((text) => text !== ofModes);
  for (const text of ofBaseline ?? ofReading) warnings.push({ code: "poor baseline", text });
  return warnings;
}
