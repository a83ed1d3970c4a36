import { type UnitSymbol, units } from "./catalogue";
import { quantities } from "./quantity";

/** How many times a quantity in the one unit is the time derivative of a quantity in the other: -2 to 2. */
export function derivativeOrder(from: UnitSymbol, to: UnitSymbol): number {
  return quantities[units[to].quantity] - quantities[units[from].quantity];
}

/** What a value in one unit is multiplied with to be in the other, both taken in SI units of their own quantity. */
export function unitFactor(from: UnitSymbol, to: UnitSymbol): number {
  const { num, den } = units[from];
  return (num * units[to].den) / (den * units[to].num);
}
