import { VeladisError } from "../core/index";
import { type Fit, fitOf } from "./fit";
import { type KnownFacts, knownFacts, type Machine } from "./machine";
import { parseMachine } from "./parse-machine";
import type { MachineClass, Scheme } from "./scheme";
import { assumptionsFor, severestOf } from "./severest";
import { withSupport } from "./support";

/** A machine as data or in words: `{ type: "pump", power: "90 kW" }`, `"pump 90 kW 2980 r/min rigid"`. */
export type MachineRef = Machine | string;

/** The facts of a machine, support computed where it can be. */
export function factsOfMachine(machine: MachineRef): KnownFacts {
  return withSupport(knownFacts(typeof machine === "string" ? parseMachine(machine) : machine));
}

/** What is missing, in words; of a single fact the answers stand in the error's own list. */
function missingText({ missing }: Fit): string {
  return missing
    .map(({ fact, ask, unit, allowed }) => {
      const answers = allowed !== undefined && missing.length > 1 ? ` (${allowed.join(", ")})` : "";
      return `${fact}: ${ask}${unit ? ` in ${unit}` : ""}${answers}`;
    })
    .join("; ");
}

/** What to do about facts that a table needs and were not given: refuse, or take the class with the lowest limits. */
export type Assume = "nothing" | "lowest limits";

/** A machine's class, with the facts that decided and what was assumed. */
export type Placed = Fit & { readonly chosen: MachineClass };

/**
 * The class of a machine in a scheme, with the facts that decided.
 *
 * @throws {@link VeladisError} `missing-fact`, `out-of-range` or `unknown-option`
 */
export function classOf(scheme: Scheme, machine: MachineRef, assume: Assume = "nothing"): Placed {
  const fit = fitOf(scheme, factsOfMachine(machine));
  const { chosen, misfit, missing } = fit;
  if (chosen !== undefined) return { ...fit, chosen };
  if (misfit !== undefined) throw new VeladisError(misfit.code, misfit);
  const severest = assume === "nothing" ? undefined : severestOf(scheme, fit);
  if (severest !== undefined) {
    return { ...fit, chosen: severest, assumed: [...fit.assumed, ...assumptionsFor(severest, missing)] };
  }
  throw new VeladisError("missing-fact", {
    expected: missingText(fit),
    received: `a machine without ${missing.map(({ fact }) => fact).join(" and ")}`,
    ...(missing.length === 1 && missing[0]?.allowed && { allowed: missing[0].allowed }),
  });
}
