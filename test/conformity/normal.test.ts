import { erf } from "mathjs";
import { describe, expect, it } from "vitest";
import { normalBelow } from "../../src/conformity/normal-below";

describe("the share of a normal distribution below a number", () => {
  it("is that of mathjs' error function", () => {
    for (let z = -8; z <= 8; z += 0.037) {
      expect(Math.abs(normalBelow(z) - (1 + erf(z / Math.SQRT2)) / 2), `${z}`).toBeLessThan(4e-15);
    }
  });

  // Handbook of Mathematical Functions (Abramowitz and Stegun), table 26.1; from memory
  it.each([
    [0, 0.5],
    [1, 0.841344746],
    [1.96, 0.975002105],
    [2, 0.977249868],
    [3, 0.998650102],
    [-1.96, 0.024997895],
  ])("Phi(%d) as printed", (z, printed) => {
    expect(normalBelow(z)).toBeCloseTo(printed, 9);
  });

  it("ends at 0 and 1", () => {
    expect([normalBelow(-40), normalBelow(40), normalBelow(Number.POSITIVE_INFINITY)]).toEqual([0, 1, 1]);
  });
});
