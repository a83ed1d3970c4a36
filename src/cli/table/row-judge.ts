import { VeladisError } from "../../core/index";
import { classifier, type Scheme, schemeById, selectSchemes } from "../../severity/index";
import { schemeFromFile } from "../scheme-file";
import { remembered } from "./remembered";
import type { RowFacts } from "./row-reader";
import type { TableSettings } from "./settings";

/** A judge of readings of one type, frequency and machine. */
export interface RowJudge {
  zone(value: number): string;
  /** Id of the table of limits. */
  readonly by: string;
  /** Whether every limit was read in print. */
  readonly verified: boolean;
  readonly assumed: readonly string[];
  readonly assumedFacts: readonly string[];
}

/** The table that is for the machine, best first. */
function selectedScheme(machine: string): Scheme {
  if (machine === "") {
    throw new VeladisError("missing-fact", {
      expected: "the machine in words, or a table of limits, as in --by iso-10816-3-2009",
      received: "neither",
    });
  }
  const { candidates } = selectSchemes(machine);
  const [best] = candidates;
  if (best !== undefined) return schemeById(best.scheme);
  throw new VeladisError("out-of-range", {
    expected: "a machine that a table is for (veladis schemes lists them)",
    received: machine,
  });
}

/** The table of limits that the options name; undefined where it is to be selected. */
export async function toldScheme({ by }: TableSettings): Promise<Scheme | undefined> {
  if (by === undefined) return undefined;
  return by.endsWith(".json") ? schemeFromFile(by) : schemeById(by);
}

/** Finds the judge for what a row says; each is compiled once and remembered. */
export function rowJudges(
  { strict, crestFactor }: TableSettings,
  told: Scheme | undefined,
): (facts: Omit<RowFacts, "value">) => RowJudge {
  const selected = remembered(selectedScheme);
  const found = remembered((key): RowJudge => {
    const [type, hertz, machine] = key.split("\n") as [string, string, string];
    const scheme = told ?? selected(machine);
    const judge = classifier(scheme, machine === "" ? {} : machine, type, {
      assume: strict ? "nothing" : "lowest limits",
      ...(hertz !== "" && { at: { hertz: Number(hertz) } }),
      ...(crestFactor !== undefined && { crestFactor }),
    });
    const { verified, assumed, assumedFacts } = judge;
    return { zone: judge, by: scheme.id, verified, assumed, assumedFacts };
  });
  return ({ type, hertz, machine }) => found(`${type}\n${hertz ?? ""}\n${machine}`);
}
