import { VeladisError } from "../core/index";
import { type Scheme, type SchemeChoice, schemeById, schemeChoice } from "../severity/index";

/** The table that an option names: a built-in one by its id, or one in a JSON file. */
export async function namedScheme(by: string): Promise<Scheme> {
  return by.endsWith(".json") ? (await import("./scheme-file")).schemeFromFile(by) : schemeById(by);
}

/**
 * The table that the options name, or the first that is for the machine.
 *
 * @throws {@link VeladisError} `missing-fact` without both, and as {@link namedScheme} and {@link schemeChoice}
 */
export async function choiceOf(by: string | undefined, machine: string): Promise<SchemeChoice> {
  if (by !== undefined) return { scheme: await namedScheme(by), others: [] };
  if (machine.trim() === "") {
    throw new VeladisError("missing-fact", {
      expected: 'the machine, as in --machine "pump 90 kW 2980 r/min rigid", or a table, as in --by iso-10816-3-2009',
      received: "neither",
    });
  }
  const { scheme, others } = schemeChoice(machine);
  return { scheme, others: others.slice(0, 3) };
}
