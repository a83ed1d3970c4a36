import { type Amplitude, convertAmplitude, format } from "veladis";
import { currentLoop, sensor } from "veladis/sensor";
import { classifier, classify, judge, judgePoints, schemesFor } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { vectorDifference } from "../../src/amplitude/index";

/** Limits as printed: ISO 20816-3:2022 (as ISO 10816-3:2009), groups 1 and 2 on a rigid support, from memory. */
const group1 = { velocity: [2.3, 4.5, 7.1], displacement: [29, 57, 90] } as const; // mm/s RMS, um RMS
const group2 = { velocity: [1.4, 2.8, 4.5], displacement: [22, 45, 71] } as const;

/** Limits of a shaft against its housing, ISO 7919-3:2009, in um peak-to-peak at a speed in r/min, from memory. */
const shaftAt = (speed: number): readonly number[] => [4800, 9000, 13200].map((of) => of / Math.sqrt(speed));

function zoneOf(value: number, limits: readonly number[]): string {
  return "ABCD"[limits.filter((limit) => value > limit).length] as string;
}

/** The RMS velocity in mm/s of a sine of so many um peak-to-peak. */
const velocityOf = (pp: number, hertz: number): number => (2 * Math.PI * hertz * pp) / (2 * Math.SQRT2) / 1000;

function worse(one: string, other: string): string {
  return one > other ? one : other;
}

describe("a displacement of an unstated place", () => {
  it("is judged on housing and shaft: what differs is said, and the worse stands in the data", () => {
    // 160 um pp on a steam turbine at 5400 r/min
    const shaft = zoneOf(160, shaftAt(5400));
    const housing = worse(
      zoneOf(velocityOf(160, 90), group1.velocity),
      zoneOf(160 / (2 * Math.SQRT2), group1.displacement),
    );
    expect([shaft, housing]).toEqual(["C", "D"]);
    const verdict = judge("160 um pp", "steam turbine 12 MW 5400 rpm rigid");
    expect(verdict.headline).toBe("shaft C, housing D: state the place");
    expect(verdict).toMatchObject({ zone: "D", worst: "D", possible: ["C", "D"] });
    expect(verdict.deciding).toContain("place");
    expect(verdict.judgements.map(({ zone }) => zone).sort()).toEqual(["C", "D"]);
  });

  it("makes no healthy probe a D in the headline", () => {
    expect(zoneOf(25.4, shaftAt(11_000))).toBe("A");
    expect(judge("1 mil pp", "compressor 2 MW 11000 rpm").headline).toMatch(/^shaft A, housing D: /);
    expect(judge("1 mil pp", "compressor 2 MW 11000 rpm shaft")).toMatchObject({ headline: "zone A", worst: "A" });
  });

  it("is one zone where both come to it, and the place is named", () => {
    expect(zoneOf(127, shaftAt(11_000))).toBe("D");
    const verdict = judge("5 mil pp", "compressor 2 MW 11000 rpm");
    expect(verdict).toMatchObject({ headline: "zone D", possible: ["D"] });
    expect(verdict.assumedFacts[0]).toBe("place: not given; housing and shaft come to the same");
  });

  it("is as unknown of a velocity or an acceleration that was made of it", () => {
    const machine = "generator 400 kW 16000 r/min flexible 315 mm";
    const given = "151.3 um pp at 25 Hz";
    const { headline, possible } = judge(given, machine);
    expect([headline, possible]).toEqual(["shaft D, housing C: state the place", ["C", "D"]]);
    const velocity = convertAmplitude(given, "mm/s rms");
    const made: Readonly<Record<string, Amplitude>> = {
      "a velocity": velocity,
      "an acceleration": convertAmplitude(given, "g pk"),
      "a velocity converted twice": convertAmplitude(velocity, "in/s pk"),
      "a velocity after JSON": JSON.parse(JSON.stringify(velocity)),
      "a loop of displacement": currentLoop("0 to 200 um pp").reading(16.104, "mm/s rms", { at: "25 Hz" }),
      "a sensor of displacement": sensor("200 mV/mil").reading("1191.3 mV pp", "mm/s rms", { at: "25 Hz" }),
      "a difference of two": vectorDifference("0.1 mm/s rms at 25 Hz", velocity, 0),
    };
    for (const [name, reading] of Object.entries(made)) {
      expect(judge(reading, machine), name).toMatchObject({ headline, possible });
      expect(judge(reading, `${machine}, housing`).headline, name).toBe("zone C");
      expect(judge(reading, `${machine}, shaft`).headline, name).toBe("zone D");
      expect(() => judge(reading, machine, { assume: "nothing" }), name).toThrow(/place/);
    }
    // one whose value was replaced is refused before its place is asked for
    expect(() => judge({ ...velocity, value: velocity.value * 1.01 }, machine)).toThrow(/a reading that was changed/);
    expect(judge([velocity, given], machine).headline).toBe(headline);
    expect(judgePoints([{ point: "DE-H", reading: velocity }], machine).headline).toBe(headline);
  });

  it("is the housing of a velocity that was one from the start, and beside one that was", () => {
    const machine = "generator 400 kW 16000 r/min flexible 315 mm";
    const velocity = convertAmplitude("151.3 um pp at 25 Hz", "mm/s rms");
    const plain = `${velocity.value} mm/s rms at 25 Hz`;
    // a plan made for readings written alike is not taken for both
    expect(judge(plain, machine).headline).toBe("zone C");
    expect(judge(velocity, machine).headline).toMatch(/^shaft D/);
    expect(judge(plain, machine).headline).toBe("zone C");
    expect(judge(convertAmplitude(convertAmplitude(plain, "um pp"), "mm/s rms"), machine).headline).toBe("zone C");
    expect(judge([velocity, "8 mm/s pk at 25 Hz"], machine).headline).toBe("zone C");
    const shaft = { scheme: "iso-7919-3-2009", machine: "motor 3000 r/min" } as const;
    expect(classify(velocity, shaft).zone).toBe(zoneOf(151.3, shaftAt(3000)));
    expect(() => classify(plain, shaft)).toThrow(/unknown place/);
  });

  it("is asked for where nothing may be assumed", () => {
    for (const [reading, machine] of [
      ["5 mil pp", "compressor 2 MW 11000 rpm"],
      ["160 um pp", "steam turbine 12 MW 5400 rpm rigid"],
    ] as const)
      expect(() => judge(reading, machine, { assume: "nothing" })).toThrow(/place/);
  });
});

