import { VeladisError } from "../core/index";
import { type Fit, fitOf } from "./fit";
import { type KnownFacts, knownFacts, type Machine } from "./machine";
import { parseMachine } from "./parse-machine";
import type { MachineClass, Scheme } from "./scheme";
import { withSupport } from "./support";

/** A machine as data or in words: `{ type: "pump", power: "90 kW" }`, `"pump 90 kW 2980 r/min rigid"`. */
export type MachineRef = Machine | string;

/** The facts of a machine, support computed where it can be. */
export function factsOfMachine(machine: MachineRef): KnownFacts {
  return withSupport(knownFacts(typeof machine === "string" ? parseMachine(machine) : machine));
}

/** What is missing, in words. */
export function missingText({ missing }: Fit): string {
  return missing
    .map(
      ({ fact, ask, unit, allowed }) =>
        `${fact}: ${ask}${unit ? ` in ${unit}` : ""}${allowed ? ` (${allowed.join(", ")})` : ""}`,
    )
    .join("; ");
}

/**
 * The class of a machine in a scheme, with the facts that decided.
 *
 * @throws {@link VeladisError} `missing-fact`, `out-of-range` or `unknown-option`
 */
export function classOf(scheme: Scheme, machine: MachineRef): Fit & { readonly chosen: MachineClass } {
  const fit = fitOf(scheme, factsOfMachine(machine));
  const { chosen, misfit } = fit;
  if (chosen !== undefined) return { ...fit, chosen };
  if (misfit !== undefined) throw new VeladisError(misfit.code, misfit);
  throw new VeladisError("missing-fact", {
    expected: missingText(fit),
    received: `a machine without ${fit.missing.map(({ fact }) => fact).join(" and ")}`,
    ...(fit.missing.length === 1 && fit.missing[0]?.allowed && { allowed: fit.missing[0].allowed }),
  });
}
