import fc from "fast-check";
import { VeladisError } from "veladis";
import { type Machine, machineTypes, parseMachine } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { contains, intervalText } from "../../src/severity/interval";
import { knownFacts } from "../../src/severity/machine";
import { kilowattsPer } from "../../src/severity/size";

// biome-ignore format: a row of a table is a line
const lines: [line: string, facts: object][] = [
  ["pump 90 kW 2980 r/min rigid", { type: "pump", power: 90, speed: 2980, support: "rigid" }],
  ["boiler-feed pump, 1.2 MW, 2980 rpm", { type: "pump", power: 1200, speed: 2980 }],
  ["Induced-draught fan 250kW flexible BV3", { type: "fan", power: 250, support: "flexible", category: "BV-3" }],
  ["motor H 315 mm natural frequency 65 Hz 24.8 Hz", { type: "motor", shaftHeight: 315, naturalFrequency: 65, speed: 1488 }],
  ["natural 65 Hz, 1490 r/min", { naturalFrequency: 65, speed: 1490 }],
  ["group 2 rigid support", { group: "2", support: "rigid" }],
  ["class=III shaft new", { class: "III", place: "shaft", condition: "new" }],
  ['part "cylinder rod" in service', { part: "cylinder rod", condition: "in service" }],
  ["steam turbine set 50 MW 3000 r/min housing", { type: "steam turbine", power: 50000, speed: 3000, place: "housing" }],
  ["gearbox 100 hp", { type: "gear drive", power: 74.56998715822702 }],
  ["part gearbox band high", { part: "gearbox", band: "high" }],
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

describe("sizes", () => {
  // NIST SP 811 Appendix B.8: horsepower (550 ft lbf/s) 745.699 9 W, (metric) 735.498 8 W; from memory
  it("horsepower", () => {
    expect(kilowattsPer.hp).toBeCloseTo(0.7456999, 7);
    expect(kilowattsPer.hp).toBeCloseTo((550 * 0.3048 * 0.45359237 * 9.80665) / 1000, 15);
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
    const machine: Machine = { type: "pump", power: "90 kW", speed: "2980 r/min", shaftHeight: { millimetres: 280 } };
    expect(knownFacts(machine).power).toBe(90);
    // @ts-expect-error no such kind of machine
    const type: Machine = { type: "toaster" };
    // @ts-expect-error a number without its unit
    const power: Machine = { power: 90 };
    // @ts-expect-error no such fact
    const fact: Machine = { colour: "red" };
    for (const wrong of [type, power, fact]) expect(() => knownFacts(wrong)).toThrow(VeladisError);
  });
});
