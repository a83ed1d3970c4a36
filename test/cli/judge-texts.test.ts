import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

describe("schemes --machine", () => {
  it.each(["pump 90 kW", "motor", "fan 90 kW 1480 r/min rigid, in service", "Francis turbine", "screw compressor"])(
    "%s: within 100 columns, with all that is asked and assumed",
    async (machine) => {
      const args = ["schemes", "--machine", machine, "--all"];
      const { out } = await veladis(args);
      expect(out.split("\n").filter((line) => line.length > 100)).toEqual([]);
      const flat = out.replace(/\s+/g, " ");
      const rows = (await veladis([...args, "--json"])).out.trimEnd().split("\n");
      for (const { status, missing = [], scheme } of rows.map((row) => JSON.parse(row))) {
        const asked = missing.map(({ fact }: { fact: string }) => fact).join(", ");
        if (status === "asks") expect(flat, scheme).toContain(`asks ${asked}`);
      }
    },
  );

  it("long texts stand below the table, by scheme", async () => {
    const { out } = await veladis(["schemes", "--machine", "pump 90 kW"]);
    expect(out).toMatch(/^ {3}api-610 .* see below$/m);
    expect(out.replace(/\s+/g, " ")).toContain(
      "api-610: asks condition, class, content, units, speed; assumes the lowest limits there are, for want of class, content, units, speed",
    );
  });
});

describe("judge --background", () => {
  it("names the source of the rule and how it is known, only where a reading at rest is given", async () => {
    const args = ["judge", "3 mm/s rms", "--machine", "pump 90 kW 2980 r/min category II", "--full"];
    const { out } = await veladis([...args, "--background", "1.2 mm/s rms"]);
    expect(out.replace(/\s+/g, " ")).toMatch(
      / source ISO 10816-7:2009.* background: Lloyd's Register, Ship Vibration and Noise Guidance Notes; chapter 7, section 1\.3.*\(quoted\) caution/,
    );
    expect((await veladis(args)).out).not.toContain("Lloyd");
  });
});