describe("a displacement alone", () => {
  const displacement = (6 * 25.4) / (2 * Math.SQRT2);

  it("is at least a velocity at running speed", () => {
    const hertz = 3570 / 60;
    expect(zoneOf(displacement, group1.displacement)).toBe("B");
    expect(zoneOf(velocityOf(6 * 25.4, hertz), group1.velocity)).toBe("D");
    const verdict = judge("6 mil pp", "motor 400 kW 3570 rpm rigid housing");
    expect(verdict).toMatchObject({ zone: "D", quantity: "velocity", bound: "least", headline: "zone D" });
    expect(verdict.judged.value).toBeCloseTo(velocityOf(6 * 25.4, hertz), 6);
    expect(judge("6 mil pp at 3570 rpm", "motor 400 kW 3570 rpm rigid housing").zone).toBe("D");
  });

  it("without a speed leaves all open that is worse", () => {
    const verdict = judge("6 mil pp", "motor 400 kW rigid housing");
    expect(verdict).toMatchObject({ headline: "zone B or worse", possible: ["B", "C", "D"], worst: "D" });
    const named = classify("6 mil pp", { scheme: "iso-20816-3-2022", machine: "group 1 rigid housing" });
    expect(named).toMatchObject({ headline: "zone B or worse", worst: "D", word: "velocity not judged" });
  });
});

describe("a frame size", () => {
  it("is a shaft height in mm", () => {
    expect(zoneOf(3, group1.velocity)).toBe("B");
    expect(zoneOf(3, group2.velocity)).toBe("C");
    for (const frame of ["280M", "frame 280S", "280 mm"]) {
      const verdict = judge("3 mm/s rms", `motor 75 kW ${frame} 1485 rpm rigid`);
      expect([frame, verdict.zone, verdict.machine.shaftHeight]).toEqual([frame, "C", 280]);
    }
    expect(judge("3 mm/s rms", "motor 75 kW 315L 1485 rpm rigid").zone).toBe("B");
    expect(() => judge("3 mm/s rms", "motor shaft height 280 m 1485 rpm rigid")).toThrow(/frame size/);
  });
});

