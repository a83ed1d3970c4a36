import { VeladisError, type VeladisErrorCode } from "veladis";
import { classifier, classify, type MachineRef, type SchemeId } from "veladis/severity";
import { describe, expect, it } from "vitest";

function refusal(reading: string, scheme: string, machine: MachineRef): VeladisError {
  try {
    classify(reading, { scheme: scheme as SchemeId, machine });
  } catch (error) {
    if (error instanceof VeladisError) return error;
    throw error;
  }
  throw new Error(`${reading} by ${scheme} for ${JSON.stringify(machine)} was not refused`);
}

// biome-ignore format: a row of a table is a line
const refused: [what: string, reading: string, scheme: string, machine: MachineRef, code: VeladisErrorCode, says: RegExp][] = [
  ["unknown scheme", "4 mm/s rms", "iso-10816-3-2008", {}, "unknown-option", /did you mean iso-10816-3-2009/],
  ["unknown class", "4 mm/s rms", "iso-2372-1974", "class V", "unknown-option", /allowed: I, II, III, IV/],
  ["unknown group", "4 mm/s rms", "iso-10816-3-2009", "group 3 rigid", "unknown-option", /allowed: 1, 2/],
  ["category of another standard", "4 mm/s rms", "iso-14694-2003", "rigid category III", "unknown-option", /BV-1/],
  ["missing support", "4 mm/s rms", "iso-10816-3-2009", "group 1", "missing-fact", /support.*allowed: rigid, flexible/],
  ["missing power", "4 mm/s rms", "iso-10816-3-2009", "rigid", "missing-fact", /power/],
  ["missing category", "4 mm/s rms", "iso-10816-7-2009", "pump 90 kW", "missing-fact", /category/],
  ["missing type, where classes hang on it", "4 mm/s rms", "iso-20816-2-2017", "3000 r/min", "missing-fact", /type/],
  ["power below the table", "4 mm/s rms", "iso-10816-3-2009", "motor 15 kW rigid", "out-of-range", /above 15 to 50000 kW, received 15 kW/],
  ["speed below the table", "4 mm/s rms", "iso-10816-3-2009", "motor 90 kW 100 r/min rigid", "out-of-range", /120 to 15000 r\/min, received 100 r\/min/],
  ["speed above the table", "4 mm/s rms", "iso-2372-1974", "class I 12001 r/min", "out-of-range", /600 to 12000/],
  ["speed beside the table's", "4 mm/s rms", "iso-10816-2-2009", "2980 r/min", "out-of-range", /1500 or 1800 r\/min; 3000 or 3600 r\/min/],
  ["shaft speed outside", "80 um pp", "iso-7919-3-2009", "motor 900 r/min", "out-of-range", /1000 to 30000/],
  ["shaft table without speed", "80 um pp", "iso-7919-3-2009", "motor", "missing-fact", /speed/],
  ["housing reading, shaft table", "80 um pp", "iso-7919-3-2009", "motor 3000 r/min housing", "out-of-range", /taken on the shaft.*received one taken on the housing/],
  ["velocity of unknown place, shaft table", "4 mm/s rms at 50 Hz", "iso-7919-3-2009", "motor 3000 r/min", "missing-fact", /place "shaft"/],
  ["shaft reading, housing table", "80 um pp at 50 Hz", "iso-10816-3-2009", "group 1 rigid shaft", "out-of-range", /taken on the housing/],
  ["velocity, displacement table, no frequency", "4 mm/s rms", "ansi-hi-9.6.4-2009-slow", "region preferred test site", "missing-frequency", /um pp/],
  ["acceleration, no frequency", "1 g pk", "iso-10816-3-2009", "group 1 rigid", "missing-frequency", /mm\/s rms or um rms/],
  ["machine of another table", "4 mm/s rms", "iso-14694-2003", "pump rigid BV-3", "out-of-range", /allowed: fan/],
  ["fan below 300 kW", "4 mm/s rms", "iso-10816-3-2009", "fan 299 kW rigid", "out-of-range", /ISO 14694, not ISO 10816-3/],
  ["fan of 300 kW", "4 mm/s rms", "iso-14694-2003", "fan 300 kW rigid BV-3", "out-of-range", /ISO 10816-3/],
  ["in service, acceptance table", "1 mm/s rms", "iec-60034-14-2003", "motor 280 mm mounting free, in service", "out-of-range", /new/],
  ["label against power", "4 mm/s rms", "iso-10816-3-2009", "group 2 400 kW rigid", "out-of-range", /group and power agree|power and group agree/],
  ["support against natural frequency", "4 mm/s rms", "iso-10816-3-2009", "group 2 rigid 1500 r/min natural 26 Hz", "out-of-range", /flexible support/],
  ["no such fact", "4 mm/s rms", "iso-10816-3-2009", { kind: "pump" } as MachineRef, "unknown-option", /allowed: type, power/],
  ["power without unit", "4 mm/s rms", "iso-10816-3-2009", { power: 90 } as unknown as MachineRef, "missing-unit", /kW/],
  ["zero power", "4 mm/s rms", "iso-10816-3-2009", "motor 0 kW", "not-positive", /above zero/],
  ["two powers", "4 mm/s rms", "iso-10816-3-2009", "motor 90 kW 80 kW", "syntax", /one power/],
  ["negative reading", "-4 mm/s rms", "iso-10816-3-2009", "group 1 rigid", "negative", /zero or more/],
];

