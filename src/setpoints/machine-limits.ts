import { VeladisError } from "../core/index";
import { parsedType, union } from "../reading/index";
import { type AdmittedScheme, type MachineRef, schemesFor } from "../severity/index";
import { type LimitsQuestion, limitsOfScheme, type SetpointLimits } from "./setpoint-limits";

const WITHOUT = 'or limits of the maker or the site, or scheme "none" for a statistical alarm alone';

/** The schemes by which the machine is judged; a refusal says what else there is to set from. */
function admitted(machine: MachineRef, type: string): readonly AdmittedScheme[] {
  const isDisplacement = parsedType(type).quantity === "displacement";
  try {
    return schemesFor(machine, { place: isDisplacement ? "either" : "housing" });
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    const { code, expected, received, allowed, didYouMean } = error;
    throw new VeladisError(code, {
      expected: `${expected}; ${WITHOUT}`,
      received,
      ...(allowed !== undefined && { allowed }),
      ...(didYouMean !== undefined && { didYouMean }),
    });
  }
}

/** What was assumed, and what else was of facts that are not named yet. */
function withOthers(assumed: readonly string[], others: readonly string[]): string[] {
  const named = (text: string): string | undefined => text.split(":")[0];
  return [...assumed, ...others.filter((text) => assumed.every((one) => named(one) !== named(text)))];
}

/** The lowest trip first; schemes that print no shutdown last. */
function byTrip(a: SetpointLimits, b: SetpointLimits): number {
  const [mine, others] = [a, b].map(({ upper }) => upper?.amplitude.value ?? Number.MAX_VALUE) as [number, number];
  return mine - others || a.lower.amplitude.value - b.lower.amplitude.value;
}

/**
 * Limits for a machine by the schemes that its known facts admit: of several, those of the lowest trip, with what that
 * scheme was taken for.
 *
 * @throws {@link VeladisError} as {@link schemesFor} and {@link limitsOfScheme}
 */
export function limitsOfMachine(
  machine: MachineRef,
  question: Omit<LimitsQuestion, "scheme" | "machine">,
): SetpointLimits {
  const schemes = admitted(machine, question.type);
  const found = schemes.map(({ scheme, assumedFacts, setAside }): SetpointLimits => {
    const limits = limitsOfScheme({ ...question, scheme, machine });
    return { ...limits, assumedFacts: withOthers(assumedFacts, limits.assumedFacts), setAside };
  });
  const [first, ...others] = found.sort(byTrip) as [SetpointLimits, ...SetpointLimits[]];
  if (others.length === 0) return first;
  return {
    ...first,
    schemes: found.flatMap((one) => one.schemes),
    assumed: found.reduce<SetpointLimits["assumed"]>((all, one) => union(all, one.assumed), []),
    // what one of them uses plays a part
    setAside: first.setAside.filter((text) => others.every((one) => one.setAside.includes(text))),
  };
}
