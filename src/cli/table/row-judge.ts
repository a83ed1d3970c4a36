import { cachedWithRefusals, same, shown, VeladisError } from "../../core/index";
import { hertz } from "../../frequency/index";
import { significant } from "../../reading/index";
import {
  type Classifier,
  classifier,
  type Machine,
  type MachineClassifier,
  type MachineRef,
  machineClassifier,
  parseMachine,
  type Scheme,
  type SchemeKind,
} from "../../severity/index";
import { requireNoGrades } from "../options/fail-from";
import { schemeAmong } from "../options/named-scheme";
import { rowCache } from "./row-cache";
import type { RowFacts } from "./row-reader";
import type { TableSettings } from "./settings";

/** Judges are larger than what else is kept; where speeds run through, most are asked once. */
const MOST_JUDGES = 1024;

/** A judge of readings of one type, frequency and machine. */
export interface RowJudge
  extends Pick<
    Classifier,
    | "index"
    | "worst"
    | "complete"
    | "zones"
    | "provenance"
    | "verified"
    | "confirmed"
    | "differences"
    | "assumed"
    | "assumedFacts"
    | "setAside"
    | "unjudged"
  > {
  /** Ids of the schemes, of which the worst governs. */
  readonly schemes: readonly string[];
  readonly kind: SchemeKind;
}

export const parsed = (words: string): Machine => (words === "" ? {} : parseMachine(words));

/** Refuses a speed in words that is not the one of the column; a range is none. */
function requireSameSpeed(told: Machine["speed"], inColumn: number, words: string): void {
  const inWords = typeof told !== "object" || "from" in told ? undefined : hertz(told);
  if (inWords !== undefined && same(inWords, inColumn)) return;
  throw new VeladisError("syntax", {
    expected: "one running speed in the words on the machine and in its column",
    received: `${shown(words)} and ${significant(inColumn * 60)} r/min`,
  });
}

/** The machine that a row tells of: words that many rows share, and a speed that may be its own. */
export function machineOf(told: string, read: (words: string) => Machine): MachineRef {
  const [words = "", speed] = told.split("\t");
  if (speed === undefined) return words === "" ? {} : words;
  const machine = read(words);
  if (machine.speed === undefined) return { ...machine, speed: { hertz: Number(speed) } };
  requireSameSpeed(machine.speed, Number(speed), words);
  return machine;
}

/** The judge by all schemes that the machine's facts admit. */
function judgeByMachine(
  machine: MachineRef,
  type: string,
  options: Parameters<typeof machineClassifier>[2],
): MachineClassifier {
  if (Object.keys(machine).length > 0) return machineClassifier(machine, type, options);
  throw new VeladisError("missing-option", {
    expected: "the machine in words, or a scheme, as in --scheme iso-10816-3-2009",
    received: "nothing",
  });
}

/** By which schemes rows are judged. */
export interface SchemesAsked {
  /** The one that the options name; undefined to select one for each machine. */
  readonly scheme: Scheme | undefined;
  /** Those to select from; the built-in ones if undefined. */
  readonly schemes: readonly Scheme[] | undefined;
}

/** Refuses a row of a shaft where limits in one line are for a housing: they are for all rows, and so is what says their place. */
function requireLimitsFor(machine: MachineRef, scheme: Scheme): void {
  const place = typeof machine === "string" ? parsed(machine).place : machine.place;
  if (place !== "shaft" || scheme.place === "shaft") return;
  throw new VeladisError("out-of-range", {
    expected: "readings of the housing for --limits; --machine shaft says that limits and all rows are of the shaft",
    received: "a row whose machine says shaft",
    option: "machine",
  });
}

/** Finds the judge for what a row says; each is compiled once and kept. */
export function rowJudges(
  { strict, crestFactor, failFrom, limits }: TableSettings,
  { scheme, schemes }: SchemesAsked,
): (facts: Omit<RowFacts, "value">) => RowJudge {
  if (failFrom !== undefined && scheme !== undefined) requireNoGrades([scheme.kind], scheme.id);
  const read = cachedWithRefusals(parsed, rowCache);
  const found = cachedWithRefusals(
    (key): RowJudge => {
      const [type, at, said] = key.split("\n") as [string, string, string];
      const machine = machineOf(said, read);
      const options = {
        assume: strict ? "nothing" : "lowest limits",
        ...(at !== "" && { at: { hertz: Number(at) } }),
        ...(crestFactor !== undefined && { crestFactor }),
      } as const;
      if (scheme === undefined) {
        const judge = judgeByMachine(machine, type, { ...options, ...(schemes && { schemes }) });
        // all have the same zones, and so are of one kind
        return { ...judge, kind: schemeAmong(judge.schemes[0] as string, schemes).kind };
      }
      if (limits !== undefined) requireLimitsFor(machine, scheme);
      const judge = classifier(scheme, machine, type, options);
      return { ...judge, schemes: [scheme.id], kind: scheme.kind };
    },
    { ...rowCache, room: MOST_JUDGES },
  );
  return (facts) => found(`${facts.type}\n${facts.hertz ?? ""}\n${facts.machine}`);
}
