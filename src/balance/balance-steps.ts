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

/** A step that multiplies, or divides, what the step at a place came to. */
function scaled(of: number, step: Omit<Step, "does" | "of">): Step {
  return Object.freeze({ does: "scale", of: Object.freeze([of]), ...step });
}

const SPEED = "angular speed in rad/s";

/** The steps from an unbalance in g·mm, at a place, to its force in N. */
function forceSteps(of: number, place: number, grams: number, omega: number): Step[] {
  const whole = grams / 1e6;
  return [
    scaled(of, { over: 1e6, value: whole, type: "kg·m" }),
    scaled(place, { by: omega, value: whole * omega, type: "kg·m/s", note: SPEED }),
    scaled(place + 1, { by: omega, value: whole * omega * omega, type: "N", note: SPEED }),
  ];
}

/** What a permissible unbalance is made of. */
interface Permitted {
  readonly grade: number;
  readonly eccentricity: number;
  readonly unbalance: number;
  readonly mass: number;
  readonly omega: number;
  readonly planes: Readonly<Record<"left" | "right", number>>;
}

/** The steps that led from a grade to the permissible unbalance, its parts in the planes and its force. */
export function permittedHistory({ grade, eccentricity, unbalance, mass, omega, planes }: Permitted): readonly Step[] {
  return ownHistory([
    Object.freeze({ does: "given", value: grade, type: "mm/s", note: "balance grade" }),
    scaled(0, { by: 1000, value: 1000 * grade, type: "um/s" }),
    scaled(1, { over: omega, value: eccentricity, type: "um", note: SPEED }),
    scaled(2, { by: mass, value: unbalance, type: "g·mm", note: "mass in kg" }),
    ...(["left", "right"] as const).map((name) =>
      scaled(3, { by: planes[name] / unbalance, value: planes[name], type: "g·mm", note: `${name} plane` }),
    ),
    ...forceSteps(3, 6, unbalance, omega),
  ]);
}

/** What the unbalance by the loads on journals is made of. */
interface Carried {
  readonly kg: number;
  /** Turns a minute. */
  readonly turns: number;
  readonly loads: Readonly<Record<"left" | "right", number>>;
  readonly of: Readonly<Record<"left" | "right", number>>;
  readonly unbalance: number;
  readonly omega: number;
}

/** The steps that led from the mass of a rotor to the permissible unbalance by the loads on its journals, and to its force. */
export function journalHistory({ kg, turns, loads, of, unbalance, omega }: Carried): readonly Step[] {
  return ownHistory([
    Object.freeze({ does: "given", value: kg, type: "kg", note: "mass of the rotor" }),
    scaled(0, { by: unbalance / kg, value: unbalance, type: "g·mm", note: `6350 / ${turns} r/min, both planes` }),
    ...(["left", "right"] as const).map((name) =>
      scaled(1, {
        by: loads[name] / kg,
        value: of[name],
        type: "g·mm",
        note: `${name} plane, by the load on its journal`,
      }),
    ),
    ...forceSteps(1, 4, unbalance, omega),
  ]);
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
  const [digits, unit] = numeralAndUnit(unbalance, UNBALANCE_FORM, { option: "unbalance" });
  const written = parseNumeral(digits);
  const [whole, omega, kg] = [kilogramMetres(unbalance) * 1e6, angularSpeed(speed), kilograms(mass)];
  const given: Step = Object.freeze({ does: "given", value: written, type: unit, note: "residual unbalance" });
  const inGrams = scaled(0, { by: whole / written, value: whole, type: "g·mm" });
  const eccentricity = whole / kg;
  const speeds = eccentricity * omega;
  return {
    grade: ownHistory([
      given,
      inGrams,
      scaled(1, { over: kg, value: eccentricity, type: "um", note: "mass in kg" }),
      scaled(2, { by: omega, value: speeds, type: "um/s", note: SPEED }),
      scaled(3, { over: 1000, value: speeds / 1000, type: "mm/s" }),
    ]),
    force: ownHistory([given, inGrams, ...forceSteps(1, 2, whole, omega)]),
  };
}
