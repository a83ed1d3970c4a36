/**
 * Against an independent engine: mathjs 15 with BigNumber at 64 digits, its own units and its own constants.
 * Unit names that mathjs lacks (Gal, mg, the micro-inch) are written out in units that it has.
 */
import fc from "fast-check";
import { all, type BigNumber, create } from "mathjs";
import { describe, expect, it } from "vitest";
import { pairOf } from "../../src/amplitude/pair";
import {
  convert,
  converter,
  type Detector,
  detectors,
  type FrequencyText,
  quantities,
  type ReadingType,
  type UnitSymbol,
  units,
} from "../../src/index";

const math = create(all as never, { number: "BigNumber", precision: 64 });

const inMathjs: Record<UnitSymbol, string> = {
  "m/s2": "m/s^2",
  "cm/s2": "cm/s^2",
  "mm/s2": "mm/s^2",
  "um/s2": "um/s^2",
  Gal: "cm/s^2",
  g: "gravity",
  mg: "gravity / 1000",
  "in/s2": "inch/s^2",
  "ft/s2": "ft/s^2",
  "m/s": "m/s",
  "cm/s": "cm/s",
  "mm/s": "mm/s",
  "um/s": "um/s",
  "nm/s": "nm/s",
  "in/s": "inch/s",
  "uin/s": "1e-6 inch/s",
  "ft/s": "ft/s",
  m: "m",
  cm: "cm",
  mm: "mm",
  um: "um",
  nm: "nm",
  pm: "pm",
  in: "inch",
  mil: "mil",
  uin: "1e-6 inch",
  ft: "ft",
};

const baseOf = { displacement: "m", velocity: "m/s", acceleration: "m/s^2" } as const;

const bits = new DataView(new ArrayBuffer(8));

/** The double itself to 64 digits; mathjs alone would read its shortest decimal form, half a unit away. */
function big(value: number): BigNumber {
  bits.setFloat64(0, value);
  const exponent = (bits.getUint16(0) >> 4) & 0x7ff;
  const fraction = bits.getBigUint64(0) & 0xfffffffffffffn;
  const mantissa = exponent === 0 ? fraction : fraction + 0x10000000000000n;
  const magnitude = math.bignumber(`${mantissa}`).times(math.bignumber(2).pow(Math.max(exponent, 1) - 1075));
  return value < 0 ? magnitude.neg() : magnitude;
}

const nearestDouble = (value: BigNumber): number => Number(value.toString());
const evaluated = (expression: string): BigNumber => math.evaluate(expression) as BigNumber;

const toSi = Object.fromEntries(
  Object.entries(inMathjs).map(([symbol, expression]) => {
    const base = baseOf[units[symbol as UnitSymbol].quantity];
    return [
      symbol,
      evaluated(
        `number(${expression.includes("gravity") || /^\d/.test(expression) ? expression : `1 ${expression}`}, ${base})`,
      ),
    ];
  }),
) as Record<UnitSymbol, BigNumber>;

/** Reading of a sine of peak 1. */
const ofUnitSine: Record<Detector, BigNumber> = {
  pk: big(1),
  pp: big(2),
  rms: evaluated("1 / sqrt(2)"),
  avg: evaluated("2 / pi"),
};

const tau = evaluated("2 * pi");
const hertzOf = {
  Hz: big(1),
  kHz: big(1000),
  "r/min": evaluated("1 / 60"),
  "rad/s": evaluated("1 / (2 * pi)"),
};

interface Case {
  value: number;
  from: [UnitSymbol, Detector];
  to: [UnitSymbol, Detector];
  frequency: [number, keyof typeof hertzOf];
}

function exact({ value, from, to, frequency }: Case): BigNumber {
  const steps = quantities[units[to[0]].quantity] - quantities[units[from[0]].quantity];
  const omega = tau.times(big(frequency[0])).times(hertzOf[frequency[1]]);
  return big(value)
    .times(toSi[from[0]])
    .div(ofUnitSine[from[1]])
    .times(omega.pow(steps))
    .times(ofUnitSine[to[1]])
    .div(toSi[to[0]]);
}

const relativeError = (got: number, want: BigNumber): number => big(got).minus(want).div(want).abs().toNumber();

const symbols = Object.keys(units) as UnitSymbol[];
const named = Object.keys(detectors) as Detector[];
const logarithmic = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map((x) => Math.exp(x));

const cases: fc.Arbitrary<Case> = fc.record({
  value: logarithmic(1e-9, 1e9),
  from: fc.tuple(fc.constantFrom(...symbols), fc.constantFrom(...named)),
  to: fc.tuple(fc.constantFrom(...symbols), fc.constantFrom(...named)),
  frequency: fc.tuple(logarithmic(0.01, 1e5), fc.constantFrom(...(Object.keys(hertzOf) as (keyof typeof hertzOf)[]))),
});

describe("conversion against mathjs at 64 digits", () => {
  it("120 000 random conversions: 4e-16 within a quantity, 8e-16 across", () => {
    const worst = { same: 0, across: 0 };
    const count = { same: 0, across: 0 };
    fc.assert(
      fc.property(cases, (one) => {
        const where = units[one.from[0]].quantity === units[one.to[0]].quantity ? "same" : "across";
        const [from, to] = [one.from.join(" "), one.to.join(" ")] as [ReadingType, ReadingType];
        const at = one.frequency.join(" ") as FrequencyText;
        const want = exact(one);
        const error = relativeError(convert(one.value, from, to, { at }), want);
        const compiled = relativeError(converter(from, to, { at })(one.value), want);
        worst[where] = Math.max(worst[where], error, compiled);
        count[where]++;
        return Math.max(error, compiled) <= (where === "same" ? 4e-16 : 8e-16);
      }),
      { numRuns: 120_000, seed: 20_261_125 },
    );
    console.log(
      `worst relative error of ${count.same} within a quantity ${worst.same}, of ${count.across} across ${worst.across}`,
    );
    expect(count.same / (count.same + count.across)).toBeGreaterThan(0.25);
  });

  it("each factor at 1 Hz is the nearest double", () => {
    for (const from of symbols.flatMap((unit) => named.map((detector) => [unit, detector] as const))) {
      for (const to of symbols.map((unit) => [unit, "rms"] as const)) {
        const { factor } = pairOf(from.join(" "), to.join(" "));
        const want = exact({ value: 1, from: [...from], to: [...to], frequency: [1, "Hz"] });
        expect(factor).toBe(nearestDouble(want));
      }
    }
  });

  it.each(symbols)("the ratio of %s is exact", (symbol) => {
    const { num, den } = units[symbol];
    expect(Number.isSafeInteger(num) && Number.isSafeInteger(den)).toBe(true);
    expect(big(num).div(big(den)).equals(toSi[symbol])).toBe(true);
  });

  it("levels: 20 lg of the RMS ratio", () => {
    fc.assert(
      fc.property(logarithmic(1e-6, 1e3), logarithmic(1e-12, 1), (value, reference) => {
        const level = convert(value, "mm/s rms", `dB re ${reference} m/s`);
        const want = math.log10(big(value).div(1000).div(big(reference)) as never) as unknown as BigNumber;
        return Math.abs(big(level).minus(want.times(20)).toNumber()) <= 1e-13 * Math.max(1, Math.abs(level));
      }),
      { numRuns: 2000 },
    );
  });
});
