import { VeladisError } from "../core/index";
import { parsedType, union } from "../reading/index";
import {
  type CriterionLimits,
  conditionText,
  limitsFor,
  type MachineRef,
  peakOfLimits,
  type Scheme,
  type SchemeRef,
  schemeById,
} from "../severity/index";
import { type Quantity, quantities } from "../units/index";
import { assumedPlace } from "./assumed-place";
import { type CarriedLimits, carriedLimits } from "./carried-limits";
import { limitColumns } from "./limit-columns";
import { lowestOfLimits } from "./lowest-of-limits";
import type { RunningSpeed } from "./running-speed";
import type { SetpointLimits } from "./setpoint-limits";

/** Which limits are asked for. */
export interface LimitsQuestion {
  readonly scheme: SchemeRef;
  readonly machine: MachineRef | undefined;
  /** The reading type of the setpoints. */
  readonly type: string;
  readonly running: RunningSpeed | undefined;
}

/**
 * Refuses a scheme whose ranges are for orientation: a setpoint by them would be a guess.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
function requireCriterion({ informative, standard, edition }: Scheme): void {
  if (!informative) return;
  throw new VeladisError("out-of-range", {
    expected: "a scheme whose limits are a criterion, or limits of the maker or the site",
    received: `${standard} (${edition}), whose ranges are informative: for orientation, never a setpoint`,
  });
}

/** The criteria that can be carried to a type, and the quantities of those that cannot. */
function carriable(columns: readonly CriterionLimits[], type: string, running: RunningSpeed | undefined) {
  const { quantity } = parsedType(type);
  const own = columns.filter((one) => one.quantity === quantity);
  const first = own.length > 0 ? own : columns.slice(0, 1);
  const carried: CarriedLimits[] = first.map((one) => carriedLimits(one, type, running));
  const leftOut: Quantity[] = [];
  for (const one of columns) {
    if (first.includes(one)) continue;
    if (running === undefined) leftOut.push(one.quantity);
    else carried.push(carriedLimits(one, type, running));
  }
  return { carried, leftOut };
}

/** Limits of the class of a machine, in the type of the setpoints: of all its criteria the lowest. */
export function limitsOfClass(
  scheme: Scheme,
  criteria: readonly CriterionLimits[],
  { type, running }: Pick<LimitsQuestion, "type" | "running">,
): SetpointLimits {
  requireCriterion(scheme);
  const parsed = parsedType(type);
  const columns = limitColumns(criteria, parsed);
  const [first] = columns;
  if (first === undefined) {
    throw new VeladisError("missing-fact", {
      expected: "a table with limits for this machine",
      received: "nothing",
    });
  }
  const { carried, leftOut } = carriable(columns, type, running);
  const { lower, upper, ceilings } = lowestOfLimits(carried);
  return {
    kind: carried.some(({ isOperation }) => isOperation) ? "operation" : "zones",
    ...{ lower, upper, ceilings, leftOut },
    atSpeedOnly: carried.map(({ quantity }) => quantity).filter((one) => quantities[one] > parsed.order),
    speedVaries: running?.isRange === true,
    compared: carried.flatMap((one) => one.compared),
    assumed: union(lower.amplitude.assumed, upper?.amplitude.assumed),
    ...{ assumedFacts: first.assumedFacts, setAside: first.setAside },
    peaks: [...new Set(columns.flatMap(({ as }) => peakOfLimits(scheme, as) ?? []))],
    schemes: [
      {
        ...{ scheme: scheme.id, standard: scheme.standard, edition: scheme.edition },
        machineClass: conditionText(first.machineClass),
        ...{ lower: lower.amplitude.value, upper: upper?.amplitude.value ?? null },
      },
    ],
  };
}

/** Limits of a scheme for a machine, in the type of the setpoints. */
export function limitsOfScheme({ scheme, machine, ...question }: LimitsQuestion): SetpointLimits {
  const told = { scheme, assume: "lowest limits", ...(machine !== undefined && { machine }) } as const;
  const criteria: CriterionLimits[] = limitsFor(told);
  const known: Scheme = typeof scheme === "string" ? schemeById(scheme) : scheme;
  const limits = limitsOfClass(known, criteria, question);
  return { ...limits, assumedFacts: [...assumedPlace(known, machine, question.type), ...limits.assumedFacts] };
}
