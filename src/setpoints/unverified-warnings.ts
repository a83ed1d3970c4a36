import { isVerified, provenances, type Source } from "../core/index";
import { AS_STATED } from "./own-limits";
import { type Reason, setpointRules } from "./reason";
import type { SetpointWarning } from "./setpoint-warnings";

/** The rules in a few words; a highest setting has a name of its own, as limits have. */
const ruleNames = {
  "alarm from baseline": "ALARM by the baseline",
  "alarm below zone C": "ALARM below zone C",
  "alarm cap": "ALARM at most 1.25 times B/C",
  "trip nature": "TRIP apart from the baseline",
  "trip cap": "TRIP at most 1.25 times C/D",
  "trip proposed": "TRIP at C/D",
  statistical: "mean plus k standard deviations",
  "fan limits": "ALARM and TRIP at the limits for fans",
  "api shaft": "ALARM and TRIP by API for the shaft",
  "multiple of baseline": "setpoints as multiples of the baseline",
  "raised setpoint": "raised setpoint",
  "no baseline": "first ALARM without a baseline",
  "device steps": "steps of the device",
} as const satisfies Readonly<Record<Exclude<keyof typeof setpointRules, "printed ceiling">, string>>;

/** The rules among some reasons, in a few words. */
export function rulesAmong(reasons: readonly Reason[]): Reason[] {
  return (Object.keys(ruleNames) as (keyof typeof ruleNames)[]).flatMap((name) => {
    const { text, source } = setpointRules[name];
    return reasons.some((one) => one.text === text) ? [{ text: ruleNames[name], source }] : [];
  });
}

/** How a source is known, in words; of the user's own limits that they are so. */
function wordsOf({ provenance, note }: Source): string {
  return note === AS_STATED ? AS_STATED : provenances[provenance].text;
}

/** What is said of limits and rules that were not checked against a printed copy: each of them, the least known first. */
export function unverifiedWarnings(used: readonly Reason[]): SetpointWarning[] {
  const open = used.filter(({ source }) => !isVerified(source.provenance));
  const grades = Object.values(provenances).map(({ text }) => text);
  const groups = [...new Set([provenances.memory.text, AS_STATED, ...grades])].flatMap((grade) => {
    const names = open.filter(({ source }) => wordsOf(source) === grade).map(({ text }) => text);
    return names.length === 0 ? [] : [`${grade} (${[...new Set(names)].join(", ")})`];
  });
  if (groups.length === 0) return [];
  return [
    {
      code: "unverified limits or rules",
      text: `limits and rules that are not verified, the least known first: ${groups.join("; ")}; check them against a printed copy`,
    },
  ];
}
