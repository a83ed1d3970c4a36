import { significant } from "../../amplitude/index";
import {
  centrifugalForce,
  gradeOfUnbalance,
  type PermissibleUnbalance,
  permissibleUnbalance,
} from "../../balance/index";
import { cautions, shown, VeladisError } from "../../core/index";
import { frequency } from "../../frequency/index";
import type { Io } from "../input/io";
import { alone, parsedArguments } from "../options/arguments";
import { listed, needed } from "../options/option-values";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { wrapped } from "../print/wrapped";
import { help } from "./balance-help";
import type { Command } from "./command";

const options = {
  mass: { type: "string" },
  speed: { type: "string" },
  planes: { type: "string" },
  unbalance: { type: "string" },
  json: { type: "boolean", default: false },
} as const;

const NOTE = "G is the speed of the centre of mass of the rotor turning free in space, no reading on a housing.";

function planesOf(written: string | undefined): { planes?: { left: string; right: string } } {
  if (written === undefined) return {};
  const [left, right, ...more] = listed(written);
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

async function run(args: readonly string[], io: Io): Promise<number> {
  const { values, positionals } = parsedArguments(args, options);
  const rotor = {
    mass: needed(values.mass, "mass", '"400 kg"'),
    speed: frequency(needed(values.speed, "speed", '"1480 r/min"')),
  };
  if (values.unbalance !== undefined) {
    alone("unbalance", positionals);
    const grade = gradeOfUnbalance(values.unbalance, rotor);
    const force = centrifugalForce(values.unbalance, rotor.speed);
    await io.out(
      values.json
        ? `${JSON.stringify({ grade, force, note: NOTE, cautions })}\n`
        : `${values.unbalance} is G ${significant(grade)}, centrifugal force ${significant(force)} N at service speed\n\n${wrapped(NOTE)}${cautionsText()}`,
    );
    return exitCodes.done;
  }
  const grade = needed(positionals.join(" ") || undefined, "unbalance", 'or a grade, as in veladis balance "G 6.3"');
  const found = permissibleUnbalance(grade, { ...rotor, ...planesOf(values.planes) });
  await io.out(values.json ? `${JSON.stringify({ ...found, cautions })}\n` : permissibleText(found) + cautionsText());
  return exitCodes.done;
}

/** Balance grades in both directions. */
export const balanceCommand: Command = { help, run };
