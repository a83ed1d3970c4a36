import { describe, expect, it } from "vitest";
import { pairOf } from "../../src/amplitude/pair";
import { exactFactors } from "../references/exact-factors";

describe("factors across quantities", () => {
  it.each(exactFactors)("%s to %s at %d Hz is the nearest double", (from, to, hertz, factor) => {
    const { sine } = pairOf(from, to);
    expect(sine(hertz)).toEqual({ num: Number(factor), den: 1 });
    // asked again, after another one
    const other = sine(hertz * 1.5);
    expect(sine(hertz)).toEqual({ num: Number(factor), den: 1 });
    expect(sine(hertz * 1.5)).toEqual(other);
  });

  // the rectified average of a sine is 2/pi of its peak: by hand 2 pi f times 2/pi
  it("are those of 1 Hz before any other was asked for, also where pi cancels", () => {
    expect(pairOf("m pk", "m/s avg").sine(1)).toEqual({ num: 4, den: 1 });
    expect(pairOf("m/s avg", "m pk").sine(1)).toEqual({ num: 0.25, den: 1 });
  });

  it("are asked for once as long as the frequency stays", () => {
    const { sine } = pairOf("m/s pk", "mm pp");
    expect(sine(25)).toBe(sine(25));
    expect(sine(25)).not.toBe(sine(50));
  });

  it("keep an exact ratio exact, whatever the frequency", () => {
    const { sine } = pairOf("in/s pk", "mm/s pk");
    expect(sine(25)).toEqual({ num: 127, den: 5 });
    expect(sine(50)).toBe(sine(25));
    expect(pairOf("in/s pk", "mm/s rms").sine(25).den).toBe(1);
    expect(pairOf("in/s pk", "mm/s avg").sine(25).den).toBe(1);
  });

  it("have no rest beyond 1e300, and stay what they are", () => {
    expect(pairOf("m pk", "m/s2 pk").sine(1e152).num / (4 * Math.PI ** 2 * 1e304)).toBeCloseTo(1, 14);
    expect(pairOf("m pk", "m/s2 pk").sine(1e160).num).toBe(Number.POSITIVE_INFINITY);
  });
});
