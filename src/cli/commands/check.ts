import { format, significant } from "../../amplitude/index";
import { VeladisError } from "../../core/index";
import { type SheetRequest, signed } from "../../report/index";
import {
  type AsFoundAsLeft,
  asFoundAsLeft,
  checkAgainstKnown,
  type DecisionRule,
  type KnownCheck,
  type KnownCheckResult,
  type Linearity,
  linearity,
} from "../../verification/index";
import { csvPoints } from "../input/csv-points";
import type { Io } from "../input/io";
import { openFile } from "../input/open-file";
import type { Given } from "../options/option-row";
import { needed } from "../options/option-values";
import { sheetText } from "../options/sheet-option";
import { assumedLine } from "../print/assumed-words";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { explainedSteps, explainedText } from "../print/explained";
import { textTable } from "../print/text-table";
import { wrapped } from "../print/wrapped";
import type { checkPage } from "./check-page";

type GivenCheck = Given<typeof checkPage.options>;

/** What is said of a check besides its levels. */
type CheckRest = Pick<KnownCheck, "tolerance" | "uncertainty" | "rule">;

function row(name: string, check: KnownCheckResult): string[] {
  const { known, shown, unit, error, errorPercent, errorDecibels, verdict } = check;
  return [
    name,
    format(known),
    format(shown),
    `${signed(error)} ${unit}`,
    `${signed(errorPercent)} %`,
    errorDecibels === null ? "-" : `${signed(errorDecibels)} dB`,
    verdict,
  ];
}

function checksText(rows: readonly (readonly [string, KnownCheckResult])[]): string {
  const [, { unit, tolerance, uncertainty, rule, ruleText, acceptance }] = rows[0] as [string, KnownCheckResult];
  const table = textTable(
    [
      { title: "" },
      { title: "known" },
      { title: "shown" },
      { title: "error", align: "right" },
      { title: "", align: "right" },
      { title: "", align: "right" },
      { title: "verdict" },
    ],
    rows.map(([name, check]) => row(name, check)),
  );
  const known = uncertainty === null ? "not stated" : `${significant(uncertainty)} ${unit} (k = 2)`;
  return (
    `${table}\ntolerance ${significant(tolerance)} ${unit}, uncertainty ${known}; passes up to ${significant(acceptance.above)} ${unit}\n` +
    wrapped(`${rule}: ${ruleText}`)
  );
}

function linearityText({ points, slope, offset, unit, worst, nonLinearity, verdict }: Linearity): string {
  return (
    checksText(points.map((point, i) => [`${i + 1}`, point] as const)) +
    `\nslope ${significant(slope, 4)}, offset ${signed(offset)} ${unit}, off the line by up to ${nonLinearity.toFixed(2)} % of the largest level\n` +
    `worst point ${format(worst.known)}: ${signed(worst.errorPercent)} %; all in all: ${verdict}\n`
  );
}

/** An answer of the command: as data, on a sheet and as text, and the checks it is made of. */
interface Answer {
  readonly data: KnownCheckResult | AsFoundAsLeft | Linearity;
  readonly sheet: Omit<SheetRequest, "machine">;
  readonly text: string;
  readonly checks: readonly (readonly [name: string, check: KnownCheckResult])[];
}

/** Several levels of a CSV. */
async function linearityOf(given: GivenCheck, rest: CheckRest, io: Io): Promise<Answer> {
  const { file } = given.values;
  const from = needed(given, "from");
  const stream = file === undefined ? io.piped : await openFile(file);
  if (stream === undefined) throw new VeladisError("missing-fact", { expected: "a CSV file", received: "nothing" });
  const data = linearity(await csvPoints(stream, from), rest);
  const checks = data.points.map((point, i) => [`${i + 1}`, point] as const);
  return { data, sheet: { linearity: data }, text: linearityText(data), checks };
}

/** One level, as found, and as left if it is told. */
function checkOf(given: GivenCheck, rest: CheckRest): Answer {
  const known = needed(given, "known");
  const indicated = needed(given, "indicated");
  const asLeft = given.values["as-left"];
  if (asLeft === undefined) {
    const data = checkAgainstKnown({ known, indicated, ...rest });
    const checks = [["", data]] as const;
    return { data, sheet: { known, check: data }, text: checksText(checks), checks };
  }
  const data = asFoundAsLeft({ known, asFound: indicated, asLeft, ...rest });
  const checks = [["as found", data.asFound] as const, ["as left", data.asLeft] as const];
  return { data, sheet: { known, asFoundAsLeft: data }, text: `${checksText(checks)}${data.meaning}\n`, checks };
}

/** Holds a reading, or several, against a known vibration. */
export async function checkReading(given: GivenCheck, io: Io): Promise<number> {
  const { known, file, from, uncertainty, rule, sheet, name = "Machine", explain, json } = given.values;
  const rest: CheckRest = {
    tolerance: needed(given, "tolerance"),
    ...(uncertainty !== undefined && { uncertainty }),
    ...(rule !== undefined && { rule: rule as DecisionRule }),
  };
  const several = known === undefined && (file !== undefined || from !== undefined);
  const { data, sheet: request, text, checks } = several ? await linearityOf(given, rest, io) : checkOf(given, rest);
  const explained = checks.map(([name, check]) => [name, check] as const);
  if (json) await io.out(`${JSON.stringify({ ...data, ...explainedSteps(explain, ...explained) })}\n`);
  else if (sheet !== undefined) await io.out(sheetText(sheet, { machine: name, ...request }));
  else await io.out(text + assumedLine(data.assumed) + (explain ? explainedText(explained) : "") + cautionsText());
  return exitCodes.done;
}
