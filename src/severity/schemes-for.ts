import { requireChoice, withParameters } from "../core/index";
import { admittedMachines } from "./admitted-machines";
import type { SchemeKind } from "./kinds";
import { type CriterionLimits, placedLimits } from "./limits-for";
import { type MachineRef, machineFacts } from "./machine-facts";
import { withoutPlace } from "./place-text";
import type { Assume } from "./placed-machine";
import { refuseUnknown } from "./refuse-unknown";
import { requireOptions } from "./require-options";
import type { Condition, Scheme } from "./scheme";
import type { SchemeRef } from "./scheme-of";

/** What {@link schemesFor} can be told besides the machine. */
export interface SchemesForOptions {
  /**
   * Where readings are taken, if the machine does not say so: the housing, if this is left out; `"either"` for a
   * displacement of which nobody said it, which {@link judge} judges at both.
   */
  readonly place?: "housing" | "shaft" | "either";
  /** `"lowest limits"`, if not given; see {@link Assume}. */
  readonly assume?: Assume;
  /** The schemes to choose from; the built-in ones if not given. */
  readonly schemes?: readonly SchemeRef[];
}

const keys: Readonly<Record<keyof SchemesForOptions, true>> = /* @__PURE__ */ Object.freeze({
  place: true,
  assume: true,
  schemes: true,
});

/** A scheme by which a machine is judged. */
export interface AdmittedScheme {
  readonly scheme: Scheme;
  readonly kind: SchemeKind;
  readonly machineClass: Condition;
  /** What was taken for facts not given, in words. */
  readonly assumedFacts: readonly string[];
  /** What was given of the machine and plays no part, in words. */
  readonly setAside: readonly string[];
  /**
   * The limits by which it judges, as {@link limitsFor} gives them: of facts not given, for what the scheme was taken for.
   *
   * @throws {@link VeladisError} `missing-fact` for limits that fall with a speed that is not known
   */
  limits(): readonly CriterionLimits[];
}

/**
 * The schemes by which {@link judge} judges a machine at a place: one where all is known that decides, else every scheme
 * that the known facts admit, best first.
 *
 * @param machine - the machine, as data or in words, with its kind at least
 * @throws {@link VeladisError} as {@link judge}
 * @example
 * ```ts
 * import { schemesFor } from "veladis/severity";
 *
 * schemesFor("pump 90 kW 2980 r/min category II").map(({ scheme }) => scheme.id); // => ["iso-10816-7-2009"]
 * schemesFor("motor 1485 r/min rigid").map(({ scheme }) => scheme.id);
 * // => ["iso-20816-3-2022", "iso-10816-1-1995-annexB"]
 * const [pump] = schemesFor("pump 90 kW 2980 r/min category II");
 * pump?.limits()[0]?.limits["C/D"]?.value; // => 8.5
 * schemesFor("wind turbine 9 MW"); // throws out-of-range
 * ```
 */
export function schemesFor(machine: MachineRef, options: SchemesForOptions = {}): readonly AdmittedScheme[] {
  return withParameters({ options, machine }, () => {
    const { place, assume = "lowest limits", schemes } = requireOptions(options, keys);
    if (place !== undefined)
      requireChoice(place, ["housing", "shaft", "either"], "where readings are taken", { option: "place" });
    const known = machineFacts(machine) as { place?: "housing" | "shaft" };
    const asked = known.place ?? place ?? "housing";
    const places = asked === "either" ? (["housing", "shaft"] as const) : [asked];
    const machines = places.flatMap((where) => admittedMachines(machine, where, assume, schemes).machines);
    if (machines.length === 0) refuseUnknown(machine, schemes);
    return machines.map((one) => {
      const { scheme, machineClass, setAside } = one;
      // of either place nothing is assumed
      const assumedFacts = asked === "either" ? withoutPlace(one.assumedFacts) : one.assumedFacts;
      const limits = (): readonly CriterionLimits[] => placedLimits(one);
      return Object.freeze({ scheme, kind: scheme.kind, machineClass, assumedFacts, setAside, limits });
    });
  });
}
