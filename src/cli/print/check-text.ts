import { format, significant } from "../../reading/index";
import {
  checkRemarks,
  frequencyTexts,
  linearityRemarks,
  pairRemarks,
  passesNothing,
  severalRemarks,
  signed,
  toleranceText,
} from "../../report/index";
import {
  type AsFoundAsLeft,
  type CheckPoints,
  expectedReading,
  type KnownCheckResult,
  type Linearity,
} from "../../verification/index";
import { assumptionLines } from "./assumption-lines";
import { type Column, textTable } from "./text-table";
import { wrapped } from "./wrapped";
import { wrappedTable } from "./wrapped-table";

type Named = readonly [name: string, check: KnownCheckResult];

const columns: readonly Column[] = [
  { title: "" },
  { title: "known" },
  { title: "should show" },
  { title: "shown" },
  { title: "error", align: "right" },
  { title: "", align: "right" },
  { title: "", align: "right" },
];

/** Which errors pass; those below and above the known level differ for a tolerance in decibels. */
function passing(check: KnownCheckResult): string {
  if (passesNothing(check)) return "no error passes";
  const { below, above } = check.acceptance;
  const [least, most] = [significant(below), significant(above)];
  return `passes ${least === most ? `up to ${most}` : `from -${least} to +${most}`} ${check.as}`;
}

type Cells = [
  name: string,
  known: string,
  expected: string,
  shown: string,
  error: string,
  percent: string,
  decibels: string,
];

function cells([name, check]: Named): Cells {
  const { known, shown, as: unit, error, errorPercent, errorDecibels } = check;
  return [
    name,
    format(known),
    format(expectedReading(check)),
    format(shown),
    `${signed(error)} ${unit}`,
    `${signed(errorPercent)} %`,
    errorDecibels === null ? "-" : `${signed(errorDecibels)} dB`,
  ];
}

/** A check with all of its own as a row: what belongs together stands one below the other. */
function ownRow(row: Named): string[][] {
  const [name, known, expected, shown, error, percent, decibels] = cells(row);
  const [, check] = row;
  const { uncertainty, verdict } = check;
  const { below, above } = check.acceptance;
  const [least, most] = [significant(below), significant(above)];
  return [
    [name],
    frequencyTexts(check.known.hertz),
    [known],
    [expected, `shown ${shown}`],
    [error, percent, decibels],
    [
      `within ${toleranceText(check)}`,
      uncertainty === null ? "U not stated" : `U ${significant(uncertainty)}`,
      passesNothing(check) ? "no error passes" : `passes ${least === most ? most : `-${least} to +${most}`}`,
    ],
    [verdict],
  ];
}

function remarkLines(remarks: readonly string[]): string {
  return remarks.map((text) => wrapped(text)).join("");
}

/** The rules by which the checks are decided, each once. */
function ruleLines(checks: readonly KnownCheckResult[]): string {
  const rules = new Set(checks.map(({ rule, ruleText }) => `${rule}: ${ruleText}`));
  return [...rules].map((text) => wrapped(text)).join("");
}

/** Checks in a table, each with a tolerance, an uncertainty and what passes of its own. */
function ownTable(rows: readonly Named[], unit: string): string {
  const table = wrappedTable(
    [
      { title: "", wraps: true },
      { title: "at", align: "right" },
      { title: "known" },
      { title: "should show", align: "right" },
      { title: "error", align: "right" },
      { title: "held against", align: "right" },
      { title: "verdict" },
    ],
    rows.map(ownRow),
  );
  const checks = rows.map(([, check]) => check);
  return `${table}\n${wrapped(`tolerance (within), uncertainty (U, k = 2) and the errors that pass are in ${unit}`)}${ruleLines(checks)}`;
}

/** Checks at one known level, which has one tolerance; where the levels shown are known otherwise, each has its own line. */
function levelText(rows: readonly [Named, ...Named[]]): string {
  const [[, first]] = rows;
  const { as: unit, uncertainty } = first;
  if (rows.some(([, one]) => one.uncertainty !== uncertainty)) return ownTable(rows, unit);
  const table = textTable(
    [...columns, { title: "verdict" }],
    rows.map((row) => [...cells(row), row[1].verdict]),
  );
  const at = frequencyTexts(first.known.hertz).join(", ");
  const known = uncertainty === null ? "not stated" : `${significant(uncertainty)} ${unit} (k = 2)`;
  return `${table}\n${wrapped(
    `${at === "" ? "" : `at ${at}; `}tolerance ${toleranceText(first)} ${unit}, uncertainty ${known}; ${passing(first)}`,
  )}${ruleLines([first])}`;
}

/** A check as a person reads it. */
export function checkText(check: KnownCheckResult): string {
  return levelText([["", check]]) + remarkLines(checkRemarks(check)) + assumptionLines(check);
}

/** A check as found and as left. */
export function pairText(pair: AsFoundAsLeft): string {
  const rows = [["as found", pair.asFound] as const, ["as left", pair.asLeft] as const] as const;
  return levelText(rows) + remarkLines(pairRemarks(pair)) + assumptionLines(pair);
}

/** Checks at several points, each in unit and at a frequency of its own. */
export function pointsText({ points, worst, verdict, assumed }: CheckPoints): string {
  const units = new Set(points.map(({ as }) => as));
  const rows = points.map((check) => [check.point, check] as const);
  return (
    `${ownTable(rows, units.size === 1 ? [...units].join("") : "the unit of the known level")}\n` +
    `worst point ${worst.point}: ${signed(worst.errorPercent)} %; all in all: ${verdict}\n` +
    remarkLines(severalRemarks(points)) +
    assumptionLines({ assumed })
  );
}

/** Checks at several levels, each held against a tolerance of its own. */
export function linearityText(found: Linearity): string {
  const { points, slope, offset, as: unit, worst, nonLinearity, verdict } = found;
  const rows = points.map((point, i) => [`${i + 1}`, point] as const);
  return (
    `${ownTable(rows, unit)}\nslope ${significant(slope, 4)}, offset ${signed(offset)} ${unit}, off the line by up to ${nonLinearity.toFixed(2)} % of the largest level\n` +
    `worst point ${format(worst.known)}: ${signed(worst.errorPercent)} %; all in all: ${verdict}\n` +
    remarkLines(linearityRemarks(found)) +
    assumptionLines(found)
  );
}
