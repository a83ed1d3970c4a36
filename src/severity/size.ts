import { parseNumeral, requirePositive, shown, splitNumeral, VeladisError } from "../core/index";

/** How many kilowatts a unit of power is. The mechanical horsepower is 550 ft lbf/s, the metric one 75 kgf m/s (NIST SP 811). */
export const kilowattsPer = /* @__PURE__ */ Object.freeze({
  kW: 1,
  MW: 1000,
  W: 0.001,
  hp: 0.7456998715822702,
  PS: 0.73549875,
} as const);

/** How many millimetres a unit of shaft height is. */
export const millimetresPer = /* @__PURE__ */ Object.freeze({ mm: 1, cm: 10, m: 1000, in: 25.4 } as const);

/** A rated power in words: `"90 kW"`. */
export type PowerText = `${number} ${keyof typeof kilowattsPer}`;

/** A shaft height in words: `"280 mm"`. */
export type LengthText = `${number} ${keyof typeof millimetresPer}`;

/** The number of base units that a text such as `"90 kW"` says. */
export function sizeOf(written: string, per: Readonly<Record<string, number>>, what: string): number {
  const [digits, unit] = splitNumeral(written.trim());
  if (digits === "" || written.length > 40) {
    throw new VeladisError("syntax", { expected: what, received: shown(written) });
  }
  const key = Object.keys(per).find((name) => name.toLowerCase() === unit.toLowerCase());
  if (key === undefined) {
    throw new VeladisError(unit === "" ? "missing-unit" : "unknown-unit", {
      expected: what,
      received: shown(written),
      allowed: Object.keys(per),
    });
  }
  return requirePositive(parseNumeral(digits) * (per[key] as number), what);
}
