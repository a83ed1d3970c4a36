import { VeladisError } from "../core/index";
import type { Machine } from "./machine";
import { parseMachine } from "./parse-machine";

/** What is known of the words that told a machine, besides its facts. */
export interface MachineNotes {
  /** What reading the words assumed, in words. */
  readonly assumed: readonly string[];
  /** What was not understood and set aside, in words. */
  readonly setAside: readonly string[];
}

const nothing: MachineNotes = /* @__PURE__ */ Object.freeze({
  assumed: Object.freeze([]),
  setAside: Object.freeze([]),
});

/** What reading the words of a machine assumed, and what it set aside. */
export function machineNotes(given: Machine | string): MachineNotes {
  const { assumed = [], notUnderstood = [] } = typeof given === "string" ? parseMachine(given) : given;
  if (assumed.length === 0 && notUnderstood.length === 0) return nothing;
  const setAside = notUnderstood.map(({ word, didYouMean }) => {
    const meant = didYouMean.length === 0 ? "" : ` (did you mean ${didYouMean.slice(0, 3).join(", ")}?)`;
    return `"${word}": not understood, and set aside${meant}`;
  });
  return { assumed, setAside };
}

/**
 * Refuses a machine with words that nobody understood.
 *
 * @throws {@link VeladisError} `unknown-option` with the nearest words
 */
export function requireUnderstood(given: Machine | string): void {
  const { notUnderstood = [] } = typeof given === "string" ? parseMachine(given) : given;
  const [first] = notUnderstood;
  if (first === undefined) return;
  throw new VeladisError("unknown-option", {
    expected: "a machine in words that are all understood",
    received: JSON.stringify(notUnderstood.map(({ word }) => word).join(", ")),
    didYouMean: first.didYouMean,
  });
}
