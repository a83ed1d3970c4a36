/**
 * Vectors with ± against draws that share no code with the library: complex numbers by their two parts, with the readings
 * and the phases drawn by another generator.
 */
import fc from "fast-check";
import { convertAmplitude } from "veladis";
import { uncertaintyOf } from "veladis/uncertainty";
import {
  convertVector,
  differenceOfVectors,
  formatVector,
  parseVector,
  shaftAbsolute,
  slowRollCompensated,
  sumOfVectors,
  uncertaintyOfVector,
  type Vector,
} from "veladis/vector";
import { describe, expect, it } from "vitest";
import { polar, repeatable } from "../uncertainty/random-chain";
import { deviations, randomVectorChain } from "./random-vector-chain";

const at = "at 1x of 5400 r/min";

describe("a vector with ± in words", () => {
  it.each([
    "3.0 ± 0.1 mil pp (k=2) ∠ 45 ± 3° (k=2) at 1x of 1480 r/min",
    "3.0 mil pp ± 0.1 mil pp (k=2) ∠ 45° ± 3° (k=2) at 1x of 1480 r/min",
    "3.0 +/- 0.1 mil pp (k=2) /_ 45 deg +/- 3 deg (k=2) @ 1x of 1480 rpm",
    "3.0 ± 0.1 mil pp (k=2) at 1x of 1480 r/min ∠ 45 ± 3° lag (k=2)",
    "3.0 ± 0.1 mil pp (k=2), phase 45 ± 3 degrees (k=2), at 1x of 1480 r/min",
  ])("%j has 0.05 mil and 1.5 degrees", (text) => {
    const [step] = parseVector(text).amplitude.history ?? [];
    expect(step?.uncertainty?.standard).toBeCloseTo(0.05, 12);
    expect(step?.phaseUncertainty?.standard).toBeCloseTo(1.5, 12);
    expect([step?.phase, step?.hertz]).toEqual([45, 1480 / 60]);
    expect(formatVector(text)).toBe("3.00 ± 0.10 mil pp (k=2) ∠ 45.0 ± 3.0° (k=2) at 1x of 1480 r/min");
  });

  it("takes a bare ± as a bound, and says so", () => {
    const [step] = parseVector("3 mil pp ∠ 45 ± 3° at 1x of 1480 r/min").amplitude.history ?? [];
    expect(step?.phaseUncertainty?.standard).toBeCloseTo(3 / Math.sqrt(3), 12);
    expect(step?.note).toContain("± 3 degrees, taken as a bound with equal chance within");
  });

  it("knows its speed with a tolerance, which a conversion to another quantity takes in", () => {
    const text = "40 um pp ∠ 60° at 2x of 2700 r/min ± 1.0 % (k=2)";
    expect(formatVector(text)).toBe("40.0 um pp ∠ 60° at 2x of 2700 r/min ± 1.0 % (k=2)");
    expect(uncertaintyOfVector(convertVector(text, "m/s2 pk")).amplitude.relative).toBeCloseTo(0.01, 12);
    const one = convertVector("40 um pp ∠ 60° at 1x of 5400 ± 54 r/min (k=2)", "mm/s pk");
    expect(uncertaintyOf(one).relative).toBeCloseTo(0.005, 12);
    expect(formatVector(one)).toBe("11.31 ± 0.11 mm/s pk (k=2) ∠ 330° at 1x of 5400 r/min ± 1.0 % (k=2)");
  });

  it("a phase that is exact, and an amplitude that is, are written without ±", () => {
    expect(formatVector(`40 ± 0.2 um pp (k=2) ∠ 60° ${at}`)).toBe(`40.00 ± 0.20 um pp (k=2) ∠ 60° ${at}`);
    expect(formatVector(`40 um pp ∠ 60 ± 2° (k=2) ${at}`)).toBe(`40.0 um pp ∠ 60.0 ± 2.0° (k=2) ${at}`);
    expect(formatVector(`40 um pp ∠ 359.97 ± 2° (k=2) ${at}`)).toBe(`40.0 um pp ∠ 0.0 ± 2.0° (k=2) ${at}`);
  });
});

