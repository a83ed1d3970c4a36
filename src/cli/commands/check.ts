import { VeladisError } from "../../core/index";
import type { SheetRequest } from "../../report/index";
import {
  asFoundAsLeft,
  checkAgainstKnown,
  type DecisionRule,
  type KnownCheck,
  type KnownCheckResult,
  linearity,
} from "../../verification/index";
import { writtenAs } from "../delimited/written-as";
import { leftOutText } from "../input/bad-rows";
import { csvPoints } from "../input/csv-points";
import type { Io } from "../input/io";
import { inputStream, namedFile } from "../input/open-file";
import { seriesData, seriesText } from "../input/series-told";
import type { ParsedOptions } from "../options/option-row";
import { requireOption } from "../options/option-values";
import { knownOfShaker, shakerOption } from "../options/shaker-option";
import { sheetText } from "../options/sheet-option";
import { requireSignal, signalSource, vibrationOf } from "../options/signal-options";
import { cautionsText } from "../print/cautions-text";
import { checkText, linearityText, pairText } from "../print/check-text";
import { exitCodes } from "../print/exit-codes";
import { explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import type { checkPage } from "./check-page";

type GivenCheck = ParsedOptions<typeof checkPage.options>;

/** What is said of a check besides its levels. */
type CheckRest = Pick<KnownCheck, "tolerance" | "uncertainty" | "rule">;

/** An answer of the command: as a line of JSON, on a sheet and as text, and the checks it is made of. */
interface Answer {
  /** What is told of the file it was read from. */
  readonly told?: (json: boolean) => string;
  readonly line: (more: object) => string;
  readonly sheet: Omit<SheetRequest, "machine">;
  readonly text: string;
  readonly checks: readonly (readonly [name: string, check: KnownCheckResult])[];
}

/** Several levels of a CSV. */
async function linearityOf(given: GivenCheck, rest: CheckRest, io: Io): Promise<Answer> {
  const file = namedFile(given.values.file);
  const from = requireOption(given, "from");
  const stream = await inputStream(io, file);
  if (stream === undefined) throw new VeladisError("missing-option", { expected: "a CSV file", received: "nothing" });
  const { points, told } = await csvPoints(stream, from, {
    file: file ?? "standard input",
    written: writtenAs(given.values),
    skipBad: given.values["skip-bad"] ? "given" : "not given",
  });
  const data = linearity(points, rest);
  const leftOut = leftOutText(told.leftOut);
  const remarks = leftOut !== "" && { remarks: [leftOut.trimEnd()] };
  const checks = data.points.map((point, i) => [`${i + 1}`, point] as const);
  return {
    told: (json) => seriesText(told, json),
    line: (more) => jsonLine("linearity", data, { read: seriesData(told), ...more }),
    sheet: { linearity: data, ...remarks },
    text: linearityText(data) + leftOut,
    checks,
  };
}

/** One level, as found, and as left if it is told. */
function checkOf(given: GivenCheck, rest: CheckRest): Answer {
  const { shaker } = given.values;
  const known =
    shaker === undefined ? requireOption(given, "known") : knownOfShaker(given.values.known, shakerOption(shaker));
  const source = signalSource(given.values);
  const shows = requireOption(given, "indicated");
  const left = given.values["as-left"];
  requireSignal(source, shows, left);
  const indicated = vibrationOf(shows, source);
  const asLeft = left === undefined ? undefined : vibrationOf(left, source);
  if (asLeft === undefined) {
    const data = checkAgainstKnown({ known, indicated, ...rest });
    const checks = [["", data]] as const;
    const line = (more: object) => jsonLine("known check", data, more);
    return { line, sheet: { known, check: data }, text: checkText(data), checks };
  }
  const data = asFoundAsLeft({ known, asFound: indicated, asLeft, ...rest });
  const checks = [["as found", data.asFound] as const, ["as left", data.asLeft] as const];
  const line = (more: object) => jsonLine("as found as left", data, more);
  return { line, sheet: { known, asFoundAsLeft: data }, text: pairText(data), checks };
}

const badness = { pass: 0, undecided: 1, fail: 2 } as const satisfies Record<KnownCheckResult["verdict"], number>;

/** Whether the verdict of any check is the named one or worse. */
function isVerdictReached(from: keyof typeof badness | undefined, checks: Answer["checks"]): boolean {
  return from !== undefined && checks.some(([, { verdict }]) => badness[verdict] >= badness[from]);
}

/** Holds a reading, or several, against a known vibration. */
export async function checkReading(given: GivenCheck, io: Io): Promise<number> {
  const { known, shaker, file, from, uncertainty, rule, sheet, name = "Machine", explain, json } = given.values;
  const rest: CheckRest = {
    tolerance: requireOption(given, "tolerance"),
    ...(uncertainty !== undefined && { uncertainty }),
    ...(rule !== undefined && { rule: rule as DecisionRule }),
  };
  if (shaker !== undefined && (file ?? from) !== undefined) {
    throw new VeladisError("out-of-range", {
      expected: "one level beside --shaker: those of a CSV are known each by itself",
      received: `--shaker and --${file === undefined ? "from" : "file"}`,
    });
  }
  const several = known === undefined && (file !== undefined || from !== undefined);
  const {
    told,
    line,
    sheet: request,
    text,
    checks,
  } = several ? await linearityOf(given, rest, io) : checkOf(given, rest);
  io.err(told?.(json) ?? "");
  if (json) await io.out(line(explainedSteps(explain, ...checks)));
  else if (sheet !== undefined) await io.out(sheetText(sheet, { machine: name, ...request }));
  else await io.out(text + (explain ? explainedText(checks) : "") + cautionsText());
  return isVerdictReached(given.values["fail-from"], checks) ? exitCodes.reached : exitCodes.done;
}
