import type { UnitSymbol, units } from "./catalogue";

/** The other symbols of a unit. */
type Also<Symbol extends UnitSymbol> = (typeof units)[Symbol] extends {
  readonly also: readonly (infer Name extends string)[];
}
  ? Name
  : never;

/** A symbol with its 2 raised or careted. */
type Raised<Text extends string> = Text extends `${infer Head}s2` ? Text | `${Head}s²` | `${Head}s^2` : Text;

/** A symbol with its u written as either micro sign. */
type Micro<Text extends string> = Text extends `u${infer Rest}` ? Text | `µ${Rest}` | `μ${Rest}` : Text;

/** Quantity of every spelling the types know: symbols, other symbols, raised 2, micro signs. */
export type UnitQuantities = {
  [Symbol in UnitSymbol as Micro<Raised<Symbol>> | Also<Symbol>]: (typeof units)[Symbol]["quantity"];
};

/** A spelling of a unit that the types know. */
export type UnitSpelling = keyof UnitQuantities;
