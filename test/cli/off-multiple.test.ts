import { describe, expect, it } from "vitest";
import { offMultiple, offNote } from "../../src/cli/record/off-multiple";

// arithmetic: 24.89 / 24.67 = 1.0089, 72.73 / 74 = 0.9828
describe("how far a line lies from its multiple", () => {
  it.each([
    [24.89, 24.67, "+0.9"],
    [72.73, 74, "-1.7"],
    [48, 48, "0"],
    [48.001, 48, "0"],
    [undefined, 48, ""],
  ])("%s Hz at %s Hz: %j", (found, expected, text) => {
    expect(offMultiple(found, expected)).toBe(text);
  });

  it("is explained where a line is off, and only there", () => {
    expect(offNote([["1x", "48.00", "48.00", "0", "2.1"]])).toBe("");
    expect(offNote([["1x", "48.00", "47.50", "-1.0", "2.1"]])).toMatch(/within 2 % of the multiple/);
  });
});
