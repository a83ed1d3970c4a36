/**
 * A conversion to 64 digits by an independent engine: mathjs 15 with BigNumber, its own units and its own constants.
 * Unit names that mathjs lacks (Gal, mg, the micro-inch) are written out in units that it has.
 */
import { all, type BigNumber, create } from "mathjs";
import { type Detector, quantities, type UnitSymbol, units } from "../../src/index";

export const math = create(all as never, { number: "BigNumber", precision: 64 });

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
export function big(value: number): BigNumber {
  bits.setFloat64(0, value);
  const exponent = (bits.getUint16(0) >> 4) & 0x7ff;
  const fraction = bits.getBigUint64(0) & 0xfffffffffffffn;
  const mantissa = exponent === 0 ? fraction : fraction + 0x10000000000000n;
  const magnitude = math.bignumber(`${mantissa}`).times(math.bignumber(2).pow(Math.max(exponent, 1) - 1075));
  return value < 0 ? magnitude.neg() : magnitude;
}

export const nearestDouble = (value: BigNumber): number => Number(value.toString());
const evaluated = (expression: string): BigNumber => math.evaluate(expression) as BigNumber;

export const toSi = Object.fromEntries(
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
  "true pk": big(1),
};

const tau = evaluated("2 * pi");
export const hertzOf = {
  Hz: big(1),
  kHz: big(1000),
  "r/min": evaluated("1 / 60"),
  "rad/s": evaluated("1 / (2 * pi)"),
};

export interface Case {
  value: number;
  from: [UnitSymbol, Detector];
  to: [UnitSymbol, Detector];
  frequency: [number, keyof typeof hertzOf];
}

export function exact({ value, from, to, frequency }: Case): BigNumber {
  const steps = quantities[units[to[0]].quantity] - quantities[units[from[0]].quantity];
  const omega = tau.times(big(frequency[0])).times(hertzOf[frequency[1]]);
  return big(value)
    .times(toSi[from[0]])
    .div(ofUnitSine[from[1]])
    .times(omega.pow(steps))
    .times(ofUnitSine[to[1]])
    .div(toSi[to[0]]);
}

export const relativeError = (got: number, want: BigNumber): number => big(got).minus(want).div(want).abs().toNumber();

/** The error in units of the last place of the nearest double. */
export function errorInUlp(got: number, want: BigNumber): number {
  const nearest = nearestDouble(want);
  bits.setFloat64(0, nearest);
  const exponent = (bits.getUint16(0) >> 4) & 0x7ff;
  return big(got).minus(want).abs().toNumber() / 2 ** (Math.max(exponent, 1) - 1075);
}
