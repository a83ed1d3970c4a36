import { describe, expect, it } from "vitest";
import { pointFrequencies } from "../../src/cli/input/point-frequencies";
import { codeAndExpectedOf } from "../refusals/refusal-of";
import { veladis } from "./in-process";

const of = (heading: string, decimalComma = false) =>
  pointFrequencies([heading.replace(/ [[(].*/, "").toLowerCase()], [heading], decimalComma);
const hertz = (heading: string, cell: string, known = "8 mm/s rms") => {
  const placed = of(heading)?.place(cell, known);
  return placed !== undefined && "known" in placed ? placed.known.hertz : placed?.what;
};

describe("frequencies of check points", () => {
  // 60 r/min are 1 Hz
  it.each([
    ["frequency (Hz)", "40", 40],
    ["Speed [r/min]", "2400", 40],
    ["frequency", "0.1592 kHz", 159.2],
    ["speed (r/min)", "40 Hz", 40],
  ])("under %j, %j is %j Hz", (heading, cell, found) => {
    expect(hertz(heading, cell)).toBeCloseTo(found, 9);
  });

  it("without a unit are refused, as a factor of 60 lies between", () => {
    expect(hertz("frequency", "40")).toMatch(/40/);
    expect(hertz("speed (r/min)", "fast")).toMatch(/fast/);
  });

  it("hold against the one that a level says of itself", () => {
    expect(hertz("frequency (Hz)", "40", "8 mm/s rms at 2400 r/min")).toBe(40);
    expect(hertz("frequency (Hz)", "50", "8 mm/s rms at 2400 r/min")).toMatch(/beside a level at 40 Hz/);
  });

  it("are one column", () => {
    expect(of("point")).toBeUndefined();
    const both = ["frequency (Hz)", "speed (r/min)"];
    expect(codeAndExpectedOf(() => pointFrequencies(["frequency", "speed"], both, false))).toMatch(
      /^out-of-range: one column/,
    );
  });

  it("with decimal commas are read by them", () => {
    expect(of("frequency (Hz)", true)?.place("159,2", "8 mm/s rms")).toMatchObject({ known: { hertz: 159.2 } });
  });

  it("make of a file in mixed units what each level should show", async () => {
    const csv =
      "point,known,indicated,frequency (Hz)\nlow,4 mm/s rms,3.9 mm/s rms,40\nhigh,1 g pk,0.37 in/s pk,159.154943\n";
    const { out } = await veladis(["check", "--file", "-", "--tolerance", "5 %"], csv);
    // a sine of 9.80665 m/s2 at 1000 rad/s is 9.80665 mm/s, 0.38609 in/s
    expect(out).toMatch(/high .* 0\.386 in\/s pk/);
    expect(out).toMatch(/shown 0\.370 in\/s pk/);
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(100);
  });
});