describe("what the writer writes with ±", () => {
  const anyVector = fc.record({
    power: fc.double({ min: -9, max: 9, noNaN: true }),
    share: fc.double({ min: -8, max: -0.31, noNaN: true }),
    phase: fc.double({ min: 0, max: 359.999, noNaN: true }),
    off: fc.double({ min: -6, max: 1.9, noNaN: true }),
    bound: fc.boolean(),
  });
  const textOf = ({
    power,
    share,
    phase,
    off,
    bound,
  }: {
    power: number;
    share: number;
    phase: number;
    off: number;
    bound: boolean;
  }) => {
    const [value, k] = [10 ** power, bound ? "" : " (k=2)"];
    return `${value} ± ${value * 10 ** share} mm/s pk${k} ∠ ${phase} ± ${bound ? 10 ** off / 2 : 10 ** off}°${k} at 1x of 1480 r/min`;
  };

  it("is read back from 1e-9 to 1e9: to the place of two digits, and to the last bits with 17", () => {
    fc.assert(
      fc.property(anyVector, (parts) => {
        const vector = parseVector(textOf(parts));
        const [step] = vector.amplitude.history ?? [];
        const u = [step?.uncertainty?.standard as number, step?.phaseUncertainty?.standard as number] as const;
        const text = formatVector(vector);
        const back = parseVector(text);
        expect(formatVector(back)).toBe(text);
        const [told] = back.amplitude.history ?? [];
        expect(Math.abs(back.amplitude.value - vector.amplitude.value)).toBeLessThan(
          0.11 * u[0] + 1e-15 * vector.amplitude.value,
        );
        expect(Math.abs((told?.uncertainty?.standard as number) / u[0] - 1)).toBeLessThan(0.051);
        expect(Math.abs((told?.phaseUncertainty?.standard as number) / u[1] - 1)).toBeLessThan(0.051);
        const turned = Math.abs(back.phase - vector.phase);
        expect(Math.min(turned, 360 - turned)).toBeLessThan(0.11 * u[1] + 1e-12);
        const whole = parseVector(formatVector(vector, { digits: 17 }));
        expect([whole.amplitude.value, whole.phase]).toEqual([vector.amplitude.value, vector.phase]);
        const [exact] = whole.amplitude.history ?? [];
        expect((exact?.uncertainty?.standard as number) / u[0]).toBeCloseTo(1, 14);
        expect((exact?.phaseUncertainty?.standard as number) / u[1]).toBeCloseTo(1, 14);
      }),
    );
  });

  it("and survives JSON, also behind sums", () => {
    fc.assert(
      fc.property(anyVector, anyVector, (one, other) => {
        const sum = sumOfVectors(textOf(one), textOf({ ...other, power: one.power }));
        const back = JSON.parse(JSON.stringify(sum)) as Vector;
        const few = { draws: 1000 };
        expect(uncertaintyOfVector(back, few)).toEqual(uncertaintyOfVector(sum, few));
      }),
      { numRuns: 30 },
    );
  });
});

describe("random chains of vectors", () => {
  const random = repeatable(20_261_130);
  const chains = Array.from({ length: 40 }, () => randomVectorChain(random));
  // one that was taken off itself by way of another unit leaves the noise of its last digits
  const known = chains
    .filter(({ vector, largest }) => vector.amplitude.value > 1e-9 * largest)
    .map((chain) => ({ ...chain, answer: uncertaintyOfVector(chain.vector) }));
  const COUNT = 100_000;

  it("have the uncertainties of draws by another engine, within 1 %", () => {
    const uniform = repeatable(4);
    const normal = polar(uniform);
    let first = 0;
    for (const { draw, vector, answer } of known) {
      const drawn = deviations(() => draw(normal, uniform), vector.phase, COUNT);
      const isFirst = answer.amplitude.method === "first order";
      if (isFirst) first++;
      for (const [own, { standard, noise }] of [
        [answer.amplitude, drawn.length],
        [answer.phase, drawn.phase],
      ] as const) {
        if (own === null) continue;
        // four standard deviations of theirs and of the library's 200,000 draws
        const allowed = isFirst ? 0.01 + 4 * noise : 4 * Math.hypot(noise, noise * Math.sqrt(COUNT / 200_000));
        expect(Math.abs(own.standard / standard - 1), `${vector.amplitude.value}`).toBeLessThan(allowed);
      }
    }
    expect(first).toBeGreaterThan(12);
    expect(first).toBeLessThan(36);
  });
});

