import fc from "fast-check";
import { judge, machineNotes, parseMachine } from "veladis/severity";
import { describe, expect, it } from "vitest";

describe("a Roman numeral further behind a label", () => {
  it.each([
    "pump 90 kW category II 2980 r/min (I)",
    "pump 90 kW category II 2980 r/min / I",
    "pump 90 kW category II rigid / I 2980 r/min",
    "pump 90 kW category Ⅱ / Ⅰ 2980 r/min",
    "pump 90 kW category Ⅱ 2980 r/min Ⅰ",
  ])("%s is refused", (line) => {
    expect(() => parseMachine(line)).toThrow('"category II" or "category I": give one');
  });

  it.each([
    ["pump category II 400/690 V 90 kW", "II"],
    ["pump category II 90 kW 3x400 V", "II"],
    ["pump category II 90 kW line I", "II"],
    ["pump I 90 kW category II", "II"],
    ["pump 90 kW category Ⅱ", "II"],
  ])("%s is read", (line, category) => {
    expect(parseMachine(line).category).toBe(category);
  });
});

describe("a second value among words left over", () => {
  // biome-ignore format: a row of a table is a line
  it.each([
    "pump 90 kW category II (nominal I)", "pump category II resp. I", "pump category II bzw. I", "pump category II oder I",
    "pump category II vs I", "pump category II a/o I", "pump category II else I", "pump category II (default I)",
    "pump category II {I}", "pump category II old I new", "pump category II:I", "pump category II*I",
    "motor group 1 resp. 2", "motor group 1 (prev. 2)", "fan BV-3...BV-4", "fan BV-3.BV-4", "fan BV-3 resp. 4",
    "gear drive grade A resp. B",
    "pump 400 kW (nom. 250)", "pump 90 kW [300]", "fan 300 kW; peak 90", "motor 315 (280) mm", "pump 300 / 90 kW",
    "pump 2980 / 1490 r/min", "pump 1485 r/min [990]", "motor 280 mm [315]",
  ])("%s is refused", (line) => {
    expect(() => parseMachine(line)).toThrow(/give one/);
  });

  it("names both", () => {
    expect(() => parseMachine("pump category II resp. I")).toThrow('"category II" or "category I"');
    expect(() => parseMachine("fan 300 kW; peak 90")).toThrow('"300 kW" or "90" with its unit');
    expect(() => parseMachine("motor 315 (280) mm")).toThrow('"315 mm" or "280 mm"');
  });

  it("is none where it names a thing, or is the same", () => {
    for (const line of [
      "pump category II resp. 2",
      "pump category II, unit 3",
      "motor group 2 IP 55",
      "motor 90 kW, 3 ph, 400 V, 3/50 Hz",
      "motor 90 kW IE 3 built 1998",
      "fan BV-3 (3)",
      "pump 90 kW, 1 of 2",
    ])
      expect(() => parseMachine(line), line).not.toThrow();
  });

  it("is refused whatever words stand between", () => {
    const filler = fc.stringMatching(/^[bdfgjkmnpqrstwz]{4,8}\.?$/);
    const pairs = fc.constantFrom(
      ["category II", "I"],
      ["group 1", "2"],
      ["class III", "II"],
      ["BV-3", "BV-4"],
      ["90 kW", "300"],
      ["2980 r/min", "1490"],
    );
    fc.assert(
      fc.property(pairs, fc.array(filler, { minLength: 1, maxLength: 3 }), ([one, other], words) => {
        expect(() => parseMachine(`pump ${one} ${words.join(" ")} ${other}`)).toThrow();
      }),
      { numRuns: 500 },
    );
  });
});

describe("a label or length of something else", () => {
  // the marks of explosion protection and insulation: common practice, no source
  it.each([
    ["pump ATEX category 2", "ATEX category 2"],
    ["pump category 2G", "category 2G"],
    ["pump category 2 ATEX", "category 2 ATEX"],
    ["motor insulation class F", "insulation class F"],
    ["motor class F insulation", "class F insulation"],
    ["pump H=45 m", "H=45 m"],
    ["pump 45 m head", "45 m head"],
    ["pump, head 45 m", "head 45 m"],
    ["pump DN 150 mm", "DN 150 mm"],
    ["fan wheel 1250 mm", "wheel 1250 mm"],
    ["fan 1250 mm wheel", "1250 mm wheel"],
  ])("%s is set aside and named", (line, word) => {
    const { category, class: named, shaftHeight } = parseMachine(line);
    expect([category, named, shaftHeight]).toEqual([undefined, undefined, undefined]);
    expect(machineNotes(line).notUnderstood).toEqual([{ word, didYouMean: [] }]);
  });

  it("leaves what stands alone, and refuses what may be former", () => {
    expect(() => parseMachine("pump Ex category 3")).toThrow(/said plainly/);
    expect(parseMachine("pump category 2").category).toBe("2");
    expect(parseMachine("motor H=280 mm").shaftHeight).toBe("280 mm");
  });
});

describe("the generator of a gas turbine set", () => {
  it("is not judged by the row of the turbine", () => {
    for (const line of ["60 MW 3000 r/min, part generator, housing", "20 MW 3000 r/min, part generator, housing"])
      expect(() => judge("8 mm/s rms", `gas turbine generating set ${line}`), line).toThrow(/give the generator/);
    expect(judge("8 mm/s rms", "generator 60 MW 3000 r/min, housing").zone).toBe("C");
  });

  it("is of ISO 10816-4 at 3000 to 20 000 r/min alone", () => {
    const schemes = (speed: number) =>
      judge("4 mm/s rms", `gas turbine 10 MW ${speed} r/min, in service, housing`).judgements.map(
        ({ scheme }) => scheme,
      );
    expect(() => schemes(1500)).toThrow(/ISO 10816-4: for speed 3000 to 20000 r\/min/);
    expect(schemes(9000)).toContain("iso-10816-4");
  });
});
