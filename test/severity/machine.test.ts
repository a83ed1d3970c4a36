import fc from "fast-check";
import { VeladisError } from "veladis";
import {
  conditionText,
  type Machine,
  machineNotes,
  machineTypes,
  type NotUnderstood,
  parseMachine,
} from "veladis/severity";
import { describe, expect, expectTypeOf, it } from "vitest";
import { same } from "../../src/core/float-noise";
import { contains, intervalText } from "../../src/severity/interval";
import { labelKey } from "../../src/severity/label";
import { type FactValue, knownFacts } from "../../src/severity/machine";
import { machineFacts } from "../../src/severity/machine-facts";
import { kilowattsPer, type PowerText } from "../../src/severity/size";

// biome-ignore format: a row of a table is a line
const lines: [line: string, facts: object][] = [
  ["pump 90 kW 2980 r/min rigid", { type: "pump", power: 90, speed: 2980, support: "rigid" }],
  ["boiler-feed pump, 1.2 MW, 2980 rpm", { type: "pump", power: 1200, speed: 2980 }],
  ["Induced-draught fan 250kW flexible BV3", { type: "fan", power: 250, support: "flexible", category: "BV-3" }],
  ["motor H 315 mm natural frequency 65 Hz 24.8 Hz", { type: "motor", shaftHeight: 315, frame: "IEC", naturalFrequency: 65, speed: 1488 }],
  ["natural 65 Hz, 1490 r/min", { naturalFrequency: 65, speed: 1490 }],
  ["group 2 rigid support", { group: "2", support: "rigid" }],
  ["class=III shaft new", { class: "III", place: "shaft", condition: "new" }],
  ['part "cylinder rod" in service', { part: "cylinder rod", condition: "in service" }],
  ["steam turbine set 50 MW 3000 r/min housing", { type: "steam turbine", power: 50000, speed: 3000, place: "housing" }],
  ["gearbox 100 hp", { type: "gear drive", power: 74.56998715822702 }],
  ["part gearbox band high", { part: "gearbox", band: "high" }],
  ["24.8 Hz motor", { type: "motor", speed: 1488 }],
  ["Natural: 65 Hz, 1490 r/min", { naturalFrequency: 65, speed: 1490 }],
  ["natural frequency of = 65 Hz 1490 r/min", { naturalFrequency: 65, speed: 1490 }],
  ["part natural 25 Hz", { part: "natural", speed: 1500 }],
  ["motor rated 90 kW at 1490 r/min with a shaft height 280 mm", { type: "motor", power: 90, speed: 1490, shaftHeight: 280, frame: "IEC" }],
  ["motor, shaft height 280 mm rated", { type: "motor", shaftHeight: 280, frame: "IEC" }],
  ["with=rigid 90 kW", { support: "rigid", power: 90 }],
  ["GROUP 2 Class: III", { group: "2", class: "III" }],
  ["bv 3 fan", { type: "fan", category: "BV-3" }],
  ["pump rigid, pump, rigid support", { type: "pump", support: "rigid" }],
  ["cooling  tower  drive 90 kW,rigid;new", { type: "cooling tower drive", power: 90, support: "rigid", condition: "new" }],
  ['part "rod 2, inner" flexible', { part: "rod 2, inner", support: "flexible" }],
  ['part "rod"rigid 90 kW', { part: "rod", support: "rigid", power: 90 }],
  ["  fan\n", { type: "fan" }],
];

describe("a machine in words", () => {
  it.each(lines)("%s", (line, facts) => {
    const known = knownFacts(parseMachine(line));
    expect(Object.keys(known).sort()).toEqual(Object.keys(facts).sort());
    for (const [fact, value] of Object.entries(facts)) {
      const own = known[fact as keyof typeof known];
      if (typeof value === "number") expect(own).toBeCloseTo(value, 9);
      else expect(own).toBe(value);
    }
  });

  it("every kind of machine and other name for one is read", () => {
    for (const [type, { also }] of Object.entries(machineTypes)) {
      for (const name of [type, ...also]) expect(parseMachine(`${name} 90 kW`), name).toEqual({ type, power: "90 kW" });
    }
  });

  it("may be 300 characters long, without the white space about it", () => {
    const part = "x".repeat(300 - 'part ""'.length);
    expect(parseMachine(` part "${part}" `)).toEqual({ part });
    expect(() => parseMachine(`part "${part}x"`)).toThrow(/such as "pump 90 kW/);
  });

  it("junk is refused with a short message, whatever it is", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 400 }), (junk) => {
        try {
          parseMachine(junk);
        } catch (error) {
          expect(error).toBeInstanceOf(VeladisError);
          expect((error as Error).message.length).toBeLessThan(700);
        }
      }),
      { numRuns: 2000 },
    );
  });
});

