import {
  classify,
  type FanApplication,
  fanCategoryRule,
  judge,
  type Machine,
  machineNotes,
  parseMachine,
} from "veladis/severity";
import { describe, expect, it } from "vitest";

// ANSI/AMCA 204-96, Table 4-1, three pages on a scan (https://es.scribd.com/document/406049291/Balanceo-dinamico),
// typed from the reading notes and not from the table of the library: application, at and above which power
const printed: readonly (readonly [FanApplication, number, string, string])[] = [
  ["residential", 0.15, "BV-1", "BV-2"],
  ["HVAC", 3.7, "BV-2", "BV-3"],
  ["agricultural", 3.7, "BV-2", "BV-3"],
  ["industrial", 298, "BV-3", "BV-4"],
  ["transport", 15, "BV-3", "BV-4"],
  ["tunnel", 75, "BV-3", "BV-4"],
  ["tunnel jet fan", 30, "BV-4", "BV-4"],
  ["petrochemical", 37, "BV-3", "BV-4"],
  ["chip making", 5, "BV-5", "BV-5"],
];

const inAmca = (machine: Machine | string) =>
  classify("0.2 in/s pk", { scheme: "ansi-amca-204-05", machine, assume: "lowest limits" });

describe("a fan's category by its application and power", () => {
  it.each(printed)("%s: the power that is printed belongs to the lower category", (application, power, at, above) => {
    for (const [kilowatts, category] of [
      [power, at],
      [power + 1, above],
    ] as const) {
      const fan: Machine = { type: "fan", application, power: { kilowatts }, support: "rigid" };
      const words = `fan ${application} ${kilowatts} kW rigid`;
      const named = inAmca({ ...fan, category });
      for (const machine of [fan, words]) {
        const { machine: known, assumedFacts, limit } = inAmca(machine);
        expect(known.category).toBe(category);
        expect(limit.value).toBe(named.limit.value);
        expect(assumedFacts.join("; ")).toMatch(
          new RegExp(`category ${category}: by application ${application}.*Table 4-1 of ANSI/AMCA 204-96, reported`),
        );
      }
      for (const other of ["BV-1", "BV-2", "BV-3", "BV-4", "BV-5"].filter((one) => one !== category)) {
        expect(() => inAmca({ ...fan, category: other }), other).toThrow(/a category that agrees with the application/);
      }
    }
  });

  it("is all of the table", () => {
    expect(Object.keys(fanCategoryRule.applications)).toEqual(printed.map(([application]) => application));
    expect(fanCategoryRule.source.provenance).toBe("reported");
  });

  it.each([
    ["HVAC fan 90 kW", "HVAC"],
    ["fan, application HVAC, 90 kW", "HVAC"],
    ["industrial process fan 90 kW", "industrial"],
    ["tunnel ventilation fan 90 kW", "tunnel"],
    ["tunnel jet fan 90 kW", "tunnel jet fan"],
    ["jet fan 90 kW", "tunnel jet fan"],
    ["marine fan 11 kW", "transport"],
    ["clean room fan 4 kW", "chip making"],
  ])("%s", (words, application) => {
    expect(parseMachine(words)).toMatchObject({ type: "fan", application });
  });

  it("a word that is taken for an application is named", () => {
    expect(machineNotes("AHU fan 5 kW").assumedFacts).toEqual([
      'application HVAC: for "AHU"',
      "category BV-3: by application HVAC, power above 3.7 kW (Table 4-1 of ANSI/AMCA 204-96, reported)",
    ]);
  });

  it("two applications, and one that there is none of, are refused", () => {
    expect(() => parseMachine("industrial HVAC fan")).toThrow(/one application/);
    expect(() => judge("4 mm/s rms", { type: "fan", application: "bakery" as FanApplication })).toThrow(
      /what the fan is for/,
    );
  });

  it("with a power that leaves two categories open, the lowest limits are taken as ever", () => {
    for (const fan of ["fan HVAC rigid", "fan HVAC 2 to 5 kW rigid"]) {
      expect(inAmca(fan).limit.value).toBeLessThanOrEqual(inAmca("fan HVAC 5 kW rigid").limit.value as number);
      expect(() => classify("0.2 in/s pk", { scheme: "ansi-amca-204-05", machine: fan })).toThrow(/category: /);
    }
  });

  it.each([
    ["fan HVAC 2 to 5 kW rigid", "BV-2 or BV-3", "BV-3", ", power 2 to 5 kW"],
    ["fan HVAC rigid", "BV-2 or BV-3", "BV-3", ""],
  ])("%s: the lower limits of %s, and of no other category, and the answer says so", (fan, open, lower, size) => {
    const { limit, assumedFacts, setAside } = inAmca(fan);
    expect(limit.value).toBe(inAmca(`fan ${lower} rigid`).limit.value);
    expect(assumedFacts).toContain(
      `category ${open}: by application HVAC${size} (Table 4-1 of ANSI/AMCA 204-96, reported)`,
    );
    expect(setAside.join()).not.toContain("application");
  });

  it.each(["fan 4.2 kVA cos phi 0,85 HVAC rigid", "fan 4.2 kVA HVAC rigid", "fan 30 kVA HVAC rigid"])(
    "%s: kVA is what its motor takes in, and gives no category",
    (fan) => expect(() => inAmca(fan)).toThrow("kVA is what the motor takes in"),
  );

  it.each([0.2, 5, 30, 290])("residential at %s kW is BV-2: the table ends it nowhere", (power) => {
    const { machineClass, assumedFacts } = judge("2 mm/s rms", `residential fan ${power} kW 1480 r/min rigid`);
    expect(machineClass.category).toBe("BV-2");
    expect(assumedFacts.join()).toContain("category BV-2: by application residential, power above 0.15 kW");
  });

  it.each([
    "fan for heating and ventilating",
    "fan for HVAC",
    "heating and ventilating fan",
    "fan for the heating and ventilating",
  ])("%s is HVAC", (words) =>
    expect(parseMachine(`${words} 5 kW`)).toMatchObject({ type: "fan", application: "HVAC" }),
  );

  it("for heating and cooling is no application, and is named", () => {
    expect(parseMachine("fan for heating and cooling 5 kW")).not.toHaveProperty("application");
    expect(machineNotes("fan for heating and cooling 5 kW").notUnderstood.map(({ word }) => word)).toContain("for");
  });

  it("not told, the lowest limits are taken as ever", () => {
    expect(judge("2 mm/s rms", "fan 90 kW 1485 r/min rigid").machineClass.category).toBe("BV-5");
  });

  // ANSI/AMCA 204-96, Table 4-1, prints both: 3.7 kW (5 hp), 298 kW (400 hp), 37 kW (50 hp)
  it.each([
    ["HVAC fan 5 hp", "BV-2"],
    ["HVAC fan 5.1 hp", "BV-3"],
    ["HVAC fan 3.72 kW", "BV-3"],
    ["petrochemical fan 50 hp", "BV-3"],
    ["petrochemical fan 51 hp", "BV-4"],
    ["industrial fan 400 hp", "BV-3"],
    ["industrial fan 401 hp", "BV-4"],
  ])("%s, at an edge that is printed in horsepower too, is %s", (fan, category) => {
    expect(machineNotes(fan).assumedFacts.join()).toContain(`category ${category}`);
  });

  it("that told the category is not set aside", () => {
    const { assumedFacts, setAside } = judge("2 mm/s rms", "HVAC fan 5.1 hp 1485 r/min rigid");
    expect(assumedFacts.join()).toContain("category BV-3: by application HVAC");
    expect(setAside.join()).not.toContain("application");
  });

  it("beside another kind of machine it plays no part, and is named", () => {
    const { setAside } = judge("2 mm/s rms", "industrial pump 90 kW 2980 r/min rigid category II");
    expect(setAside).toContain("application industrial: plays no part in ISO 10816-7 (2009)");
  });
});

describe("a fan above 300 kW told with a category", () => {
  it("is judged by ISO 20816-3, and the answer names the fan table", () => {
    for (const fan of ["fan 400 kW 1485 r/min rigid BV-4", "industrial fan 400 kW 1485 r/min rigid"]) {
      const { scheme, cautions } = judge("4 mm/s rms", fan);
      expect(scheme).toBe("iso-20816-3-2022");
      expect(cautions.join()).toMatch(/ansi-amca-204-05, taken by name.*the worse governs/);
    }
    expect(judge("4 mm/s rms", "fan 400 kW 1485 r/min rigid").cautions.join()).not.toMatch(/amca/);
  });

  it("by the fan table, taken by name, the answer names ISO 20816-3", () => {
    const cautions = (machine: string) => inAmca(machine).cautions.join();
    expect(cautions("fan 400 kW rigid BV-4")).toMatch(/ISO 20816-3 is for it too.*the worse governs/);
    expect(cautions("fan 90 kW rigid BV-4")).not.toMatch(/ISO 20816-3/);
  });
});
