import type { Amplitude } from "../reading/index";
import { judgementIn } from "./judgement-in";
import type { Zone } from "./kinds";
import { type PlacedMachine, placedFacts } from "./placed-machine";
import { rangeOfLaw } from "./range-of-law";

/**
 * The best zone that a reading may be in where limits fall with a speed that nobody gave: that of the slowest machine which
 * the scheme is for; undefined where the speed was given or plays no part.
 */
export function bestBySpeed(
  machine: PlacedMachine,
  readings: readonly Amplitude[],
  crestFactor: number | undefined,
): Zone | undefined {
  const range = rangeOfLaw(machine);
  if (range === undefined) return undefined;
  const { scheme, facts, given } = machine;
  const slow = placedFacts(scheme, { ...facts, speed: range[0] }, given, "lowest limits");
  return judgementIn(slow, readings, crestFactor).zone;
}
