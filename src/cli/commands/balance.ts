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

/** The force of an unbalance, of which no mass is needed. */
async function printForce(given: Given, io: Io, unbalance: string): Promise<number> {
  const { values } = given;
  const speed = frequency(requireOption(given, "speed"));
  const force = centrifugalForce(unbalance, speed);
  const grams = convertUnbalance(unbalance, "g·mm");
  const text =
    `${visibleText(unbalance)} is ${inUnit(values.unit)(grams)} ${visibleText(values.unit)}, centrifugal force ${significant(force)} N at ${visibleText(values.speed as string)}\n\n` +
    wrapped("Without --mass no grade is told.");
  if (values.planes !== undefined || values.explain) {
    throw new VeladisError("missing-option", {
      expected: `--mass beside ${values.explain ? "--explain" : "--planes"}`,
      received: "nothing",
    });
  }
  await io.out(
    values.json
      ? jsonLine("force of unbalance", { force, unbalance: grams }, { ...inUnitTold(values.unit, grams), cautions })
      : text + cautionsText(),
  );
  return exitCodes.done;
}

/** The unbalance in the unit asked for, as data. */
function inUnitTold(unit: string, grams: number): object {
  return { inUnit: { value: grams * convertUnbalance("1 g·mm", unit), unit } };
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

/** Balance grades in both directions. */
export async function printBalance(given: Given, io: Io): Promise<number> {
  const { values, texts } = given;
  const { unit } = values;
  if (values.unbalance !== undefined && values.mass === undefined) {
    requireAlone("unbalance", texts);
    return printForce(given, io, values.unbalance);
  }
  const rotor = { mass: requireOption(given, "mass"), speed: frequency(requireOption(given, "speed")) };
  if (values.unbalance !== undefined) {
    requireAlone("unbalance", texts);
    if (values.planes !== undefined) {
      throw new VeladisError("unknown-option", {
        expected: "--planes beside a grade or 4W/N: a given unbalance is that of the whole rotor, and is not split",
        received: shown(values.planes),
        option: "planes",
      });
    }
    const grade = gradeOfUnbalance(values.unbalance, rotor);
    const force = centrifugalForce(values.unbalance, rotor.speed);
    const ways = unbalanceHistories({ unbalance: values.unbalance, ...rotor });
    const explained = Object.entries(ways).map(([name, history]): Explained => [name, { history }]);
    await io.out(
      values.json
        ? jsonLine(
            "grade of unbalance",
            { grade, force, note: NOTE },
            {
              ...inUnitTold(unit, convertUnbalance(values.unbalance, "g·mm")),
              ...{ cautions, ...explainedSteps(values.explain, ...explained) },
            },
          )
        : `${visibleText(values.unbalance)} is ${inUnit(unit)(convertUnbalance(values.unbalance, "g·mm"))} ${visibleText(unit)}, G ${significant(grade)}, centrifugal force ${significant(force)} N at service speed\n\n${wrapped(NOTE)}${values.explain ? explainedText(explained) : ""}${cautionsText()}`,
    );
    return exitCodes.done;
  }
  const grade = texts.join(" ");
  if (grade === "") {
    throw new VeladisError("missing-option", {
      expected: 'a grade, as in veladis balance "G 6.3", or --unbalance',
      received: "nothing",
    });
  }
  if (perJournal.test(grade)) {
    const found = journalUnbalance({ ...rotor, ...planesOf(values.planes) });
    const explained: Explained = ["", found];
    await io.out(
      values.json
        ? jsonLine("journal unbalance", found, {
            ...inUnitTold(unit, found.unbalance),
            ...{ cautions, ...explainedSteps(values.explain, explained) },
          })
        : journalText(found, unit) + (values.explain ? explainedText([explained]) : "") + cautionsText(),
    );
    return exitCodes.done;
  }
  const found = permissibleUnbalance(grade, { ...rotor, ...planesOf(values.planes) });
  const explained: Explained = ["", found];
  await io.out(
    values.json
      ? jsonLine("permissible unbalance", found, {
          ...inUnitTold(unit, found.unbalance),
          cautions,
          ...explainedSteps(values.explain, explained),
        })
      : permissibleText(found, unit) + (values.explain ? explainedText([explained]) : "") + cautionsText(),
  );
  return exitCodes.done;
}