describe("a label", () => {
  it("that contradicts the power is refused with both named", () => {
    expect(() => judge("4.6 mm/s rms", "motor 400 kW 1485 rpm group 2 rigid")).toThrow(/group 2.*400 kW/);
    expect(() => judge("4.6 mm/s rms", "fan 400 kW 1485 rpm class I rigid")).toThrow(/class I.*400 kW/);
    // also where the scheme for the place does not ask for it
    expect(() => judge("40 um pp", "generator 1 kW 3000 rpm group 1 shaft")).toThrow(/group 1.*1 kW/);
    // and two labels that contradict each other, with no power given
    expect(() => judge("2 mm/s rms", "compressor 1485 rpm group 2 class I")).toThrow(/class I.*group 2/);
  });

  it("that no scheme for such a machine has is refused, whatever its power", () => {
    for (const power of ["", "5.5 kW", "90 kW", "400 kW"]) {
      expect(() => judge("2 mm/s rms", `motor ${power} 1485 rpm group 3 rigid`)).toThrow(/group.*"3"/);
    }
  });

  it("means the same in Roman and Arabic numerals, and as the schemes list it", () => {
    const zone = (machine: string) => judge("3 mm/s rms", machine).judgements.map((one) => `${one.scheme} ${one.zone}`);
    const pump = "pump 90 kW 2980 rpm";
    for (const other of ["category 1", "category i", "Category I"])
      expect(zone(`${pump} ${other}`)).toEqual(zone(`${pump} category I`));
    expect(zone("motor 250 kW 1485 rpm group II rigid")).toEqual(zone("motor 250 kW 1485 rpm group 2 rigid"));
    const words = "pump 90 kW 2980 rpm new region preferred test works content overall units metric";
    expect(judge("3 mm/s rms", `${words} class between bearings`).machine.class).toBe("between bearings");
    expect(judge("3 mm/s rms", "hydro set 5 MW 300 rpm group 4 part location 1").machine.part).toBe("location 1");
    expect(judge("3 mm/s rms", "reciprocating compressor 600 rpm part cylinder lateral").machine.part).toBe(
      "cylinder lateral",
    );
  });

  it("of another standard is set aside and named", () => {
    const verdict = judge("3 mm/s rms", "pump 90 kW 2980 rpm class II");
    expect(verdict.scheme).toBe("iso-10816-7-2009");
    expect(verdict.setAside).toEqual(["class II: plays no part in ISO 10816-7 (2009)"]);
  });
});

describe("a new motor", () => {
  // NEMA MG 1 Part 7 as quoted by EASA, speeds from 1200 r/min: 0.15 in/s peak resilient, 0.12 rigid
  const nema = "motor 200 hp frame NEMA 1800 r/min new";

  it("has the mounting that its support tells, and the other way round", () => {
    for (const rigid of ["rigid", "mounting rigid"])
      expect(judge("0.13 in/s pk", `${nema} ${rigid}`).zone).toBe("fail");
    for (const soft of ["flexible", "mounting resilient", "on springs"])
      expect(judge("0.13 in/s pk", `${nema} ${soft}`).zone).toBe("pass");
    // neither given: the lower limit
    expect(judge("0.13 in/s pk", nema)).toMatchObject({ zone: "fail", limit: { value: 0.12 } });
  });

  it("of a metric frame is judged by IEC, of an unstated one by both", () => {
    const schemes = (machine: string) =>
      schemesFor(machine)
        .map(({ scheme }) => scheme.id)
        .sort();
    expect(schemes("motor 90 kW 280M 1485 r/min new rigid")).toEqual(["iec-60034-14-2003"]);
    expect(schemes(`${nema} rigid`)).toEqual(["nema-mg1-7-table-7-1"]);
    expect(schemes("motor 200 hp 1800 r/min new rigid")).toEqual(["iec-60034-14-2003", "nema-mg1-7-table-7-1"]);
    const { assumedFacts, deciding } = judge("0.13 in/s pk", "motor 200 hp 1800 r/min new rigid");
    expect(deciding).toContain("frame");
    expect(assumedFacts.join()).not.toMatch(/mounting rigid: not given/);
  });
});

describe("ranges that are for orientation only", () => {
  it("give no zone", () => {
    expect(() => judge("0.35 in/s pk", "cooling tower fan 75 kW 150 rpm")).toThrow(/informative ranges/);
    expect(() => classify("3 mm/s rms", { scheme: "iso-20816-1-2016-ranges" })).toThrow(/never a verdict/);
    expect(() => classifier("iso-20816-1-2016-ranges", {}, "mm/s rms")).toThrow(/never a verdict/);
  });
});

