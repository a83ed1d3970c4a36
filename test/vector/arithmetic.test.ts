/**
 * Sums and differences against the complex numbers of mathjs, a general-purpose library; a lag is an angle turned the other
 * way, so a vector of lag p is A e^(-ip).
 */
import fc from "fast-check";
import { add, type Complex, complex, subtract } from "mathjs";
import { explain } from "veladis/explain";
import { vectorDifference } from "veladis/signal";
import { differenceOfVectors, formatVector, parseVector, sumOfVectors, type Vector } from "veladis/vector";
import { describe, expect, it } from "vitest";
import { replay } from "../amplitude/replay";

const vector = fc
  .record({
    value: fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
    type: fc.constantFrom("um pp", "mil pp", "um rms", "mil pk", "mm avg"),
    phase: fc.oneof(fc.double({ min: 0, max: 359.999, noNaN: true }), fc.constantFrom(0, 90, 180, 270)),
  })
  .map(({ value, type, phase }) => parseVector(`${value} ${type} ∠ ${phase}° at 1x of 5400 r/min`));

/** Peak in um over the reading, by definition; 1 mil is 25.4 um, the average of a rectified sine 2/pi of its peak. */
const peaks: Record<string, number> = {
  "um pp": 0.5,
  "mil pp": 12.7,
  "um rms": Math.SQRT2,
  "mil pk": 25.4,
  "mm avg": 500 * Math.PI,
};
const scale = ({ amplitude: { unit, detector } }: Vector): number => peaks[`${unit} ${detector}`] as number;
const phasor = (v: Vector): Complex => complex({ r: v.amplitude.value * scale(v), phi: (-v.phase * Math.PI) / 180 });

function expectNear(actual: Vector, expected: Complex, size: number): void {
  const { re, im } = subtract(phasor(actual), expected) as Complex;
  expect(Math.hypot(re, im)).toBeLessThan(1e-12 * size);
}

