import { format, significant } from "../reading/index";
import type {
  BenchPlan,
  CheckPoints,
  DelayTest,
  InjectionPlan,
  KnownCheckResult,
  Linearity,
  SwitchingPoint,
} from "../verification/index";
import { expectedReading, expectText, levelTexts } from "../verification/index";
import { checkRemarks, linearityRemarks, pairRemarks, severalRemarks } from "./check-remarks";
import type { SheetSection } from "./sheet";
import type { SheetRequest } from "./sheet-request";
import { toleranceText } from "./tolerance-text";

const CHECK_COLUMNS = [
  "",
  "at",
  "known",
  "should show",
  "shown",
  "error",
  "%",
  "dB",
  "tolerance",
  "uncertainty (k = 2)",
  "verdict",
];

/** A share beyond the noise of a calculation and below the digits shown. */
const NOISE = 3.6e-15;

/** A number with its sign; a half is rounded away from zero, also where the arithmetic left it a hair short of one. */
export function signed(value: number, digits = 2): string {
  return value === 0 ? "0" : `${value < 0 ? "-" : "+"}${significant(Math.abs(value) * (1 + NOISE), digits)}`;
}

/** A frequency and the speed of it; nothing where none is told. */
export function frequencyTexts(hertz: number | null | undefined): string[] {
  return typeof hertz === "number" ? [`${significant(hertz)} Hz`, `${significant(60 * hertz, 4)} r/min`] : [];
}

function checkRow(name: string, check: KnownCheckResult | Omit<SwitchingPoint, "between">): string[] {
  const { known, indicated, as: unit, error, errorPercent, errorDecibels, uncertainty, verdict } = check;
  return [
    name,
    frequencyTexts(known.hertz).join(", "),
    format(known, { digits: 4 }),
    ...("shown" in check ? [format(expectedReading(check))] : []),
    format("shown" in check ? check.shown : indicated, { digits: 4 }),
    `${signed(error)} ${unit}`,
    signed(errorPercent),
    errorDecibels === null ? "none" : signed(errorDecibels),
    `${toleranceText("shown" in check ? check : { tolerance: check.tolerance })} ${unit}`,
    uncertainty === null ? "not stated" : `${significant(uncertainty)} ${unit}`,
    verdict,
  ];
}

function pointRow(name: string, point: SwitchingPoint): string[] {
  return [...checkRow(name, point)];
}

function linearitySection(found: Linearity): SheetSection {
  const { points, slope, offset, nonLinearity, worst, as: unit, verdict } = found;
  return {
    title: "Linearity",
    table: { columns: CHECK_COLUMNS, rows: points.map((point, i) => checkRow(`${i + 1}`, point)) },
    list: [
      `slope ${significant(slope, 4)}, offset ${signed(offset)} ${unit}, largest distance from the line ${nonLinearity.toFixed(2)} % of the largest level`,
      `worst point at ${format(worst.known)}: ${signed(worst.errorPercent)} %`,
      `verdict: ${verdict}`,
      ...linearityRemarks(found),
    ],
  };
}

function pointsSection({ points, worst, verdict }: CheckPoints): SheetSection {
  const rules = new Set(points.map(({ rule, ruleText }) => `decision rule: ${rule}; ${ruleText}`));
  return {
    title: "Checks against known vibrations",
    table: { columns: CHECK_COLUMNS, rows: points.map((point) => checkRow(point.point, point)) },
    list: [
      ...rules,
      `worst point ${worst.point}: ${signed(worst.errorPercent)} %`,
      `verdict: ${verdict}`,
      ...severalRemarks(points),
    ],
  };
}

function delaySection({ set, measured, worstError, tolerance, verdict }: DelayTest): SheetSection {
  return {
    title: "Delay",
    table: {
      columns: ["set, s", "measured, s", "worst error, s", "tolerance, s", "verdict"],
      rows: [[`${set}`, measured.join(", "), signed(worstError), significant(tolerance), verdict]],
    },
  };
}

/** The sections for all that was proven. */
export function checkSections(request: SheetRequest): SheetSection[] {
  const { known, check, asFoundAsLeft, linearity, points, tripPoint, resetPoint, delay } = request;
  const rows = [
    ...(check === undefined ? [] : [checkRow("check", check)]),
    ...(asFoundAsLeft === undefined
      ? []
      : [checkRow("as found", asFoundAsLeft.asFound), checkRow("as left", asFoundAsLeft.asLeft)]),
  ];
  const rules = new Set(
    [check, asFoundAsLeft?.asFound, asFoundAsLeft?.asLeft].flatMap((one) =>
      one === undefined ? [] : [`decision rule: ${one.rule}; ${one.ruleText}`],
    ),
  );
  const switching = [
    ...(tripPoint === undefined ? [] : [pointRow("trip, rising", tripPoint)]),
    ...(resetPoint === undefined ? [] : [pointRow("reset, falling", resetPoint)]),
  ];
  return [
    ...(rows.length === 0
      ? []
      : [
          {
            title: "Check against the known vibration",
            ...(known !== undefined && { text: [`Known vibration: ${known}`] }),
            table: { columns: CHECK_COLUMNS, rows },
            list: [
              ...rules,
              ...(check === undefined ? [] : checkRemarks(check)),
              ...(asFoundAsLeft === undefined ? [] : pairRemarks(asFoundAsLeft)),
            ],
          },
        ]),
    ...(linearity === undefined ? [] : [linearitySection(linearity)]),
    ...(points === undefined ? [] : [pointsSection(points)]),
    ...(switching.length === 0
      ? []
      : [
          {
            title: "Trip and reset point",
            table: {
              columns: CHECK_COLUMNS.filter((column) => column !== "should show").with(2, "set"),
              rows: switching,
            },
          },
        ]),
    ...(delay === undefined ? [] : [delaySection(delay)]),
  ];
}

/** What a plan by injection tells first of its source. */
const INJECTED = "injected";

/** What is changed for an injection, each with a place to sign that it is back; common practice, no source. */
function changedSection(): SheetSection {
  return {
    title: "Changed for the test, and put back",
    text: [
      "A line for each lead, jumper, bypass and setting. The device protects nothing until the last is signed as back.",
    ],
    table: {
      columns: [
        "changed",
        "which, and as found",
        "changed by, time",
        "back: signed, time",
        "checked by a second person",
      ],
      rows: ["lead", "lead", "jumper", "bypass of the trip", "setting", "other"].map((one) => [one, "", "", "", ""]),
    },
  };
}

/** The sections for a bench plan: what it was made for, and its steps with a column to fill in. */
export function planSections({ told, before, steps, notes }: BenchPlan | InjectionPlan): SheetSection[] {
  return [
    ...(told === undefined
      ? []
      : [
          {
            title: "Settings, and what they are proven with",
            table: { columns: ["", ""], rows: told.map(({ name, text }) => [name, text]) },
          },
        ]),
    {
      title: "Bench test",
      text: before,
      table: {
        columns: ["", "do", "at", "level", "expect", "found, and time", "pass"],
        rows: steps.map((step) => [
          `${step.number}`,
          step.what,
          step.level === null ? "" : frequencyTexts(step.hertz).join(", "),
          levelTexts(step).join(", "),
          expectText(step),
          "",
          "",
        ]),
      },
      list: notes,
    },
    ...(told?.some(({ name }) => name === INJECTED) ? [changedSection()] : []),
  ];
}
