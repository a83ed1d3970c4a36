import { shown, VeladisError } from "../core/index";
import { type Scheme, schemeById, selectSchemes } from "../severity/index";

/**
 * The table that was named, or the first that is for the machine.
 *
 * @throws {@link VeladisError} `unknown-option` for a table there is none of, `out-of-range` for a machine that no table
 *   is for
 */
export function schemeFor(machine: string, name: string | undefined): Scheme {
  if (name !== undefined) return schemeById(name);
  const [best] = selectSchemes(machine).candidates;
  if (best !== undefined) return schemeById(best.scheme);
  throw new VeladisError("out-of-range", { expected: "a machine that a table is for", received: shown(machine) });
}
