import { type ProbeGap, probeGap, probeLengthText, probeSensitivityText, voltsText } from "../../amplitude/index";
import { cautions, VeladisError, visibleText } from "../../core/index";
import { significant } from "../../reading/index";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { requireOption } from "../options/option-values";
import { assumptionLines } from "../print/assumption-lines";
import { cautionsText } from "../print/cautions-text";
import { exitCodes } from "../print/exit-codes";
import { jsonLine } from "../print/json-line";
import { labelled } from "../print/labelled";
import { dashed } from "../print/wrapped";
import type { gapPage } from "./gap-page";

function movementTexts({ movement, reached }: ProbeGap, limit: string | undefined): string[] {
  if (movement === null) return [];
  const { cold, direction } = movement;
  const moved = direction === "not moved" ? direction : `${probeLengthText(movement)} ${direction}`;
  const against =
    reached === null || limit === undefined
      ? []
      : [`${reached ? "REACHES" : "below"} the limit of ${visibleText(limit)}`];
  return [`${moved}, since the cold gap of ${voltsText(cold)}`, ...against];
}

/** What the gap voltage of a proximity probe says. */
export async function printGap(given: ParsedOptions<typeof gapPage.options>, io: Io): Promise<number> {
  const { values, texts } = given;
  const [written] = texts;
  if (written === undefined)
    throw new VeladisError("missing-option", {
      expected: 'a gap voltage, as in veladis gap "-9.8 V" --sensor "200 mV/mil" --range "-2 to -18 V"',
      received: "nothing",
    });
  const { cold, vibration, limit } = values;
  const failFrom = values["fail-from"];
  if (failFrom !== undefined && limit === undefined)
    throw new VeladisError("missing-option", {
      expected: "--limit beside --fail-from: without it nothing is judged",
      received: "--fail-from alone",
      option: "limit",
    });
  const found = probeGap(written, {
    sensitivity: requireOption(given, "sensor"),
    range: requireOption(given, "range"),
    ...(cold !== undefined && { cold }),
    ...(vibration !== undefined && { vibration }),
    ...(limit !== undefined && { limit }),
  });
  const { volts, range, percent, room, swing, sensitivity, warnings, reached } = found;
  await io.out(
    values.json
      ? jsonLine("probe gap", found, { cautions })
      : labelled(
          "gap",
          [`${voltsText(volts)}, ${significant(percent)} % of ${range.map(voltsText).join(" to ")}`],
          13,
        ) +
          labelled("moved", movementTexts(found, limit), 13) +
          labelled(
            "room",
            [`${probeLengthText(room.towards)} towards the probe, ${probeLengthText(room.away)} away`],
            13,
          ) +
          labelled("sensitivity", [probeSensitivityText(sensitivity)], 13) +
          (swing === null ? "" : labelled("vibration", [`between ${swing.volts.map(voltsText).join(" and ")}`], 13)) +
          labelled("judged", reached === null ? ["nothing: no limit of movement was given"] : [], 13) +
          `\n${assumptionLines(found)}${warnings.length === 0 ? "" : `\nwarnings\n${dashed(warnings)}`}${cautionsText()}`,
  );
  return failFrom !== undefined && reached === true ? exitCodes.reached : exitCodes.done;
}
