import { fromJson } from "veladis/json";
import { judge } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { veladis } from "../cli/in-process";

describe("what --json prints is read back", () => {
  it("a verdict, also one of zero, with what is told beside it", async () => {
    for (const reading of ["3.81 mm/s rms", "0 mm/s rms"]) {
      const machine = "pump 90 kW 2980 r/min category II rigid";
      const { out } = await veladis(["judge", reading, "--machine", machine, "--explain", "--json"]);
      const { written, text, explained, ...verdict } = fromJson("verdict", out) as ReturnType<typeof judge> &
        Record<"written" | "text" | "explained", unknown>;
      expect(verdict).toEqual(judge(reading, machine));
      expect([written, typeof text, Array.isArray(explained)]).toEqual([reading, "string", true]);
    }
  });

  it("a conversion, with the reading it came from", async () => {
    const { out } = await veladis(["0.25 in/s pk to mm/s rms", "--json"]);
    const conversion = fromJson("conversion", out);
    expect(conversion.value).toBeCloseTo((0.25 * 25.4) / Math.SQRT2, 12);
    expect(conversion.from.unit).toBe("in/s");
  });
});
