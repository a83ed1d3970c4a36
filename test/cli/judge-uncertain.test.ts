import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const machine = ["--machine", "pump 90 kW 2980 r/min category II"];
const judge = (reading: string, ...rest: string[]) => veladis(["judge", reading, ...machine, ...rest]);

describe("judge of a reading with ±", () => {
  it("prints the verdict by guard band first, then interval, zones and probabilities", async () => {
    const { out } = await judge("4.9 ± 0.3 mm/s rms (k=2)");
    const [headline, , within, likely, decided] = out.split("\n");
    expect(headline).toBe(
      "4.9 ± 0.3 mm/s rms (k=2): zone C, by guard band, unsatisfactory for long-term operation: plan remedial action",
    );
    expect(within).toBe("within      4.60 to 5.20 mm/s rms (U = 0.300, k = 2, first order): B, C");
    expect(likely).toBe("likely      A below 0.1 %, B 91 %, C 9.1 %, D below 0.1 %");
    expect(decided).toMatch(/^decided {5}by guard band: .*; by simple acceptance zone B$/);
    expect(out).not.toContain("zonesWithin");
  });

  it("takes the uncertainty of an option, and the other rule", async () => {
    const stated = await judge("4.9 ± 6 % mm/s rms (k=2)");
    const option = await judge("4.9 mm/s rms", "--uncertainty", "6 % (k=2)");
    expect(option.out.split("\n").slice(2)).toEqual(stated.out.split("\n").slice(2));
    const simple = await judge(
      "4.9 mm/s rms at 25 ± 0.5 Hz",
      "--uncertainty",
      "± 6 % (k=2)",
      "--rule",
      "simple acceptance",
    );
    expect(simple.out).toMatch(/: zone B,/);
    expect(simple.out).toContain("by simple acceptance: the zone of the best value");
  });

  it("says why there are no probabilities", async () => {
    const { out } = await judge("0.27 in/s pk ± 6 % (k=2)");
    expect(out.replace(/\s+/g, " ")).toContain(
      "likely not given: a probability would be false precision: how far off what was assumed may be is not known (sine)",
    );
  });

  it("as data: zone, headline and possible zones are those of the rule, so that a script is on the safe side", async () => {
    const { out } = await judge("4.9 ± 0.3 mm/s rms (k=2)", "--json");
    const { zone, headline, possible, worst, text, within } = JSON.parse(out);
    expect({ zone, headline, possible, worst, text }).toEqual({
      ...{ zone: "C", headline: "zone C", possible: ["B", "C"], worst: "C" },
      text: "4.90 mm/s rms: zone C",
    });
    expect(within.bestValue).toEqual({ zone: "B", headline: "zone B" });
    expect(within.probabilities.C).toBeCloseTo(0.091, 3);
  });

  it("lines are read with ± and without", async () => {
    const { out } = await veladis(["judge", ...machine], "4.9 ± 0.3 mm/s rms (k=2)\n4.9 mm/s rms\n");
    const [uncertain, plain] = out.split("\n");
    expect(uncertain).toContain("zone C, ");
    expect(uncertain).toContain("; by guard band; within 4.60 to 5.20 mm/s rms: B, C; likely ");
    expect(plain).toMatch(/^4.9 mm\/s rms: zone B, /);
  });
});

describe("cells with ± of files", () => {
  it.each([
    ["value\n4.9 ± 0.3 mm/s rms\n", []],
    ["value\n4.9 ± 0.3\n", ["--from", "mm/s rms"]],
  ])("%j is refused, not read without it", async (file, options) => {
    const { out, err, code } = await veladis(["table", "--column", "value", ...machine, ...options], file);
    expect(out.trim().split("\n")).toHaveLength(1);
    expect(err).toMatch(/line 2: (syntax|not-a-number)/);
    expect(code).toBe(2);
  });
});
