import { type Amplitude, format } from "../../reading/index";
import { rangeText } from "../../setpoints/index";
import type { CitedSources } from "./cited-sources";
import { bullets, section, table } from "./list-parts";
import type { MachineReport } from "./machine-report";
import { type Markup, markup } from "./markup";

const titles = ["setpoint", "as set", "proposed", "the rules allow", "clears below"];

function setText(set: Amplitude | undefined): string {
  return set === undefined ? "not in the list" : format(set);
}

/** Alarm and trip as they are set, and as the rules propose them; nothing is changed by it. */
export function setpointsSection({ machine, proposal }: MachineReport, sources: CitedSources): Markup | undefined {
  const { alarm, trip, alarmDelay, tripDelay } = machine;
  if (proposal === undefined) {
    if (alarm === undefined && trip === undefined) return undefined;
    const rows = [
      ["ALARM", setText(alarm)],
      ["TRIP", setText(trip)],
    ];
    return section(
      "setpoints",
      "Setpoints",
      table("Setpoints as set; none are proposed", titles.slice(0, 2), rows),
    );
  }
  const row = (name: string, set: Amplitude | undefined, proposed: typeof proposal.alarm): string[] =>
    proposed === null
      ? [name, setText(set), "none", "", ""]
      : [name, setText(set), format(proposed.stored), `${rangeText(proposed)} ${proposal.as}`, format(proposed.reset)];
  const { delay, hysteresis, warnings, statistical } = proposal;
  const delayRow = [
    "on-delay",
    [alarmDelay, tripDelay].map((one) => (one === undefined ? "-" : `${one} s`)).join(", "),
    `${delay.alarm} s, ${delay.trip} s`,
    `up to ${delay.longest} s`,
    "",
  ];
  const reasons = [
    ...(proposal.alarm?.reasons ?? []),
    ...(proposal.trip?.reasons ?? []),
    ...(statistical?.reasons ?? []),
    ...delay.reasons,
    ...hysteresis.reasons,
  ];
  const told = new Map(reasons.map((reason) => [reason.text, reason.source]));
  return section(
    "setpoints",
    "Setpoints",
    markup`<p>A proposal for the person who answers for the machine. Nothing was changed by it.</p>\n`,
    table(
      "Setpoints as set and as proposed",
      titles,
      [row("ALARM", alarm, proposal.alarm), row("TRIP", trip, proposal.trip), delayRow],
    ),
    bullets(warnings.map(({ text }) => text)),
    markup`<h3>Why</h3>\n`,
    bullets([...told].map(([text, source]) => markup`${text} ${sources.cite(source)}`)),
  );
}
