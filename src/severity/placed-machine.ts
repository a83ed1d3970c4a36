import { cached, VeladisError } from "../core/index";
import { lowestLimits, lowestLimitsAssumed } from "./lowest-limits";
import type { KnownFacts, Machine } from "./machine";
import { conditionOf } from "./machine-class";
import { type MachineRef, machineFacts, machineNotes } from "./machine-facts";
import { type MachineMatch, type MissingFact, matchMachine } from "./match-machine";
import { missingFacts, usualMissing } from "./missing-facts";
import { withNominalPower } from "./nominal-power";
import type { Condition, MachineClass, Scheme } from "./scheme";
import { requireUnderstood, wordsSetAside } from "./set-aside";
import { unusedFacts } from "./unused-facts";
import { conditionAside, usualCaseOf, usualTexts } from "./usual-case";

/**
 * What to do about facts that were not given. `"nothing"`: each that decides or could is asked for. `"usual case"`: a machine
 * in service, or new where the table is for new ones, and a reading where the table has it taken are assumed and named; all
 * else is asked for. `"lowest limits"`: besides, the class with the lowest limits is taken, and named.
 */
export type Assume = "nothing" | "usual case" | "lowest limits";

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

function requireClass(
  scheme: Scheme,
  { given, usual }: Pick<ToPlace, "given" | "usual">,
  match: MachineMatch,
  assume: Assume,
): [MachineClass, assumed: readonly string[]] {
  const { chosen, exclusion, assumed } = match;
  if (chosen !== undefined && usual.length === 0) return [chosen, assumed];
  if (exclusion !== undefined) throw new VeladisError(exclusion.code, exclusion);
  const lowest = assume === "lowest limits" ? lowestLimits(scheme, match) : undefined;
  const nominal = withNominalPower([scheme], given);
  if (lowest !== undefined) return [lowest, [...assumed, ...lowestLimitsAssumed(lowest, match.missing, nominal.known)]];
  throw missingFacts([...match.missing, ...usual], nominal);
}

/** What is said of a condition that a scheme is not for; refused where nothing may be assumed. */
function asideOfCondition(scheme: Scheme, facts: KnownFacts, assume: Assume): string[] {
  const aside = conditionAside(scheme, facts);
  const [first] = aside;
  if (first === undefined || assume === "lowest limits") return aside;
  throw new VeladisError("out-of-range", {
    expected: `a machine such as ${scheme.standard} (${scheme.edition}) is for: ${scheme.kind === "acceptance" ? "new" : "in service"}`,
    received: `condition ${facts.condition}`,
  });
}

/** A machine in a scheme that is named. */
function placedByName(scheme: Scheme, facts: KnownFacts, assume: Assume): PlacedMachine {
  const usual = usualCaseOf(scheme, facts);
  const machine = placed(
    scheme,
    { facts, given: facts, usual: assume === "nothing" ? usualMissing(usual) : [] },
    assume,
  );
  return Object.freeze({
    ...machine,
    assumedFacts: Object.freeze([...usualTexts(usual), ...machine.assumedFacts]),
    setAside: Object.freeze([...asideOfCondition(scheme, facts, assume), ...machine.setAside]),
  });
}

/** What is known of a machine: its facts, those of them that were given, and the usual ones that were not. */
interface ToPlace {
  readonly facts: KnownFacts;
  readonly given: KnownFacts;
  readonly usual: readonly MissingFact[];
}

function placed(scheme: Scheme, { facts, given, usual }: ToPlace, assume: Assume): PlacedMachine {
  const match = matchMachine(scheme, facts);
  const [chosen, assumed] = requireClass(scheme, { given, usual }, match, assume);
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
  if (assume !== "lowest limits") requireUnderstood(words);
  const machine = placedByName(scheme, machineFacts(words), assume);
  const { assumedFacts: assumed } = machineNotes(words);
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
    ofFacts: cached((facts) => placedByName(scheme, JSON.parse(facts) as KnownFacts, assume)),
    ofNarrowed: cached((both) => {
      const [facts, given] = JSON.parse(both) as [KnownFacts, KnownFacts];
      return placed(scheme, { facts, given, usual: [] }, assume);
    }),
  };
}

type Places = ReturnType<typeof placesIn>;

// schemes are frozen, so that what was found in one stays true
const remembered = /* @__PURE__ */ new WeakMap<Scheme, Record<Assume, Places>>();

function placesOf(scheme: Scheme, assume: Assume): Places {
  let places = remembered.get(scheme);
  if (places === undefined) {
    const of = (one: Assume): Places => placesIn(scheme, one);
    places = { nothing: of("nothing"), "usual case": of("usual case"), "lowest limits": of("lowest limits") };
    remembered.set(scheme, places);
  }
  return places[assume];
}

/**
 * The class of a machine in a scheme, with the facts that decided. A machine that was asked for before is not matched
 * again.
 *
 * @throws {@link VeladisError} `missing-fact`, `out-of-range` or `unknown-option`
 */
export function placedMachine(scheme: Scheme, machine: MachineRef, assume: Assume = "usual case"): PlacedMachine {
  const { ofWords, ofData, ofFacts } = placesOf(scheme, assume);
  if (typeof machine === "string") return ofWords(machine);
  const { assumedFacts, notUnderstood, application, byDirection } = machine ?? {};
  const hasNotes = [assumedFacts, notUnderstood, application, byDirection].some((one) => one !== undefined);
  return hasNotes ? ofData(JSON.stringify(machine)) : ofFacts(JSON.stringify(machineFacts(machine)));
}

/** The same for facts that are known already, with those not given narrowed to what the scheme is taken for. */
export function placedFacts(scheme: Scheme, facts: KnownFacts, given: KnownFacts, assume: Assume): PlacedMachine {
  return placesOf(scheme, assume).ofNarrowed(JSON.stringify([facts, given]));
}
