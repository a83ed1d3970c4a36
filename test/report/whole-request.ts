import {
  asFoundAsLeft,
  baseline,
  benchPlan,
  delayTest,
  linearity,
  proposeSetpoints,
  resetPointTest,
  type SheetRequest,
  tripPointTest,
} from "veladis/protection";
import { settings as latched } from "../trip/trip-settings";

// ID fan 1 of the invented plant
export const settings = { ...latched, threshold: "9 mm/s rms", hysteresis: "8 %", onDelay: 8 } as const;
export const known = "8 mm/s rms at 2400 r/min";
export const readings = baseline([2, 2.1, 1.9, 2, 2.2, 2, 2.1, 1.9, 2, 2.05], { as: "mm/s rms" });

/** A request with a part of every kind. */
export const request: SheetRequest = {
  machine: "ID fan 1 <drive side> | horizontal & axial",
  facts: { sensor: "100 mV/g accelerometer, stud", device: "steps of 0.2 mm/s RMS" },
  baseline: readings,
  proposal: proposeSetpoints({
    baseline: readings,
    limits: { "B/C": "0.3 in/s pk", "C/D": "0.45 in/s pk", source: "fan maker" },
    machine: "fan 1485 r/min",
    device: { step: "0.2 mm/s rms" },
  }),
  settings,
  known,
  asFoundAsLeft: asFoundAsLeft({ known, tolerance: "5 %", asFound: "7.3 mm/s rms", asLeft: "7.9 mm/s rms" }),
  linearity: linearity(
    [
      { known: "4 mm/s rms", indicated: "3.9 mm/s rms" },
      { known: "8 mm/s rms", indicated: "7.9 mm/s rms" },
    ],
    { tolerance: "5 %" },
  ),
  tripPoint: tripPointTest(
    "9 mm/s rms",
    [
      { level: "8.9 mm/s rms", set: false },
      { level: "9.1 mm/s rms", set: true },
    ],
    { tolerance: "5 %" },
  ),
  resetPoint: resetPointTest(
    "8.28 mm/s rms",
    [
      { level: "8.4 mm/s rms", set: true },
      { level: "8.2 mm/s rms", set: false },
    ],
    { tolerance: "5 %" },
  ),
  delay: delayTest(8, [8.1, 7.9], "5 %"),
  plan: benchPlan(settings, { lowest: "8 Hz", highest: "3 kHz", displacement: "5 mm pp" }),
  remarks: ["# not a heading", "1. not a list"],
};
