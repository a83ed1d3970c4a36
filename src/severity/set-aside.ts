import { shown, VeladisError } from "../core/index";
import { type MachineRef, machineNotes } from "./machine-facts";

/** The words of a machine that were not understood, each with what may have been meant. */
export function wordsSetAside(machine: MachineRef): string[] {
  return machineNotes(machine).notUnderstood.map(({ word, didYouMean }) => {
    const meant = didYouMean.length === 0 ? "" : ` (did you mean ${didYouMean.slice(0, 3).join(", ")}?)`;
    return `"${word}": not understood${meant}`;
  });
}

/**
 * Refuses a machine with words that were not understood.
 *
 * @throws {@link VeladisError} `unknown-option` with the nearest words
 */
export function requireUnderstood(machine: MachineRef): void {
  const { notUnderstood } = machineNotes(machine);
  const [first] = notUnderstood;
  if (first === undefined) return;
  throw new VeladisError("unknown-option", {
    expected: "a machine in words that are all understood",
    received: shown(notUnderstood.map(({ word }) => word).join(", ")),
    didYouMean: first.didYouMean,
  });
}
