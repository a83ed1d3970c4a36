/**
 * Phases against waveforms: x(t) = A cos(wt - lag), differentiated by hand and by central differences, read back by a sum
 * over whole cycles. It shares nothing with the library but the meaning of a lag.
 */
import fc from "fast-check";
import {
  convertVector,
  parseVector,
  shaftAbsolute,
  slowRollCompensated,
  sumOfVectors,
  type Vector,
} from "veladis/vector";
import { describe, expect, it } from "vitest";

const SAMPLES = 4096;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Peak and lag of the sine of the given cycles in a record of one second. */
function read(record: readonly number[], cycles: number): { peak: number; lag: number } {
  let [cosine, sine] = [0, 0];
  for (const [i, x] of record.entries()) {
    const at = (2 * Math.PI * cycles * i) / record.length;
    cosine += (2 / record.length) * x * Math.cos(at);
    sine += (2 / record.length) * x * Math.sin(at);
  }
  return { peak: Math.hypot(cosine, sine), lag: ((Math.atan2(sine, cosine) * 180) / Math.PI + 360) % 360 };
}

/** One second of a peak and a lag, at so many cycles. */
const record = (peak: number, lag: number, cycles: number): number[] =>
  Array.from({ length: SAMPLES }, (_, i) => peak * Math.cos((2 * Math.PI * cycles * i) / SAMPLES - radians(lag)));

/** The derivative of a periodic record by central differences, mended by their known gain at the frequency. */
function derivative(of: readonly number[], cycles: number): number[] {
  const step = (2 * Math.PI * cycles) / SAMPLES;
  const gain = step / Math.sin(step);
  return of.map((_, i) => (((of[(i + 1) % SAMPLES] as number) - (of.at(i - 1) as number)) / 2) * SAMPLES * gain);
}

function expectSame({ amplitude, phase }: Vector, { peak, lag }: { peak: number; lag: number }): void {
  expect(Math.abs(amplitude.value - peak)).toBeLessThan(1e-9 * peak);
  const apart = Math.abs(phase - lag) % 360;
  expect(Math.min(apart, 360 - apart)).toBeLessThan(1e-6);
}

const lag = fc.double({ min: 0, max: 359.99, noNaN: true });
const peak = fc.double({ min: 0.1, max: 100, noNaN: true });
const turns = fc.integer({ min: 5, max: 100 });

describe("phases of waveforms", () => {
  it("velocity leads displacement by 90 degrees and acceleration by 180, there and back", () => {
    fc.assert(
      fc.property(peak, lag, turns, (size, late, cycles) => {
        const displacement = record(size / 1000, late, cycles);
        const velocity = derivative(displacement, cycles);
        const acceleration = derivative(velocity, cycles);
        const vector = parseVector(`${size} mm pk ∠ ${late}° at 1x of ${cycles} Hz`);
        expectSame(convertVector(vector, "m/s pk"), read(velocity, cycles));
        expectSame(convertVector(vector, "m/s2 pk"), read(acceleration, cycles));
        expectSame(convertVector(convertVector(vector, "g rms"), "mm pk"), { peak: size, lag: late });
        expectSame(convertVector(convertVector(vector, "m/s pp"), "mm pk"), { peak: size, lag: late });
      }),
      { numRuns: 30 },
    );
  });

  it("a sum of vectors is what the sum of the waves reads", () => {
    fc.assert(
      fc.property(peak, lag, peak, lag, turns, (a, p, b, q, cycles) => {
        const [one, other] = [record(a, p, cycles), record(b, q, cycles)];
        const whole = read(
          one.map((x, i) => x + (other[i] as number)),
          cycles,
        );
        fc.pre(whole.peak > 1e-3 * (a + b));
        const [v, w] = [`${a} um pk ∠ ${p}° at 1x of ${cycles} Hz`, `${b} um pk ∠ ${q}° at 1x of ${cycles} Hz`];
        expectSame(sumOfVectors(v, w), whole);
      }),
      { numRuns: 30 },
    );
  });

  it("shaft absolute from a casing in velocity or acceleration is what the sum of the displacements reads", () => {
    fc.assert(
      fc.property(peak, lag, peak, lag, turns, (a, p, b, q, cycles) => {
        const [relative, casing] = [record(a / 1000, p, cycles), record(b / 1000, q, cycles)];
        const whole = read(
          relative.map((x, i) => 1000 * (x + (casing[i] as number))),
          cycles,
        );
        fc.pre(whole.peak > 1e-3 * (a + b));
        const speed = `1x of ${cycles} Hz`;
        const shaft = `${a} mm pk ∠ ${p}° at ${speed}`;
        const velocity = derivative(casing, cycles);
        const moved = [
          [velocity, "m/s pk"],
          [derivative(velocity, cycles), "m/s2 pk"],
        ] as const;
        for (const [wave, type] of moved) {
          const seen = read(wave, cycles);
          expectSame(shaftAbsolute(shaft, `${seen.peak} ${type} ∠ ${seen.lag % 360}° at ${speed}`), whole);
        }
      }),
      { numRuns: 30 },
    );
  });

  it("slow roll taken off a wave with run-out leaves the vibration", () => {
    fc.assert(
      fc.property(peak, lag, peak, lag, (a, p, b, q) => {
        const cycles = 90;
        const runOut = record(b, q, cycles);
        const seen = read(
          record(a, p, cycles).map((x, i) => x + (runOut[i] as number)),
          cycles,
        );
        fc.pre(seen.peak > 1e-3 * (a + b) && a > 1e-3 * b);
        // the surface is the same at any speed: the slow roll has the run-out's size and lag in its own turn
        const answer = slowRollCompensated(
          `${seen.peak} um pk ∠ ${seen.lag % 360}° at 1x of 5400 r/min`,
          `${b} um pk ∠ ${q}° at 1x of 300 r/min`,
        );
        expectSame(answer, { peak: a, lag: p });
      }),
      { numRuns: 30 },
    );
  });
});
