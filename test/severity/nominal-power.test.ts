import fc from "fast-check";
import { judge, limitsFor, type SchemeId } from "veladis/severity";
import { describe, expect, it } from "vitest";

const pump = (power: string) => judge("4.1 mm/s rms", `pump ${power} 2980 r/min category II`);

// 1 hp = 0.74569987 kW, 1 PS = 0.73549875 kW (NIST SP 811); 200 kW stands beside 270 hp and 272 PS, 75 kW beside 100 hp,
// 300 kW beside 400 hp: common practice, no source
describe("a round horsepower at an edge of a table", () => {
  it.each(["270 hp", "272 PS", "270 bhp"])(
    "%s is above 200 kW and stands beside it: the lower limits, named",
    (power) => {
      const { machineClass, assumedFacts } = pump(power);
      expect(machineClass).toEqual(pump("200 kW").machineClass);
      expect(assumedFacts.join("; ")).toMatch(
        /power 200 to 20[01][.\d]* kW: .* is 20[01][.\d]* kW, and stands beside 200 kW in tables; power up to 200 kW: given as .*, and taken for its lower limits/,
      );
    },
  );

  it.each([
    ["268 hp", "200 kW"],
    ["200 hp", "200 kW"],
    ["271 hp", "201 kW"],
    ["270.5 hp", "201 kW"],
    ["300 hp", "201 kW"],
    ["201.34 kW", "201 kW"],
    ["200.1 kW", "201 kW"],
  ])("%s is exact: on the side of %s, and nothing is assumed", (power, like) => {
    const { machineClass, assumedFacts } = pump(power);
    expect(machineClass).toEqual(pump(like).machineClass);
    expect(assumedFacts.join()).not.toContain("stands beside");
  });

  it("100.5 hp is 74.94 kW and 100 hp 74.57: no row ends there, and nothing is assumed", () => {
    for (const power of ["100.5 hp", "100 hp", "75 kW"])
      expect(judge("2 mm/s rms", `motor ${power} 1480 r/min rigid`).assumedFacts.join()).not.toContain("in tables");
  });

  it("where the two readings lead to limits of two kinds the power is asked for, with both", () => {
    expect(() => judge("2 mm/s rms", "fan 400 hp 1480 r/min rigid BV-3")).toThrow(
      /power: the rated power in kW, received power 298 to 300 kW: 400 hp is 298\.28 kW, and stands beside 298 or 300 kW in tables; limits differ within/,
    );
    expect(judge("2 mm/s rms", "fan 298 kW 1480 r/min rigid BV-3").scheme).toBe("iso-14694-2003");
  });

  it("a category that the table prints to 3.7 kW and 5 hp holds for 5 hp", () => {
    expect(judge("2 mm/s rms", "fan 5 hp 1480 r/min rigid BV-2").machineClass.category).toBe("BV-2");
    expect(() => judge("2 mm/s rms", "fan 5.5 hp 1480 r/min rigid BV-2")).toThrow(/category and power agree/);
  });

  const tables: readonly (readonly [SchemeId, (power: string) => string])[] = [
    ["iso-10816-7-2009", (power) => `pump ${power} 2980 r/min category I`],
    ["iso-20816-3-2022", (power) => `compressor ${power} 1480 r/min rigid`],
    ["iso-2372-1974", (power) => `gear drive ${power} rigid`],
    ["lr-generating-sets", (power) => `genset ${power} 1500 r/min part generator`],
  ];
  const limits = (scheme: SchemeId, machine: string): readonly number[] => {
    const [first] = limitsFor({ scheme, machine, assume: "lowest limits" });
    return Object.values(first?.limits ?? {}).map(({ value }) => value);
  };
  it.each(tables)("%s: no horsepower has higher limits than its exact value", (scheme, machine) => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 3000 }),
        fc.constantFrom(["hp", 0.7456998715822702], ["PS", 0.73549875]),
        (count, [unit, each]) => {
          const kilowatts = Number((count * (each as number)).toPrecision(9));
          const exact = limits(scheme, machine(`${kilowatts} kW`));
          limits(scheme, machine(`${count} ${unit}`)).forEach(
            (one, i) => void expect(one).toBeLessThanOrEqual(exact[i] as number),
          );
        },
      ),
      { numRuns: 200 },
    );
  });
});
