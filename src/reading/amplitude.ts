import type { Detector } from "../detectors/index";
import type { Quantity, UnitSymbol } from "../units/index";
import type { Assumption } from "./assumptions";
import { type ParsedType, parsedType } from "./parsed-type";
import { decibelsOf } from "./scaled";
import type { Step } from "./step";

/** A level in decibels and the RMS value it refers to, e.g. `{ decibels: 95, re: "1 nm/s" }`. */
export interface Level {
  readonly decibels: number;
  readonly re: string;
}

/** Where in the range of its loop a signal may lie, the least certain last. */
export const loopStates: readonly LoopState[] = /* @__PURE__ */ Object.freeze([
  "in range",
  "below range",
  "above range",
]);

/** Where in the range of its loop a signal lies; outside, the reading is clipped and the true one unknown. */
export type LoopState = "in range" | "below range" | "above range";

/** Whether a reading came by a loop out of its range. */
export function isClipped(state: LoopState | undefined): state is Exclude<LoopState, "in range"> {
  return state !== undefined && state !== "in range";
}

/** One reading with all that its meaning needs, and the way it came by. */
export interface Amplitude {
  /** Zero or more, in `unit`, by `detector`; linear also where the reading was a level. */
  readonly value: number;
  readonly unit: UnitSymbol;
  readonly detector: Detector;
  readonly quantity: Quantity;
  /** Frequency in hertz, if it is known. */
  readonly hertz: number | undefined;
  /** The level, if the reading was written as one. */
  readonly level?: Level;
  /** The crest factor (peak over RMS) of this vibration, if one was stated. */
  readonly crestFactor?: number;
  /** Where in the range of its loop the signal lay, if it came by one. */
  readonly state?: LoopState;
  /** All that was assumed on the way to it; nothing for a reading as it was given. */
  readonly assumed?: readonly Assumption[];
  /** The steps that led to it, the last one to its value; left out for a reading as it was given. */
  readonly history?: readonly Step[];
}

/** A linear value in a reading type, as an amplitude; in a type of level it has its level beside it. */
export function amplitudeIn(type: string | ParsedType, value: number, hertz?: number): Amplitude {
  const { unit, detector, quantity, reference } = typeof type === "object" && type !== null ? type : parsedType(type);
  const level = reference === 0 ? undefined : { decibels: decibelsOf(value, reference), re: `${reference} ${unit}` };
  return Object.freeze({ value, unit, detector, quantity, hertz, ...(level && { level: Object.freeze(level) }) });
}
