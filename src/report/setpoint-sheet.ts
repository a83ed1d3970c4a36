import { assumptions, format, significant } from "../amplitude/index";
import { cautions, given, knownKeys, shaped } from "../core/index";
import { isFailSafe, type TripSettings } from "../device/index";
import type { Baseline, Proposal, ProposedSetpoint } from "../setpoints/index";
import { proposalCitations } from "./citations";
import { requestShape } from "./request-shape";
import type { Sheet, SheetSection } from "./sheet";
import type { SheetRequest } from "./sheet-request";
import { checkSections, planSection } from "./verification-sections";

/** The lines that people fill in; no name and no date is put in by itself. */
const BLANKS = [
  "Set by (name, signature, date)",
  "Proven by (name, signature, date)",
  "Decided by the person who answers for the machine (name, signature, date)",
  "Next proof due",
];

function factsSection(facts: NonNullable<SheetRequest["facts"]>): SheetSection {
  return { title: "Machine, sensor and device", table: { columns: ["", ""], rows: Object.entries(facts) } };
}

function baselineSection(baseline: Baseline): SheetSection {
  const { as, count, excluded, median, mean, standardDeviation, spread, lowest, highest, percentile, outliers } =
    baseline;
  const cell = (value: number): string => significant(value, 4);
  return {
    title: `Baseline, in ${as}`,
    table: {
      columns: [
        "readings",
        "left out",
        "median",
        "mean",
        "std deviation",
        "robust spread",
        "range",
        `${percentile.percent} % below`,
        "outliers",
      ],
      rows: [
        [
          `${count}`,
          `${excluded}`,
          cell(median),
          cell(mean),
          cell(standardDeviation),
          cell(spread),
          `${cell(lowest)} to ${cell(highest)}`,
          cell(percentile.value),
          `${outliers.length}`,
        ],
      ],
    },
    list: baseline.warnings,
  };
}

function setpointRow(name: string, setpoint: ProposedSetpoint | null): string[] {
  if (setpoint === null) return [name, "none", "", "", "", ""];
  const { asked, stored, reset, range, effect } = setpoint;
  return [
    name,
    format(asked, { digits: 4 }),
    format(stored, { digits: 4 }),
    format(reset, { digits: 4 }),
    `${significant(range[0], 4)} to ${significant(range[1], 4)}`,
    effect,
  ];
}

function proposalSections(proposal: Proposal): SheetSection[] {
  const { alarm, trip, statistical, delay, hysteresis, warnings, as, verified } = proposal;
  const cited = proposalCitations(proposal);
  return [
    {
      title: "Proposed setpoints",
      text: [
        verified
          ? "Every limit and rule used was read in print."
          : "Limits or rules used are recalled from memory; check them against the standard before use.",
      ],
      table: {
        columns: [
          "",
          "by the rules",
          "as stored",
          "clears below",
          `rules allow, ${as}`,
          "effect of the device's steps",
        ],
        rows: [setpointRow("ALARM", alarm), setpointRow("TRIP", trip)],
      },
      list: [
        `on-delay: alarm ${delay.alarm} s, trip ${delay.trip} s; longer than ${delay.longest} s does not suit this machine`,
        `hysteresis: ${hysteresis.percent} % of the threshold`,
        ...(statistical === null
          ? []
          : [
              `beside the rule, mean + ${statistical.k} standard deviations: ${significant(statistical.value)} ${as}; without outliers ${significant(statistical.withoutOutliers)}`,
            ]),
      ],
    },
    ...(warnings.length === 0 ? [] : [{ title: "Warnings", list: warnings.map(({ text }) => text) }]),
    {
      title: "Reasons, with the number of the source",
      table: { columns: ["", "reason"], rows: cited.reasons.map(({ about, text }) => [about, text]) },
    },
    {
      title: "Sources of the rules",
      table: { columns: ["", "source"], rows: cited.sources.map((text, i) => [`[${i + 1}]`, text]) },
    },
  ];
}

