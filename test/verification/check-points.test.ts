import { checkPoints } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { codeAndExpectedOf } from "../refusals/refusal-of";

// at 1000 rad/s 10 m/s2 are 10 mm/s and 10 um: practice of calibration, from memory; the relation of a sine
const hertz = "159.154943 Hz";

describe("checks at several points", () => {
  it("should show the known level in what the device shows, each at its own frequency", () => {
    const { points } = checkPoints(
      [
        { known: `10 m/s2 pk at ${hertz}`, indicated: "9.9 mm/s pk" },
        { known: `10 mm/s pk at ${hertz}`, indicated: "20 um pp" },
        { known: "1 in/s pk at 40 Hz", indicated: "25 mm/s pk" },
      ],
      { tolerance: "5 %" },
    );
    expect(points.map(({ expected }) => [Number(expected?.value.toFixed(6)), expected?.unit])).toEqual([
      [10, "mm/s"],
      [20, "um"],
      [25.4, "mm/s"],
    ]);
    expect(points.map(({ errorPercent }) => errorPercent.toFixed(2))).toEqual(["-1.00", "-0.00", "-1.57"]);
  });

  it("decide by guard band as ILAC-G8:09/2019 does, and the worst decides", () => {
    // its section 4.2.3 with a tolerance of 10 and U of 1: up to 9 pass, up to 11 undecided, beyond fail
    const rows = [108.9, 109.5, 111.5].map((shown) => ({ known: "100 mm/s rms", indicated: `${shown} mm/s rms` }));
    const rest = { tolerance: "10 %", uncertainty: "1 % (k=2)" } as const;
    const { points, worst, verdict } = checkPoints(rows, rest);
    expect(points.map((one) => one.verdict)).toEqual(["pass", "undecided", "fail"]);
    expect([worst.point, verdict]).toEqual(["3", "fail"]);
    expect(checkPoints(rows.slice(0, 2), rest).verdict).toBe("undecided");
  });

  it("the worst is the largest share of its own tolerance, not the largest error", () => {
    const { worst } = checkPoints(
      [
        { point: "large", known: "20 mm/s rms", indicated: "20.9 mm/s rms" },
        { point: "small", known: "2 mm/s rms", indicated: "2.5 mm/s rms" },
      ],
      { tolerance: "1 mm/s rms" },
    );
    expect(worst.point).toBe("large");
  });

  it("are refused by their place", () => {
    expect(codeAndExpectedOf(() => checkPoints([], { tolerance: "5 %" }))).toMatch(/^missing-option/);
    expect(
      codeAndExpectedOf(() => checkPoints([{ known: "0 mm/s rms", indicated: "1 mm/s rms" }], { tolerance: "5 %" })),
    ).toMatch(/^not-positive/);
  });
});
