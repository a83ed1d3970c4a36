import { VeladisError } from "../../core/index";
import { scheduleSetpoints } from "../../plant/index";
import type { Io } from "../input/io";
import type { ParsedOptions } from "../options/option-row";
import { exitCodes } from "../print/exit-codes";
import { jsonLine } from "../print/json-line";
import { scheduleCsv, scheduleText } from "../print/schedule-text";
import { listedPlant } from "./listed-plant";
import type { plantSetpointsPage } from "./plant-setpoints-page";

/** Prints a schedule of setpoints for the machines of a list. */
export async function printSchedule(given: ParsedOptions<typeof plantSetpointsPage.options>, io: Io): Promise<number> {
  const { values, texts } = given;
  const { csv, json, full } = values;
  if (csv && json) {
    throw new VeladisError("unknown-option", { expected: "one of --csv and --json", received: "both", option: "csv" });
  }
  const { plant, schemes } = await listedPlant(given, texts[0], io);
  const schedule = scheduleSetpoints(plant, { ...(schemes !== undefined && { schemes }) });
  const { machines, refused, cautions } = schedule;
  const lines = [
    ...machines.map((one) => jsonLine("scheduled machine", one)),
    ...refused.map((one) => jsonLine("unscheduled machine", one)),
    `${JSON.stringify({ cautions })}\n`,
  ];
  await io.out(json ? lines.join("") : csv ? scheduleCsv(schedule) : scheduleText(schedule, full));
  return refused.length > 0 && !values["keep-going"] ? exitCodes.refused : exitCodes.done;
}