describe("one vector", () => {
  const text = `40 ± 0.5 um pp (k=2) ∠ 60 ± 2° (k=2) ${at}`;

  it("taken off itself leaves nothing, certain, and no phase; two of the same words are two", () => {
    const one = parseVector(text);
    const none = differenceOfVectors(one, one);
    const { amplitude, phase } = uncertaintyOfVector(none);
    expect([amplitude.value, amplitude.standard, phase]).toEqual([0, 0, null]);
    const two = uncertaintyOfVector(differenceOfVectors(text, text));
    // of nothing with 0.25 um along and 40 um times 1 degree across, both by root 2: the mean length is above zero
    expect(two.amplitude.interval[1]).toBeGreaterThan(1);
    expect(two.phase).toBe(null);
  });

  it("added and taken off again has what it had", () => {
    const [one, other] = [parseVector(text), parseVector(`30 ± 1 um pp (k=2) ∠ 200 ± 4° (k=2) ${at}`)];
    const back = differenceOfVectors(sumOfVectors(one, other), other);
    const { amplitude, phase } = uncertaintyOfVector(back, { method: "first order" });
    expect(amplitude.standard).toBeCloseTo(0.25, 9);
    expect(phase?.standard).toBeCloseTo(1, 9);
  });

  it("by way of nothing has what it had, since the two parts of a vector are linear in a sum", () => {
    const [one, other] = [parseVector(text), parseVector(text)];
    const last = parseVector(`20 ± 0.2 um pp (k=2) ∠ 300 ± 1° (k=2) ${at}`);
    const there = sumOfVectors(differenceOfVectors(sumOfVectors(one, last), other), other);
    const direct = sumOfVectors(one, last);
    const [a, b] = [there, direct].map((vector) => uncertaintyOfVector(vector, { method: "first order" }));
    expect(a?.amplitude.standard).toBeCloseTo(b?.amplitude.standard as number, 9);
    // arithmetic: one and other have 0.25 um along 60 degrees and 40 um times 1 degree across
    const left = sumOfVectors(differenceOfVectors(one, other), last);
    expect(formatVector(left)).toContain("20.0 ± 1.8 um pp (k=2) ∠ 300.0 ± 3.5° (k=2)");
  });

  it("converted there and back, and to another quantity, keeps its phase as well known", () => {
    const there = convertVector(convertVector(text, "in/s rms"), "g pk");
    expect(uncertaintyOfVector(there).phase?.standard).toBeCloseTo(1, 9);
    expect(uncertaintyOfVector(there).amplitude.relative).toBeCloseTo(0.25 / 40, 9);
    expect(convertAmplitude(there.amplitude, "um pp").value).toBeCloseTo(40, 9);
  });
});

