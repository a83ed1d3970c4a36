/** Forsthoffer's Best Practice Handbook for Rotating Machinery, p. 205: API recommends root(24000/RPM) and root(36000/RPM), mil. */
import { proposeSetpoints } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { veladis } from "../cli/in-process";

const ask = (machine: string, more: object = {}) =>
  proposeSetpoints({ baseline: "20 um pp", rule: "api shaft", machine, device: { step: "0.1 um pp" }, ...more });

describe('rule "api shaft"', () => {
  it("gives 2.83 mil = 71.8 um and 3.46 mil = 88 um at 3000 r/min", () => {
    const { alarm, trip, provenance, verified } = ask("compressor 3000 r/min shaft");
    expect(alarm?.asked.value).toBeCloseTo(71.84, 2);
    expect(trip?.asked.value).toBeCloseTo(87.99, 2);
    expect((alarm?.asked.value as number) / 25.4).toBeCloseTo(2.83, 2);
    expect((trip?.asked.value as number) / 25.4).toBeCloseTo(3.46, 2);
    expect(trip?.reasons[0]?.source.title).toMatch(/^Forsthoffer/);
    expect([verified, provenance]).toEqual([false, "memory"]); // the delay of a compressor, by API 670
  });

  it("trips 2.74 times lower than C/D of ISO 20816-3, 13 200 over root n (from memory)", () => {
    const iso = 13200 / Math.sqrt(3000);
    expect(iso / (ask("compressor 3000 r/min shaft").trip?.asked.value as number)).toBeCloseTo(2.739, 3);
  });

  it("takes the highest of a range of speeds, and the shaft where nobody said so", () => {
    expect(ask("compressor 1500 to 3000 r/min shaft").trip?.asked.value).toBeCloseTo(87.99, 2);
    expect(ask("compressor 3000 r/min").assumedFacts[0]).toMatch(/^place shaft: not given, assumed/);
  });

  it("is for displacements of the shaft at a known speed, and stands alone", () => {
    expect(() => ask("compressor shaft")).toThrow(/running speed/);
    expect(() => ask("compressor 3000 r/min housing")).toThrow(/readings of the shaft/);
    expect(() => ask("compressor 3000 r/min", { baseline: "2 mm/s rms", device: {} })).toThrow(/displacement/);
    expect(() => ask("compressor 3000 r/min", { scheme: "iso-20816-3-2022-shaft" })).toThrow(/one of a rule/);
    expect(() => ask("compressor 3000 r/min", { rule: "api" })).toThrow(/a rule for setpoints/);
  });

  it.each([
    "diesel engine",
    "diesel generating set",
    "piston compressor",
    "hydro set",
    "wind turbine",
    "aero-derivative gas turbine",
    "cooling tower fan",
    "lobe blower",
  ])("refuses a %s, whose bearings are others, and names the machines that it is for", (type) => {
    expect(() => ask(`${type} 1500 r/min shaft`)).toThrow(/fluid-film bearings.*pump, fan, motor/);
  });

  it.each([
    "pump",
    "fan",
    "motor",
    "generator",
    "gear drive",
    "screw compressor",
    "centrifugal chiller",
    "steam turbine",
    "gas turbine",
  ])("takes a %s", (type) => {
    expect(ask(`${type} 3000 r/min shaft`).trip?.asked.value).toBeCloseTo(87.99, 2);
  });

  // 1000 to 30 000 r/min: scope of ISO 7919-3:2009, read in a catalogue
  it("refuses speeds that no table of shafts is for, both ends of a range", () => {
    for (const speed of ["300 r/min", "999 r/min", "30100 r/min", "300 to 3000 r/min", "3000 to 40000 r/min"]) {
      expect(() => ask(`compressor ${speed} shaft`)).toThrow(/a speed of 1000 to 30000 r\/min/);
    }
    for (const speed of ["1000 r/min", "30000 r/min", "1000 to 30000 r/min"]) {
      expect(ask(`compressor ${speed} shaft`).trip).not.toBeNull();
    }
  });

  it("warns first of bearing clearance, run-out and the standard that its handbook does not name", () => {
    const [first, second] = ask("compressor 3000 r/min shaft").warnings;
    expect(first?.code).toBe("shaft rule");
    expect(first?.text).toMatch(/clearance of the bearing; run-out.*; the handbook names neither the API standard nor/);
    expect(second?.code).toBe("unverified limits or rules");
    expect(ask("3000 r/min shaft").assumedFacts).toEqual([
      "type: not given, and taken for a machine with fluid-film bearings",
    ]);
  });

  it("help tells the speeds and the kinds of machine it is for", async () => {
    const refused = (() => {
      try {
        ask("wind turbine 1500 r/min");
      } catch (error) {
        return (error as { allowed: readonly string[] }).allowed;
      }
      return [];
    })();
    expect(refused.length).toBeGreaterThan(5);
    const help = (await veladis(["setpoints", "--help"])).out.replace(/\s+/g, " ");
    expect(help).toContain("1000 to 30 000 r/min");
    for (const kind of refused) expect(help).toContain(kind);
  });
});
