import { pointedWords, VeladisError } from "../../core/index";
import { frequency } from "../../frequency/index";
import type { UnitSymbol } from "../../units/index";
import type { Io } from "../input/io";
import { confirmedOption } from "../options/confirmed-option";
import { limitsAlone } from "../options/limits-option";

/** Options that say by what `overall` judges. */
interface OfJudging {
  readonly machine?: string | undefined;
  /** The running speed, which the machine's words may say too. */
  readonly speed?: string | undefined;
  readonly scheme: string | undefined;
  readonly limits: string | undefined;
  readonly confirmed: readonly string[];
  readonly background?: string | undefined;
  readonly "fail-from"?: string | undefined;
  readonly "decimal-comma": boolean;
  readonly json: boolean;
}

/** Refuses what belongs to a verdict, since nothing is judged. */
function requireNoVerdict(values: OfJudging): void {
  for (const option of ["background", "fail-from"] as const) {
    if (values[option] === undefined) continue;
    throw new VeladisError("missing-option", {
      expected: `--machine, --scheme or --limits beside --${option}: without them nothing is judged`,
      received: `--${option} alone`,
    });
  }
}

/** What judges the overall levels of a record or of lines in this unit; undefined where nothing is to be judged. */
export async function judgeAsked(values: OfJudging, io: Io, unit: UnitSymbol) {
  if ((values.machine ?? values.scheme ?? values.limits) === undefined) {
    requireNoVerdict(values);
    return undefined;
  }
  const machine = pointedWords(values.machine ?? "", values["decimal-comma"]);
  const { recordJudge } = await import("./judge-record");
  return recordJudge({
    unit,
    scheme: limitsAlone(values, machine) ?? values.scheme,
    machine,
    confirmed: await confirmedOption(values.confirmed, io, values.json, [values.scheme]),
    background: values.background,
    speed: values.speed === undefined ? undefined : frequency(values.speed).hertz,
  });
}
