import type { StoredSetpoint } from "../../device/index";
import { significant } from "../../reading/index";
import { proposalCitations } from "../../report/index";
import {
  askedHeading,
  type Baseline,
  type Proposal,
  type ProposedSetpoint,
  raisedText,
  rangeText,
  type SetpointWarningCode,
  scaleOfProposal,
} from "../../setpoints/index";
import { assumptionLines } from "./assumption-lines";
import { labelled } from "./labelled";
import { scaleText } from "./scale-text";
import { textTable } from "./text-table";
import { dashed, wrapped } from "./wrapped";

function row(name: string, setpoint: ProposedSetpoint | null): string[] {
  if (setpoint === null) return [name, "none", "-", "-", "-"];
  const { asked, stored, reset } = setpoint;
  return [
    name,
    significant(asked.value, 4),
    significant(stored.value, 4),
    significant(reset.value, 4),
    rangeText(setpoint),
  ];
}

/** Reasons with the number of their source, and the sources below. */
function reasonsText(proposal: Proposal): string {
  const { reasons, sources } = proposalCitations(proposal);
  const indent = " ".repeat(13);
  return (
    reasons.map(({ about, text }) => wrapped(text, indent, about.padEnd(13))).join("") +
    `\nsources of the rules\n${sources.map(({ number, text }) => wrapped(text, "    ", `[${number}] `)).join("")}`
  );
}

/** A baseline, in a line or two, with the columns of its file, and how many rows were left out unread. */
export function baselineText(
  { as, count, excluded, median, mean, standardDeviation, spread, outliers }: Baseline,
  columns: string | undefined,
  unread = 0,
): string {
  const left = `${excluded > 0 ? `, ${excluded} left out` : ""}${unread > 0 ? `, ${unread} not readable` : ""}`;
  return (
    `baseline of ${count} readings${left}: median ${significant(median, 4)} ${as}, mean ${significant(mean, 4)}, ` +
    `standard deviation ${significant(standardDeviation)}, robust spread ${significant(spread)}, outliers ${outliers.length}${columns === undefined ? "" : `; ${columns}`}\n\n`
  );
}

/** What a device makes of a setpoint that was asked for. */
export function storedText({ effect }: StoredSetpoint): string {
  return wrapped(`as asked     ${effect}`, " ".repeat(13), "");
}

const SCALE_KEY = "█ is the level, ··· what the rules allow or how far the readings of the baseline reach, │ a limit";

/** A proposal on one scale, in block characters. */
export function proposalPlot(
  proposal: Proposal,
  beside: NonNullable<Parameters<typeof scaleOfProposal>[1]>,
  width: number,
): string {
  const { rows, marks, most } = scaleOfProposal(proposal, beside);
  return rows.length === 0
    ? "nothing to draw\n"
    : scaleText({ unit: proposal.as, most, key: SCALE_KEY, lines: rows, marks }, width);
}

/** Warnings that stand on lines of their own. */
const toldApart: readonly SetpointWarningCode[] = ["several schemes", "assumed facts", "set aside"];

/** The scheme that was used, and others that the machine's facts admit. */
function schemeLines({ schemes, as }: Proposal): string {
  const [first, ...others] = schemes;
  if (first === undefined) return "";
  const name = ({ standard, edition, machineClass }: typeof first): string => {
    return `${standard} (${edition})${machineClass && `, ${machineClass}`}`;
  };
  const tripText = ({ upper }: typeof first): string => (upper === null ? "no trip" : `${significant(upper, 4)} ${as}`);
  const texts =
    others.length === 0
      ? [name(first)]
      : schemes.map((one, i) => `${name(one)}: ${tripText(one)}${i === 0 ? ", the lowest trip, taken" : ""}`);
  return labelled("scheme", texts, 13);
}

/** A proposal as a person reads it, with what loop and sensor give at its setpoints. */
export function proposalText(proposal: Proposal, signals = ""): string {
  const { as, alarm, trip, raised, statistical, delay, hysteresis, warnings } = proposal;
  const assumed = assumptionLines(proposal) + labelled("set aside", proposal.setAside);
  const told = warnings.filter(({ code }) => !toldApart.includes(code));
  const table = textTable(
    [
      { title: as },
      { title: askedHeading(proposal), align: "right" },
      { title: "as stored", align: "right" },
      { title: "clears below", align: "right" },
      { title: "rules allow", align: "right" },
    ],
    [row("ALARM", alarm), row("TRIP", trip)],
  );
  const beside =
    statistical === null
      ? ""
      : `mean + ${statistical.k} standard deviations: ${significant(statistical.value, 4)} ${as}; without outliers ${significant(statistical.withoutOutliers, 4)}\n`;
  return (
    `${table}${beside}\n` +
    schemeLines(proposal) +
    `on-delay     alarm ${delay.alarm} s, trip ${delay.trip} s (longer than ${delay.longest} s does not suit this machine)\n` +
    `hysteresis   ${hysteresis.percent} % of the threshold\n` +
    (raised === undefined ? "" : wrapped(raisedText(raised, as), " ".repeat(13), "raised       ")) +
    signals +
    (assumed === "" ? "" : `\n${assumed}`) +
    (told.length === 0 ? "" : `\nwarnings\n${dashed(told.map(({ text }) => text))}`) +
    `\nreasons\n${reasonsText(proposal)}`
  );
}
