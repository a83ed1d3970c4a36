import { parseAmplitude } from "veladis";
import {
  asFoundAsLeft,
  baseline,
  benchPlan,
  checkAgainstKnown,
  delayTest,
  linearity,
  proposeSetpoints,
  resetPointTest,
  type SheetRequest,
  tripPointTest,
} from "veladis/protection";
import { currentLoop } from "veladis/sensor";
import { confirmableLimits, confirmScheme } from "veladis/severity";
import { settings as latched } from "../trip/trip-settings";

// ID fan 1 of the invented plant
export const settings = { ...latched, threshold: "9 mm/s rms", hysteresis: "8 %", onDelay: 8 } as const;
const known = "8 mm/s rms at 2400 r/min";
const readings = baseline([2, 2.1, 1.9, 2, 2.2, 2, 2.1, 1.9, 2, 2.05], { as: "mm/s rms" });
const tolerance = "5 %";

/** A scheme whose limits a person has confirmed against their own copy, all as they are here. */
const confirmed = confirmScheme(
  "iso-10816-7-2009",
  confirmableLimits("iso-10816-7-2009").map(({ scheme, edition, row, limit, as, shipped: printed }) => ({
    ...{ scheme, edition, row, limit, as, printed, page: "p. 9", by: "J. Example", on: "2024-03-04" },
  })),
);

