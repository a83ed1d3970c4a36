import { FLOAT_NOISE, raised } from "../core/index";
import { numberLiteral } from "./literal";

/** What a limit in decibels is raised by, the same as a share of {@link FLOAT_NOISE}. */
function levelNoise(): number {
  return 20 * Math.log10(1 + FLOAT_NOISE);
}

/** The highest reading that is within a limit, as SQL: 1 + 2^-23 times the limit, of whole numbers, which each engine holds. */
export function raisedSql(limit: string, isLevel: boolean): string {
  const steps = 1 / FLOAT_NOISE;
  return isLevel
    ? `${limit} + ${numberLiteral(levelNoise())}`
    : `${limit} * ${numberLiteral(steps + 1)} / ${numberLiteral(steps)}`;
}

/**
 * A limit that gives a bound exactly when {@link raisedSql} raises it. A limit that was carried to another type may be the
 * next number for that, since its bound was raised before it was carried.
 */
export function limitOfBound(limit: number, bound: number, isLevel: boolean): number {
  const raise = isLevel ? (one: number): number => one + levelNoise() : raised;
  const near = isLevel ? bound - levelNoise() : bound / (1 + FLOAT_NOISE);
  const beside = [limit, near, near * (1 + 2 ** -52), near * (1 - 2 ** -53)];
  // where no number does, the next lower: a reading at that very bound is then judged worse
  return beside.find((one) => raise(one) === bound) ?? Math.max(...beside.filter((one) => raise(one) < bound));
}
