import { requireText, symbolsByName, unknownName } from "../core/index";
import { type UnitSymbol, units } from "./catalogue";

/** Names read without regard to case. */
const named = /* @__PURE__ */ symbolsByName(units, false);

/** One way of writing for the several that people have: micro signs, powers, slashes, "per second", "sec", "meters". */
function folded(spelling: string): string {
  return spelling
    .normalize("NFKC")
    .replace(/\s+/g, " ")
    .replace("μ", "u")
    .replace("^", "")
    .replace(/met(er|re)s?\b/i, "metre")
    .replace(/( per |[/∕⁄])s(ec(ond)?)?(?![a-z])/gi, "/s")
    .replace(/[ .·⋅*]?s ?[-−](?=[12]$)/, "/s")
    .replace("/s1", "/s")
    .replace(/\/s(\/s| squared)/, "/s2");
}

/** The unit's symbol, or undefined when the spelling is none of a unit. */
export function findUnit(spelling: string): UnitSymbol | undefined {
  const plain = folded(spelling.trim());
  if (Object.hasOwn(units, plain)) return plain as UnitSymbol;
  // a folded text is one line, so that this always matches
  const [, name, rate = ""] = /(.*?)(\/s2?)?$/.exec(plain.toLowerCase()) as string[] as [string, string, string?];
  const symbol = `${named().get(name)}${rate}`;
  return Object.hasOwn(units, symbol) ? (symbol as UnitSymbol) : undefined;
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
 * unitSymbol("inches per second"); // => "in/s"
 * ```
 */
export function unitSymbol(spelling: string): UnitSymbol {
  const symbol = findUnit(requireText(spelling, "a unit of vibration", { parameter: "spelling" }));
  if (symbol !== undefined) return symbol;
  const all = new Map<string, string>([...Object.keys(units).map((name) => [name, name] as const), ...named()]);
  throw unknownName("unknown-unit", "a unit of vibration", spelling, [all, units]);
}