/** Requests for sheets: every part, and every way in which a part may turn out. */
export const requests: Readonly<Record<string, SheetRequest>> = {
  "nothing but a machine": { machine: "ID fan 1" },
  "every part": {
    machine: "ID fan 1, drive side",
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
    check: checkAgainstKnown({ known, indicated: "7.9 mm/s rms", tolerance }),
    asFoundAsLeft: asFoundAsLeft({ known, tolerance, asFound: "7.3 mm/s rms", asLeft: "7.9 mm/s rms" }),
    linearity: linearity(
      [
        { known: "4 mm/s rms", indicated: "3.9 mm/s rms" },
        { known: "8 mm/s rms", indicated: "7.9 mm/s rms" },
      ],
      { tolerance },
    ),
    tripPoint: tripPointTest(
      "9 mm/s rms",
      [
        { level: "8.9 mm/s rms", set: false },
        { level: "9.1 mm/s rms", set: true },
      ],
      { tolerance },
    ),
    resetPoint: resetPointTest(
      "8.28 mm/s rms",
      [
        { level: "8.4 mm/s rms", set: true },
        { level: "8.2 mm/s rms", set: false },
      ],
      { tolerance },
    ),
    delay: delayTest(8, [8.1, 7.9], tolerance),
    plan: benchPlan(settings, { lowest: "8 Hz", highest: "3 kHz", displacement: "5 mm pp" }),
    remarks: ["the stud was cleaned", "read at noon"],
  },
  "limits from memory, outliers and a baseline in another unit": {
    machine: "Circulation pump 3",
    baseline: baseline([0.1, 0.11, 0.1, 0.09, 0.1, 0.1, 0.11, 0.09, 0.1, 0.6], { as: "in/s pk" }),
    proposal: proposeSetpoints({
      baseline: baseline([0.1, 0.11, 0.1, 0.09, 0.1, 0.1, 0.11, 0.09, 0.1, 0.6], { as: "in/s pk" }),
      machine: "motor 90 kW 1485 r/min rigid",
    }),
  },
  "a proposal of one reading": {
    machine: "Circulation pump 3",
    proposal: proposeSetpoints({ baseline: "1.8 mm/s rms", machine: "pump 250 kW 2980 r/min category I" }),
  },
  "the other settings": {
    machine: "ID fan 1",
    settings: {
      ...settings,
      ...{ latching: false, offDelay: 2, startInhibit: 10, timerResets: "below reset level", sensorFault: "bad" },
      ...{ contact: "normally closed", coil: "normally de-energised", multiplier: { factor: 2, seconds: 30 } },
    },
  },
  "a check that fails low": {
    machine: "ID fan 1",
    check: checkAgainstKnown({ known, indicated: "6.4 mm/s rms", tolerance }),
  },
  "a check that fails high, with an uncertainty": {
    machine: "ID fan 1",
    known: "shaker 2, certificate 17",
    check: checkAgainstKnown({ known, indicated: "9 mm/s rms", tolerance, uncertainty: "2 % (k=2)" }),
  },
  "a check that shows nothing": {
    machine: "ID fan 1",
    check: checkAgainstKnown({ known, indicated: "0 mm/s rms", tolerance }),
  },
  "a check that is right": {
    machine: "ID fan 1",
    check: checkAgainstKnown({ known, indicated: "8 mm/s rms", tolerance }),
  },
  "a check in doubt": {
    machine: "ID fan 1",
    check: checkAgainstKnown({ known, indicated: "7.62 mm/s rms", tolerance, uncertainty: "4 % (k=2)" }),
  },
  "a level clipped by its loop": {
    machine: "ID fan 1",
    check: checkAgainstKnown({
      known: "24 mm/s rms",
      indicated: currentLoop("0 to 20 mm/s rms").reading(20.9),
      tolerance,
    }),
  },
  "as left no better": {
    machine: "ID fan 1",
    asFoundAsLeft: asFoundAsLeft({ known, tolerance, asFound: "6.4 mm/s rms", asLeft: "6.9 mm/s rms" }),
  },
  "levels that fail": {
    machine: "ID fan 1",
    linearity: linearity(
      [
        { known: "4 mm/s rms", indicated: "3.1 mm/s rms" },
        { known: "8 mm/s rms", indicated: "6.9 mm/s rms" },
        { known: "12 mm/s rms", indicated: "12 mm/s rms" },
      ],
      { tolerance },
    ),
  },
  "a trip point alone": {
    machine: "ID fan 1",
    tripPoint: tripPointTest(
      "9 mm/s rms",
      [
        { level: "9.6 mm/s rms", set: false },
        { level: "9.8 mm/s rms", set: true },
      ],
      { tolerance, uncertainty: "1 % (k=2)" },
    ),
  },
  "a reset point alone": {
    machine: "ID fan 1",
    resetPoint: resetPointTest(
      "8.28 mm/s rms",
      [
        { level: "8.4 mm/s rms", set: true },
        { level: "8.2 mm/s rms", set: false },
      ],
      { tolerance },
    ),
  },
  "a shaker that cannot do it all": {
    machine: "ID fan 1",
    plan: benchPlan(settings, { lowest: "8 Hz", highest: "3 kHz", displacement: "1 mm pp", acceleration: "0.1 g pk" }),
  },
  "a check whose levels have uncertainties of their own": {
    machine: "ID fan 1",
    check: checkAgainstKnown({
      known: "8 ± 0.2 mm/s rms (k=2)",
      indicated: "7.4 ± 0.1 mm/s rms",
      tolerance,
      uncertainty: "1 % (k=2)",
    }),
  },
  "a check with one uncertainty, of the shaker's level": {
    machine: "ID fan 1",
    check: checkAgainstKnown({ known: "8 ± 0.2 mm/s rms (k=2)", indicated: "8.7 mm/s rms", tolerance }),
  },
  "as found and as left with uncertainties of their own": {
    machine: "ID fan 1",
    asFoundAsLeft: asFoundAsLeft({
      known: "8 ± 0.2 mm/s rms (k=2)",
      tolerance,
      asFound: "7.3 ± 0.1 mm/s rms",
      asLeft: "7.9 ± 0.1 mm/s rms",
    }),
  },
  "as found with another bound than as left": {
    machine: "ID fan 1",
    asFoundAsLeft: asFoundAsLeft({
      known: "8 mm/s rms",
      tolerance,
      asFound: "7.3 ± 0.2 mm/s rms",
      asLeft: "7.9 ± 0.1 mm/s rms",
    }),
  },
  "as found and as left beyond their loop": {
    machine: "ID fan 1",
    asFoundAsLeft: asFoundAsLeft({
      known: "24 mm/s rms",
      tolerance,
      asFound: currentLoop("0 to 20 mm/s rms").reading(20.9),
      asLeft: currentLoop("0 to 20 mm/s rms").reading(20.8),
    }),
  },
  "levels with uncertainties, of which the second reads lowest and the last is clipped": {
    machine: "ID fan 1",
    linearity: linearity(
      [
        { known: "4 ± 0.1 mm/s rms (k=2)", indicated: "3.75 mm/s rms" },
        { known: "8 mm/s rms", indicated: "6.4 ± 0.1 mm/s rms" },
        { known: "12 mm/s rms", indicated: "13.5 mm/s rms" },
        { known: "17 mm/s rms", indicated: "14.4 mm/s rms" },
        { known: "24 mm/s rms", indicated: currentLoop("0 to 20 mm/s rms").reading(20.9) },
      ],
      { tolerance },
    ),
  },
  "levels that all read right or high": {
    machine: "ID fan 1",
    linearity: linearity(
      [
        { known: "4 mm/s rms", indicated: "4 mm/s rms" },
        { known: "8 mm/s rms", indicated: "8.9 mm/s rms" },
      ],
      { tolerance },
    ),
  },
  "setpoints that the device cannot hold": {
    machine: "Circulation pump 3",
    proposal: proposeSetpoints({
      baseline: "1.8 mm/s rms",
      machine: "pump 250 kW 2980 r/min category I",
      device: { step: "60 mm/s rms" },
    }),
  },
  "limits that were confirmed, and a threshold as data": {
    machine: "Circulation pump 3",
    proposal: proposeSetpoints({
      baseline: "1.8 mm/s rms",
      machine: "pump 250 kW 2980 r/min category I",
      schemes: [confirmed],
    }),
    settings: { ...settings, threshold: parseAmplitude("9 mm/s rms"), hysteresis: "0.4 mm/s pk" },
  },
};
