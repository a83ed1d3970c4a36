import { finiteResult, inPlace, type Source, withParameters } from "../core/index";
import type { Step } from "../reading/index";
import { balanceGrade, balanceGrades, permissibleEccentricity } from "./balance-grade";
import { permittedHistory } from "./balance-steps";
import { kilogramMetres, kilograms } from "./mass";
import { MASS, type Rotor, requireRotor, SPEED, splitToPlanes } from "./rotor";
import { angularSpeed, centrifugalForce } from "./unbalance";

const ISO_21940_11 = {
  title: "ISO 21940-11:2016 (earlier ISO 1940-1)",
  where: "e_per = G / omega; clause 6 from memory, the list of grades read in excerpts that reproduce Table 1",
  provenance: "memory",
} as const satisfies Source;

/** Permissible residual unbalance of a rotor. */
export interface PermissibleUnbalance {
  /** The grade, in mm/s. */
  readonly grade: number;
  /** Whether the grade is one of the series of the standard. */
  readonly inSeries: boolean;
  /** Permissible eccentricity of the centre of mass, in um, which is g·mm per kg. */
  readonly eccentricity: number;
  /** Permissible residual unbalance of the whole rotor, in g·mm. */
  readonly unbalance: number;
  /** The same split to two planes, in g·mm. */
  readonly planes: { readonly left: number; readonly right: number };
  /** Centrifugal force of the whole residual unbalance at service speed, in N. */
  readonly force: number;
  readonly source: Source;
  readonly note: string;
  /** The steps that led to the force, by way of eccentricity, unbalance and planes. */
  readonly history: readonly Step[];
}

const NOTE =
  "G is the speed of the centre of mass of the rotor turning free in space, no reading on a housing: do not hold it against a severity limit";

/**
 * The residual unbalance that a balance grade permits a rotor, whole and split to two planes.
 *
 * The split follows the static load: the plane nearer to the centre of mass gets the greater share. ISO 21940-11
 * refers it to the bearings.
 *
 * @throws {@link VeladisError} `missing-option`, `syntax`, `missing-unit`, `unknown-unit`, `not-positive`
 * @example
 * ```ts
 * import { explain } from "veladis/explain";
 * import { permissibleUnbalance } from "veladis/protection";
 *
 * const fan = permissibleUnbalance("G 6.3", {
 *   mass: "400 kg",
 *   speed: "1480 r/min",
 *   planes: { left: "300 mm", right: "700 mm" },
 * });
 * fan.unbalance.toFixed(0); // => "16260"
 * fan.planes.left.toFixed(0); // => "11382"
 * fan.force.toFixed(0); // => "391"
 * explain(fan).text.split("\n")[3]; // => "40.65 um x 400 = 16260 g·mm  (mass in kg)"
 * ```
 */
export function permissibleUnbalance(grade: string | number, rotor: Rotor): PermissibleUnbalance {
  return withParameters({ grade, rotor }, () => {
    const g = balanceGrade(grade);
    const { mass, speed, planes } = requireRotor(rotor, { mass: true, speed: true, planes: true });
    const eccentricity = inPlace(SPEED, () => permissibleEccentricity(g, speed));
    const kg = inPlace(MASS, () => kilograms(mass));
    const unbalance = finiteResult(eccentricity * kg);
    const split = splitToPlanes(unbalance, planes);
    return Object.freeze({
      grade: g,
      inSeries: (balanceGrades as readonly number[]).includes(g),
      eccentricity,
      unbalance,
      planes: split,
      force: centrifugalForce(`${unbalance} g·mm`, speed),
      source: ISO_21940_11,
      note: NOTE,
      history: permittedHistory({
        grade: g,
        eccentricity,
        unbalance,
        mass: kg,
        omega: angularSpeed(speed),
        planes: split,
      }),
    });
  });
}

/**
 * The grade that a rotor has with a residual unbalance, in mm/s: the way back.
 *
 * @param unbalance - of the whole rotor, e.g. `"16260 g·mm"` or `"20 oz·in"`
 * @throws {@link VeladisError} `missing-option`, `missing-unit`, `unknown-unit`, `not-positive`
 * @example
 * ```ts
 * import { gradeOfUnbalance } from "veladis/protection";
 *
 * gradeOfUnbalance("16260 g·mm", { mass: "400 kg", speed: "1480 r/min" }).toFixed(2); // => "6.30"
 * ```
 */
export function gradeOfUnbalance(unbalance: string, rotor: Omit<Rotor, "planes">): number {
  return withParameters({ unbalance, rotor }, () => {
    const { mass, speed } = requireRotor(rotor, { mass: true, speed: true });
    const omega = inPlace(SPEED, () => angularSpeed(speed));
    const kg = inPlace(MASS, () => kilograms(mass));
    return finiteResult((1000 * kilogramMetres(unbalance) * omega) / kg);
  });
}
