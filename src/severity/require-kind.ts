import { shown, VeladisError } from "../core/index";
import { facts } from "./facts";
import type { KnownFacts } from "./machine";
import { type MachineRef, machineNotes } from "./machine-facts";
import { phraseAt } from "./machine-phrases";
import { machineTypes } from "./machine-types";

/** True for the whole name of a kind of machine. */
function isKind(name: string): boolean {
  const phrase = phraseAt(name);
  return phrase?.length === name.length && phrase.facts.type !== undefined;
}

/**
 * Refuses a machine of which nobody said the kind, with the kinds that its words may mean.
 *
 * @throws {@link VeladisError} `missing-fact`
 */
export function requireKind(machine: MachineRef, { type }: KnownFacts): void {
  if (type !== undefined) return;
  const meant = machineNotes(machine)
    .notUnderstood.map(({ word, didYouMean }) => ({ word, didYouMean: didYouMean.filter(isKind) }))
    .filter(({ didYouMean }) => didYouMean.length > 0);
  const said = meant.map(({ word }) => shown(word)).join(" and ");
  throw new VeladisError("missing-fact", {
    expected: `type: ${facts.type.ask}`,
    received: said === "" ? "a machine without type" : `a machine without type, since ${said} may be several or none`,
    didYouMean: [...new Set(meant.flatMap(({ didYouMean }) => didYouMean))],
    allowed: Object.keys(machineTypes),
    fact: "type",
  });
}
