import { finiteResult, requireKnownOptions } from "../core/index";
import type { Frequency } from "../frequency/index";
import { metres } from "./mass";

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

export const SPEED = { parameter: "rotor", option: "speed" };
export const MASS = { parameter: "rotor", option: "mass" };

const PLANES = 'planes such as { left: "300 mm", right: "200 mm" }';

/** Refuses what is told of a rotor and has no meaning for its balance. */
export function requireRotor<Given extends object>(rotor: Given, known: object): Given {
  return requireKnownOptions(rotor, known, {
    what: "a fact of a rotor",
    form: "a rotor with mass and speed",
    place: { parameter: "rotor" },
  });
}

/** A whole split to the two planes: the nearer one to the centre of mass gets more, both a half where none are told. */
export function splitToPlanes(
  whole: number,
  planes: Rotor["planes"],
): { readonly left: number; readonly right: number } {
  const [left, right] = planes === undefined ? [1, 1] : distancesOf(planes);
  const both = left + right;
  return Object.freeze({
    left: finiteResult((whole * right) / both),
    right: finiteResult((whole * left) / both),
  });
}

/** Distances from the centre of mass to the two planes, in metres. */
function distancesOf(planes: NonNullable<Rotor["planes"]>): [left: number, right: number] {
  const { left, right } = requireKnownOptions(
    planes,
    { left: true, right: true },
    { what: "a plane of a rotor", form: PLANES, place: { option: "planes" } },
  );
  return [metres(left, { option: "left" }), metres(right, { option: "right" })];
}
