import { dataText, shown, VeladisError } from "../core/index";
import { type MachineRef, machineFacts } from "./machine-facts";
import { matchMachine } from "./match-machine";
import type { Scheme } from "./scheme";
import { type SchemeRef, schemeOf } from "./scheme-of";
import { inOrder } from "./scheme-order";
import { builtInSchemes } from "./schemes/index";
import { isForKind } from "./verdict";

/** How many schemes a refusal names. */
const MOST = 3;

/** Why a scheme is not for a machine of its kind, in words. */
function reasonOf(scheme: Scheme, machine: MachineRef): string[] {
  const { exclusion } = matchMachine(scheme, machineFacts(machine));
  if (scheme.informative) return [`${scheme.standard}: informative ranges`];
  if (scheme.byContract) return [`${scheme.id}: by name only, where the order has it`];
  if (exclusion === undefined) return scheme.kind === "grades" ? [`${scheme.id}: grades, no verdict`] : [];
  const { expected, received, reason } = exclusion;
  return [`${scheme.standard}: ${reason ?? `for ${expected}; this machine: ${received}`}`];
}

/**
 * Refuses a machine that no scheme gives a verdict for, with what the schemes for its kind are for.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
export function refuseUnknown(machine: MachineRef, schemes: readonly SchemeRef[] = builtInSchemes): never {
  const known = machineFacts(machine);
  const ofKind = schemes.map(schemeOf).filter((one) => isForKind(one, known.type));
  const reasons = inOrder(ofKind, known).flatMap((scheme) => reasonOf(scheme, machine));
  const told = [...new Set(reasons)].slice(0, MOST).join("; ");
  throw new VeladisError("out-of-range", {
    expected: `a machine that a scheme gives a verdict for${told === "" ? "" : ` (${told})`}`,
    received: typeof machine === "string" ? shown(machine) : dataText(machine),
  });
}
