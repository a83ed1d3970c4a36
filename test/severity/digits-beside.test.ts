import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { significant } from "../../src/reading/index";
import { digitsBeside } from "../../src/severity/index";

describe("digits beside a limit", () => {
  it.each([
    [4.4999, "4.4999"],
    [4.499, "4.499"],
    [4.49, "4.49"],
    [4.5, "4.50"],
    [4.5001, "4.5001"],
    [4.5 * (1 + 1e-9), "4.50"],
    [7.0996, "7.0996"],
    [3.2, "3.20"],
  ])("%d beside limits of 2.3, 4.5 and 7.1 reads %s", (value, text) => {
    expect(significant(value, digitsBeside(value, [2.3, 4.5, 7.1]))).toBe(text);
  });

  it("never reads as the limit, nor as beyond it", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: -1e-2, max: 1e-2, noNaN: true }),
        (limit, away) => {
          fc.pre(Math.abs(away) > 1e-6);
          const value = limit * (1 + away);
          const digits = digitsBeside(value, [limit]);
          const [read, bound] = [value, limit].map((one) => Number(significant(one, digits))) as [number, number];
          expect(Math.sign(read - bound)).toBe(Math.sign(away));
        },
      ),
    );
  });
});
