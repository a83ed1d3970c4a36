/** Conversions against mathjs at 64 digits. */
import fc from "fast-check";
import type { BigNumber } from "mathjs";
import { describe, expect, it } from "vitest";
import { pairOf } from "../../src/amplitude/pair";
import {
  convert,
  converter,
  type Detector,
  detectors,
  type FrequencyText,
  type ReadingType,
  type UnitSymbol,
  units,
} from "../../src/index";
import { big, type Case, exact, hertzOf, math, nearestDouble, relativeError, toSi } from "./exact";

const symbols = Object.keys(units) as UnitSymbol[];
// a true peak has no ratio to the others
const named = (Object.keys(detectors) as Detector[]).filter((one) => !("ofWaveform" in detectors[one]));
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
        const { num, den } = pairOf(from.join(" "), to.join(" ")).sine(1);
        const want = exact({ value: 1, from: [...from], to: [...to], frequency: [1, "Hz"] });
        expect(num / den).toBe(nearestDouble(want));
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
