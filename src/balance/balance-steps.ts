import { numeralAndUnit, parseNumeral } from "../core/index";
import type { Frequency } from "../frequency/index";
import { ownHistory, type Step } from "../reading/index";
import { kilogramMetres, kilograms, UNBALANCE_FORM } from "./mass";
import { angularSpeed } from "./unbalance";

/** What an unbalance and a rotor are told as. */
interface Unbalanced {
  readonly unbalance: string;
  readonly mass: string;
  readonly speed: Frequency;
}

/** A number on the way, from the step at a place. */
function scaled(of: number, step: Omit<Step, "does" | "of">): Step {
  return Object.freeze({ does: "scale", of: Object.freeze([of]), ...step });
}

/** A grade as it was given. */
export function gradeStep(grade: number): Step {
  return Object.freeze({ does: "given", value: grade, type: "mm/s", note: "balance grade" });
}

/** The eccentricity in um that a grade comes to: 1000 um in a mm, over the angular speed. */
export function eccentricityStep(of: number, eccentricity: number, omega: number): Step {
  return scaled(of, {
    by: 1000,
    over: omega,
    value: eccentricity,
    type: "um",
    note: "over the angular speed in rad/s",
  });
}

/** The unbalance in g·mm of a rotor of so many kg. */
export function massStep(of: number, unbalance: number, mass: number): Step {
  return scaled(of, { by: mass, value: unbalance, type: "g·mm", note: "mass in kg" });
}

/** The part of an unbalance that a plane has, by the distance of the other. */
export function planeStep(of: number, unbalance: number, [far, both]: readonly [number, number], name: string): Step {
  return scaled(of, { by: far, over: both, value: unbalance, type: "g·mm", note: `${name} plane` });
}

/** The force in N of an unbalance in g·mm, of which a kg·m has a million. */
export function forceStep(of: number, force: number, omega: number): Step {
  return scaled(of, {
    by: omega * omega,
    over: 1e6,
    value: force,
    type: "N",
    note: "angular speed squared; g·mm in a kg·m",
  });
}

/**
 * The steps that led to the grade of an unbalance in mm/s and to its force in N.
 *
 * @throws {@link VeladisError} as {@link gradeOfUnbalance}
 */
export function unbalanceHistories({
  unbalance,
  mass,
  speed,
}: Unbalanced): Readonly<Record<"grade" | "force", readonly Step[]>> {
  const [digits, unit] = numeralAndUnit(unbalance, UNBALANCE_FORM);
  const written = parseNumeral(digits);
  const [whole, omega, kg] = [kilogramMetres(unbalance) * 1e6, angularSpeed(speed), kilograms(mass)];
  const given: Step = Object.freeze({ does: "given", value: written, type: unit, note: "residual unbalance" });
  const inGrams = scaled(0, { by: whole / written, value: whole, type: "g·mm" });
  const eccentricity = whole / kg;
  return {
    grade: ownHistory([
      given,
      inGrams,
      scaled(1, { over: kg, value: eccentricity, type: "um", note: "mass in kg" }),
      scaled(2, {
        by: omega,
        over: 1000,
        value: (eccentricity * omega) / 1000,
        type: "mm/s",
        note: "angular speed in rad/s; um in a mm",
      }),
    ]),
    force: ownHistory([given, inGrams, forceStep(1, (whole / 1e6) * omega * omega, omega)]),
  };
}
