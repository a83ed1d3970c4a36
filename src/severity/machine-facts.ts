import {
  cached,
  inPlace,
  requireGiven,
  requireList,
  requireText,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { toldCategory, withCategory } from "./fan-category";
import { inDirection } from "./in-direction";
import { type KnownFacts, knownFacts, type Machine, type NotUnderstood } from "./machine";
import { parseMachine } from "./parse-machine";
import { withSupport } from "./support";

/** A machine as data or in words: `{ type: "pump", power: "90 kW" }`, `"pump 90 kW 2980 r/min rigid"`. */
export type MachineRef = Machine | string;

const factsInWords = /* @__PURE__ */ cached((words) => Object.freeze(completed(parseMachine(words))));

/** The machine in the direction of its reading; what is no machine is refused where its facts are read. */
function placedIn(machine: Machine): Machine {
  const { byDirection, direction } = machine ?? {};
  return byDirection === undefined && direction === undefined ? machine : inDirection(machine).machine;
}

/** With the support and the category that other facts tell. */
function completed(machine: Machine): KnownFacts {
  return withCategory(withSupport(knownFacts(placedIn(machine))));
}

/** The facts of a machine, with support and category where others tell them. */
export function machineFacts(machine: MachineRef): KnownFacts {
  return typeof machine === "string" ? factsInWords(machine) : completed(machine);
}

/** What reading a machine assumed, and what of its words was not understood. */
export interface MachineNotes {
  readonly assumedFacts: readonly string[];
  readonly notUnderstood: readonly NotUnderstood[];
}

function wordOf(one: NotUnderstood): NotUnderstood {
  if (typeof one !== "object" || one === null) {
    throw new VeladisError("wrong-type", {
      expected: "a word with the nearest known ones",
      received: shown(one),
    });
  }
  const word = requireText(one.word, "a word that is not understood", { option: "word" });
  const didYouMean = requireList(one.didYouMean, "the nearest known words as a list", { option: "didYouMean" }).map(
    (near, index) => requireText(near, "a known word", { option: "didYouMean", index }),
  );
  return Object.freeze({ word, didYouMean: Object.freeze(didYouMean) });
}

function notesOf(machine: Machine): MachineNotes {
  const { assumedFacts = [], notUnderstood = [] } = requireGiven(machine, 'a machine such as { type: "pump" }', {
    parameter: "machine",
  });
  const told = machine.application === undefined ? undefined : toldCategory(knownFacts(machine));
  return Object.freeze({
    assumedFacts: Object.freeze([
      ...requireList(assumedFacts, "what was assumed as a list", { option: "assumedFacts" }).map((one, index) =>
        requireText(one, "what was assumed, as text", { option: "assumedFacts", index }),
      ),
      ...(told === undefined ? [] : [told.text]),
      ...(machine.byDirection === undefined ? [] : inDirection(machine).assumed),
    ]),
    notUnderstood: Object.freeze(
      requireList(notUnderstood, "words that are not understood as a list", { option: "notUnderstood" }).map(
        (one, index) => inPlace({ option: "notUnderstood", index }, () => wordOf(one)),
      ),
    ),
  });
}

const notesInWords = /* @__PURE__ */ cached((words) => notesOf(parseMachine(words)));

/**
 * What reading a machine assumed and did not understand: of words, what {@link parseMachine} says; of data, what they
 * hold.
 *
 * @throws {@link VeladisError} as {@link parseMachine}; `wrong-type` for notes that are none
 * @example
 * ```ts
 * import { machineNotes } from "veladis/severity";
 *
 * machineNotes("generator 500 kVA rigd");
 * // => { assumedFacts: ["power 350 to 500 kW: 500 kVA at a power factor of 0.7 to 1, which was not given"],
 * //   notUnderstood: [{ word: "rigd", didYouMean: ["rigid"] }] }
 * ```
 */
export function machineNotes(machine: MachineRef): MachineNotes {
  return withParameters({ machine }, () => {
    return typeof machine === "string" ? notesInWords(machine) : notesOf(machine);
  });
}
