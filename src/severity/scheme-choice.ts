import { dataText, shown, VeladisError } from "../core/index";
import type { MachineRef } from "./machine-facts";
import type { Scheme } from "./scheme";
import { schemeById } from "./scheme-of";
import { type Candidate, selectSchemes } from "./select-schemes";

/** The table to judge a machine by, and the others that would do. */
export interface SchemeChoice {
  readonly scheme: Scheme;
  /** The other candidates for which no fact is missing, best first. */
  readonly others: readonly Candidate[];
}

/**
 * The built-in table to judge a machine by when none is named: the first candidate of {@link selectSchemes}, with the
 * others that would do.
 *
 * @param machine - the machine, as data or in words
 * @throws {@link VeladisError} `out-of-range` for a machine that no table is for, and as {@link selectSchemes}
 * @example
 * ```ts
 * import { schemeChoice } from "veladis/severity";
 *
 * const { scheme, others } = schemeChoice("pump 90 kW 2980 r/min rigid category II, in service, housing");
 * scheme.id; // => "iso-10816-7-2009"
 * others.map((one) => one.scheme).includes("iso-10816-1-1995-annexB"); // => true
 * ```
 */
export function schemeChoice(machine: MachineRef): SchemeChoice {
  const [best, ...others] = selectSchemes(machine).candidates;
  if (best !== undefined) {
    return { scheme: schemeById(best.scheme), others: others.filter(({ status }) => status !== "asks") };
  }
  throw new VeladisError("out-of-range", {
    expected: "a machine that a table is for",
    received: typeof machine === "string" ? shown(machine) : dataText(machine),
  });
}
