import {
  centrifugalForce,
  gradeOfUnbalance,
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

function planesOf(written: string | undefined): { planes?: { left: string; right: string } } {
  if (written === undefined) return {};
  const [left, right, ...more] = parts(written);
  if (left !== undefined && right !== undefined && more.length === 0) return { planes: { left, right } };
  throw new VeladisError("syntax", {
    expected: '--planes with two distances from the centre of mass, such as "300 mm, 700 mm"',
    received: shown(written),
  });
}

function permissibleText({
  grade,
  inSeries,
  eccentricity,
  unbalance,
  planes,
  force,
  source,
  note,
}: PermissibleUnbalance): string {
  return (
    `G ${grade}${inSeries ? "" : " (not one of the standard's grades)"}\n` +
    `  eccentricity        ${significant(eccentricity)} um (g·mm per kg)\n` +
    `  residual unbalance  ${significant(unbalance, 4)} g·mm, ${significant(planes.left, 4)} left and ${significant(planes.right, 4)} right\n` +
    `  centrifugal force   ${significant(force)} N at service speed\n\n` +
    wrapped(`${note}.`) +
    wrapped(`${source.title}; ${source.where}`)
  );
}

/** Balance grades in both directions. */
export async function printBalance(given: ParsedOptions<typeof balancePage.options>, io: Io): Promise<number> {
  const { values, texts } = given;
  const rotor = { mass: requireOption(given, "mass"), speed: frequency(requireOption(given, "speed")) };
  if (values.unbalance !== undefined) {
    requireAlone("unbalance", texts);
    const grade = gradeOfUnbalance(values.unbalance, rotor);
    const force = centrifugalForce(values.unbalance, rotor.speed);
    const ways = unbalanceHistories({ unbalance: values.unbalance, ...rotor });
    const explained = Object.entries(ways).map(([name, history]): Explained => [name, { history }]);
    await io.out(
      values.json
        ? jsonLine(
            "grade of unbalance",
            { grade, force, note: NOTE },
            { cautions, ...explainedSteps(values.explain, ...explained) },
          )
        : `${visibleText(values.unbalance)} is G ${significant(grade)}, centrifugal force ${significant(force)} N at service speed\n\n${wrapped(NOTE)}${values.explain ? explainedText(explained) : ""}${cautionsText()}`,
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
  const found = permissibleUnbalance(grade, { ...rotor, ...planesOf(values.planes) });
  const explained: Explained = ["", found];
  await io.out(
    values.json
      ? jsonLine("permissible unbalance", found, { cautions, ...explainedSteps(values.explain, explained) })
      : permissibleText(found) + (values.explain ? explainedText([explained]) : "") + cautionsText(),
  );
  return exitCodes.done;
}
