import { type ConvertedAmplitude, convertAmplitude, notedAmplitude } from "../amplitude/index";
import { knownText, VeladisError } from "../core/index";
import { amplitudeIn, parsedType, significant } from "../reading/index";
import { type CriterionLimits, editionText, type Limit } from "../severity/index";
import type { Reason } from "./reason";
import type { RunningSpeed } from "./running-speed";
import type { SetpointCeilings, SetpointLimit } from "./setpoint-limits";

/** The limits of one criterion, in the type of the setpoints. */
export interface CarriedLimits {
  readonly quantity: CriterionLimits["quantity"];
  readonly isOperation: boolean;
  /** B/C, or alarm. */
  readonly lower: SetpointLimit;
  /** C/D, or shutdown; null where the standard prints none. */
  readonly upper: SetpointLimit | null;
  readonly ceilings: SetpointCeilings | null;
  /** All of them, in a few words. */
  readonly compared: readonly Reason[];
}

/** A limit in words: of another quantity than the setpoints' with that quantity and the speed it is carried by. */
function limitWords(limit: Limit, running: RunningSpeed | undefined) {
  const { name, printed, quantity } = limit;
  const size = `${significant(printed.value)} ${printed.unit} ${printed.detector}`;
  if (running === undefined) return `${name} of ${editionText(limit)}, ${size}`;
  const speed = `${significant(running.hertz)} Hz${running.isRange ? ", the lowest of its range" : ""}`;
  const at = running.isOwn ? "the setpoint's own frequency" : "running speed";
  return `${name} of ${quantity} ${size}, at ${at} ${speed}, of ${editionText(limit)}`;
}

/**
 * The limits of a criterion in the type of the setpoints, those of another quantity carried there by the running speed.
 *
 * @throws {@link VeladisError} `missing-frequency` for another quantity without the speed; `wrong-type` for a criterion
 *   that sets no alarms
 */
export function carriedLimits(
  criterion: CriterionLimits,
  type: string,
  running: RunningSpeed | undefined,
): CarriedLimits {
  const carriedBy = criterion.quantity === parsedType(type).quantity ? undefined : running;
  const inType = (value: number, note: string): ConvertedAmplitude => {
    const printed = notedAmplitude(amplitudeIn(criterion.as, value), note);
    if (carriedBy === undefined) return convertAmplitude(printed, type);
    const carried = convertAmplitude(printed, type, { at: { hertz: carriedBy.hertz } });
    // a setpoint of a machine whose speed varies is of no one frequency
    return carriedBy.isRange ? Object.freeze({ ...carried, hertz: undefined }) : carried;
  };
  const limits: Readonly<Record<string, Limit>> = criterion.limits;
  const isOperation = limits.alarm !== undefined;
  const lower = limits[isOperation ? "alarm" : "B/C"];
  const upper = limits[isOperation ? "shutdown" : "C/D"];
  if (lower === undefined || (upper === undefined && !isOperation)) {
    throw new VeladisError("wrong-type", {
      expected: "a table of zones (B/C and C/D) or of a fan's alarm and shutdown, since others set no alarms",
      received: `limits ${Object.keys(limits).join(", ")}`,
    });
  }
  const limitIn = (limit: Limit): SetpointLimit => ({
    amplitude: inType(limit.value, `${limit.name} of ${editionText(limit)}, ${knownText(limit.source)}`),
    text: limitWords(limit, carriedBy),
    source: limit.source,
  });
  const table = editionText(lower);
  const ceilingOf = (name: "alarm" | "trip", { source, [name]: value }: NonNullable<CriterionLimits["ceilings"]>) => ({
    amplitude: inType(value, `highest ${name} setting, ${knownText(source)}`),
    text: `highest ${name} setting of ${table}`,
    source,
  });
  const { ceilings: most } = criterion;
  const ceilings = most ? { alarm: ceilingOf("alarm", most), trip: ceilingOf("trip", most) } : null;
  const present = upper === undefined ? [lower] : [lower, upper];
  return {
    quantity: criterion.quantity,
    isOperation,
    lower: limitIn(lower),
    upper: upper === undefined ? null : limitIn(upper),
    ceilings,
    compared: [
      ...present.map(({ name, source }) => ({ text: `${name} of ${table}`, source })),
      ...(ceilings === null ? [] : [ceilings.alarm, ceilings.trip].map(({ text, source }) => ({ text, source }))),
    ],
  };
}
