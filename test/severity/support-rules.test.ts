import { classify, judge, judgePoints, supportRule, unknownSupportRule } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { veladis } from "../cli/in-process";

const fan = "fan 400 kW 1485 r/min";
const printed = async (reading: string, machine: string) =>
  (await veladis(["judge", reading, "--machine", machine, "--full"])).out.replace(/\s+/g, " ");

// 25 % above excitation: ISO 10816-3 as a motor maker's manual quotes it; unknown is rigid: Lloyd's Register guidance 7, 2.5
describe("the rule that gave a machine its support", () => {
  it("is cited where the support was computed from a natural frequency", async () => {
    expect(judge("3 mm/s rms", `${fan} natural 20 Hz`).supportRule).toEqual(supportRule);
    expect(judge("3 mm/s rms", `${fan} natural 40 Hz`).supportRule).toEqual(supportRule);
    const text = await printed("3 mm/s rms", `${fan} natural 40 Hz`);
    expect(text).toMatch(/support: rigid in a direction where .* ISO 10816-3, support flexibility.*\(quoted\)/);
  });

  it("is cited where nobody stated the support", async () => {
    expect(judge("3 mm/s rms", fan).supportRule).toEqual(unknownSupportRule);
    const scheme = "iso-20816-3-2022";
    expect(classify("3 mm/s rms", { scheme, machine: fan, assume: "lowest limits" }).supportRule?.text).toMatch(
      /judged by the limits for a rigid one/,
    );
    expect(await printed("3 mm/s rms", fan)).toMatch(/support: a support that cannot be classified.*\(quoted\)/);
    // rigid over one part of the speeds and flexible over the other: not known
    expect(judge("3 mm/s rms", "fan 400 kW 900 to 1500 r/min natural 25 Hz").supportRule).toEqual(unknownSupportRule);
  });

  it("is left out where the support was stated, or plays no part", async () => {
    for (const machine of [`${fan} rigid`, `${fan} flexible`, "pump 90 kW 2980 r/min category II natural 65 Hz"])
      expect(judge("3 mm/s rms", machine), machine).not.toHaveProperty("supportRule");
    expect(await printed("3 mm/s rms", `${fan} rigid`)).not.toMatch(/support: /);
  });
});

describe("one support for points of several directions", () => {
  const warned = (points: string, machine: string) => judgePoints(points, machine).cautions;

  it("is cautioned of, stated or computed", async () => {
    for (const one of ["natural 20 Hz", "flexible", "rigid"])
      expect(warned("DE-H 3.1, DE-V 2.2 mm/s rms", `${fan} ${one}`), one).toEqual([
        expect.stringMatching(/the support may differ by direction: tell it by direction, as in rigid horizontally/),
      ]);
    expect(await printed("DE-H 3.1, DE-V 2.2 mm/s rms", `${fan} natural 20 Hz`)).toMatch(/may differ by direction/);
  });

  it("is not where one direction was read, the support was taken for rigid or plays no part", () => {
    expect(warned("DE-H 3.1, NDE-H 2.2 mm/s rms", `${fan} flexible`)).toEqual([]);
    expect(warned("DE-H 3.1, DE-V 2.2 mm/s rms", fan)).toEqual([]);
    expect(warned("DE-H 3.1, DE-V 2.2 mm/s rms", "pump 90 kW 2980 r/min category II rigid")).toEqual([]);
  });
});
