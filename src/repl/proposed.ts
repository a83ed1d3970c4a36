import { provenances, visibleText } from "../core/index";
import { type Amplitude, type Assumption, format, historyOf, union } from "../reading/index";
import { proposeSetpoints } from "../setpoints/index";
import { schemeById } from "../severity/index";
import { type Report, wayWords } from "./value";

/** Setpoints proposed for a machine from its baseline, each with its first reason, and all that was assumed. */
export function proposed(baseline: Amplitude, machine: string, scheme: string | undefined): Report {
  const proposal = proposeSetpoints({ baseline, machine, ...(scheme !== undefined && { scheme: schemeById(scheme) }) });
  const { alarm, trip, delay, hysteresis, warnings, cautions, provenance, verified, schemes } = proposal;
  const assumed = union(baseline.assumed, proposal.assumed as readonly Assumption[]);
  const how = wayWords({ ...baseline, assumed });
  const row = (name: string, setpoint: typeof alarm): string[] =>
    setpoint === null ? [] : [`${name}: ${format(setpoint.stored)}  (${setpoint.reasons[0]?.text})`];
  return {
    report: [
      ...row("alarm", alarm),
      ...row("trip", trip),
      `delay: alarm ${delay.alarm} s, trip ${delay.trip} s; hysteresis ${hysteresis.percent} %`,
      ...schemes.slice(0, 1).map(({ standard, edition }) => `  by ${standard} (${edition})`),
      ...(how === "" ? [] : [`  assumed: ${how}`]),
      ...(verified ? [] : [`  limits or rules ${provenances[provenance].text}: check them against the standard`]),
      ...warnings.map(({ text }) => `  warning: ${text}`),
      ...cautions.map((caution) => `  caution: ${caution}`),
    ]
      .map(visibleText)
      .join("\n"),
    data: Object.freeze(Object.assign({ history: historyOf(baseline) }, proposal, { assumed })),
  };
}
