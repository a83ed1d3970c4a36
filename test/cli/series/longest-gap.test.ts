import { describe, expect, it } from "vitest";
import { longestGap } from "../../../src/cli/input/longest-gap";
import { veladis } from "../in-process";

const setpoints = ["setpoints", "--file", "-", "--from", "mm/s rms", "--scheme", "none", "--time", "1"];
const csv = (...times: number[]): string =>
  `t,level\n${times.map((time, i) => `${time},${2 + (i % 3) / 10}\n`).join("")}`;

describe("the longest gap between readings of a baseline", () => {
  it("is told beyond ten times the median step, with the rule", async () => {
    const { err, code } = await veladis(setpoints, csv(0, 10, 20, 30, 131, 141));
    expect(code).toBe(0);
    expect(err).toContain("longest gap: 101 s behind 30 s, longer than 10 times the median step of 10 s");
    expect((await veladis(setpoints, csv(0, 10, 20, 30, 130, 140))).err).not.toContain("gap");
  });

  it("in JSON and on a sheet", async () => {
    const gapped = csv(0, 10, 20, 30, 500);
    const { out } = await veladis([...setpoints, "--json"], gapped);
    expect(JSON.parse(out).read.longestGap).toMatchObject({ seconds: 470, from: 30, medianStep: 10 });
    expect((await veladis([...setpoints, "--sheet", "markdown"], gapped)).out).toContain("longest gap: 470 s");
  });

  it("of an even number of steps the median is the mean of both in the middle", () => {
    expect(longestGap(Float64Array.of(0, 1, 4, 44, 44))).toMatchObject({ medianStep: 2, seconds: 40 });
    expect(longestGap(Float64Array.of(0, 1, 4, 24, 24))).toBeUndefined();
    expect(longestGap(Float64Array.of(0))).toBeUndefined();
    expect(longestGap(new Float64Array(0))).toBeUndefined();
  });
});
