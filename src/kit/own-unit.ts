import {
  frozen,
  requireChoice,
  requireKnownOptions,
  requireList,
  type Source,
  shown,
  VeladisError,
} from "../core/index";
import { type Quantity, quantities } from "../units/index";
import { requireFreeName, requireNameAndSource, requireWhole } from "./checked-name";

/** A unit of your own: one row of the table of units, with its name and source. */
export interface OwnUnit<Symbol extends string = string, Of extends Quantity = Quantity, Also extends string = string> {
  readonly symbol: Symbol;
  readonly quantity: Of;
  /** `num / den` is its exact value in m, m/s or m/s2, in whole numbers. */
  readonly num: number;
  readonly den: number;
  /** Other symbols, read to the letter; they are part of the types. */
  readonly also?: readonly Also[];
  readonly name: string;
  readonly source: Source;
}

const keys = /* @__PURE__ */ frozen({
  symbol: true,
  quantity: true,
  num: true,
  den: true,
  also: true,
  name: true,
  source: true,
});

/**
 * A unit of your own, checked and frozen, for {@link toolkit}.
 *
 * @throws {@link VeladisError} `unknown-option`, `wrong-type`, `syntax`, `out-of-range` for a symbol that is taken and a
 *   ratio that is no whole number above zero over another
 * @example
 * ```ts
 * import { defineUnit } from "veladis/kit";
 *
 * const line = { quantity: "velocity", num: 127, den: 60_000, name: "line (a twelfth of an inch) per second" } as const;
 * const source = { title: "Hollowmere workshop sheet 3", provenance: "memory" } as const;
 * defineUnit({ symbol: "lin/s", ...line, source }).symbol; // => "lin/s"
 * defineUnit({ symbol: "ips", ...line, source }); // throws out-of-range
 * defineUnit({ symbol: "lin/s", ...line, den: 0.5, source }); // throws out-of-range
 * ```
 */
export function defineUnit<const Symbol extends string, Of extends Quantity, const Also extends string = never>(
  unit: OwnUnit<Symbol, Of, Also>,
): OwnUnit<Symbol, Of, Also> {
  requireKnownOptions(unit, keys, {
    what: "a part of a unit",
    form: "a unit with symbol, quantity, num, den, name and source",
    place: {
      parameter: "unit",
    },
  });
  const { symbol, quantity, num, den, also = [], name, source } = unit;
  const at = (option: keyof OwnUnit) => ({ parameter: "unit", option });
  requireFreeName(symbol, "the symbol of a unit", at("symbol"));
  requireChoice(quantity, Object.keys(quantities), "the quantity of a unit", at("quantity"));
  const others = requireList(also, "other symbols as a list", at("also"));
  for (const [index, one] of others.entries()) {
    requireFreeName(one, "another symbol of a unit", { ...at("also"), index });
    if (one !== (symbol as string) && others.indexOf(one) === index) continue;
    throw new VeladisError("out-of-range", {
      ...{ expected: "other symbols of a unit that differ", received: shown(one) },
      ...{ ...at("also"), index },
    });
  }
  requireWhole(num, "num", at("num"));
  requireWhole(den, "den", at("den"));
  requireNameAndSource(unit, "unit");
  return frozen({ symbol, quantity, num, den, also: [...also], name, source: { ...source } }) as OwnUnit<
    Symbol,
    Of,
    Also
  >;
}
