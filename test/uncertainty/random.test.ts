import { describe, expect, it } from "vitest";
import { normalNumbers, uniformNumbers } from "../../src/uncertainty/random";

/** JCGM 101:2008, table C.1, from memory: a(j), b(j), c(j), d(j). */
const constants = [
  [11600n, 185127n, 10379n, 2147483579n],
  [47003n, 45688n, 10479n, 2147483543n],
  [23000n, 93368n, 19423n, 2147483423n],
  [33000n, 65075n, 8123n, 2147483123n],
] as const;

/** One step of JCGM 101:2008, C.3.2, as it is written there, in parts that fit 32 bits: a = b c + ..., by whole numbers. */
function* whole(states: readonly bigint[]): Generator<number> {
  let state = [...states];
  for (;;) {
    state = state.map((one, j) => {
      const [a, b, c, d] = constants[j] as (typeof constants)[number];
      const next = a * (one % b) - c * (one / b);
      return next < 0n ? next + d : next;
    });
    const sum = state.reduce((all, one, j) => all + Number(one) / Number((constants[j] as readonly bigint[])[3]), 0);
    yield sum - Math.floor(sum);
  }
}

/** The starting values that a seed stands for, and eight steps that are thrown away. */
function independent(seed: bigint): Generator<number> {
  const numbers = whole(constants.map(([, , , d], i) => 1n + ((seed * BigInt(i + 1) * 7919n) % (d - 1n))));
  for (let i = 0; i < 8; i++) numbers.next();
  return numbers;
}

const COUNT = 400_000;

describe("the generator of JCGM 101:2008, C.3", () => {
  it("has multipliers with b = d div a and c = d mod a, which is why its steps fit 32 bits", () => {
    for (const [a, b, c, d] of constants) {
      expect(b).toBe(d / a);
      expect(c).toBe(d % a);
    }
  });

  it.each([1n, 2n, 17n, 2_147_483_648n])("gives the numbers that whole numbers give, seed %s", (seed) => {
    const next = uniformNumbers(Number(seed));
    const numbers = independent(seed);
    for (let i = 0; i < 2000; i++) expect(next()).toBe(numbers.next().value);
  });

  it("has the mean, the variance and the serial correlation of a rectangle", () => {
    const next = uniformNumbers(1);
    const numbers = Array.from({ length: COUNT }, next);
    const mean = numbers.reduce((sum, one) => sum + one, 0) / COUNT;
    const variance = numbers.reduce((sum, one) => sum + (one - 0.5) ** 2, 0) / COUNT;
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / COUNT));
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / COUNT));
    for (const lag of [1, 2, 3, 8]) {
      const pairs = numbers.slice(lag).reduce((sum, one, i) => sum + (one - 0.5) * ((numbers[i] as number) - 0.5), 0);
      expect(Math.abs((12 * pairs) / COUNT)).toBeLessThan(4 / Math.sqrt(COUNT));
    }
    expect(Math.min(...numbers.slice(0, 100_000))).toBeGreaterThanOrEqual(0);
    expect(Math.max(...numbers.slice(0, 100_000))).toBeLessThan(1);
  });

  it("starts apart for neighbouring seeds", () => {
    const [one, two] = [uniformNumbers(1), uniformNumbers(2)];
    const products = Array.from({ length: 10_000 }, () => (one() - 0.5) * (two() - 0.5));
    expect(Math.abs((12 * products.reduce((a, b) => a + b, 0)) / 10_000)).toBeLessThan(4 / 100);
  });
});

describe("normal numbers", () => {
  it("have the moments and the tails of a bell", () => {
    const next = normalNumbers(uniformNumbers(3));
    const numbers = Array.from({ length: COUNT }, next);
    const moment = (power: number) => numbers.reduce((sum, one) => sum + one ** power, 0) / COUNT;
    // variances of the sample moments of a standard normal: 1, 2, 15, 96
    for (const [power, value, variance] of [
      [1, 0, 1],
      [2, 1, 2],
      [3, 0, 15],
      [4, 3, 96],
    ] as const) {
      expect(Math.abs(moment(power) - value)).toBeLessThan(4 * Math.sqrt(variance / COUNT));
    }
    // two-sided 5 % beyond 1.959964, any table of the normal distribution
    const beyond = numbers.filter((one) => Math.abs(one) > 1.959964).length / COUNT;
    expect(Math.abs(beyond - 0.05)).toBeLessThan(4 * Math.sqrt((0.05 * 0.95) / COUNT));
  });
});
