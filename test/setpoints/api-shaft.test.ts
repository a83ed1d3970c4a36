/** Forsthoffer's Best Practice Handbook for Rotating Machinery, p. 205: API recommends root(24000/RPM) and root(36000/RPM), mil. */
import { proposeSetpoints } from "veladis/protection";
import { describe, expect, it } from "vitest";

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
});
