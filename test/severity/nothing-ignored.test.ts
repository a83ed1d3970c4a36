import fc from "fast-check";
import { classify, judge, type MachineRef, machineClassifier, schemeById, schemesFor } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { lowestLimits } from "../../src/severity/lowest-limits";
import { matchMachine } from "../../src/severity/match-machine";
import { siteRule, zonesIn } from "./own-scheme";

const aside = (machine: MachineRef, reading = "2 mm/s rms") => judge(reading, machine).setAside;

describe("what was given and plays no part", () => {
  it("is named with the scheme that does not ask for it", () => {
    const pump = "pump 90 kW 2980 r/min category II";
    expect(aside(pump)).toEqual([]);
    const iso = "plays no part in ISO 10816-7 (2009)";
    expect(aside(`${pump} class II`)).toEqual([`class II: ${iso}`]);
    expect(aside(`${pump} rigid`)).toEqual([`support rigid: ${iso}`]);
    expect(aside(`${pump} measuring height 2.5 m`)).toEqual([`height 2.5 m: ${iso}`]);
    expect(aside("motor 200 hp frame NEMA 1800 r/min new rigid")).toEqual([
      expect.stringMatching(/^power 149\.14 kW: plays no part in NEMA MG 1/),
    ]);
  });

  it("is no fact that decides elsewhere: kind, place, condition, speed, natural frequency", () => {
    expect(aside("gear drive 90 kW 1480 r/min natural 65 Hz housing in service")).toEqual([]);
    // a power stands in for a shaft height; the mounting on a test bed says nothing of the support on site
    expect(aside("motor 250 kW 355 mm 1480 r/min rigid housing")).toEqual([]);
    expect(aside("motor 250 kW 355 mm 1480 r/min mounting free housing")).toEqual([
      "mounting free: plays no part in ISO 20816-3 (2022)",
    ]);
  });

  it("is a word that is not understood, with the nearest, and it changes nothing", () => {
    const plain = judge("4.1 mm/s rms", "pump 90 kW 2980 r/min category II");
    const odd = judge("4.1 mm/s rms", "pump 90 kW 2980 r/min category II rigdi green");
    expect(odd.setAside[0]).toMatch(/^"rigdi": not understood \(did you mean rigid/);
    expect(odd.setAside[1]).toMatch(/^"green": not understood/);
    expect([odd.zone, odd.machine, odd.scheme]).toEqual([plain.zone, plain.machine, plain.scheme]);
    expect(() => judge("4.1 mm/s rms", "pump 90 kW 2980 r/min category II green", { assume: "nothing" })).toThrow(
      /green/,
    );
  });

  it("is that a machine is new, where no acceptance limits are for such a machine", () => {
    const gear = "gear drive, 300 kW, 600 r/min, housing, new";
    const told = "condition new: no acceptance limits for such a machine; judged as in service";
    expect(aside(gear)).toEqual([told]);
    expect(machineClassifier(gear, "mm/s rms").setAside).toEqual([told]);
    expect(schemesFor(gear)[0]?.setAside).toEqual([told]);
    expect(judge("2 mm/s rms", gear).zone).toBe(judge("2 mm/s rms", gear.replace("new", "in service")).zone);
    expect(() => judge("2 mm/s rms", gear, { assume: "nothing" })).toThrow(/condition new/);
    // IEC 60034-14 tests new motors
    const motor = judge("1 mm/s rms", "motor 90 kW 280 mm 1485 r/min mounting free grade A new housing");
    expect([motor.kind, motor.setAside.filter((one) => one.startsWith("condition"))]).toEqual(["acceptance", []]);
  });

  it("is told of each of several schemes", () => {
    const { judgements, setAside } = judge("2 mm/s rms", "compressor 1485 r/min rigid test works");
    expect(setAside).toHaveLength(2);
    for (const one of judgements) expect(one.setAside.join()).toMatch(/test works: plays no part/);
  });
});

describe("a running speed outside the measuring band", () => {
  const told = (machine: string, reading = "2 mm/s rms") =>
    judge(reading, machine).cautions.filter((one) => one.startsWith("1x of"));

  it("is told with what is read there", () => {
    // a third-order edge: 1/sqrt(1 + (10/8)^6) = 0.456 of a sine at 8 Hz remains, where the band begins at 10 Hz
    expect(1 / Math.sqrt(1 + (10 / 8) ** 6)).toBeCloseTo(0.456, 3);
    const pump = (speed: string) => `reciprocating engine 500 kW ${speed} class 3`;
    expect(told(pump("480 r/min"))).toEqual([]); // from 2 Hz
    expect(told(pump("90 r/min"))).toEqual([
      "1x of 90 r/min is 1.5 Hz, outside the measuring band of 2 to 1000 Hz: a reading in that band holds about 39 % of it",
    ]);
    expect(1 / Math.sqrt(1 + (2 / 1.5) ** 6)).toBeCloseTo(0.389, 3);
  });

  it("is told of both ends of a range, and of nothing where the speed is unknown or within", () => {
    const scheme = siteRule("12", { band: [10, 1000] });
    const cautions = (machine: MachineRef) =>
      classify("1 mm/s rms", { scheme, machine }).cautions.filter((one) => one.startsWith("1x of"));
    expect(cautions("fan")).toEqual([]);
    expect(cautions("fan 600 r/min")).toEqual([]);
    expect(cautions("fan 300 to 900 r/min")).toHaveLength(1);
    expect(cautions("fan 60 r/min")[0]).toMatch(/less than 1 % of it$/);
    expect(cautions("fan 300 to 480 r/min")).toHaveLength(2);
  });
});

describe("the lowest of each limit of the rows that are open", () => {
  const limits = fc.uniqueArray(fc.double({ min: 0.1, max: 50, noNaN: true }), { minLength: 3, maxLength: 3 });
  const rows = fc.array(
    limits.map((all) => all.sort((a, b) => a - b)),
    { minLength: 2, maxLength: 5 },
  );

  it("is the minimum over the rows, and judges no reading better than any of them", () => {
    fc.assert(
      fc.property(rows, fc.double({ min: 0.05, max: 60, noNaN: true }), (all, value) => {
        const classes = all.map(([a, b, c], i) => ({
          when: { part: `part ${i}` },
          criteria: [zonesIn("mm/s rms", { "A/B": a as number, "B/C": b as number, "C/D": c as number })],
        }));
        const scheme = siteRule("12", { classes });
        const lowest = lowestLimits(scheme, matchMachine(scheme, {}));
        const least = [0, 1, 2].map((k) => Math.min(...all.map((row) => row[k] as number)));
        expect(Object.values(lowest?.criteria[0]?.limits ?? {})).toEqual(least);
        const reading = `${value} mm/s rms`;
        const { zone } = classify(reading, { scheme, machine: {}, assume: "lowest limits" });
        const each = classes.map(({ when }) => classify(reading, { scheme, machine: when }).zone);
        expect(zone).toBe(each.sort().at(-1));
      }),
      { numRuns: 300 },
    );
  });

  it("stays ascending where rows have different limits, and each limit keeps its source", () => {
    const classes = [
      { when: { part: "one" }, criteria: [zonesIn("mm/s rms", { "A/B": 3, "C/D": 9 })] },
      {
        when: { part: "other" },
        criteria: [zonesIn("mm/s rms", { "B/C": 2, "C/D": 8 }, { title: "Other rule", provenance: "memory" })],
      },
    ];
    const scheme = siteRule("12", { classes });
    const lowest = lowestLimits(scheme, matchMachine(scheme, {}));
    const [criterion] = lowest?.criteria ?? [];
    expect(criterion?.limits).toEqual({ "A/B": 2, "B/C": 2, "C/D": 8 });
    expect(criterion?.limitSources?.["C/D"]?.title).toBe("Other rule");
    expect(criterion?.limitSources?.["A/B"]?.title).toBe("Site rule");
  });

  it("of built-in rows is what any of them would come to", () => {
    const scheme = schemeById("iso-14694-2003");
    const lowest = lowestLimits(scheme, matchMachine(scheme, { type: "fan" }));
    for (const criterion of lowest?.criteria ?? []) {
      for (const [name, value] of Object.entries(criterion.limits)) {
        const all = scheme.classes
          .flatMap((one) => one.criteria.filter(({ as }) => as === criterion.as))
          .map((one) => (one.limits as Record<string, number | null>)[name])
          .filter((one) => typeof one === "number");
        expect(value, `${criterion.as} ${name}`).toBe(Math.min(...all));
      }
    }
  });
});
