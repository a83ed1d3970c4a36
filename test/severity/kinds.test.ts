import { classify, defineScheme, type SchemeKind, zoneWord } from "veladis/severity";
import { describe, expect, it } from "vitest";

describe("what a zone means", () => {
  // zones: after the definitions of ISO 20816-1, from memory; fans: after ISO 14694, from memory; in our own words
  it.each([
    ["zones", "A", /newly commissioned/],
    ["zones", "B", /acceptable for unrestricted long-term operation/],
    ["zones", "AB", /acceptable for long-term operation/],
    ["zones", "C", /unsatisfactory for long-term operation/],
    ["zones", "D", /damage/],
    ["acceptance", "pass", /within the acceptance limit/],
    ["acceptance", "fail", /above the acceptance limit/],
    ["operation", "start-up", /within the limit for start-up/],
    ["operation", "service", /above the limit for start-up/],
    ["operation", "alarm", /investigate/],
    ["operation", "shutdown", /immediate action/],
  ] as const)("%s %s", (kind, zone, says) => {
    expect(zoneWord(kind, zone)).toMatch(says);
  });

  it("is its own name for a grade, also for one that is called as a zone, and for what is no zone", () => {
    expect(zoneWord("grades", "slightly rough")).toBe("slightly rough");
    expect(zoneWord("grades", "D")).toBe("D");
    for (const zone of ["E", "toString"]) expect(zoneWord("zones", zone)).toBe(zone);
  });

  it("is told with every judgement", () => {
    const word = (reading: string) => classify(reading, { scheme: "iso-10816-3-2009", machine: "group 1 rigid" }).word;
    expect(word("9 mm/s rms")).toBe(zoneWord("zones", "D"));
    // a velocity alone leaves the displacement open
    expect(word("2 mm/s rms")).toBe("displacement not judged");
    expect(word("2 mm/s rms at 25 Hz")).toBe(zoneWord("zones", "A"));
  });
});

describe("the zones of a table", () => {
  const source = { title: "Site rule 7, invented", provenance: "memory" } as const;
  const zonesOf = (kind: SchemeKind, limits: object, reading: string) => {
    const criterion = { as: "mm/s rms", limits, source } as const;
    const scheme = defineScheme({ id: "rule-7", kind, standard: "Site rule 7", classes: [{ criteria: [criterion] }] });
    const { zone, zones } = classify(reading, { scheme });
    return { zone, zones };
  };

  it("are AB, C and D where A and B are not parted", () => {
    const limits = { "B/C": 4, "C/D": 8 };
    expect(zonesOf("zones", limits, "3 mm/s rms")).toEqual({ zone: "AB", zones: ["AB", "C", "D"] });
    expect(zonesOf("zones", limits, "5 mm/s rms").zone).toBe("C");
  });

  it("are fewer where a fan has no limit for shutdown", () => {
    const limits = { "start-up": 4, alarm: 8, shutdown: null };
    expect(zonesOf("operation", limits, "9 mm/s rms")).toEqual({
      zone: "alarm",
      zones: ["start-up", "service", "alarm"],
    });
  });
});
