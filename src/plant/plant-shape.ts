import { orNothing, requireChoice, requireGiven, requireShape, requireText, type Shape } from "../core/index";
import { coils, contacts, sensorFaults } from "../device/index";
import { readingShape } from "../setpoints/index";
import { type Machine, machineFacts, machineNotes } from "../severity/index";
import { calendarDay } from "./calendar-day";

/** A calendar day, as `2026-03-31`. */
export const day: Shape = (value: string, where: string) =>
  calendarDay(requireText(value, `${where}: a day such as 2026-03-31`));
const choice =
  (words: readonly string[]): Shape =>
  (value: unknown, where: string) =>
    requireChoice(value, words, where);

/** A machine as data, its facts and the words about it. */
function machineData(value: Machine): void {
  machineFacts(requireGiven(value, "a machine, as judge takes it"));
  machineNotes(value);
}

/** Texts by any keys. */
const textsShape: Shape = (value: object, where: string) => {
  requireShape(value, {}, where);
  for (const [key, text] of Object.entries(value)) requireShape(text, "text", `${where}.${key}`);
};

/** A machine of a plant, as far as the rules of an audit rely on its form: what it holds else they check themselves. */
export function machineShape(): Shape {
  return {
    tag: "text",
    line: "number",
    machine: machineData,
    startUp: orNothing("number"),
    coastDown: orNothing("number"),
    table: orNothing("text"),
    limits: orNothing({ source: "text" }),
    ceiling: orNothing(readingShape),
    loop: orNothing("text"),
    band: orNothing({}),
    alarm: orNothing(readingShape),
    trip: orNothing(readingShape),
    tripDelay: orNothing("number"),
    settings: {
      hysteresis: orNothing("text"),
      startInhibit: orNothing("number"),
      multiplier: orNothing({ factor: "number", seconds: "number" }),
      contact: orNothing(choice(contacts)),
      coil: orNothing(choice(coils)),
      sensorFault: orNothing(choice(sensorFaults)),
    },
    device: {},
    baseline: orNothing({
      level: readingShape,
      date: orNothing(day),
      count: orNothing("number"),
      deviation: orNothing(readingShape),
    }),
    check: orNothing({
      date: day,
      known: orNothing(readingShape),
      asFound: orNothing(readingShape),
      asLeft: orNothing(readingShape),
      tolerance: orNothing("text"),
    }),
    tolerance: orNothing("text"),
    cells: orNothing(textsShape),
    interval: orNothing("number"),
  };
}

/** A plant, as {@link parsePlant} returns it. */
export const plantShape: Shape = /* @__PURE__ */ (() =>
  Object.freeze({
    machines: [machineShape()],
    refused: [{ line: "number", tag: "text", column: orNothing("text"), code: "text", message: "text" }],
  } as const))();