describe("a machine as data", () => {
  it("may hold numbers for labels, white space, any name of its kind, and parts that are undefined", () => {
    const machine = { type: "gearbox", group: 2, category: " II ", power: undefined, speed: { hertz: 25 } };
    expect(knownFacts(machine as unknown as Machine)).toStrictEqual({
      type: "gear drive",
      group: "2",
      category: "II",
      speed: 1500,
    });
  });

  it("has the frame that the unit of its shaft height belongs to, unless one is stated", () => {
    const frame = (machine: Machine) => knownFacts(machine).frame;
    expect(frame({ shaftHeight: "280 mm" })).toBe("IEC");
    expect(frame({ shaftHeight: { millimetres: 279.4 } })).toBe("IEC");
    expect(frame({ shaftHeight: "11 in" })).toBe("NEMA");
    expect(frame({ shaftHeight: "11 in", frame: "IEC" })).toBe("IEC");
    expect(frame({ shaftHeight: "280 mm", frame: "nema" as "NEMA" })).toBe("NEMA");
    expect(frame({ power: "90 kW" })).toBeUndefined();
  });

  it("keeps notes that are no facts", () => {
    const notes = {
      assumedFacts: ['support rigid: for "grouted"'],
      notUnderstood: [{ word: "rigd", didYouMean: ["rigid"] }],
    };
    const machine: Machine = { type: "pump", ...notes };
    expect(knownFacts(machine)).toEqual({ type: "pump" });
    expect(machineNotes(machine)).toEqual(notes);
    expect(machineNotes("pump grouted, rigd")).toEqual(notes);
    expect(machineNotes({})).toEqual({ assumedFacts: [], notUnderstood: [] });
    expect(JSON.parse(JSON.stringify(parseMachine("pump grouted rigd")))).toEqual(parseMachine("pump grouted rigd"));
    expectTypeOf(machineNotes("pump").notUnderstood).toEqualTypeOf<readonly NotUnderstood[]>();
    // @ts-expect-error a text is no list of words
    expect(() => machineNotes({ notUnderstood: "rigd" })).toThrow(VeladisError);
  });

  it("has a support over a range of speeds where it is the same at both ends", () => {
    const support = (machine: string) => machineFacts(machine).support;
    expect(support("900 to 1800 r/min natural 65 Hz")).toBe("rigid");
    expect(support("900 to 1800 r/min natural 15 Hz")).toBe("flexible");
    expect(support("900 to 1800 r/min natural 30 Hz")).toBeUndefined();
    expect(support("900 to 1800 r/min natural 30 Hz rigid")).toBe("rigid");
    expect(() => support("900 to 1800 r/min natural 15 Hz rigid")).toThrow(/flexible support/);
  });

  it("has the support that its natural frequency and speed give, where both are told", () => {
    const support = (machine: string) => machineFacts(machine).support;
    expect(support("1500 r/min natural 20 Hz")).toBe("flexible");
    expect(support("1500 r/min natural 20 Hz flexible")).toBe("flexible");
    expect(support("1500 r/min natural 65 Hz rigid")).toBe("rigid");
    expect(support("1500 r/min rigid")).toBe("rigid");
    expect(support("1500 r/min")).toBeUndefined();
    expect(support("natural 65 Hz")).toBeUndefined();
  });
});

describe("labels", () => {
  it("are the same without regard to case and marks, Roman numerals to XII as Arabic ones", () => {
    const pairs = [
      ["II", "2"],
      ["category I", "Category i"],
      ["xii", "12"],
      ["BV-3", "bv 3"],
      ["cylinder (rod)", "Cylinder rod"],
    ];
    for (const [a = "", b = ""] of pairs) expect(labelKey(a), a).toBe(labelKey(b));
    const roman = ["I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X", "XI", "XII"];
    expect(roman.map(labelKey)).toEqual(roman.map((_, i) => String(i + 1)));
    expect(labelKey("XIII")).toBe("xiii");
    expect(labelKey("BV-III")).not.toBe(labelKey("BV-3"));
  });
});

