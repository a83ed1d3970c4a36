import { nearest, shown, text, VeladisError } from "../core/index";
import { type Unit, type UnitSymbol, units } from "./catalogue";

/** Folds the ways people type one symbol: micro signs, raised or careted 2, "sec", case of spoken names. */
function folded(spelling: string): string {
  return spelling
    .normalize("NFKC")
    .replaceAll("μ", "u")
    .replaceAll("^", "")
    .replace(/\bsec\b/, "s")
    .replace(/\s+/g, " ");
}

const exact: ReadonlyMap<string, UnitSymbol> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ (Object.entries(units) as [UnitSymbol, Unit][]).flatMap(([symbol, unit]) =>
    [symbol, ...unit.written].map((spelling) => [spelling, symbol] as const),
  ),
);

const spoken: ReadonlyMap<string, UnitSymbol> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ (Object.entries(units) as [UnitSymbol, Unit][]).flatMap(([symbol, unit]) =>
    [...unit.spoken, ...unit.written].map((spelling) => [spelling.toLowerCase(), symbol] as const),
  ),
);

/** The longest spelling looked up; anything beyond it is no unit. */
const LONGEST = 40;

/** The unit's symbol, or undefined when the spelling is none of a unit. */
export function findUnit(spelling: string): UnitSymbol | undefined {
  if (spelling.length > LONGEST) return undefined;
  const plain = folded(spelling.trim());
  return exact.get(spelling) ?? exact.get(plain) ?? spoken.get(plain.toLowerCase());
}

/**
 * The symbol of the unit that a text names: by symbol, other spelling or spoken name.
 *
 * Symbols are read to the letter (`mm` is not `Mm`); micro signs, raised 2 and spoken names are read as people
 * type them.
 *
 * @throws {@link VeladisError} `wrong-type`, `syntax`, or `unknown-unit` with the nearest units
 * @example
 * ```ts
 * import { unitSymbol } from "veladis";
 *
 * unitSymbol("microns"); // => "um"
 * unitSymbol("IPS"); // => "in/s"
 * unitSymbol("m/s²"); // => "m/s2"
 * ```
 */
export function unitSymbol(spelling: string): UnitSymbol {
  const symbol = findUnit(text(spelling, "a unit of vibration"));
  if (symbol !== undefined) return symbol;
  const near = nearest(spelling, [...exact.keys(), ...spoken.keys()]).map(
    (name) => exact.get(name) ?? spoken.get(name) ?? name,
  );
  throw new VeladisError("unknown-unit", {
    expected: "a unit of vibration",
    received: shown(spelling),
    didYouMean: [...new Set(near)],
    allowed: Object.keys(units),
  });
}
