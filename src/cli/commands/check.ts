import { format, significant } from "../../amplitude/index";
import { VeladisError } from "../../core/index";
import { signed } from "../../report/index";
import {
  asFoundAsLeft,
  checkAgainstKnown,
  type DecisionRule,
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
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { textTable } from "../print/text-table";
import { wrapped } from "../print/wrapped";
import type { checkPage } from "./check-page";

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

/** Holds a reading, or several, against a known vibration. */
export async function checkReading(given: Given<typeof checkPage.options>, io: Io): Promise<number> {
  const { values } = given;
  const rest = {
    tolerance: needed(given, "tolerance"),
    ...(values.uncertainty !== undefined && { uncertainty: values.uncertainty }),
    ...(values.rule !== undefined && { rule: values.rule as DecisionRule }),
  };
  const machine = values.name ?? "Machine";
  if (values.known === undefined && (values.file !== undefined || values.from !== undefined)) {
    const from = needed(given, "from");
    const stream = values.file === undefined ? io.piped : await openFile(values.file);
    if (stream === undefined) throw new VeladisError("missing-fact", { expected: "a CSV file", received: "nothing" });
    const result = linearity(await csvPoints(stream, from), rest);
    if (values.json) await io.out(`${JSON.stringify(result)}\n`);
    else if (values.sheet !== undefined) await io.out(sheetText(values.sheet, { machine, linearity: result }));
    else await io.out(linearityText(result) + cautionsText());
    return exitCodes.done;
  }
  const known = needed(given, "known");
  const indicated = needed(given, "indicated");
  const asLeft = values["as-left"];
  if (asLeft !== undefined) {
    const pair = asFoundAsLeft({ known, asFound: indicated, asLeft, ...rest });
    if (values.json) await io.out(`${JSON.stringify(pair)}\n`);
    else if (values.sheet !== undefined) await io.out(sheetText(values.sheet, { machine, known, asFoundAsLeft: pair }));
    else {
      const rows = [["as found", pair.asFound] as const, ["as left", pair.asLeft] as const];
      await io.out(`${checksText(rows)}${pair.meaning}\n${cautionsText()}`);
    }
    return exitCodes.done;
  }
  const check = checkAgainstKnown({ known, indicated, ...rest });
  if (values.json) await io.out(`${JSON.stringify(check)}\n`);
  else if (values.sheet !== undefined) await io.out(sheetText(values.sheet, { machine, known, check }));
  else await io.out(checksText([["", check]]) + cautionsText());
  return exitCodes.done;
}
