import { shown, VeladisError } from "../core/index";
import { knownFacts, type Machine } from "./machine";
import type { MachineRef } from "./machine-facts";
import { kindName, type OwnMachineKind } from "./own-kind";
import { parseMachine } from "./parse-machine";

/** A machine of a kind of your own, as data. */
export type OwnMachine<Name extends string> = Omit<Machine, "type"> & { readonly type?: Machine["type"] | Name };

/** A machine that all functions know, and the kind of your own that it is of. */
export interface ReadMachine {
  readonly machine: Machine;
  readonly kind: OwnMachineKind | undefined;
}

/** The words of a line outside of its quotation marks, with the name of a kind replaced by what it is judged as. */
function replaced(line: string, name: string, by: string): string {
  const words = kindName(name).split(" ").join("[\\s-]+");
  const found = new RegExp(`(?<![\\p{L}\\p{N}])${words}(?![\\p{L}\\p{N}])`, "giu");
  return line
    .split('"')
    .map((part, i) => (i % 2 === 0 ? part.replace(found, by) : part))
    .join('"');
}

/** What holds for every machine of a kind, beside what is said of this one; neither may contradict the other. */
function withFactsOf({ name, judgedAs, facts = {}, source }: OwnMachineKind, machine: Machine): Machine {
  const said = knownFacts(machine);
  const known = knownFacts({ ...facts, type: judgedAs });
  for (const fact of Object.keys(facts) as (keyof typeof known)[]) {
    const isSame = said[fact] === undefined || JSON.stringify(said[fact]) === JSON.stringify(known[fact]);
    if (isSame) continue;
    throw new VeladisError("out-of-range", {
      expected: `${fact} ${known[fact]}, which every ${name} has`,
      received: shown(String(said[fact])),
      ...{ parameter: "machine", fact },
    });
  }
  const told = `type ${judgedAs}: for ${shown(name)}, a kind of your own (${source.title})`;
  return { ...facts, ...machine, assumedFacts: [told, ...(machine.assumedFacts ?? [])] };
}

/**
 * Reads machines in words and as data, of kinds of your own too: what such a kind is judged as stands in the place of its
 * name, and `assumedFacts` names it.
 */
export function ownMachineReader(kinds: readonly OwnMachineKind[]): (machine: MachineRef) => ReadMachine {
  // the longest name first, so that one within another does not break it
  const names = kinds
    .flatMap((kind) => [kind.name, ...(kind.also ?? [])].map((name) => ({ name, kind })))
    .sort((a, b) => b.name.length - a.name.length);
  const fromWords = (line: string): ReadMachine => {
    let text = line;
    const meant = new Set<OwnMachineKind>();
    for (const { name, kind } of names) {
      const next = replaced(text, name, kind.judgedAs);
      if (next !== text) meant.add(kind);
      text = next;
    }
    const [kind, other] = meant;
    if (other !== undefined) {
      throw new VeladisError("syntax", {
        expected: "one type in the description of a machine",
        received: `${shown(kind?.name)} and ${shown(other.name)}`,
        ...{ parameter: "machine", fact: "type" },
      });
    }
    const machine = parseMachine(text);
    return { machine: kind === undefined ? machine : withFactsOf(kind, machine), kind };
  };
  return (machine) => {
    if (typeof machine === "string") return fromWords(machine);
    const type: unknown = (machine as Machine | undefined)?.type;
    const kind =
      typeof type === "string" ? names.find(({ name }) => kindName(name) === kindName(type))?.kind : undefined;
    if (kind === undefined) return { machine, kind };
    return { machine: withFactsOf(kind, { ...machine, type: kind.judgedAs }), kind };
  };
}
