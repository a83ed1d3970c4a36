import {
  finiteResult,
  parseNumeral,
  requireGiven,
  requirePositive,
  type Source,
  shown,
  splitNumeral,
  VeladisError,
} from "../core/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";
import { kilogramMetres, kilograms, metres, unbalanceIn } from "./mass";

const ISO_21940_11 = {
  title: "ISO 21940-11:2016 (earlier ISO 1940-1)",
  where: "e_per = G / omega; clause 6 from memory, the list of grades read in excerpts that reproduce Table 1",
  provenance: "memory",
} as const satisfies Source;

/** The balance quality grades of ISO 21940-11, in mm/s: the product of eccentricity and angular speed. */
export const balanceGrades = /* @__PURE__ */ Object.freeze([
  0.4, 1, 2.5, 6.3, 16, 40, 100, 250, 630, 1600, 4000,
] as const);

/** Masses as `"120 kg"`, distances as `"300 mm"`. */
export interface Rotor {
  readonly mass: string;
  /** Service speed. */
  readonly speed: Frequency;
  /**
   * Distances from the centre of mass to the two planes the unbalance is split to: the bearings, or correction
   * planes near them. Not given, both get half.
   */
  readonly planes?: { readonly left: string; readonly right: string };
}

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
}

const NOTE =
  "G is the speed of the centre of mass of the rotor turning free in space, no reading on a housing: do not hold it against a severity limit";

/**
 * The grade in mm/s of `"G 6.3"`, `"G6.3"` or a number.
 *
 * @throws {@link VeladisError} `syntax`, `not-positive`
 * @example
 * ```ts
 * import { balanceGrade } from "veladis/protection";
 *
 * balanceGrade("G 6.3"); // => 6.3
 * ```
 */
export function balanceGrade(grade: string | number): number {
  if (typeof grade === "number") return requirePositive(grade, "a balance grade above zero, in mm/s");
  const [, rest] = (typeof grade === "string" && /^G\s*(.+)$/i.exec(grade.trim())) || [];
  const [digits, unit] = (rest !== undefined && splitNumeral(rest)) || [];
  if (!digits || !(unit === "" || unit === "mm/s")) {
    throw new VeladisError("syntax", {
      expected: 'a balance grade such as "G 6.3"',
      received: shown(grade),
      allowed: balanceGrades.map((one) => `G ${one}`),
    });
  }
  return requirePositive(parseNumeral(digits), "a balance grade above zero, in mm/s");
}

const PLANES = 'planes such as { left: "300 mm", right: "200 mm" }';

function angular(speed: Frequency): number {
  return finiteResult(2 * Math.PI * hertzOf(speed));
}

/**
 * The permissible eccentricity of a grade at a speed, in um (the same number is g·mm per kg of rotor).
 *
 * `e = 1000 G / omega`; the workshop's 10 000 G / n is 4.7 % lenient and not used.
 *
 * @throws {@link VeladisError} `syntax`, `not-positive`
 * @example
 * ```ts
 * import { permissibleEccentricity } from "veladis/protection";
 *
 * permissibleEccentricity("G 2.5", "3000 r/min").toFixed(2); // => "7.96"
 * permissibleEccentricity("G 6.3", "1500 r/min").toFixed(1); // => "40.1"
 * ```
 */
export function permissibleEccentricity(grade: string | number, speed: Frequency): number {
  return finiteResult((1000 * balanceGrade(grade)) / angular(speed));
}

/**
 * The residual unbalance that a balance grade permits a rotor, whole and split to two planes.
 *
 * The split follows the static load: the plane nearer to the centre of mass gets the greater share. ISO 21940-11
 * refers it to the bearings.
 *
 * @throws {@link VeladisError} `missing-fact`, `syntax`, `missing-unit`, `unknown-unit`, `not-positive`
 * @example
 * ```ts
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
 * ```
 */
export function permissibleUnbalance(grade: string | number, rotor: Rotor): PermissibleUnbalance {
  const { mass, speed, planes } = requireGiven(rotor, "a rotor with mass and speed");
  const g = balanceGrade(grade);
  const eccentricity = permissibleEccentricity(g, speed);
  const unbalance = finiteResult(eccentricity * kilograms(mass));
  const [left, right] =
    planes === undefined ? [1, 1] : [metres(requireGiven(planes, PLANES).left), metres(planes.right)];
  return Object.freeze({
    grade: g,
    inSeries: (balanceGrades as readonly number[]).includes(g),
    eccentricity,
    unbalance,
    planes: Object.freeze({
      left: finiteResult((unbalance * right) / (left + right)),
      right: finiteResult((unbalance * left) / (left + right)),
    }),
    force: centrifugalForce(`${unbalance} g·mm`, speed),
    source: ISO_21940_11,
    note: NOTE,
  });
}

/**
 * The grade that a rotor has with a residual unbalance, in mm/s: the way back.
 *
 * @param unbalance - of the whole rotor, e.g. `"16260 g·mm"` or `"20 oz·in"`
 * @throws {@link VeladisError} `missing-fact`, `missing-unit`, `unknown-unit`, `not-positive`
 * @example
 * ```ts
 * import { gradeOfUnbalance } from "veladis/protection";
 *
 * gradeOfUnbalance("16260 g·mm", { mass: "400 kg", speed: "1480 r/min" }).toFixed(2); // => "6.30"
 * ```
 */
export function gradeOfUnbalance(unbalance: string, rotor: Omit<Rotor, "planes">): number {
  const { mass, speed } = requireGiven(rotor, "a rotor with mass and speed");
  return finiteResult((1000 * kilogramMetres(unbalance) * angular(speed)) / kilograms(mass));
}

/**
 * The centrifugal force of an unbalance, in N: `U omega²`.
 *
 * @throws {@link VeladisError} `missing-fact`, `missing-unit`, `unknown-unit`, `not-positive`
 * @example
 * ```ts
 * import { centrifugalForce } from "veladis/protection";
 *
 * centrifugalForce("1000 g·mm", "3000 r/min").toFixed(1); // => "98.7"
 * ```
 */
export function centrifugalForce(unbalance: string, speed: Frequency): number {
  const omega = angular(speed);
  return finiteResult(kilogramMetres(unbalance) * omega * omega);
}

/**
 * The unbalance of a mass at a radius, or of a part off its centre, in another unit.
 *
 * @param mass - e.g. `"4 oz"`
 * @param radius - e.g. `"2 in"`
 * @param unit - e.g. `"oz·in"`; `"g·mm"` if not given
 * @throws {@link VeladisError} `missing-fact`, `missing-unit`, `unknown-unit`, `not-positive`
 * @example
 * ```ts
 * import { unbalanceOf } from "veladis/protection";
 *
 * unbalanceOf("4 oz", "2 in", "oz·in"); // => 8
 * unbalanceOf("50 lb", "0.001 in", "oz·in").toFixed(2); // => "0.80"
 * ```
 */
export function unbalanceOf(mass: string, radius: string, unit = "g·mm"): number {
  return finiteResult(unbalanceIn(kilograms(mass) * metres(radius), unit));
}
