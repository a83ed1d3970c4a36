import {
  centrifugalForce,
  convertUnbalance,
  gradeOfUnbalance,
  type JournalUnbalance,
  journalUnbalance,
  type PermissibleUnbalance,
  permissibleUnbalance,
  unbalanceHistories,
} from "../../balance/index";
import { cautions, shown, VeladisError, visibleText } from "../../core/index";
import { frequency } from "../../frequency/index";
import { significant } from "../../reading/index";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { parts, requireOption } from "../options/option-values";
import { requireAlone } from "../options/parsed-arguments";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { wrapped } from "../print/wrapped";
import type { balancePage } from "./balance-page";

const NOTE = "G is the speed of the centre of mass of the rotor turning free in space, no reading on a housing.";

type Given = ParsedOptions<typeof balancePage.options>;

/** `4W/N` as people write it. */
const perJournal = /^4\s*[x·*]?\s*w\s*\/\s*n$/i;

function planesOf(written: string | undefined): { planes?: { left: string; right: string } } {
  if (written === undefined) return {};
  const [left, right, ...more] = parts(written);
  if (left !== undefined && right !== undefined && more.length === 0) return { planes: { left, right } };
  throw new VeladisError("syntax", {
    expected: '--planes with two distances from the centre of mass, such as "300 mm, 700 mm"',
    received: shown(written),
  });
}

/** Writes an unbalance in g·mm in another unit. */
function inUnit(unit: string): (grams: number) => string {
  const factor = convertUnbalance("1 g·mm", unit);
  return (grams) => significant(grams * factor, 4);
}

/** The same as data. */
function inUnitTold(unit: string, grams: number): object {
  return { inUnit: { value: grams * convertUnbalance("1 g·mm", unit), unit } };
}

function journalText({ loads, planes, unbalance, grade, force, source, note }: JournalUnbalance, unit: string): string {
  const written = inUnit(unit);
  const shown = visibleText(unit);
  return (
    "4 W / N for each journal\n" +
    `  load on journal     ${significant(loads.left, 4)} kg left and ${significant(loads.right, 4)} right\n` +
    `  residual unbalance  ${written(planes.left)} ${shown} left and ${written(planes.right)} right, ${written(unbalance)} together\n` +
    `  as a grade          G ${significant(grade)}\n` +
    `  centrifugal force   ${significant(force)} N together at that speed\n\n` +
    wrapped(`${note}.`) +
    wrapped(`${source.title}; ${source.where} (from memory: nobody has checked it against a printed copy)`)
  );
}

function permissibleText(
  { grade, inSeries, eccentricity, unbalance, planes, force, source, note }: PermissibleUnbalance,
  unit: string,
): string {
  const written = inUnit(unit);
  return (
    `G ${grade}${inSeries ? "" : " (not one of the standard's grades)"}\n` +
    `  eccentricity        ${significant(eccentricity)} um (g·mm per kg)\n` +
    `  residual unbalance  ${written(unbalance)} ${visibleText(unit)}, ${written(planes.left)} left and ${written(planes.right)} right\n` +
    `  centrifugal force   ${significant(force)} N at service speed\n\n` +
    wrapped(`${note}.`) +
    wrapped(`${source.title}; ${source.where}`)
  );
}

/** The grade of an unbalance and its force; without a mass the force alone. */
async function printUnbalance(given: Given, io: Io, unbalance: string): Promise<number> {
  const { values, texts } = given;
  requireAlone("unbalance", texts);
  if (values.planes !== undefined) {
    throw new VeladisError("unknown-option", {
      expected: "--planes beside a grade or 4W/N: a given unbalance is that of the whole rotor, and is not split",
      received: shown(values.planes),
      option: "planes",
    });
  }
  const { unit, mass, explain, json } = values;
  const speed = frequency(requireOption(given, "speed"));
  const force = centrifugalForce(unbalance, speed);
  const grams = convertUnbalance(unbalance, "g·mm");
  const told = inUnitTold(unit, grams);
  const head = `${visibleText(unbalance)} is ${inUnit(unit)(grams)} ${visibleText(unit)}`;
  const forced = `centrifugal force ${significant(force)} N at`;
  if (mass === undefined) {
    if (explain) throw new VeladisError("missing-option", { expected: "--mass beside --explain", received: "nothing" });
    await io.out(
      json
        ? jsonLine("force of unbalance", { force, unbalance: grams }, { ...told, cautions })
        : `${head}, ${forced} ${visibleText(values.speed as string)}\n\n${wrapped("Without --mass no grade is told.")}${cautionsText()}`,
    );
    return exitCodes.done;
  }
  const rotor = { mass, speed };
  const grade = gradeOfUnbalance(unbalance, rotor);
  const ways = unbalanceHistories({ unbalance, ...rotor });
  const explained = Object.entries(ways).map(([name, history]): Explained => [name, { history }]);
  await io.out(
    json
      ? jsonLine(
          "grade of unbalance",
          { grade, force, note: NOTE },
          { ...told, cautions, ...explainedSteps(explain, ...explained) },
        )
      : `${head}, G ${significant(grade)}, ${forced} service speed\n\n${wrapped(NOTE)}${explain ? explainedText(explained) : ""}${cautionsText()}`,
  );
  return exitCodes.done;
}

/** Balance grades in both directions. */
export async function printBalance(given: Given, io: Io): Promise<number> {
  const { values, texts } = given;
  const { unit, explain } = values;
  if (values.unbalance !== undefined) return printUnbalance(given, io, values.unbalance);
  const rotor = { mass: requireOption(given, "mass"), speed: frequency(requireOption(given, "speed")) };
  const grade = texts.join(" ");
  if (grade === "") {
    throw new VeladisError("missing-option", {
      expected: 'a grade, as in veladis balance "G 6.3", or --unbalance',
      received: "nothing",
    });
  }
  const told = { ...rotor, ...planesOf(values.planes) };
  const found = perJournal.test(grade) ? journalUnbalance(told) : permissibleUnbalance(grade, told);
  const explained: Explained = ["", found];
  if (values.json) {
    const rest = { ...inUnitTold(unit, found.unbalance), cautions, ...explainedSteps(explain, explained) };
    await io.out(
      "loads" in found ? jsonLine("journal unbalance", found, rest) : jsonLine("permissible unbalance", found, rest),
    );
    return exitCodes.done;
  }
  const text = "loads" in found ? journalText(found, unit) : permissibleText(found, unit);
  await io.out(text + (explain ? explainedText([explained]) : "") + cautionsText());
  return exitCodes.done;
}