describe("what cannot be judged is refused with what is missing", () => {
  it.each(refused)("%s", (_, reading, scheme, machine, code, says) => {
    const error = refusal(reading, scheme, machine);
    expect(error.message).toMatch(says);
    expect(error.code).toBe(code);
  });
});

describe("what can be converted is", () => {
  it("peak-to-peak displacement against an RMS table: as a sine at the stated frequency", () => {
    // 180 um pp at 25 Hz: 180/(2 root 2) = 63.6 um RMS; times 2 pi 25 Hz = 10.0 mm/s RMS; common practice, no source
    const judged = classify("180 um pp at 1500 r/min", { scheme: "iso-10816-3-2009", machine: "group 1 rigid" });
    expect(judged.zone).toBe("D");
    expect(judged.quantity).toBe("velocity");
    expect(judged.judged.value).toBeCloseTo(9.996, 3);
    expect(judged.criteria.map(({ quantity, zone }) => [quantity, zone])).toEqual([
      ["velocity", "D"],
      ["displacement", "C"],
    ]);
    expect(judged.assumed).toContain("sine");
    expect(judged.assumed).toEqual(["one-frequency", "sine"]);
    // limits in the reader's unit: 7.1 mm/s RMS at 25 Hz is 127.8 um peak-to-peak
    expect(judged.limit).toMatchObject({
      name: "C/D",
      unit: "um",
      detector: "pp",
      printed: { value: 7.1, unit: "mm/s" },
    });
    expect(judged.limit.value).toBeCloseTo(127.85, 1);
  });

  it("peak-to-peak displacement against the displacement column: no frequency is needed", () => {
    const judged = classify("180 um pp", { scheme: "iso-10816-3-2009", machine: "group 1 rigid" });
    expect(judged).toMatchObject({ zone: "C", quantity: "displacement", verified: false });
    expect(judged.unjudged).toEqual([
      { as: "mm/s rms", because: "needs the frequency of the displacement, or the running speed" },
    ]);
  });

  it("a displacement of unknown place: the answer says which it took it for", () => {
    const at = (scheme: SchemeId, machine: string) => classify("80 um pp", { scheme, machine }).assumedFacts.join();
    expect(at("iso-10816-3-2009", "group 1 rigid")).toMatch(/place housing: not given/);
    expect(at("iso-7919-3-2009", "3000 r/min")).toMatch(/place shaft: not given/);
    expect(at("iso-7919-3-2009", "3000 r/min shaft in service")).toBe("");
    expect(at("iso-10816-3-2009", "group 1 rigid housing in service")).toBe("");
    expect(at("iso-10816-3-2009", "group 1 rigid housing")).toBe("condition in service: not given, assumed");
  });

  it("no amplitude object whose quantity is not its unit's", () => {
    const reading = { value: 3, unit: "mm/s", detector: "rms", quantity: "displacement", hertz: undefined } as const;
    expect(() => classify(reading, { scheme: "iso-10816-3-2009", machine: "group 1 rigid" })).toThrow(
      'expected a reading of velocity, as its unit mm/s says, received "displacement"',
    );
    const broken = { ...reading, unit: "furlong" } as never;
    expect(() => classify(broken, { scheme: "iso-10816-3-2009", machine: "group 1 rigid" })).toThrow(VeladisError);
  });

  it("both criteria, and the worse governs: at low speed displacement does", () => {
    // 4.4 mm/s RMS at 10 Hz is 70 um RMS: velocity B (to 4.5), displacement C (57 to 90)
    const judged = classify("4.4 mm/s rms at 10 Hz", { scheme: "iso-10816-3-2009", machine: "group 1 rigid" });
    expect(judged).toMatchObject({ zone: "C", quantity: "displacement", verified: false });
    expect(classify("4.4 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 1 rigid" }).zone).toBe("B");
  });

  it("two readings of one measurement, one a quantity: each by its own column, nothing assumed", () => {
    const judged = classify(["2 mm/s rms", "60 um rms"], { scheme: "iso-10816-3-2009", machine: "group 1 rigid" });
    expect(judged).toMatchObject({ zone: "C", quantity: "displacement", assumed: [], unjudged: [] });
  });

  it("ISO 14694: the column of the reading's detector, which are not in ratio root 2", () => {
    const table = { scheme: "iso-14694-2003", machine: "fan 90 kW rigid BV-3" } as const;
    const peak = classify("10.1 mm/s pk", table);
    const rms = classify("7.15 mm/s rms", table); // the peak of this sine is 10.11
    expect(peak).toMatchObject({ zone: "service", limit: { value: 10.2 } });
    expect(rms).toMatchObject({ zone: "alarm", limit: { value: 9, name: "shutdown" } });
    expect(classify("20.2 mm/s pp", table)).toMatchObject({ zone: "service" });
    expect(classify("0.4 in/s pk", table)).toMatchObject({ zone: "service", limit: { unit: "in/s" } });
    // no shutdown limit for BV-1 and BV-2
    const small = classify("30 mm/s rms", { scheme: "iso-14694-2003", machine: "fan 3 kW rigid BV-2" });
    expect(small).toMatchObject({ zone: "alarm", zones: ["start-up", "service", "alarm"] });
    expect(small.cautions.join()).toMatch(/no number for shutdown/);
  });

  it("a crest factor stands in for the sine, within one quantity", () => {
    const table = { scheme: "iso-10816-3-2009", machine: "group 1 rigid" } as const;
    const judged = classify("12 mm/s pk at 25 Hz", { ...table, crestFactor: 4 });
    expect(judged).toMatchObject({ zone: "B", assumed: ["crest-factor"] });
    expect(judged.judged.value).toBe(3);
    expect(judged.unjudged[0]?.because).toMatch(/crest factor/);
    expect(judged.limits["B/C"]?.value).toBe(18);
  });

  it("the band the standard asks for widens for slow machines", () => {
    const band = (machine: string) => classify("1 mm/s rms", { scheme: "iso-10816-3-2009", machine }).band;
    expect(band("group 1 rigid 1490 r/min")).toEqual([10, 1000]);
    expect(band("group 1 rigid 590 r/min")).toEqual([2, 1000]);
    expect(classify("1 m/s2 rms", { scheme: "iso-10816-21-2015", machine: "part generator" }).band).toEqual([10, 5000]);
  });

  it("slow pumps have a displacement limit besides; without the speed the answer says it was left out", () => {
    const table = (machine: string) => ({ scheme: "iso-10816-7-2009", machine }) as const;
    const slow = classify(["2 mm/s rms", "90 um pp"], table("category I 90 kW 500 r/min"));
    expect(slow).toMatchObject({ zone: "C", quantity: "displacement", limit: { value: 130 } });
    expect(classify("2 mm/s rms", table("category I 90 kW 2980 r/min")).unjudged).toEqual([]);
    expect(classify("2 mm/s rms", table("category I 90 kW")).unjudged).toEqual([
      { as: "um pp", because: "needs the running speed: it is for slow machines only" },
    ]);
  });

  it("no default is more lenient than the lowest limits: of grades that nobody stated, the stricter", () => {
    const table = { scheme: "iec-60034-14-2003", machine: "motor 280 mm mounting free" } as const;
    expect(() => classify("2 mm/s rms", table)).toThrow(/grade/);
    // IEC 60034-14:2003, above 132 to 280 mm, free suspension: grade A 2.2, grade B 1.1 mm/s RMS
    const judged = classify("2 mm/s rms", { ...table, assume: "lowest limits" });
    expect(judged).toMatchObject({ zone: "fail", limit: { value: 1.1 } });
    expect(judged.assumedFacts.join()).toMatch(/grade B: not given, and taken for its lower limits/);
    expect(classify("2 mm/s rms", { ...table, machine: `${table.machine} grade A` }).zone).toBe("pass");
  });

  it("ranges for orientation give no verdict", () => {
    expect(() => classify("3 mm/s rms", { scheme: "iso-20816-1-2016-ranges" })).toThrow(/informative/);
    expect(() => classifier("iso-20816-1-2016-ranges", {}, "mm/s rms")).toThrow(/informative/);
  });

  it("the lowest limits are taken for missing facts only when asked, and said", () => {
    const table = { scheme: "iso-10816-3-2009", machine: "motor 250 kW" } as const;
    expect(() => classify("3 mm/s rms", table)).toThrow(/support/);
    const judged = classify("3 mm/s rms", { ...table, assume: "lowest limits" });
    expect(judged).toMatchObject({ zone: "C", limit: { value: 4.5 } });
    expect(judged.assumedFacts).toEqual([
      "condition in service: not given, assumed",
      "place housing: not given, assumed",
      "power in place of shaft height, which was not given",
      "support rigid: not given, and taken for its lower limits",
    ]);
    // of a category too: none is worse than what is taken for all of them
    const fan = { scheme: "iso-14694-2003", machine: "fan rigid" } as const;
    expect(() => classify("3 mm/s rms", fan)).toThrow(/category/);
    const lowest = classify("3 mm/s rms", { ...fan, assume: "lowest limits" });
    expect(lowest.assumedFacts).toEqual([
      "condition in service: not given, assumed",
      "place housing: not given, assumed",
      "category: not given, and the lowest limits of all that it may be are taken",
    ]);
    for (const category of ["BV-1", "BV-2", "BV-3", "BV-4", "BV-5"]) {
      const known = classify("3 mm/s rms", { ...fan, machine: `fan rigid ${category}` });
      const order = ["start-up", "service", "alarm", "shutdown"];
      expect(order.indexOf(known.zone)).toBeLessThanOrEqual(order.indexOf(lowest.worst));
    }
    // another part of a wind turbine is another thing that was measured
    expect(() =>
      classify("3 mm/s rms", { scheme: "iso-10816-21-2015", machine: "wind turbine 2 MW", assume: "lowest limits" }),
    ).toThrow(/part/);
  });

  it("every output of unverified limits says so", () => {
    const judged = classify("3 mm/s rms", { scheme: "iso-20816-3-2022", machine: "group 2 rigid" });
    expect(judged.verified).toBe(false);
    expect(judged.limit.verified).toBe(false);
    expect(judged.source.provenance).toBe("memory");
    expect(judged.cautions[0]).toMatch(/from memory: check them against the standard/);
    const told = classify("3 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 1 rigid" });
    expect([told.verified, told.provenance]).toEqual([false, "reported"]);
    expect(told.cautions[0]).toMatch(/read on a page whose making is unknown: check them against the standard/);
    const read = classify("3 mm/s rms", { scheme: "iso-10816-5-2000", machine: "hydro set group 2" });
    expect(read.verified).toBe(true);
    expect(read.source.page).toMatch(/^https:/);
    expect(read.cautions[0]).toMatch(/withdrawn edition, replaced by ISO 20816-5:2018/);
  });
});
