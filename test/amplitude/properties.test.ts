import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sineFrequency } from "../../src/amplitude/index";
import {
  convert,
  convertAmplitude,
  converter,
  type Detector,
  detectors,
  type Frequency,
  format,
  parseAmplitude,
  type ReadingType,
  type UnitSymbol,
  units,
} from "../../src/index";

const type = fc
  .tuple(
    fc.constantFrom(...(Object.keys(units) as UnitSymbol[])),
    fc.constantFrom(...(Object.keys(detectors) as Detector[]).filter((one) => !("ofWaveform" in detectors[one]))),
  )
  .map(([unit, detector]): ReadingType => `${unit} ${detector}`);
const value = fc.double({ min: 1e-9, max: 1e9, noNaN: true });
const at: fc.Arbitrary<Frequency> = fc.double({ min: 0.1, max: 1e5, noNaN: true }).map((hertz) => ({ hertz }));
const relative = (a: number, b: number): number => Math.abs(a - b) / Math.abs(b);

describe("laws of conversion", () => {
  it("there and back again", () => {
    fc.assert(
      fc.property(value, type, type, at, (x, from, to, frequency) => {
        const options = { at: frequency };
        return relative(convert(convert(x, from, to, options), to, from, options), x) < 1e-14;
      }),
      { numRuns: 5000 },
    );
  });

  it("to itself is itself", () => {
    fc.assert(fc.property(value, type, at, (x, from, frequency) => convert(x, from, from, { at: frequency }) === x));
  });

  it("by way of a third type", () => {
    fc.assert(
      fc.property(value, type, type, type, at, (x, from, by, to, frequency) => {
        const options = { at: frequency };
        return relative(convert(convert(x, from, by, options), by, to, options), convert(x, from, to, options)) < 1e-14;
      }),
      { numRuns: 5000 },
    );
  });

  it("is linear, and zero stays zero", () => {
    fc.assert(
      fc.property(
        value,
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        type,
        type,
        at,
        (x, k, from, to, frequency) => {
          const options = { at: frequency };
          expect(convert(0, from, to, options)).toBe(0);
          return relative(convert(k * x, from, to, options), k * convert(x, from, to, options)) < 1e-14;
        },
      ),
      { numRuns: 2000 },
    );
  });

  it("never falls when the reading rises", () => {
    fc.assert(
      fc.property(value, value, type, type, at, (a, b, from, to, frequency) => {
        const options = { at: frequency };
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        return convert(low, from, to, options) <= convert(high, from, to, options);
      }),
      { numRuns: 5000 },
    );
  });

  it("compiled and data path give the same bits as convert", () => {
    fc.assert(
      fc.property(value, type, type, at, (x, from, to, frequency) => {
        const expected = convert(x, from, to, { at: frequency });
        expect(converter(from, to, { at: frequency })(x)).toBe(expected);
        return convertAmplitude({ ...parseAmplitude(`${x} ${from}`) }, to, { at: frequency }).value === expected;
      }),
      { numRuns: 5000 },
    );
  });

  it("levels go there and back, and rise with the reading", () => {
    fc.assert(
      fc.property(value, value, (a, b) => {
        const level = convert(a, "mm/s rms", "dB re ISO 1683 velocity");
        expect(relative(convert(level, "dB re ISO 1683 velocity", "mm/s rms"), a)).toBeLessThan(1e-13);
        return Math.sign(b - a) * (convert(b, "mm/s rms", "dB re ISO 1683 velocity") - level) >= 0;
      }),
    );
  });

  it("a formatted reading parses to what it shows", () => {
    fc.assert(
      fc.property(value, type, fc.integer({ min: 1, max: 17 }), (x, from, digits) => {
        const back = parseAmplitude(format(x, from, { digits }));
        expect(`${back.unit} ${back.detector}`).toBe(from);
        return relative(back.value, x) <= 0.5 * 10 ** (1 - digits) + 2.3e-16;
      }),
      { numRuns: 5000 },
    );
  });

  it("the frequency between two quantities of one sine is that of the sine", () => {
    fc.assert(
      fc.property(value, fc.double({ min: 0.1, max: 1e5, noNaN: true }), (x, hertz) => {
        const one = parseAmplitude(`${x} um pp`);
        const other = convertAmplitude(one, "g rms", { at: { hertz } });
        const third = convertAmplitude(one, "in/s pk", { at: { hertz } });
        expect(relative(sineFrequency(other, one), hertz)).toBeLessThan(1e-13);
        return relative(sineFrequency(one, third), hertz) < 1e-13 && relative(sineFrequency(third, one), hertz) < 1e-13;
      }),
    );
  });
});
