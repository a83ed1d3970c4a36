import { memo } from "../core/index";
import { type KnownFacts, knownFacts, type Machine } from "./machine";
import { parseMachine } from "./parse-machine";
import { withSupport } from "./support";

/** A machine as data or in words: `{ type: "pump", power: "90 kW" }`, `"pump 90 kW 2980 r/min rigid"`. */
export type MachineRef = Machine | string;

const factsInWords = /* @__PURE__ */ memo((words) => Object.freeze(withSupport(knownFacts(parseMachine(words)))));

/** The facts of a machine, support computed where it can be. */
export function machineFacts(machine: MachineRef): KnownFacts {
  return typeof machine === "string" ? factsInWords(machine) : withSupport(knownFacts(machine));
}