function settingsSection(settings: TripSettings): SheetSection {
  const {
    threshold,
    hysteresis,
    onDelay,
    offDelay = 0,
    timerResets,
    latching,
    contact,
    coil,
    sensorFault,
    startInhibit = 0,
    multiplier,
  } = settings;
  return {
    title: "Settings in the device",
    table: {
      columns: ["setting", "value"],
      rows: [
        ["threshold, as stored", typeof threshold === "string" ? threshold : format(threshold, { digits: 4 })],
        ["hysteresis", hysteresis],
        ["on-delay", `${onDelay} s; starts over when the level falls ${timerResets}`],
        ["off-delay", `${offDelay} s`],
        ["output", latching ? "latching, reset by hand" : "clears by itself"],
        ["relay", `contact ${contact}, coil ${coil}${isFailSafe(coil) ? " (fail-safe)" : ""}`],
        ["sensor fault", sensorFault],
        ["start-up inhibit", `${startInhibit} s`],
        [
          "setpoint multiplier",
          multiplier === undefined ? "none" : `${multiplier.factor} for ${multiplier.seconds} s from start`,
        ],
      ],
    },
  };
}

/** What was assumed anywhere on the sheet, in words. */
function assumedOn({ baseline, proposal, check, asFoundAsLeft }: SheetRequest): string[] {
  const names = new Set<string>([
    ...(baseline?.assumed ?? []),
    ...(proposal?.assumed ?? []),
    ...(check?.assumed ?? []),
    ...(asFoundAsLeft?.asFound.assumed ?? []),
    ...(asFoundAsLeft?.asLeft.assumed ?? []),
  ]);
  const words: Readonly<Record<string, string>> = assumptions;
  return [...names].map((name) => words[name] ?? name);
}

/**
 * A setpoint and verification sheet: what was set and why, what was proven, what was assumed, and blanks to sign.
 *
 * Write it with {@link sheetMarkdown}, {@link sheetHtml} or {@link sheetJson}.
 *
 * @throws {@link VeladisError} `missing-fact`, `wrong-type` for a part that is not what its function returns,
 *   `unknown-option` for a part that no sheet has, and as {@link TripLogic} for the settings
 * @example
 * ```ts
 * import { checkAgainstKnown, setpointSheet, sheetMarkdown } from "veladis/protection";
 *
 * const check = checkAgainstKnown({ known: "8 mm/s rms at 2400 r/min", indicated: "7.3 mm/s rms", tolerance: "5 %" });
 * const sheet = setpointSheet({ machine: "ID fan 1, fan bearing, horizontal", check });
 * sheet.sections.map(({ title }) => title); // => ["Check against the known vibration"]
 * sheetMarkdown(sheet).split("\n")[0]; // => "# Setpoints and verification"
 * ```
 */
export function setpointSheet(request: SheetRequest): Sheet {
  const shapes = requestShape();
  knownKeys(given(request, 'a request such as { machine: "Circulation pump 3" }'), shapes, "a part of a sheet");
  for (const [name, shape] of Object.entries(shapes)) shaped(request[name as keyof SheetRequest], shape, name);
  const { machine, facts, baseline, proposal, settings, plan, remarks = [] } = request;
  const assumed = assumedOn(request);
  return {
    title: "Setpoints and verification",
    subject: machine,
    cautions,
    sections: [
      ...(facts === undefined ? [] : [factsSection(facts)]),
      ...(baseline === undefined ? [] : [baselineSection(baseline)]),
      ...(proposal === undefined ? [] : proposalSections(proposal)),
      ...(settings === undefined ? [] : [settingsSection(settings)]),
      ...checkSections(request),
      ...(plan === undefined ? [] : [planSection(plan)]),
      ...(assumed.length === 0 ? [] : [{ title: "Assumed", list: assumed }]),
      ...(remarks.length === 0 ? [] : [{ title: "Remarks", list: remarks }]),
    ],
    blanks: BLANKS,
    data: request,
  };
}
