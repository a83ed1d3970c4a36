import { provenances } from "../core/index";
import { format, significant } from "../reading/index";
import {
  askedHeading,
  type Baseline,
  type Proposal,
  type ProposedSetpoint,
  raisedText,
  rangeText,
} from "../setpoints/index";
import { proposalCitations } from "./citations";
import type { SheetSection } from "./sheet";

/** The section for the statistics of a baseline. */
export function baselineSection(baseline: Baseline): SheetSection {
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
  const { asked, stored, reset, effect } = setpoint;
  return [
    name,
    format(asked, { digits: 4 }),
    format(stored, { digits: 4 }),
    format(reset, { digits: 4 }),
    rangeText(setpoint),
    effect,
  ];
}

/** The sources that a sheet rests on, and those that have to be checked before it is signed, with room for that. */
function sourceSections(sources: ReturnType<typeof proposalCitations>["sources"]): SheetSection[] {
  const citable = sources.filter(({ isFit }) => isFit);
  const unfit = sources.filter(({ isFit }) => !isFit);
  const row = ({ number, text }: (typeof sources)[number]): string[] => [`[${number}]`, text];
  return [
    ...(citable.length === 0
      ? []
      : [{ title: "Sources of the rules", table: { columns: ["", "source"], rows: citable.map(row) } }]),
    ...(unfit.length === 0
      ? []
      : [
          {
            title: "NOT FIT TO SIGN until checked against a printed copy",
            table: {
              columns: ["", "named, and not known well enough to be cited", "printed copy, page; checked by, on"],
              rows: unfit.map((one) => [...row(one), ""]),
            },
          },
        ]),
  ];
}

/** The sections for proposed setpoints: numbers, warnings, reasons and sources. */
export function proposalSections(proposal: Proposal): SheetSection[] {
  const { alarm, trip, raised, statistical, delay, hysteresis, warnings, as, provenance, verified } = proposal;
  const cited = proposalCitations(proposal);
  return [
    {
      title: "Proposed setpoints",
      text: [
        verified
          ? "Every limit and rule used was checked against a printed copy."
          : `Limits or rules used are ${provenances[provenance].text}; check them against the standard before use.`,
      ],
      table: {
        columns: [
          "",
          askedHeading(proposal),
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
        ...(raised === undefined ? [] : [`raised: ${raisedText(raised, as)}`]),
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
    ...sourceSections(cited.sources),
  ];
}
