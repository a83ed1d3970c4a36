import { VeladisError } from "../core/index";
import { parsedType, union } from "../reading/index";
import { type AdmittedScheme, facts, type MachineRef, type SchemeRef, schemesFor } from "../severity/index";
import { assumedPlace } from "./assumed-place";
import { lowestOfLimits } from "./lowest-of-limits";
import { type LimitsQuestion, limitsOfClass } from "./scheme-limits";
import type { SetpointLimits } from "./setpoint-limits";

/** What is said where a displacement of unknown place takes the lower of the two. */
export const LOWER_PLACE = "place: not given, and the lower of housing and shaft is taken";

const WITHOUT = 'or limits of the maker or the site, or scheme "none" for a statistical alarm alone';

/** The schemes by which the machine is judged; a refusal says what else there is to set from. */
function admitted(machine: MachineRef, type: string, all: readonly SchemeRef[] | undefined): readonly AdmittedScheme[] {
  const isDisplacement = parsedType(type).quantity === "displacement";
  try {
    return schemesFor(machine, {
      place: isDisplacement ? "either" : "housing",
      ...(all !== undefined && { schemes: all }),
    });
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    throw new VeladisError(error.code, { ...error, expected: `${error.expected}; ${WITHOUT}` });
  }
}

/** Whether schemes for both places are admitted; refuses them where they answer other questions, as a judgement does. */
function isOfBothPlaces(schemes: readonly AdmittedScheme[]): boolean {
  if (new Set(schemes.map(({ scheme }) => scheme.place)).size < 2) return false;
  if (new Set(schemes.map(({ kind }) => kind)).size < 2) return true;
  throw new VeladisError("missing-fact", {
    expected: `place: ${facts.place.ask}`,
    received: "a displacement of unknown place",
    fact: "place",
    allowed: ["housing", "shaft"],
  });
}

/** What was assumed, and what else was of facts that are not named yet. */
function withOthers(assumed: readonly string[], others: readonly string[]): string[] {
  const named = (text: string): string | undefined => text.split(":")[0];
  return [...assumed, ...others.filter((text) => assumed.every((one) => named(one) !== named(text)))];
}

/** True for what was assumed of anything but the place, which is said once. */
function isNotPlace(text: string): boolean {
  return !text.startsWith("place ");
}

/** The lowest trip first; schemes without a shutdown last. */
function byTrip(a: SetpointLimits, b: SetpointLimits): number {
  const [mine, others] = [a, b].map(({ upper }) => upper?.amplitude.value ?? Number.MAX_VALUE) as [number, number];
  return mine - others || a.lower.amplitude.value - b.lower.amplitude.value;
}

/**
 * Limits for a machine by the schemes that its known facts admit: of several the lowest of each, with what the scheme of
 * the lowest trip was taken for.
 *
 * @throws {@link VeladisError} as {@link schemesFor} and {@link limitsOfClass}
 */
export function limitsOfMachine(
  machine: MachineRef,
  question: Pick<LimitsQuestion, "type" | "running">,
  all?: readonly SchemeRef[],
): SetpointLimits {
  const schemes = admitted(machine, question.type, all);
  const isOfBoth = isOfBothPlaces(schemes);
  const found = schemes.map((one): SetpointLimits => {
    const limits = limitsOfClass(one.scheme, one.limits(), question);
    const place = isOfBoth ? [LOWER_PLACE] : assumedPlace(one.scheme, machine, question.type);
    return {
      ...limits,
      assumedFacts: [
        ...place,
        ...withOthers(one.assumedFacts, limits.assumedFacts).filter((text) => place.length === 0 || isNotPlace(text)),
      ],
      setAside: one.setAside,
    };
  });
  const [first, ...others] = found.sort(byTrip) as [SetpointLimits, ...SetpointLimits[]];
  if (others.length === 0) return first;
  const { lower, upper, ceilings } = lowestOfLimits(found);
  return {
    ...first,
    ...{ lower, upper, ceilings },
    compared: found.flatMap((one) => one.compared),
    schemes: found.flatMap((one) => one.schemes),
    assumed: found.reduce<SetpointLimits["assumed"]>((all, one) => union(all, one.assumed), []),
    leftOut: [...new Set(found.flatMap((one) => one.leftOut))],
    atSpeedOnly: [...new Set(found.flatMap((one) => one.atSpeedOnly))],
    setAside: [...new Set(found.flatMap((one) => one.setAside))],
    peaks: [...new Set(found.flatMap((one) => one.peaks ?? []))],
  };
}
