import { isFailSafe, type TripSettings } from "../device/index";
import { format } from "../reading/index";
import type { SheetSection } from "./sheet";
import type { SheetRequest } from "./sheet-request";

/** The section for facts about machine, sensor and device. */
export function factsSection({ facts = {}, toFill = [] }: SheetRequest): SheetSection[] {
  const rows = [...Object.entries(facts), ...toFill.map((name) => [name, ""])];
  return rows.length === 0 ? [] : [{ title: "Machine, sensor and device", table: { columns: ["", ""], rows } }];
}

/** The section for the settings as they are in the device. */
export function settingsSection(settings: TripSettings): SheetSection {
  const {
    threshold,
    hysteresis,
    onDelay,
    offDelay = 0,
    timerResets,
    latching,
    contact,
    coil,
    sensorFault,
    startInhibit = 0,
    multiplier,
  } = settings;
  return {
    title: "Settings in the device",
    table: {
      columns: ["setting", "value"],
      rows: [
        ["threshold, as stored", typeof threshold === "string" ? threshold : format(threshold, { digits: 4 })],
        ["hysteresis", hysteresis],
        ["on-delay", `${onDelay} s; starts over when the level falls ${timerResets}`],
        ["off-delay", `${offDelay} s`],
        ["output", latching ? "latching, reset by hand" : "clears by itself"],
        ["relay", `contact ${contact}, coil ${coil}${isFailSafe(coil) ? " (fail-safe)" : ""}`],
        ["sensor fault", sensorFault],
        ["start-up inhibit", `${startInhibit} s`],
        [
          "setpoint multiplier",
          multiplier === undefined ? "none" : `${multiplier.factor} for ${multiplier.seconds} s from start`,
        ],
      ],
    },
  };
}
