import { type ClassifierOptions, compiledClassifier } from "./compiled-classifier";
import type { MachineLadder } from "./machine-classifier";
import type { MachineRef } from "./machine-facts";
import { placedMachine } from "./placed-machine";
import { requireCriterion } from "./require-criterion";
import { type SchemeRef, schemeOf } from "./scheme-of";

/**
 * A judge of many readings of one machine by the one scheme that is named, with the limits behind it: what
 * {@link machineLadder} gives for the schemes that the machine's facts admit.
 *
 * @throws {@link VeladisError} as {@link classifier}
 */
export function schemeLadder(
  named: SchemeRef,
  machine: MachineRef,
  from: string,
  options: ClassifierOptions = {},
): MachineLadder {
  const scheme = schemeOf(named);
  requireCriterion(scheme);
  let isPlaceAssumed = false;
  const { judge, schemes, isOpen, rows } = compiledClassifier(from, options, (assume) => {
    const placed = placedMachine(scheme, machine, assume);
    isPlaceAssumed = placed.given.place === undefined;
    return [placed];
  });
  return { judge: Object.freeze(Object.assign(judge, { schemes })), isOpen, isPlaceAssumed, rows };
}
