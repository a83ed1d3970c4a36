import { classify, judge, marginText, type SchemeId } from "veladis/severity";
import { describe, expect, it } from "vitest";

const told = (reading: string, scheme: SchemeId, machine: string) => marginText(classify(reading, { scheme, machine }));

// 20 lg of limit over reading; the limits as test/references/severity-limits.ts has them
describe("how far a reading is from a limit, in words that all outputs share", () => {
  it.each([
    ["4.1 mm/s rms", "iso-10816-7-2009", "category II 90 kW 2980 r/min", "1.90 dB below the limit B/C, 5.10 mm/s rms"],
    ["17 mm/s rms", "iso-10816-7-2009", "category II 90 kW 2980 r/min", "6.02 dB above the limit C/D, 8.50 mm/s rms"],
    [
      "0.1 in/s pk",
      "nema-mg1-7-table-7-1",
      "motor 1800 r/min, new, mounting resilient",
      "3.52 dB below the acceptance limit, 0.150 in/s pk",
    ],
    [
      "0.3 in/s pk",
      "nema-mg1-7-table-7-1",
      "motor 1800 r/min, new, mounting resilient",
      "6.02 dB above the acceptance limit, 0.150 in/s pk",
    ],
    ["3 mm/s rms", "iso-14694-2003", "fan BV-3 rigid", "3.52 dB below the start-up limit, 4.50 mm/s rms"],
    [
      "0.15 in/s pk",
      "gear-housing-handbook",
      "gear drive class high-speed",
      '2.50 dB below the upper limit of "acceptable", 0.200 in/s pk',
    ],
    [
      "1 in/s pk",
      "gear-housing-handbook",
      "gear drive class high-speed",
      '6.02 dB above the upper limit of "rough", 0.500 in/s pk',
    ],
    ["0 mm/s rms", "iso-10816-4", "gas turbine", "below the limit A/B, 4.50 mm/s rms"],
    ["4.5 mm/s rms", "iso-10816-4", "gas turbine", "at the limit A/B, 4.50 mm/s rms"],
    ["4.5001 mm/s rms", "iso-10816-4", "gas turbine", "less than 0.01 dB above the limit A/B, 4.50 mm/s rms"],
  ] as const)("%s by %s, %s: %s", (reading, scheme, machine, words) => {
    const judged = classify(reading, { scheme, machine, assume: "lowest limits" });
    if (reading !== "4.5001 mm/s rms") expect(marginText(judged)).toBe(words);
    // a reading above a limit is in the next zone and told by the limit that ends it
    else
      expect(
        marginText({ ...judged, limit: judged.limits["A/B"] as never, margin: { ratio: 0, decibels: -0.0002 } }),
      ).toBe(words);
  });

  it("takes a verdict as well, and what JSON made of an infinite margin", () => {
    const verdict = judge("0 mm/s rms", "gas turbine 20 MW 5000 r/min housing");
    expect(marginText(JSON.parse(JSON.stringify(verdict)))).toBe(marginText(verdict));
    expect(told("4.1 mm/s rms", "iso-10816-7-2009", "category II 90 kW 2980 r/min")).toMatch(/^1\.90 dB below/);
  });
});
