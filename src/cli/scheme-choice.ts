import { VeladisError } from "../core/index";
import { type Candidate, type Scheme, schemeById, selectSchemes } from "../severity/index";

/** The table to judge by, and the others that would do. */
export interface Choice {
  readonly scheme: Scheme;
  readonly others: readonly Candidate[];
}

/**
 * The table that the options name, or the first that is for the machine.
 *
 * @throws {@link VeladisError} `missing-fact` without both, `out-of-range` for a machine that no table is for,
 *   `unknown-option` for a table there is none of
 */
export async function choiceOf(by: string | undefined, machine: string): Promise<Choice> {
  if (by?.endsWith(".json")) return { scheme: await (await import("./scheme-file")).schemeFromFile(by), others: [] };
  if (by !== undefined) return { scheme: schemeById(by), others: [] };
  if (machine.trim() === "") {
    throw new VeladisError("missing-fact", {
      expected: 'the machine, as in --machine "pump 90 kW 2980 r/min rigid", or a table, as in --by iso-10816-3-2009',
      received: "neither",
    });
  }
  const { candidates } = selectSchemes(machine);
  const [best, ...others] = candidates.filter(({ status }, i) => i === 0 || status !== "asks");
  if (best !== undefined) return { scheme: schemeById(best.scheme), others: others.slice(0, 3) };
  throw new VeladisError("out-of-range", {
    expected: "a machine that a table is for (veladis schemes lists them)",
    received: machine,
  });
}
