import { format, significant } from "../reading/index";
import type { BenchPlan, DelayTest, KnownCheckResult, Linearity, SwitchingPoint } from "../verification/index";
import { checkRemarks, linearityRemarks, pairRemarks } from "./check-remarks";
import type { SheetSection } from "./sheet";
import type { SheetRequest } from "./sheet-request";

const CHECK_COLUMNS = ["", "known", "shown", "error", "%", "dB", "tolerance", "uncertainty (k = 2)", "verdict"];

/** A share beyond the noise of a calculation and below the digits shown. */
const NOISE = 3.6e-15;

/** A number with its sign; a half is rounded away from zero, also where the arithmetic left it a hair short of one. */
export function signed(value: number, digits = 2): string {
  return value === 0 ? "0" : `${value < 0 ? "-" : "+"}${significant(Math.abs(value) * (1 + NOISE), digits)}`;
}

function checkRow(name: string, check: KnownCheckResult | Omit<KnownCheckResult, "shown">): string[] {
  const { known, indicated, as: unit, error, errorPercent, errorDecibels, tolerance, uncertainty, verdict } = check;
  return [
    name,
    format(known, { digits: 4 }),
    format("shown" in check ? check.shown : indicated, { digits: 4 }),
    `${signed(error)} ${unit}`,
    signed(errorPercent),
    errorDecibels === null ? "none" : signed(errorDecibels),
    `${significant(tolerance)} ${unit}`,
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
  const { known, check, asFoundAsLeft, linearity, tripPoint, resetPoint, delay } = request;
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
    ...(switching.length === 0
      ? []
      : [{ title: "Trip and reset point", table: { columns: CHECK_COLUMNS.with(1, "set"), rows: switching } }]),
    ...(delay === undefined ? [] : [delaySection(delay)]),
  ];
}

/** The section for a bench plan, with a column to fill in. */
export function planSection({ before, steps, notes }: BenchPlan): SheetSection {
  return {
    title: "Bench test",
    text: before,
    table: {
      columns: ["", "do", "Hz", "level", "displacement", "acceleration", "expect", "found"],
      rows: steps.map(({ number, what, hertz, level, displacement, acceleration, limitedBy, expect }) => [
        `${number}`,
        what,
        level === null || hertz === null ? "" : significant(hertz),
        level === null ? "" : format(level),
        displacement === null ? "" : format(displacement),
        acceleration === null ? "" : format(acceleration),
        limitedBy.length === 0 ? expect : `NOT POSSIBLE (${limitedBy.join(", ")})`,
        "",
      ]),
    },
    list: notes,
  };
}
