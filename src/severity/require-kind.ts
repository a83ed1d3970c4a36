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

/** The kind that a word not understood ends with: `exhaust fan` of `roof exhaust fan`. */
function endOf(word: string): string | undefined {
  const parts = word.split(/\s+/);
  return parts.map((_, i) => parts.slice(i).join(" ")).find((end, i) => i > 0 && isKind(end));
}

/** How to write a machine whose kind stands behind a word that is not understood, and may be of another kind. */
function apartText(machine: MachineRef): string {
  const told = machineNotes(machine).notUnderstood.flatMap(({ word }) => {
    const end = endOf(word);
    if (end === undefined) return [];
    const before = word.slice(0, word.length - end.length).trim();
    return [`; write ${shown(`${end}, ${before}`)} if ${shown(word)} is such a machine`];
  });
  return told.join("");
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
    expected: `type: ${facts.type.ask}${apartText(machine)}`,
    received: said === "" ? "a machine without type" : `a machine without type, since ${said} may be several or none`,
    didYouMean: [...new Set(meant.flatMap(({ didYouMean }) => didYouMean))],
    allowed: Object.keys(machineTypes),
    fact: "type",
  });
}
