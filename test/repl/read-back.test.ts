/**
 * What the calculator and the library write of a reading, they read back whole: random amplitudes with all that one can
 * say of itself. The arithmetic of decibels is held against mathjs.
 */
import fc from "fast-check";
import { evaluate } from "mathjs";
import { type Amplitude, parseAmplitude, readingText } from "veladis";
import { assumptions } from "veladis/facts";
import { describe, expect, it } from "vitest";
import { amplitudeIn, amplitudeOf, loopStates } from "../../src/reading/index";
import { evaluateLine } from "../../src/repl/index";
import { valueText } from "../../src/repl/value";

const types = [
  ...["mm/s rms", "in/s pk", "um pp", "mil pp", "g rms", "m/s2 avg", "g true pk", "m rms"],
  ...["dB re 1e-9 m/s", "dB re 1e-6 m/s2", "dB re FTA velocity", "dB re ISO 1683 displacement"],
];

const amplitude = fc
  .record({
    type: fc.constantFrom(...types),
    exponent: fc.double({ min: -9, max: 9, noNaN: true }),
    hertz: fc.option(
      fc.double({ min: -2, max: 5, noNaN: true }).map((power) => 10 ** power),
      { nil: undefined },
    ),
    crestFactor: fc.option(fc.double({ min: 1, max: 20, noNaN: true }), { nil: undefined }),
    assumed: fc.subarray(Object.keys(assumptions) as (keyof typeof assumptions)[]),
    state: fc.constantFrom(undefined, ...loopStates),
  })
  .map(({ type, exponent, hertz, crestFactor, assumed, state }): Amplitude => {
    const reading = amplitudeIn(type, 10 ** exponent, hertz);
    const value = reading.level?.decibels ?? reading.value;
    const step = {
      does: "given",
      value,
      type: reading.level === undefined ? type : `dB re ${reading.level.re}`,
      assumed,
    };
    return {
      ...reading,
      ...(crestFactor !== undefined && { crestFactor }),
      ...(state !== undefined && { state }),
      ...(assumed.length > 0 && { assumed, history: [step] as never }),
    };
  });

function expectSame(back: Amplitude, reading: Amplitude, digits = 3): void {
  expect([back.unit, back.detector, back.quantity]).toEqual([reading.unit, reading.detector, reading.quantity]);
  const bound = reading.level === undefined ? 0.51 * 10 ** (1 - digits) : (0.051 * Math.LN10) / 20;
  expect(Math.abs(back.value / reading.value - 1)).toBeLessThan(bound);
  expect(back.level?.re).toBe(reading.level?.re);
  if (reading.hertz === undefined) expect(back.hertz).toBeUndefined();
  else expect(Math.abs((back.hertz as number) / reading.hertz - 1)).toBeLessThan(6e-6);
  expect(back.crestFactor).toBe(reading.crestFactor);
  expect(back.assumed ?? []).toEqual(reading.assumed ?? []);
  // a loop in its range is not told of
  expect(back.state ?? "in range").toBe(reading.state ?? "in range");
}

describe("a reading as it is written is read back whole", () => {
  it("by the library", () => {
    fc.assert(
      fc.property(amplitude, fc.integer({ min: 3, max: 12 }), (reading, digits) => {
        const text = readingText(reading, { digits });
        const back = parseAmplitude(text);
        expectSame(back, reading, digits);
        // the frequency stands twice, and only one of the two is kept to its last digit: it is held above
        const less = (written: string) => written.replace(/ at \S+ Hz \([^()]* r\/min\)/, "");
        expect(less(readingText(back, { digits }))).toBe(less(text));
        expectSame(amplitudeOf(JSON.parse(JSON.stringify(back)) as Amplitude), reading, digits);
      }),
      { numRuns: 1000 },
    );
  });

  it("by the calculator, alone and within an expression", async () => {
    await fc.assert(
      fc.asyncProperty(amplitude, async (reading) => {
        const text = valueText(reading);
        expectSame((await evaluateLine(text)).value as Amplitude, reading);
        expectSame((await evaluateLine(`back = ${text}`)).value as Amplitude, reading);
        // a line has at most 500 characters
        for (const within of [`[${text}, +(${text})]`, `[max(${text})]`].filter(({ length }) => length <= 500)) {
          for (const one of (await evaluateLine(within)).value as Amplitude[]) expectSame(one, reading);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe("a number of dB is a ratio of 10^(dB/20), by mathjs", () => {
  it("beside a reading, and between two levels", async () => {
    const decibels = fc.double({ min: -80, max: 80, noNaN: true }).map((x) => Number(x.toPrecision(5)));
    const level = fc.double({ min: 20, max: 180, noNaN: true }).map((x) => Number(x.toPrecision(5)));
    await fc.assert(
      fc.asyncProperty(decibels, level, level, async (x, one, other) => {
        const raised = (await evaluateLine(`4.5 mm/s rms + (${x} dB)`)).value as Amplitude;
        expect(raised.value).toBeCloseTo(evaluate(`4.5 * 10^(${x} / 20)`), 9);
        const lowered = (await evaluateLine(`${one} dB re 1e-9 m/s - (${x} dB)`)).value as Amplitude;
        expect(lowered.level?.decibels).toBeCloseTo(one - x, 9);
        expect(lowered.value / evaluate(`1e-9 * 10^((${one} - ${x}) / 20)`)).toBeCloseTo(1, 9);
        const { value } = await evaluateLine(`${one} dB re 1e-9 m/s - ${other} dB re 1 nm/s`);
        const ratio = evaluate(`10^(${one} / 20) / 10^(${other} / 20)`);
        expect((value as { decibels: number }).decibels).toBeCloseTo(evaluate(`20 * log10(${ratio})`), 9);
      }),
      { numRuns: 200 },
    );
  });
});