describe("a reading by a loop that is clipped or dead", () => {
  const machine = "motor 400 kW 1485 rpm rigid";

  it("above its range is at least that", () => {
    // 0 to 4 mm/s over 16 mA: 20.9 mA is 4.225, as far as the sensor can say
    const verdict = judge(currentLoop("0 to 4 mm/s rms").reading(20.9), machine);
    expect(verdict).toMatchObject({ headline: "zone B or worse", possible: ["B", "C", "D"], worst: "D" });
    expect(judge(currentLoop("0 to 4 mm/s rms").reading(20), machine).headline).toBe("zone B");
    expect(judge(currentLoop("0 to 8 mm/s rms").reading(20.9), machine).headline).toBe("zone D");
  });

  it("below its range is refused: a dead loop is no zone A", () => {
    for (const current of [3.7, 3.9]) {
      const dead = currentLoop("0 to 8 mm/s rms").reading(current);
      expect(() => judge(dead, machine)).toThrow(/below it/);
      expect(() => classify(dead, { scheme: "iso-20816-3-2022", machine: "group 1 rigid" })).toThrow(/below it/);
    }
  });
});

describe("the limit for a reading in decibels", () => {
  it("is a level of the same reference, and as printed a velocity", () => {
    const { limit } = classify("120 dB re 1 nm/s", { scheme: "iso-20816-3-2022", machine: "group 1 rigid" });
    // 2.3 mm/s RMS is 2.3e6 nm/s, and 20 lg (2.3e6) dB re 1 nm/s
    expect(limit.value).toBeCloseTo(2.3e6, 3);
    expect(limit.unit).toBe("nm/s");
    expect(limit.level?.decibels).toBeCloseTo(20 * Math.log10(2.3e6), 9);
    expect(limit.printed).toMatchObject({ value: 2.3, unit: "mm/s" });
    expect(format({ ...limit, quantity: "velocity", hertz: undefined } as Amplitude)).toBe("127.2 dB re 1 nm/s");
  });
});

describe("a number of single precision at a limit", () => {
  it("is at the limit", () => {
    // ISO 10816-7:2009 category II to 200 kW: 3.2, 5.1, 8.5 mm/s RMS, from memory
    for (const [limit, zone] of [
      [3.2, "A"],
      [5.1, "B"],
      [8.5, "C"],
    ] as const) {
      const machine = "pump 90 kW 2980 rpm category II";
      for (const value of [limit, Math.fround(limit)]) expect(judge(`${value} mm/s rms`, machine).zone).toBe(zone);
      expect(judge(`${limit * 1.000001} mm/s rms`, machine).zone).not.toBe(zone);
    }
  });
});

describe("a crest factor that a reading brings along", () => {
  it("is taken out again by a judgement", () => {
    const peak = convertAmplitude("2 mm/s rms", "mm/s pk", { crestFactor: 4 });
    expect(peak.value).toBe(8);
    const verdict = classify(peak, { scheme: "iso-20816-3-2022", machine: "group 1 rigid" });
    expect(verdict.judged.value).toBe(2);
    expect(verdict.zone).toBe("A");
  });
});

describe("a power that was left out", () => {
  it("leaves the schemes on both sides of the edge, and the worse in the data", () => {
    // ISO 10816-1:1995 Annex B class I, to 15 kW: 0.71, 1.8, 4.5 mm/s RMS
    expect(zoneOf(2, [0.71, 1.8, 4.5])).toBe("C");
    expect(zoneOf(2, group2.velocity)).toBe("B");
    expect(judge("2.0 mm/s rms", "motor 5.5 kW 1485 rpm rigid").zone).toBe("C");
    expect(judge("2.0 mm/s rms", "motor 1485 rpm rigid")).toMatchObject({
      headline: "zone B to C",
      zone: "C",
      word: "state the power",
    });
  });
});

describe("a speed outside those of a scheme", () => {
  it("leads to no withdrawn scheme with higher limits: it is refused", () => {
    // ISO 3945 (1985), withdrawn, against ISO 10816-4 for 3000 to 20000 r/min
    for (const machine of ["gas turbine", "gas turbine generating set", "generating set driven by gas turbine,"])
      expect(() => judge("9 mm/s rms", `${machine} 5 MW 1500 r/min rigid`), machine).toThrow(/ISO 10816-4: for speed/);
    expect(judge("9 mm/s rms", "gas turbine 5 MW 3000 r/min rigid").zone).toBe("B");
    // with the speed open the withdrawn one still tells the worse zone
    expect(judge("9 mm/s rms", "gas turbine 5 MW rigid").worst).toBe("C");
  });
});
