import { requireText, shown, VeladisError, withParameters } from "../core/index";
import { findUnit, type UnitSymbol, unitSymbol, units } from "../units/index";

/** The symbols of units that are one word, which need no brackets to be squared. */
type Plain = Exclude<UnitSymbol, `${string}/${string}`>;

/** A unit of spectral density: `"g2/Hz"`, `"(m/s2)2/Hz"`, `"(mm/s)2/Hz"`, `"um2/Hz"`. */
export type DensityUnit = `${Plain}2/Hz` | `(${UnitSymbol})2/Hz`;

const FORM = 'a unit of spectral density such as "g2/Hz", "(m/s2)2/Hz" or "(mm/s)2/Hz"';

/** The square of a unit in hertz, as it is written: brackets round a unit with a stroke. */
export function densityText(unit: UnitSymbol): DensityUnit {
  return (unit.includes("/") ? `(${unit})2/Hz` : `${unit}2/Hz`) as DensityUnit;
}

/** Ways of writing densities of SI units that have the square worked out. */
const workedOut: Readonly<Record<string, UnitSymbol>> = {
  "m2/s4/Hz": "m/s2",
  "m2/s3": "m/s2",
  "mm2/s2/Hz": "mm/s",
  "m2/s2/Hz": "m/s",
  "m2/s": "m/s",
};

/**
 * The unit whose square is in a unit of spectral density.
 *
 * @throws {@link VeladisError} `wrong-type`, `syntax`, or `unknown-unit` for what stands squared
 * @example
 * ```ts
 * import { densityUnit } from "veladis/signal";
 *
 * densityUnit("g2/Hz"); // => "g"
 * densityUnit("(m/s²)²/Hz"); // => "m/s2"
 * densityUnit("g^2/Hz"); // => "g"
 * ```
 */
export function densityUnit(written: string): UnitSymbol {
  return withParameters({ written }, () => {
    const plain = requireText(written, FORM, { parameter: "written" })
      .trim()
      .normalize("NFKC")
      .replaceAll("^", "")
      .replace(/\s+/g, "");
    const known = workedOut[plain];
    if (known !== undefined && Object.hasOwn(workedOut, plain)) return known;
    const squared = /^(?:\((.+)\)|([^()]+))2\/Hz$/i.exec(plain);
    const inside = squared?.[1] ?? squared?.[2];
    if (inside === undefined || (squared?.[2] !== undefined && inside.includes("/"))) {
      throw new VeladisError("syntax", {
        expected: FORM,
        received: shown(written),
        ...(findUnit(plain) !== undefined && { didYouMean: [densityText(unitSymbol(plain))] }),
        allowed: (Object.keys(units) as UnitSymbol[]).map(densityText),
      });
    }
    return unitSymbol(inside);
  });
}
