import { attempt, pointedWords, shown, VeladisError } from "../../core/index";
import { frequency } from "../../frequency/index";
import {
  type BenchRound,
  benchRound,
  calendarDay,
  type DueCheck,
  dueChecks,
  levelText,
  takeResults,
} from "../../plant/index";
import { writtenAs } from "../delimited/written-as";
import type { Io } from "../input/io";
import { delimitedRows } from "../input/plant-file";
import type { ParsedOptions } from "../options/option-row";
import { parts, requireOption } from "../options/option-values";
import { requireFitting } from "../options/options-beside";
import { massOption, shakerOf } from "../options/shaker-given";
import { shakerRows } from "../options/shaker-rows";
import { cautionsText } from "../print/cautions-text";
import { csvText } from "../print/csv-text";
import { dueText } from "../print/due-text";
import { exitCodes } from "../print/exit-codes";
import { jsonLine } from "../print/json-line";
import { roundText } from "../print/round-text";
import { type ListedPlant, listedPlant } from "./listed-plant";
import type { plantChecksPage } from "./plant-checks-page";

type GivenChecks = ParsedOptions<typeof plantChecksPage.options>;

/** Options that play a part in a round alone. */
const ofRound: readonly string[] = [...Object.keys(shakerRows), "resolution", "uncertainty", "load", "at", "sheets"];

/** Options that play a part beside results alone. */
const ofResults: readonly string[] = ["results", "out"];

/** Days in an option such as `30 days` or `30`. */
function daysOf(written: string): number {
  const [, digits] = /^\s*(\d+)\s*(?:d|days?)?\s*$/i.exec(written) ?? [];
  if (digits !== undefined) return Number(digits);
  throw new VeladisError("syntax", {
    expected: 'whole days, such as "30 days"',
    received: shown(written),
    option: "ahead",
  });
}

/** Frequencies with commas between; where a comma stands before decimals, one between two digits parts nothing. */
function frequenciesOf(written: string, decimalComma: boolean) {
  return parts(pointedWords(written, decimalComma).replaceAll(";", ",")).map((one) => frequency(one));
}

function requireTogether(given: GivenChecks): void {
  const { results, shaker, sheets, out, replace } = given.values;
  if (results !== undefined) {
    const ofDue = [...ofRound, "ahead"];
    requireFitting(given, "results that came back, in a call of their own", (name) => !ofDue.includes(name));
  } else if (shaker === undefined) {
    requireFitting(
      given,
      "the checks that are due; a round needs --shaker",
      (name) => !ofRound.includes(name) && !ofResults.includes(name),
    );
  } else {
    requireFitting(
      given,
      "a round on the bench; --out writes the list beside --results",
      (name) => !ofResults.includes(name),
    );
  }
  if (replace && sheets === undefined && out === undefined) {
    throw new VeladisError("missing-option", {
      expected: "--sheets or --out beside --replace",
      received: "--replace alone",
    });
  }
  if (given.values.csv && given.values.json) {
    throw new VeladisError("unknown-option", {
      expected: "--csv or --json, one of the two",
      received: "both",
      option: "csv",
    });
  }
}

/** The checks as CSV, those of a round with setting and sheet. */
function checksCsv(checks: readonly DueCheck[], round: BenchRound | undefined): string {
  const placed = new Map(
    round?.settings.flatMap(({ level, devices }, i) =>
      devices.map((one) => [one.line, { setting: i + 1, level, ...one }] as const),
    ),
  );
  const left = new Map(round?.left.map((one) => [one.line, one.why]));
  const titles = [
    "tag",
    "line",
    "state",
    "due",
    "days over",
    "last check",
    "interval months",
    "why",
    "what would mend it",
    "source",
  ];
  const ofBench = ["setting", "shaker", "sheet", "should show", "left out because"];
  return csvText(
    round === undefined ? titles : [...titles, ...ofBench],
    checks.map(({ tag, line, state, due, days, last, interval, why, mend, source }) => {
      const one = placed.get(line);
      const cells = [tag, line, state, due, days, last, interval, why, mend, source.title];
      if (round === undefined) return cells;
      return [
        ...cells,
        one?.setting,
        one && levelText(one.level),
        one?.number,
        one && levelText(one.known),
        left.get(line),
      ];
    }),
  );
}

/** What is due on a day. */
interface DueOfPlant {
  readonly on: string;
  readonly checks: readonly DueCheck[];
  readonly plant: ListedPlant["plant"];
}

/** The round that the options ask for, its sheets written; undefined without a shaker. */
async function roundOf(given: GivenChecks, { on, checks, plant }: DueOfPlant, io: Io) {
  const { values } = given;
  if (values.shaker === undefined) return { told: "" };
  const shaker = shakerOf(given);
  const load = massOption(values.load);
  const round = benchRound(plant, checks, shaker, {
    on,
    ...(load !== undefined && { load }),
    ...(values.at !== undefined && { frequencies: frequenciesOf(values.at, values["decimal-comma"]) }),
  });
  if (values.sheets === undefined) return { round, told: "" };
  const { writeSheets } = await import("./round-sheets");
  const isOpen = async (path: string): Promise<boolean> => {
    const table = await delimitedRows(io, path, writtenAs(values)).catch(() => undefined);
    if (table === undefined) return false;
    const { refused: torn, account: _, ...rows } = table;
    const read = attempt(() => takeResults(plant, rows, { on }));
    return read.ok && torn.length + read.value.results.length + read.value.refused.length === 0;
  };
  const bench = { round, plant, shaker, load, decimalComma: values["decimal-comma"], isOpen };
  const count = await writeSheets(values.sheets, bench, values.replace);
  return { round, told: `\nsheets in ${values.sheets}: ${count}, and results.csv to be filled in\n` };
}

/** Which devices of a list are to be checked, the round for them, or the results of one. */
export async function printChecks(given: GivenChecks, io: Io): Promise<number> {
  const { values, texts } = given;
  requireTogether(given);
  const on = calendarDay(requireOption(given, "on"), values.dates);
  const listed = await listedPlant(given, texts[0], io);
  if (values.results !== undefined) return (await import("./plant-results")).printResults(given, on, listed, io);
  const { plant } = listed;
  const checks = dueChecks(plant, { on, ...(values.ahead !== undefined && { ahead: daysOf(values.ahead) }) });
  const { round, told } = await roundOf(given, { on, checks, plant }, io);
  if (values.json) {
    for (const one of checks) await io.out(jsonLine("due check", one));
    for (const one of round?.settings ?? []) await io.out(jsonLine("bench setting", one));
    for (const one of round?.left ?? []) await io.out(jsonLine("device left out", one));
  } else if (values.csv) await io.out(checksCsv(checks, round));
  else
    await io.out(`${dueText(checks, on)}${round === undefined ? "" : `\n${roundText(round)}`}${told}${cautionsText()}`);
  if (plant.refused.length > 0 && !values["keep-going"]) return exitCodes.refused;
  const isDue = checks.some((one) => one.isDue);
  return values["fail-on"] === "due" && isDue ? exitCodes.reached : exitCodes.done;
}
