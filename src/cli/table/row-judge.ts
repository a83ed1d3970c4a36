import { cached, shown, VeladisError } from "../../core/index";
import type { Assumption } from "../../reading/index";
import { classifier, type Machine, parseMachine, type Scheme, schemeChoice } from "../../severity/index";
import { rowCache } from "./row-cache";
import type { RowFacts } from "./row-reader";
import type { TableSettings } from "./settings";

/** Judges are larger than what else is kept; where speeds run through, most are asked once. */
const MOST_JUDGES = 1024;

/** A judge of readings of one type, frequency and machine. */
export interface RowJudge {
  zone(value: number): string;
  /** Id of the scheme. */
  readonly scheme: string;
  /** Whether every limit was read in print. */
  readonly verified: boolean;
  readonly assumed: readonly Assumption[];
  readonly assumedFacts: readonly string[];
}

const parsed = (words: string): Machine => (words === "" ? {} : parseMachine(words));

/** The machine that a row tells of: words that many rows share, and a speed that may be its own. */
function machineOf(told: string, read: (words: string) => Machine): Machine {
  const [words = "", speed] = told.split("\t");
  const machine = read(words);
  if (speed === undefined) return machine;
  if (machine.speed === undefined) return { ...machine, speed: { hertz: Number(speed) } };
  throw new VeladisError("syntax", {
    expected: "the running speed once, in the words on the machine or in its column",
    received: shown(words),
  });
}

/** The scheme that is for the machine, best first. */
function selectedScheme(machine: Machine): Scheme {
  if (Object.keys(machine).length === 0) {
    throw new VeladisError("missing-fact", {
      expected: "the machine in words, or a scheme, as in --scheme iso-10816-3-2009",
      received: "nothing",
    });
  }
  return schemeChoice(machine).scheme;
}

/** Finds the judge for what a row says; each is compiled once and kept. */
export function rowJudges(
  { strict, crestFactor }: TableSettings,
  told: Scheme | undefined,
): (facts: Omit<RowFacts, "value">) => RowJudge {
  const read = cached(parsed, rowCache);
  const selected = cached((said) => selectedScheme(machineOf(said, read)), rowCache);
  const found = cached(
    (key): RowJudge => {
      const [type, hertz, said] = key.split("\n") as [string, string, string];
      const scheme = told ?? selected(said);
      const judge = classifier(scheme, machineOf(said, read), type, {
        assume: strict ? "nothing" : "lowest limits",
        ...(hertz !== "" && { at: { hertz: Number(hertz) } }),
        ...(crestFactor !== undefined && { crestFactor }),
      });
      const { verified, assumed, assumedFacts } = judge;
      return { zone: judge, scheme: scheme.id, verified, assumed, assumedFacts };
    },
    { ...rowCache, room: MOST_JUDGES },
  );
  return ({ type, hertz, machine }) => found(`${type}\n${hertz ?? ""}\n${machine}`);
}
