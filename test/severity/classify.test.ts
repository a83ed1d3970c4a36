import { classify, defineScheme, type SchemeInput } from "veladis/severity";
import { describe, expect, it } from "vitest";

const table = { scheme: "iso-10816-3-2009", machine: "group 1 rigid" } as const;
const MEMORY = "limits from memory: check them against the standard before relying on them";
const GOVERN = "limits of the machine's maker, site rules, local codes and licensed practice govern";

describe("the cautions of a judgement", () => {
  const source = { title: "Site rule 7, invented", provenance: "printed", page: "p. 3" } as const;
  const criteria = [{ as: "mm/s rms", limits: { "B/C": 4 }, source }] as const;
  const told = (parts: Partial<SchemeInput<"zones">>) => {
    const rule = { id: "rule-7", kind: "zones", standard: "Site rule 7, invented", classes: [{ criteria }] } as const;
    return classify("3 mm/s rms", { scheme: defineScheme({ ...rule, ...parts }) }).cautions;
  };

  it("are that others govern, and nothing else for a rule read in print", () => {
    expect(told({})).toEqual([GOVERN]);
  });

  it("name a guide, notes of the class and of the scheme, in this order", () => {
    expect(told({ status: "guide" })).toEqual(["a guide, not a standard", GOVERN]);
    expect(
      told({
        status: "guide",
        notes: ["pumps at duty", "fans at full flow"],
        classes: [{ criteria, note: "drives only" }],
      }),
    ).toEqual(["a guide, not a standard", "drives only", "pumps at duty", "fans at full flow", GOVERN]);
  });

  it("name the edition that replaced a withdrawn one, and limits from memory first", () => {
    const old = { ...table, scheme: "iso-10816-3-1998" } as const;
    expect(classify(["3 mm/s rms", "40 um rms"], old).cautions).toEqual([
      MEMORY,
      "withdrawn edition, replaced by ISO 10816-3:2009",
      "displacement limits are RMS, not peak-to-peak",
      "measuring bands from memory",
      GOVERN,
    ]);
  });
});

describe("the place of a displacement", () => {
  const facts = (reading: Parameters<typeof classify>[0], scheme: "iso-10816-3-2009" | "iso-7919-3-2009") =>
    classify(reading, { scheme, machine: scheme === table.scheme ? table.machine : "3000 r/min" }).assumedFacts;

  it("is that of the table where it is not given, and said with the other one", () => {
    const condition = "condition in service: not given, assumed";
    const housing = "place housing: not given; a displacement of the shaft needs a table for the shaft";
    expect(facts("80 um pp", "iso-10816-3-2009")).toEqual([condition, housing]);
    expect(facts("80 um pp", "iso-7919-3-2009")).toEqual([
      condition,
      "place shaft: not given; a displacement of the housing needs a table for the housing",
    ]);
    expect(facts(["2 mm/s rms", "80 um pp"], "iso-10816-3-2009")).toEqual([condition, housing]);
  });

  it("is that of the table for a velocity too", () => {
    expect(facts("2 mm/s rms", "iso-10816-3-2009")).toEqual([
      "condition in service: not given, assumed",
      "place housing: not given, assumed",
    ]);
  });
});

describe("the criterion that governs", () => {
  // ISO 10816-3:2009 group 1 rigid: 2.3, 4.5, 7.1 mm/s RMS and 29, 57, 90 um RMS (course handbook, section 4.4)
  const governing = (...reading: string[]) => classify(reading, table).quantity;

  it("is the one with the worse zone, else the one that has used up more of its limit, else the first", () => {
    expect(governing("5 mm/s rms", "56 um rms")).toBe("velocity");
    expect(governing("4.4 mm/s rms", "58 um rms")).toBe("displacement");
    expect(governing("3 mm/s rms", "50 um rms")).toBe("displacement");
    expect(governing("4.4 mm/s rms", "30 um rms")).toBe("velocity");
    expect(governing("0 mm/s rms", "0 um rms")).toBe("velocity");
  });
});

describe("a reading at a limit", () => {
  it("belongs to the better zone with its tolerance of one step of a 32-bit float, and no further", () => {
    const at = (value: number) =>
      classify({ value, unit: "mm/s", detector: "rms", quantity: "velocity", hertz: undefined }, table).zone;
    expect(at(4.5 * (1 + 0.99 * 2 ** -23))).toBe("B");
    expect(at(4.5 * (1 + 1.01 * 2 ** -23))).toBe("C");
  });
});

describe("the band the standard asks for", () => {
  it("is that of slow machines below 600 r/min, not at it, and not where the speed is unknown", () => {
    const band = (machine: string) => classify("1 mm/s rms", { ...table, machine }).band;
    // ISO 10816-3:2009: 10 Hz to 1 kHz, from 2 Hz for machines below 600 r/min; from memory
    expect(band("group 1 rigid 599 r/min")).toEqual([2, 1000]);
    expect(band("group 1 rigid 600 r/min")).toEqual([10, 1000]);
    expect(band("group 1 rigid")).toEqual([10, 1000]);
    expect(classify("1 mm/s rms", { scheme: "iso-2372-1974", machine: "class I 900 r/min" }).band).toEqual([10, 1000]);
  });
});
