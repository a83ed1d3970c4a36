import { convertAmplitude } from "../../amplitude/index";
import { cautions, shown, VeladisError, visibleText } from "../../core/index";
import { frequency } from "../../frequency/index";
import { significant } from "../../reading/index";
import { mechanicalSwitch, type SwitchReach } from "../../shock/index";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { parts } from "../options/option-values";
import { assumptionLines } from "../print/assumption-lines";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { numberColumn, textTable } from "../print/text-table";
import { wrapped } from "../print/wrapped";
import type { mechanicalSwitchPage } from "./mechanical-switch-page";

function rowsText({ rows }: SwitchReach, hasLimit: boolean): string {
  if (rows.length === 0) return "";
  return `\n${textTable(
    [
      numberColumn("r/min"),
      numberColumn("operates at, mm/s rms"),
      numberColumn("in/s pk"),
      numberColumn("um pp"),
      ...(hasLimit ? [numberColumn("x limit"), { title: "at the limit" }] : []),
    ],
    rows.map(({ speed, velocity, displacement, timesLimit, protects }) => [
      significant(speed, 4),
      significant(velocity.value),
      significant(convertAmplitude(velocity, "in/s pk").value),
      significant(displacement.value),
      ...(hasLimit ? [significant(timesLimit as number), protects ? "operates" : "blind"] : []),
    ]),
  )}`;
}

/** The setting of a mechanical switch across speeds. */
export async function printMechanicalSwitch(
  { values, texts }: ParsedOptions<typeof mechanicalSwitchPage.options>,
  io: Io,
): Promise<number> {
  const [setting] = texts;
  const { speeds, limit } = values;
  if (setting === undefined || (speeds === undefined && limit === undefined)) {
    throw new VeladisError("missing-option", {
      expected:
        setting === undefined
          ? 'the setting of the switch, as in veladis mechanical-switch "2 g pk"'
          : '--speeds such as "1180 r/min, 2980 r/min", or --limit such as "0.35 in/s pk", or both',
      received: shown(setting),
    });
  }
  const found = mechanicalSwitch(setting, {
    ...(speeds !== undefined && { speeds: parts(speeds).map((one) => frequency(one)) }),
    ...(limit !== undefined && { limit }),
  });
  const explained = found.rows.map((row): Explained => [`at ${significant(row.speed, 4)} r/min`, row]);
  const { blindBelow } = found;
  const blind =
    blindBelow === null
      ? ""
      : wrapped(
          `blind below ${significant(blindBelow.speed, 4)} r/min (${significant(blindBelow.hertz)} Hz): at every lower speed a sine at ${visibleText(limit as string)} does not operate it`,
        );
  await io.out(
    values.json
      ? jsonLine("switch reach", found, { cautions, ...explainedSteps(values.explain, ...explained) })
      : `setting ${visibleText(setting)}\n${blind}${rowsText(found, limit !== undefined)}\n${assumptionLines(found)}${values.explain ? explainedText(explained) : ""}${cautionsText()}`,
  );
  return exitCodes.done;
}