// arithmetic: 40 um less 6 um at a right angle; the length owes 40/40.447 of the one and 6/40.447 of the other
describe("slow roll and shaft absolute", () => {
  it("carry both, and name what they took for granted", () => {
    const left = slowRollCompensated(
      `40 ± 0.4 um pp (k=2) ∠ 60 ± 2° (k=2) ${at}, probe 1Y`,
      "6 ± 0.2 um pp (k=2) ∠ 150 ± 5° (k=2) at 1x of 300 r/min, probe 1Y",
    );
    const { amplitude, phase, assumed } = uncertaintyOfVector(left);
    const r = Math.hypot(40, 6);
    const [u, v] = [Math.PI / 180, (2.5 * Math.PI) / 180];
    expect(amplitude.standard).toBeCloseTo(Math.hypot(0.2 * 40, 0.1 * 6, 40 * 6 * u, 40 * 6 * v) / r, 9);
    const across = Math.hypot(0.2 * 6, 0.1 * 40, 40 * 40 * u, 6 * 6 * v) / r / r;
    expect(phase?.standard).toBeCloseTo((across * 180) / Math.PI, 9);
    expect(assumed).toContain("independent");
    expect(left.assumedFacts.join()).not.toContain("exact");
    const [a, b] = [`30 um pp ∠ 0 ± 2° (k=2) ${at}`, `11.30973 ± 0.1 mm/s pk (k=2) ∠ 0 ± 2° (k=2) ${at}`];
    const absolute = uncertaintyOfVector(shaftAbsolute(a, b));
    expect(absolute.amplitude.value).toBeCloseTo(50, 4);
    expect(absolute.amplitude.standard).toBeCloseTo(
      Math.hypot((0.05 / 11.30973) * 40 * 40, 30 * 40 * u, 30 * 40 * u) / 50,
      4,
    );
  });

  it("that leave next to nothing have no phase: said in words, in the text and in the cautions", () => {
    const left = differenceOfVectors(
      `40 ± 2 um pp (k=2) ∠ 60 ± 2° (k=2) ${at}`,
      `40.2 ± 2 um pp (k=2) ∠ 60 ± 2° (k=2) ${at}`,
    );
    expect(left.cautions.join()).toContain("phase not determined");
    expect(formatVector(left)).toContain("∠ not determined at 1x");
    expect(uncertaintyOfVector(left).phase).toBe(null);
    expect(() => parseVector(formatVector(left))).toThrow();
    const more = sumOfVectors(left, `80 um pp ∠ 60 ± 1° ${at}`);
    expect(more.cautions.join()).not.toContain("not determined");
  });

  // a vector of two independent normal parts of one spread has a length by Rayleigh, whose quantile p is
  // s sqrt(-2 ln(1 - p)) (JCGM 101's draws against the closed form; textbook statistics, from memory)
  it("that may be nothing lie between 0 and what 95 % are at most: two equal texts", () => {
    const spread = (2 * 0.25 * 180) / Math.PI / 40;
    const text = `40 ± 0.5 um pp (k=2) ∠ 60 ± ${spread}° (k=2) ${at}`;
    const { amplitude } = uncertaintyOfVector(differenceOfVectors(text, text));
    expect(amplitude.interval[0]).toBe(0);
    expect(amplitude.interval[1]).toBeCloseTo(0.25 * Math.SQRT2 * Math.sqrt(-2 * Math.log(0.05)), 2);
    const wide = "40 ± 2 um pp ∠ 60 ± 3° at 1x of 1480 r/min";
    const none = differenceOfVectors(wide, wide);
    expect(formatVector(none)).toMatch(/^0 um pp, 95 % at most [34]\.\d\d ∠ not determined at 1x of 1480 r\/min$/);
    const { interval, value } = uncertaintyOf(none.amplitude);
    expect(interval[0]).toBeLessThanOrEqual(value);
    const first = uncertaintyOfVector(none, { method: "first order" }).amplitude;
    expect(first.interval[0]).toBe(0);
  });

  it("refuse a phase that was replaced behind a ±", () => {
    const one = parseVector(`40 um pp ∠ 60 ± 2° ${at}`);
    expect(() => formatVector({ ...one, phase: 70 })).toThrow("state another one with its own ±");
    const sum = sumOfVectors(one, `30 ± 1 um pp ∠ 90° ${at}`);
    expect(() => formatVector({ ...sum, phase: 10 })).toThrow("state another one with its own ±");
  });
});
