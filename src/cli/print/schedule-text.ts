import { cellText, counted, provenances, visibleText } from "../../core/index";
import { type ScheduledMachine, type SetpointChange, type SetpointSchedule, STATED_BY_LIST } from "../../plant/index";
import { significant } from "../../reading/index";
import { proposalCitations } from "../../report/index";
import { quotedCell } from "../delimited/cells";
import { dashed, wrapped } from "./wrapped";
import { wrappedTable } from "./wrapped-table";

const chosen: Readonly<Record<Exclude<ScheduledMachine["chosenBy"], "limits">, string>> = {
  table: "table of the list",
  nameplate: "chosen by the nameplate",
};

/** By what a machine is proposed for, in words. */
function limitsText({ proposal, chosenBy }: ScheduledMachine): string {
  const names = proposal.schemes.map(({ standard, edition, machineClass }) =>
    [`${standard} (${edition})`, machineClass].filter(Boolean).join(", "),
  );
  if (chosenBy === "limits") {
    const all = [...(proposal.alarm?.reasons ?? []), ...(proposal.trip?.reasons ?? [])];
    const stated = all.find(({ source }) => source.note === STATED_BY_LIST)?.source.title;
    return ["limits", STATED_BY_LIST, stated === undefined ? "" : `(${stated})`].filter(Boolean).join(" ");
  }
  return [names.join(" and "), chosen[chosenBy], `limits and rules ${provenances[proposal.provenance].text}`]
    .filter(Boolean)
    .join("; ");
}

const cell = (value: number | null, unit: string): string =>
  value === null ? "-" : `${significant(value, 4)} ${unit}`;

/** What a proposal would do with what is set; one that is higher is no must where what is set is allowed. */
function wouldText({ setting, does, difference, isAllowed }: SetpointChange): string {
  if (does === "none") return "look at it";
  if (does === "keep" || does === "set" || difference === null) return does;
  const size = `${does} ${significant(Math.abs(difference), 4)}`;
  return does === "raise" && isAllowed && !setting.endsWith("delay") ? `${size}, or keep` : size;
}

function rowOf(change: SetpointChange): string[][] {
  const { setting, set, proposed, unit, allowed } = change;
  return [
    [setting],
    [cell(set, unit)],
    [cell(proposed, unit)],
    [wouldText(change)],
    [allowed === null ? "" : `${significant(allowed[0], 4)} to ${significant(allowed[1], 4)}`],
  ];
}
const columns = [
  { title: "setting" },
  { title: "set", align: "right" },
  { title: "proposed", align: "right" },
  { title: "would" },
  { title: "rules allow", align: "right" },
] as const;

/** Why what is set or proposed for a machine needs a second look, each once. */
function remarksOf({ changes, proposal }: ScheduledMachine): string[] {
  const above = changes
    .filter(({ isAllowed, does }) => isAllowed === false || does === "none")
    .map(({ setting, text }) => `${setting}: ${text}`);
  const unread = changes
    .filter(({ set, does, text }) => set === null && does !== "none" && !text.endsWith("the list says nothing of it"))
    .map(({ setting, text }) => `${setting}: ${text}`);
  return [...above, ...unread, ...proposal.warnings.map(({ text }) => text)];
}

function machineText(machine: ScheduledMachine, full: boolean): string {
  const { tag, line, description, standing, changes, proposal } = machine;
  const { assumedFacts, setAside } = proposal;
  const { reasons, sources } = proposalCitations(proposal);
  const told = changes.filter(({ why }) => why.length > 0);
  const why = full
    ? `why\n${reasons.map(({ about, text }) => wrapped(text, " ".repeat(13), about.padEnd(13))).join("")}sources\n${sources.map(({ number, text }) => wrapped(text, "    ", `[${number}] `)).join("")}`
    : told.length === 0
      ? ""
      : `why\n${told.map(({ setting, why: all }) => wrapped(all.map(({ text }) => text).join("; "), " ".repeat(13), setting.padEnd(13))).join("")}`;
  const remarks = [
    ...remarksOf(machine),
    ...assumedFacts.map((text) => `assumed: ${text}`),
    ...setAside.map((text) => `set aside: ${text}`),
  ];
  return [
    "\n",
    wrapped(`${tag}${description === undefined ? "" : `, ${description}`}, line ${line}: ${standing.toUpperCase()}`),
    wrapped(limitsText(machine)),
    changes.length === 0 ? "nothing is proposed\n" : wrappedTable(columns, changes.map(rowOf)),
    dashed([...new Set(remarks)]),
    why,
  ].join("");
}

/** A schedule as a person reads it: machine by machine, what must be looked at first. */
export function scheduleText({ machines, refused, cautions }: SetpointSchedule, full: boolean): string {
  const counts = new Map<string, number>();
  for (const { standing } of machines) counts.set(standing, (counts.get(standing) ?? 0) + 1);
  const parts = [...counts].map(([standing, count]) => `${standing} ${count}`);
  const none = refused.map(({ tag, line, message }) => `${tag === "" ? "" : `${tag}, `}line ${line}: ${message}`);
  return [
    wrapped(
      `${counted(machines.length, "machine")}${parts.length === 0 ? "" : `: ${parts.join(", ")}`}; nothing proposed for ${refused.length}`,
    ),
    ...machines.map((one) => machineText(one, full)),
    none.length === 0 ? "" : `\nnothing proposed\n${dashed(none)}`,
    `\ncautions\n${dashed(cautions)}`,
  ].join("");
}

const titles = [
  "tag",
  "line",
  "standing",
  "setting",
  "set",
  "proposed",
  "unit",
  "would",
  "difference",
  "rules allow from",
  "rules allow to",
  "text",
  "why",
  "limits",
  "warnings",
];

/** A schedule as CSV: a row for each setting. */
export function scheduleCsv({ machines }: SetpointSchedule): string {
  const text = (value: string): string => quotedCell(cellText(value), ",");
  const number = (value: number | null | undefined): string =>
    value === null || value === undefined ? "" : String(Number(value.toPrecision(12)));
  const rows = machines.flatMap((machine) =>
    machine.changes.map(({ setting, set, proposed, unit, does, difference, allowed, why, text: words }) =>
      [
        text(machine.tag),
        String(machine.line),
        text(machine.standing),
        text(setting),
        ...[number(set), number(proposed)],
        text(unit),
        text(does),
        ...[number(difference), number(allowed?.[0]), number(allowed?.[1])],
        text(words),
        text(why.map((one) => one.text).join("; ")),
        text(visibleText(limitsText(machine))),
        text(machine.proposal.warnings.map((one) => one.text).join("; ")),
      ].join(","),
    ),
  );
  return `${[titles.join(","), ...rows].join("\n")}\n`;
}
