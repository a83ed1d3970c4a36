import { provenances, shown, VeladisError, visibleText } from "../core/index";
import { type Amplitude, type Assumption, format, historyOf, union } from "../reading/index";
import { proposeSetpoints, raisedText, saysMultiples, saysRaised } from "../setpoints/index";
import type { Scheme } from "../severity/index";
import { schemeAmong } from "./scheme-among";
import { type Report, wayWords } from "./value";

/** What phrases behind a machine say, each in a way of its own. */
interface Phrases {
  readonly scheme?: string;
  readonly multiples?: string;
  readonly raised?: string;
}

/** What each phrase is; two of a kind are refused. */
function phrasesOf(more: readonly string[]): Phrases {
  const all: { -readonly [Kind in keyof Phrases]: Phrases[Kind] } = {};
  for (const text of more) {
    const kind = saysMultiples(text) ? "multiples" : saysRaised(text) ? "raised" : "scheme";
    if (all[kind] !== undefined)
      throw new VeladisError("out-of-range", {
        expected: "one scheme, one text of multiples and one raised setpoint at the most",
        received: `${shown(all[kind])} and ${shown(text)}`,
      });
    all[kind] = text;
  }
  return all;
}

/** Setpoints proposed for a machine from its baseline, each with its first reason, and all that was assumed. */
export function proposed(
  baseline: Amplitude,
  machine: string,
  more: readonly string[],
  schemes: readonly Scheme[] | undefined,
): Report {
  const { scheme, ...asked } = phrasesOf(more);
  const proposal = proposeSetpoints({
    baseline,
    machine,
    ...(scheme !== undefined && { scheme: schemeAmong(scheme, schemes) }),
    ...(schemes !== undefined && { schemes }),
    ...asked,
  });
  const {
    alarm,
    trip,
    raised,
    delay,
    hysteresis,
    warnings,
    cautions,
    provenance,
    confirmed,
    verified,
    schemes: used,
  } = proposal;
  const assumed = union(baseline.assumed, proposal.assumed as readonly Assumption[]);
  const how = wayWords({ ...baseline, assumed });
  const row = (name: string, setpoint: typeof alarm): string[] =>
    setpoint === null ? [] : [`${name}: ${format(setpoint.stored)}  (${setpoint.reasons[0]?.text})`];
  return {
    report: [
      ...row("alarm", alarm),
      ...row("trip", trip),
      ...(raised === undefined ? [] : [`raised: ${raisedText(raised, proposal.as)}`]),
      `delay: alarm ${delay.alarm} s, trip ${delay.trip} s; hysteresis ${hysteresis.percent} %`,
      ...used.slice(0, 1).map(({ standard, edition }) => `  by ${standard} (${edition})`),
      ...(how === "" ? [] : [`  assumed: ${how}`]),
      ...(verified ? [] : [`  limits or rules ${provenances[provenance].text}: check them against the standard`]),
      ...confirmed.map((text) => `  limits ${text}`),
      ...warnings.map(({ text }) => `  warning: ${text}`),
      ...cautions.map((caution) => `  caution: ${caution}`),
    ]
      .map(visibleText)
      .join("\n"),
    data: Object.freeze(Object.assign({ history: historyOf(baseline) }, proposal, { assumed })),
  };
}
