import { VeladisError } from "../../core/index";
import { type Scheme, type SchemeChoice, schemeById, schemeChoice } from "../../severity/index";

/** The scheme that an option names: a built-in one by its id, or one in a JSON file. */
export async function namedScheme(name: string): Promise<Scheme> {
  return name.endsWith(".json") ? (await import("../input/scheme-file")).schemeFromFile(name) : schemeById(name);
}

/**
 * The scheme that the options name, or the first that is for the machine.
 *
 * @throws {@link VeladisError} `missing-fact` without both, and as {@link namedScheme} and {@link schemeChoice}
 */
export async function choiceOf(name: string | undefined, machine: string): Promise<SchemeChoice> {
  if (name !== undefined) return { scheme: await namedScheme(name), others: [] };
  if (machine.trim() === "") {
    throw new VeladisError("missing-fact", {
      expected:
        'the machine, as in --machine "pump 90 kW 2980 r/min rigid", or a scheme, as in --scheme iso-10816-3-2009',
      received: "nothing",
    });
  }
  const { scheme, others } = schemeChoice(machine);
  return { scheme, others: others.slice(0, 3) };
}
