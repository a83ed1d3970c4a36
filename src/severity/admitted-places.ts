import { VeladisError } from "../core/index";
import { type AdmittedMachines, admittedMachines } from "./admitted-machines";
import { facts } from "./facts";
import { type MachineRef, machineFacts } from "./machine-facts";
import type { Assume } from "./placed-machine";
import { refuseUnknown } from "./refuse-unknown";
import type { SchemeRef } from "./scheme-of";
import { requireUnderstood } from "./set-aside";

/** Refuses a displacement whose place nobody said. */
function refusePlace(): never {
  throw new VeladisError("missing-fact", {
    expected: `place: ${facts.place.ask}`,
    received: "a displacement of unknown place",
    allowed: ["housing", "shaft"],
    fact: "place",
  });
}

/** Asks for the place of a displacement before anything else, where schemes for both places are admitted. */
function requirePlaceOf(machine: MachineRef, schemes: readonly SchemeRef[] | undefined): void {
  const places = (["housing", "shaft"] as const).map((where) =>
    admittedMachines(machine, where, "lowest limits", schemes),
  );
  if (places.every(({ machines }) => machines.length > 0)) refusePlace();
}

/** The schemes for both places; the place is asked for where a machine fits into those of one place only. */
function atBothPlaces(at: (where: "housing" | "shaft") => AdmittedMachines): [AdmittedMachines, AdmittedMachines] {
  const found: AdmittedMachines[] = [];
  let refusal: unknown;
  for (const where of ["housing", "shaft"] as const) {
    try {
      found.push(at(where));
    } catch (error) {
      if (!(error instanceof VeladisError)) throw error;
      refusal ??= error;
    }
  }
  const [one, other] = found;
  if (one !== undefined && other !== undefined) return [one, other];
  if (one !== undefined && one.machines.length > 0) refusePlace();
  throw refusal;
}

/**
 * A machine in the schemes for the place of its readings; of a displacement whose place nobody said, in those for the
 * housing and in those for the shaft, where there are both.
 *
 * @throws {@link VeladisError} `missing-fact` for the place, where nothing may be assumed and where a pass at the one
 *   place and a zone at the other answer other questions; `out-of-range` for a machine that no scheme is for
 */
export function admittedPlaces(
  machine: MachineRef,
  isDisplacement: boolean,
  assume: Assume,
  schemes: readonly SchemeRef[] | undefined,
): readonly [AdmittedMachines, AdmittedMachines?] {
  const { place } = machineFacts(machine) as { place?: "housing" | "shaft" };
  const at = (where: "housing" | "shaft"): AdmittedMachines => admittedMachines(machine, where, assume, schemes);
  if (place !== undefined || !isDisplacement) {
    const only = at(place ?? "housing");
    return only.machines.length > 0 ? [only] : refuseUnknown(machine, schemes);
  }
  if (assume !== "lowest limits") {
    requireUnderstood(machine);
    requirePlaceOf(machine, schemes);
  }
  const [housing, shaft] = atBothPlaces(at);
  if (housing.machines.length === 0 && shaft.machines.length === 0) refuseUnknown(machine, schemes);
  if (shaft.machines.length === 0) return [housing];
  if (housing.machines.length === 0) return [shaft];
  const kinds = new Set([...housing.machines, ...shaft.machines].map(({ scheme }) => scheme.kind));
  if (kinds.size > 1) refusePlace();
  return [housing, shaft];
}