describe("sizes", () => {
  it("are read with white space about them, to 40 characters", () => {
    const spaced = (characters: number) => `90${" ".repeat(characters - 4)}kW` as PowerText;
    expect(knownFacts({ power: " 90 kW " as PowerText }).power).toBe(90);
    expect(knownFacts({ power: spaced(40) }).power).toBe(90);
    expect(() => knownFacts({ power: spaced(41) })).toThrow(/such as "90 kW"/);
  });

  // NIST SP 811 Appendix B.8: horsepower (550 ft lbf/s) 745.699 9 W, (metric) 735.498 8 W; from memory
  it("horsepower", () => {
    expect(kilowattsPer.hp).toBeCloseTo(0.7456999, 7);
    expect(kilowattsPer.hp).toBeCloseTo((550 * 0.3048 * 0.45359237 * 9.80665) / 1000, 15);
    expect(kilowattsPer.bhp).toBe(kilowattsPer.hp);
    expect(kilowattsPer.PS).toBe(0.73549875);
  });

  it("ranges take their bounds in or not, whatever the float noise", () => {
    expect(contains({ above: 15, to: 300 }, 15)).toBe(false);
    expect(contains({ above: 15, to: 300 }, 15 * (1 + 1e-12))).toBe(false);
    expect(contains({ above: 15, to: 300 }, 15.001)).toBe(true);
    expect(contains({ above: 15, to: 300 }, 300 * (1 + 1e-12))).toBe(true);
    expect(contains({ from: 160, below: 315 }, 160 * (1 - 1e-12))).toBe(true);
    expect(contains({ from: 160, below: 315 }, 315 * (1 - 1e-12))).toBe(false);
    expect(contains({ oneOf: [1500, 1800] }, (1500 / 60) * 60)).toBe(true);
    expect(contains({}, 1)).toBe(true);
  });

  it("numbers are the same but for float noise of a relative 2^-23", () => {
    expect(same(0, 0)).toBe(true);
    expect(same(50, 50 * (1 + 0.99 * 2 ** -23))).toBe(true);
    expect(same(50, 50 * (1 + 1.01 * 2 ** -23))).toBe(false);
    expect(same(-50, -50 * (1 + 0.99 * 2 ** -23))).toBe(true);
    expect(same(50, -50)).toBe(false);
  });

  it("conditions in words", () => {
    expect(conditionText({})).toBe("");
    expect(conditionText({ support: ["rigid", "flexible"] })).toBe("support rigid or flexible");
    expect(conditionText({ group: "2", shaftHeight: { from: 160, below: 315 }, speed: { to: 600 } })).toBe(
      "group 2, shaft height 160 to below 315 mm, speed up to 600 r/min",
    );
  });

  it("ranges in words", () => {
    expect(intervalText({ above: 15, to: 300 }, "kW")).toBe("above 15 to 300 kW");
    expect(intervalText({ from: 160, below: 315 }, "mm")).toBe("160 to below 315 mm");
    expect(intervalText({ to: 15 }, "kW")).toBe("up to 15 kW");
    expect(intervalText({ above: 300 }, "kW")).toBe("above 300 kW");
    expect(intervalText({ from: 315 }, "mm")).toBe("315 mm or more");
    expect(intervalText({ below: 900 }, "r/min")).toBe("below 900 r/min");
    expect(intervalText({ oneOf: [1500, 1800] }, "r/min")).toBe("1500 or 1800 r/min");
    expect(intervalText({}, "r/min")).toBe("any, in r/min");
  });
});

describe("types", () => {
  it("know the facts", () => {
    const machine: Machine = { type: "motor", power: "90 kW", speed: "2980 r/min", shaftHeight: { millimetres: 280 } };
    expect(knownFacts(machine).power).toBe(90);
    const varied: Machine = { speed: { from: "900 r/min", to: { hertz: 30 } }, height: { metres: 2.5 }, frame: "NEMA" };
    expectTypeOf(knownFacts(varied).speed).toEqualTypeOf<FactValue | undefined>();
    expect(knownFacts(varied)).toEqual({ speed: [900, 1800], height: 2.5, frame: "NEMA" });
    // @ts-expect-error a range from nowhere
    const range: Machine = { speed: { to: "1800 r/min" } };
    // @ts-expect-error no such system of frames
    const frame: Machine = { frame: "JIS" };
    // @ts-expect-error no such kind of machine
    const type: Machine = { type: "toaster" };
    // @ts-expect-error a number without its unit
    const power: Machine = { power: 90 };
    // @ts-expect-error no such fact
    const fact: Machine = { colour: "red" };
    for (const wrong of [type, power, fact, range, frame]) expect(() => knownFacts(wrong)).toThrow(VeladisError);
  });
});
