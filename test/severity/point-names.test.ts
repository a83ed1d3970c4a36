import { judgePoints, parsePoints } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";

/** What stands before a reading must not vanish in the name of its point. Found in a trial; no source. */
describe("the name of a point swallows no reading", () => {
  it.each([
    "DE-H 22 mA of 0 to 3 mm/s rms",
    "DE-H 22 mA of 0 to 3 mm/s rms, DE-V 2 mm/s rms",
    "DE-V 2 mm/s rms, DE-H 22 mA of 0 to 3 mm/s rms",
    "DE-H in/s 3 mm/s rms",
    "DE-H mm/s rms 3 mm/s pk",
    "DE-H rms 3 mm/s pk",
    "DE-H > 3.0 mm/s rms",
    "DE-H < 3.0 mm/s rms",
    "DE-H ~ 3.0 mm/s rms",
    "DE-H OL 3.0 mm/s rms",
    "DE-H fault 3.0 mm/s rms",
    "DE-H NaN 3.0 mm/s rms",
    "DE-H at least 3.0 mm/s rms",
    "DE-H over 3.0 mm/s rms",
    "DE-H 9 was 3.0 mm/s rms",
    "DE-H 9 to 3 mm/s rms",
    "DE-H 9 - 3 mm/s rms",
    "DE-H 9 – 3 mm/s rms",
    "DE-H 10 mm/s: 3 mm/s rms",
    "DE-H 4 mA 3 mm/s rms",
    "DE-H 4mA 3 mm/s rms",
    "DE-H 400 mV 3 mm/s rms",
    "DE-H 50 % 3 mm/s rms",
    "DE-H 9 mm/s rms of 3 mm/s rms",
    "DE-H 1 g 3 mm/s rms",
    "DE-H 9 then 3 mm/s rms",
    "DE-H 9 4 3 mm/s rms",
  ])("%s", (text) => {
    const { code } = refusalOf(() => parsePoints(text));
    expect(code).toBe("syntax");
    expect(() => judgePoints(text, "pump 90 kW 2980 r/min category II")).toThrow();
  });

  it.each([
    ["bearing 3 2.2 mm/s rms", "bearing 3"],
    ["P-101A DE-H 2.2 mm/s rms", "P-101A DE-H"],
    ["motor 2 NDE-V: 2.2 mm/s rms", "motor 2 NDE-V"],
    ["unit 2 bearing 4 H 2.2 mm/s rms", "unit 2 bearing 4 H"],
    ["pump 1 drive end horizontal = 2.2 mm/s rms", "pump 1 drive end horizontal"],
    ["bearing 2 V 2.2 mm/s rms", "bearing 2 V"],
    ["bearing 1 (DE) 2.2 mm/s rms", "bearing 1 (DE)"],
    ["Lager 2 2.2 mm/s rms", "Lager 2"],
    ["gear g 2.2 mm/s rms", "gear g"],
  ])("but a number may be part of a name: %s", (text, name) => {
    expect(parsePoints(text)[0]?.point).toBe(name);
  });
});
