import { convertAmplitude, format } from "veladis";
import { defineScheme, judge, type Limit, limitsFor } from "veladis/severity";
import { describe, expect, it } from "vitest";

const table = { scheme: "iso-10816-3-2009", machine: "group 1 rigid" } as const;

describe("the limits for a machine", () => {
  it("are the standard's own where no type is asked for", () => {
    const [velocity, displacement] = limitsFor(table);
    expect(velocity).toMatchObject({ quantity: "velocity", as: "mm/s rms", provenance: "reported", verified: false });
    expect(displacement).toMatchObject({ quantity: "displacement", as: "um rms", provenance: "reported" });
    // ISO 10816-3:2009 group 1 rigid, as in the copy keyed by hand: 2.3, 4.5, 7.1 mm/s RMS
    expect(velocity?.limits["B/C"]).toMatchObject({
      name: "B/C",
      value: 4.5,
      unit: "mm/s",
      detector: "rms",
      as: "mm/s rms",
    });
    expect(velocity?.machineClass).toEqual({ group: "1", support: "rigid" });
  });

  it("are converted to the type asked for, and each says what it is written in", () => {
    const [velocity, displacement] = limitsFor({ ...table, as: "in/s peak", at: "25 Hz" });
    const root2 = Math.SQRT2;
    expect(velocity?.as).toBe("in/s peak");
    expect(velocity?.limits["C/D"]).toMatchObject({
      unit: "in/s",
      detector: "pk",
      as: "in/s pk",
      printed: { value: 7.1, unit: "mm/s", detector: "rms" },
    });
    expect(velocity?.limits["C/D"]?.value).toBeCloseTo((7.1 * root2) / 25.4, 12);
    // 90 um RMS at 25 Hz: times 2 pi 25 Hz is 14.14 mm/s RMS
    expect(displacement?.limits["C/D"]?.value).toBeCloseTo((0.09 * 2 * Math.PI * 25 * root2) / 25.4, 12);
  });

  it("are decibels in a level type", () => {
    const [velocity] = limitsFor({ scheme: "iso-10816-1-1995-annexB", machine: "class I", as: "dB re 1 mm/s" });
    expect(velocity?.limits["B/C"]).toMatchObject({ as: "dB re 1 mm/s" });
    expect(velocity?.limits["B/C"]?.level?.decibels).toBeCloseTo(20 * Math.log10(1.8), 9);
    expect(velocity?.limits["B/C"]).toMatchObject({ unit: "mm/s", detector: "rms" });
    expect(velocity?.limits["B/C"]?.value).toBeCloseTo(1.8, 12);
  });

  it("need a frequency for a type of another quantity", () => {
    expect(() => limitsFor({ ...table, as: "g pk" })).toThrow(/frequency/);
    const [velocity] = limitsFor({ ...table, as: "m/s2 rms", at: "10 Hz" });
    expect(velocity?.limits["A/B"]?.value).toBeCloseTo(0.0023 * 2 * Math.PI * 10, 12);
  });

  it("of another quantity stay in their own unit, beside those of the quantity asked for", () => {
    const [velocity, displacement] = limitsFor({ ...table, as: "in/s pk" });
    expect([velocity?.as, displacement?.as]).toEqual(["in/s pk", "um rms"]);
    expect(velocity?.limits["C/D"]?.value).toBeCloseTo((7.1 * Math.SQRT2) / 25.4, 12);
    expect(displacement?.limits["C/D"]).toMatchObject({ value: 90, unit: "um", as: "um rms" });
    expect([velocity?.assumed, displacement?.assumed]).toEqual([["sine"], []]);
  });

  it("say what carrying them assumed, and whoever goes on from one says it too", () => {
    const carried = limitsFor({
      scheme: "iso-10816-3-2009",
      machine: "group 2 rigid",
      as: "mm/s rms",
      at: "1500 r/min",
    });
    const limit = carried[1]?.limits["C/D"];
    // 71 um RMS at 25 Hz: times 2 pi 25 Hz is 11.15 mm/s RMS
    expect(limit?.value).toBeCloseTo(0.071 * 2 * Math.PI * 25, 12);
    expect(limit?.assumed).toEqual(["one-frequency"]);
    expect(limit?.history).toMatchObject([
      { does: "given", value: 71, type: "um rms" },
      { does: "convert", hertz: 25, assumed: ["one-frequency"] },
    ]);
    expect(limit?.history?.[0]?.note).toContain("ISO 10816-3");
    expect(convertAmplitude(limit as Limit, "in/s rms").assumed).toEqual(["one-frequency"]);
    expect(carried[0]?.limits["C/D"]?.history).toBeUndefined();
    const { limits } = judge("100 um pp at 25 Hz", "pump 90 kW 2980 r/min category II");
    for (const one of Object.values(limits)) expect(one.assumed).toEqual(["one-frequency", "sine"]);
  });

  it("are amplitudes, to be written and converted", () => {
    const limit = limitsFor(table)[0]?.limits["C/D"];
    if (limit === undefined) throw new Error("there is one");
    expect(format(limit)).toBe("7.10 mm/s rms");
    expect(convertAmplitude(limit, "in/s rms").value).toBeCloseTo(7.1 / 25.4, 12);
  });

  it("come with the ceilings in the same type", () => {
    const source = { title: "Site rule 12, invented", provenance: "printed", page: "p. 3" } as const;
    const scheme = defineScheme({
      id: "rule-12",
      kind: "zones",
      standard: "Site rule 12, invented",
      classes: [
        { criteria: [{ as: "mm/s rms", limits: { "C/D": 8 }, source, ceilings: { alarm: 5, trip: 10, source } }] },
      ],
    });
    const [own] = limitsFor({ scheme, as: "cm/s rms" });
    expect(own?.ceilings).toEqual({ alarm: 0.5, trip: 1, source, provenance: "printed", verified: true });
    expect(limitsFor(table)[0]).not.toHaveProperty("ceilings");
  });
});
