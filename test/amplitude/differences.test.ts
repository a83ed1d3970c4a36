import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rssDifference, vectorDifference } from "../../src/amplitude/index";
import { explain } from "../../src/entries/explain";
import { format } from "../../src/index";
import { replay } from "./replay";

const size = fc.double({ min: 1e-3, max: 1e3, noNaN: true });

describe("a vector difference", () => {
  // arithmetic: the third side of a triangle; at a right angle by Pythagoras
  it.each([
    [0, "2.00 mil pp"],
    [90, "3.16 mil pp"],
    [180, "4.00 mil pp"],
    [-90, "3.16 mil pp"],
    [450, "3.16 mil pp"],
  ])("of 3 and 1 mil pp at %d degrees is %s", (degrees, expected) => {
    const answer = vectorDifference("3 mil pp", "25.4 um pp", degrees);
    expect(format(answer)).toBe(expected);
    expect(answer.assumed).toEqual(["one-frequency"]);
    expect(explain(answer).text).toContain(`at ${degrees} degrees`);
  });

  it("is the law of cosines, lies between difference and sum, and is told as arithmetic", () => {
    fc.assert(
      fc.property(size, size, fc.integer({ min: -720, max: 720 }), (x, y, degrees) => {
        const answer = vectorDifference(`${x} um pp`, `${y} um pp`, degrees);
        const cosines = Math.sqrt(Math.max(0, x * x + y * y - 2 * x * y * Math.cos((degrees * Math.PI) / 180)));
        expect(Math.abs(answer.value - cosines)).toBeLessThan(1e-6 * (x + y));
        expect(answer.value).toBeGreaterThanOrEqual(Math.abs(x - y) * (1 - 1e-12));
        expect(answer.value).toBeLessThanOrEqual((x + y) * (1 + 1e-12));
        expect(Math.abs((replay(explain(answer).steps).at(-1) as number) - answer.value)).toBeLessThan(1e-6 * (x + y));
      }),
    );
  });

  it.each([
    ["3 mil pp", "1 mil pk", 90, "wrong-detector"],
    ["3 mil pp", "1 mm/s pp", 90, "wrong-quantity"],
    ["3 mil pp at 25 Hz", "1 mil pp at 5 Hz", 90, "out-of-range"],
    ["3 g true pk", "1 g true pk", 90, "not-a-sine"],
    ["3 mil pp", "1 mil pp", Number.NaN, "not-a-number"],
  ])("of %s and %s at %d is refused as %s", (from, off, degrees, code) => {
    expect(() => vectorDifference(from, off, degrees)).toThrow(expect.objectContaining({ code }));
  });

  it("keeps the frequency that one of the two says", () => {
    expect(vectorDifference("3 mil pp", "1 mil pp at 25 Hz", 90).hertz).toBe(25);
  });
});

describe("a difference of squares", () => {
  it("takes off what rss put on", () => {
    fc.assert(
      fc.property(size, size, (x, y) => {
        const whole = `${Math.hypot(x, y)} mm/s rms`;
        expect(Math.abs(rssDifference(whole, `${y} mm/s rms`).value - x)).toBeLessThan(1e-6 * (x + y));
      }),
    );
    expect(format(rssDifference("5 mm/s rms", "3 mm/s rms"))).toBe("4.00 mm/s rms");
    expect(rssDifference("5 mm/s rms", "5 mm/s rms").value).toBe(0);
    expect(replay(explain(rssDifference("5 mm/s rms", "3 mm/s rms")).steps).at(-1)).toBe(4);
  });

  it.each([
    ["3 mm/s pk", "1 mm/s pk", "wrong-detector"],
    ["3 mm/s rms", "4 mm/s rms", "out-of-range"],
    ["3 mm/s rms", "1 um rms", "wrong-quantity"],
  ])("of %s and %s is refused as %s", (from, off, code) => {
    expect(() => rssDifference(from, off)).toThrow(expect.objectContaining({ code }));
  });
});
