import type { Vector } from "./vector";

/** What stands before the speed of a slow roll that was taken off a vector. */
export const SLOW_ROLL = "slow roll taken off at";

/** A shaft speed in hertz as it is written: in r/min, unless that would read back as another number. */
export function speedText(hertz: number): string {
  const turns = Number((hertz * 60).toPrecision(12));
  return turns / 60 === hertz ? `${turns} r/min` : `${hertz} Hz`;
}

/** The order and the shaft speed of a vector, as they are written. */
export function orderText({ order, speed }: Pick<Vector, "order" | "speed">): string {
  return `${order}x of ${speedText(speed)}`;
}

/** A phase as it is written. */
export function phaseText(phase: number, digits: number): string {
  // 359.9 in three digits is a whole turn, which is none
  return `${Number(phase.toPrecision(digits)) % 360}°`;
}
