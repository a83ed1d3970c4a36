import { parseNumeral, requirePositive, shown, splitNumeral, VeladisError } from "../core/index";

/**
 * How many kilowatts a unit of power is. The mechanical horsepower is 550 ft lbf/s, the metric one 75 kgf m/s (NIST SP
 * 811); brake horsepower is the mechanical one, at the shaft.
 */
export const kilowattsPer = /* @__PURE__ */ Object.freeze({
  kW: 1,
  MW: 1000,
  W: 0.001,
  hp: 0.7456998715822702,
  bhp: 0.7456998715822702,
  PS: 0.73549875,
} as const);

/** How many kilovolt-amperes a unit of apparent power is. */
export const kilovoltAmperesPer = /* @__PURE__ */ Object.freeze({ kVA: 1, MVA: 1000 } as const);

/** How many millimetres a unit of length is. */
export const millimetresPer = /* @__PURE__ */ Object.freeze({ mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 } as const);

/** A rated power in words: `"90 kW"`. */
export type PowerText = `${number} ${keyof typeof kilowattsPer}`;

/** A length in words: `"280 mm"`. */
export type LengthText = `${number} ${keyof typeof millimetresPer}`;

/** The unit of a table that a text names, without regard to case. */
export function unitIn<Unit extends string>(per: Readonly<Record<Unit, number>>, name: string): Unit | undefined {
  const key = name.toLowerCase();
  return (Object.keys(per) as Unit[]).find((unit) => unit.toLowerCase() === key);
}

/** The number of base units that a text such as `"90 kW"` says. */
export function sizeOf(written: string, per: Readonly<Record<string, number>>, what: string): number {
  const [digits, unit] = splitNumeral(written.trim());
  if (digits === "" || written.length > 40) {
    throw new VeladisError("syntax", { expected: what, received: shown(written) });
  }
  const key = unitIn(per, unit);
  if (key === undefined) {
    const isApparent = unitIn(kilovoltAmperesPer, unit) !== undefined;
    throw new VeladisError(unit === "" ? "missing-unit" : "unknown-unit", {
      expected: isApparent
        ? `${what}; the kVA of a generator are taken in words, as in "generator ${written.trim()}"`
        : what,
      received: shown(written),
      allowed: Object.keys(per),
    });
  }
  return requirePositive(parseNumeral(digits) * (per[key] as number), what);
}