describe("sums and differences of vectors", () => {
  it("are those of complex numbers", () => {
    fc.assert(
      fc.property(vector, vector, (a, b) => {
        const [x, y] = [phasor(a), phasor(b)];
        const size = a.amplitude.value * scale(a) + b.amplitude.value * scale(b);
        expectNear(sumOfVectors(a, b), add(x, y) as Complex, size);
        expectNear(differenceOfVectors(a, b), subtract(x, y) as Complex, size);
        expectNear(differenceOfVectors(sumOfVectors(a, b), b), x, size);
      }),
    );
  });

  it("lie between the difference of their lengths and the sum, and are told as arithmetic", () => {
    fc.assert(
      fc.property(vector, vector, (a, b) => {
        for (const answer of [sumOfVectors(a, b), differenceOfVectors(a, b)]) {
          const own = a.amplitude.value;
          const other = (b.amplitude.value * scale(b)) / scale(a);
          expect(answer.amplitude.value).toBeGreaterThanOrEqual(Math.abs(own - other) - 1e-12 * (own + other));
          expect(answer.amplitude.value).toBeLessThanOrEqual((own + other) * (1 + 1e-12));
          expect(answer.phase).toBeGreaterThanOrEqual(0);
          expect(answer.phase).toBeLessThan(360);
          const last = replay(explain(answer).steps).at(-1) as number;
          expect(Math.abs(last - answer.amplitude.value)).toBeLessThan(1e-6 * (own + other));
        }
      }),
    );
  });

  it("agree in length with vectorDifference by the angle between", () => {
    fc.assert(
      fc.property(vector, vector, (a, b) => {
        // in the type of the other, so without the history of its own type
        const { history: _, ...rest } = b.amplitude;
        const alike = { ...b, amplitude: { ...rest, unit: a.amplitude.unit, detector: a.amplitude.detector } };
        const { amplitude } = differenceOfVectors(a, alike);
        const plain = vectorDifference(a.amplitude, alike.amplitude, b.phase - a.phase);
        expect(Math.abs(amplitude.value - plain.value)).toBeLessThan(1e-11 * (a.amplitude.value + b.amplitude.value));
      }),
    );
  });

  // arithmetic: a triangle of sides 3, 4 and 5
  it("of 30 and 40 um at a right angle are 50 um", () => {
    const [a, b] = ["30 um pp ∠ 0° at 1x of 5400 r/min", "40 um pp ∠ 90° at 1x of 5400 r/min"];
    expect(formatVector(sumOfVectors(a, b))).toBe("50.0 um pp ∠ 53.1° at 1x of 5400 r/min");
    expect(formatVector(differenceOfVectors(a, b))).toBe("50.0 um pp ∠ 307° at 1x of 5400 r/min");
  });

  it("leave nothing of a vector less itself, at phase 0", () => {
    fc.assert(
      fc.property(vector, (a) => {
        const { amplitude, phase } = differenceOfVectors(a, a);
        expect([amplitude.value, phase]).toEqual([0, 0]);
      }),
    );
  });

  it("keep what was assumed, and all steps", () => {
    const answer = sumOfVectors("3 mil pp ∠ 45° at 1x of 3600 r/min", "20 um rms ∠ 90° at 1x of 3600 r/min");
    expect(answer.assumed).toEqual(["sine", "one-frequency"]);
    expect(answer.assumed).toEqual(answer.amplitude.assumed);
    expect(answer.assumedFacts).toEqual(["both phases count from one mark on the shaft"]);
    const { text } = explain(answer);
    expect(text).toContain("3 mil pp  (∠ 45° at 1x of 3600 r/min)");
    expect(text).toContain("20 um rms  (∠ 90° at 1x of 3600 r/min)");
    expect(text).toMatch(/3 mil pp - 2\.227 mil pp at 225 degrees = .* mil pp {2}\(added: the opposite taken off/);
    expect(differenceOfVectors(answer, "1 mil pp ∠ 0° at 1x of 3600 r/min").assumed).toEqual(["sine", "one-frequency"]);
  });

  it("survive JSON, and are taken up again with all they say", () => {
    const answer = sumOfVectors("3 mil pp ∠ 45° at 1x of 3600 r/min", "1 mil pp ∠ 90° at 1x of 3600 r/min");
    const back = JSON.parse(JSON.stringify(answer)) as Vector;
    expect(back).toEqual(answer);
    const again = differenceOfVectors(back, "1 mil pp ∠ 90° at 1x of 3600 r/min");
    expect(formatVector(again)).toBe("3.00 mil pp ∠ 45° at 1x of 3600 r/min");
    expect(again.history.length).toBe(answer.history.length + 3);
  });

  it("keep the probe and the direction that both name", () => {
    const [a, b] = ["30 um pp ∠ 0° at 1x of 90 Hz, probe 1y", "40 um pp ∠ 90° at 1x of 90 Hz, probe 1Y, direction up"];
    expect(sumOfVectors(a, b).probe).toBe("1y");
    expect("direction" in sumOfVectors(a, b)).toBe(false);
  });

  it.each([
    ["3 mil pp ∠ 45° at 1x of 3600 r/min", "1 mil pp ∠ 45° at 1x of 1800 r/min", "wrong-frequency"],
    ["3 mil pp ∠ 45° at 1x of 3600 r/min", "1 mil pp ∠ 45° at 2x of 3600 r/min", "wrong-frequency"],
    ["3 mil pp ∠ 45° at 2x of 1800 r/min", "1 mil pp ∠ 45° at 1x of 3600 r/min", "wrong-frequency"],
    ["3 mil pp ∠ 45° at 1x of 3600 r/min", "1 mm/s pk ∠ 45° at 1x of 3600 r/min", "wrong-quantity"],
    ["3 mil pp ∠ 45° at 1x of 3600 r/min", "1 mm/s pk", "missing-fact"],
    ["3 mil pp ∠ 45° at 1x of 3600 r/min", "1 mil pp at 50 Hz", "out-of-range"],
    ["3 mil pp", "1 mil pp", "missing-fact"],
  ])("of %s and %s are refused as %s", (a, b, code) => {
    for (const act of [sumOfVectors, differenceOfVectors]) {
      expect(() => act(a, b)).toThrow(expect.objectContaining({ code }));
    }
  });

  it("where one has no phase say the two ends and what takes an angle", () => {
    const vectored = "3 mil pp ∠ 45° at 1x of 3600 r/min";
    for (const [a, b] of [
      [vectored, "25.4 um pp"],
      ["3 mil pp at 60 Hz", "1 mil pp"],
    ] as const) {
      expect(() => differenceOfVectors(a, b)).toThrow(
        /from 2\.00 mil pp to 4\.00 mil pp, and vectorDifference takes an angle/,
      );
    }
    const bare = parseVector(vectored).amplitude as unknown as Vector;
    expect(() => sumOfVectors(bare, vectored)).toThrow(expect.objectContaining({ code: "missing-fact" }));
  });
});
