import { cached, VeladisError } from "../core/index";
import { lowestLimits, lowestLimitsAssumed } from "./lowest-limits";
import type { KnownFacts, Machine } from "./machine";
import { conditionOf } from "./machine-class";
import { type MachineRef, machineFacts, machineNotes } from "./machine-facts";
import { type MachineMatch, matchMachine } from "./match-machine";
import type { Condition, MachineClass, Scheme } from "./scheme";
import { requireUnderstood, wordsSetAside } from "./set-aside";
import { unusedFacts } from "./unused-facts";
import { writtenFact } from "./written-fact";

/** What to do about facts that a table needs and were not given: refuse, or take the class with the lowest limits. */
export type Assume = "nothing" | "lowest limits";

/** A machine in a class of a table. */
export interface PlacedMachine {
  readonly scheme: Scheme;
  readonly chosen: MachineClass;
  /** What tells the class from the others. */
  readonly machineClass: Condition;
  /** The facts of the machine; one that was not given may be narrowed to what the scheme is taken for. */
  readonly facts: KnownFacts;
  /** The facts that were given. */
  readonly given: KnownFacts;
  /** What stood in for facts not given, in words. */
  readonly assumedFacts: readonly string[];
  /** What was given and plays no part, in words. */
  readonly setAside: readonly string[];
}

/** What is missing, in words; of a single fact the answers stand in the error's own list. */
function missingText({ missing }: MachineMatch): string {
  return missing
    .map(({ fact, ask, unit, allowed }) => {
      const answers = allowed !== undefined && missing.length > 1 ? ` (${allowed.join(", ")})` : "";
      return `${fact}: ${ask}${unit ? ` in ${unit}` : ""}${writtenFact(fact, allowed)}${answers}`;
    })
    .join("; ");
}

function requireClass(scheme: Scheme, match: MachineMatch, assume: Assume): [MachineClass, assumed: readonly string[]] {
  const { chosen, exclusion, missing, assumed } = match;
  if (chosen !== undefined) return [chosen, assumed];
  if (exclusion !== undefined) throw new VeladisError(exclusion.code, exclusion);
  const lowest = assume === "nothing" ? undefined : lowestLimits(scheme, match);
  if (lowest !== undefined) return [lowest, [...assumed, ...lowestLimitsAssumed(lowest, missing)]];
  throw new VeladisError("missing-fact", {
    expected: missingText(match),
    received: `a machine without ${missing.map(({ fact }) => fact).join(" and ")}`,
    ...(missing.length === 1 && missing[0]?.allowed && { allowed: missing[0].allowed }),
  });
}

function placed(scheme: Scheme, facts: KnownFacts, assume: Assume, given = facts): PlacedMachine {
  const match = matchMachine(scheme, facts);
  const [chosen, assumed] = requireClass(scheme, match, assume);
  return Object.freeze({
    scheme,
    chosen,
    machineClass: Object.freeze(conditionOf(chosen)),
    facts: Object.freeze({ ...facts }),
    given: Object.freeze({ ...given }),
    assumedFacts: Object.freeze([...assumed]),
    setAside: Object.freeze(unusedFacts(scheme, given)),
  });
}

/** A machine in words in its class, with what reading the words assumed and set aside. */
function placedWords(scheme: Scheme, words: MachineRef, assume: Assume): PlacedMachine {
  if (assume === "nothing") requireUnderstood(words);
  const machine = placed(scheme, machineFacts(words), assume);
  const { assumed } = machineNotes(words);
  const setAside = wordsSetAside(words);
  if (assumed.length === 0 && setAside.length === 0) return machine;
  return Object.freeze({
    ...machine,
    assumedFacts: Object.freeze([...assumed, ...machine.assumedFacts]),
    setAside: Object.freeze([...setAside, ...machine.setAside]),
  });
}

/** The places of machines in one table, remembered: by their words, or by their facts as a text. */
function placesIn(scheme: Scheme, assume: Assume) {
  return {
    ofWords: cached((words) => placedWords(scheme, words, assume)),
    ofData: cached((machine) => placedWords(scheme, JSON.parse(machine) as Machine, assume)),
    ofFacts: cached((facts) => placed(scheme, JSON.parse(facts) as KnownFacts, assume)),
    ofNarrowed: cached((both) => {
      const [facts, given] = JSON.parse(both) as [KnownFacts, KnownFacts];
      return placed(scheme, facts, assume, given);
    }),
  };
}

type Places = ReturnType<typeof placesIn>;

// schemes are frozen, so that what was found in one stays true
const remembered = /* @__PURE__ */ new WeakMap<Scheme, Record<Assume, Places>>();

function placesOf(scheme: Scheme, assume: Assume): Places {
  let places = remembered.get(scheme);
  if (places === undefined) {
    places = { nothing: placesIn(scheme, "nothing"), "lowest limits": placesIn(scheme, "lowest limits") };
    remembered.set(scheme, places);
  }
  return assume === "nothing" ? places.nothing : places["lowest limits"];
}

/**
 * The class of a machine in a scheme, with the facts that decided. A machine that was asked for before is not matched
 * again.
 *
 * @throws {@link VeladisError} `missing-fact`, `out-of-range` or `unknown-option`
 */
export function placedMachine(scheme: Scheme, machine: MachineRef, assume: Assume = "nothing"): PlacedMachine {
  const { ofWords, ofData, ofFacts } = placesOf(scheme, assume);
  if (typeof machine === "string") return ofWords(machine);
  const hasNotes = machine?.assumed !== undefined || machine?.notUnderstood !== undefined;
  return hasNotes ? ofData(JSON.stringify(machine)) : ofFacts(JSON.stringify(machineFacts(machine)));
}

/** The same for facts that are known already, with those not given narrowed to what the scheme is taken for. */
export function placedFacts(scheme: Scheme, facts: KnownFacts, given: KnownFacts, assume: Assume): PlacedMachine {
  return placesOf(scheme, assume).ofNarrowed(JSON.stringify([facts, given]));
}
