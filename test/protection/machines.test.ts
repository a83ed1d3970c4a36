import fc from "fast-check";
import { convert } from "veladis";
import {
  balanceGrade,
  balanceGrades,
  centrifugalForce,
  gradeOfUnbalance,
  mechanicalSwitch,
  permissibleEccentricity,
  permissibleUnbalance,
  unbalanceOf,
} from "veladis/protection";
import { describe, expect, it } from "vitest";
import { expectAgreement } from "../references/agreement";
import { apiGrade, eccentricities, gradeSeries, planes, unbalances, workshopRule } from "../references/balance";

describe("balance against ISO 21940-11 and print", () => {
  it.each(eccentricities)("$id ($provenance): G $grade at $speed r/min", (reference) => {
    const { grade, speed } = reference;
    const found = permissibleEccentricity(grade, `${speed} r/min`);
    expectAgreement({ ...reference, statement: "", agrees: true }, found);
    const rotor = { mass: "100 kg", speed: `${speed} r/min` } as const;
    expect(gradeOfUnbalance(`${found * 100} g·mm`, rotor)).toBeCloseTo(grade, 9);
  });

  it("G08: the workshop rule is not reproduced", () => {
    expectAgreement(workshopRule, permissibleEccentricity(1, "1 r/min"));
    expect(permissibleEccentricity(1, "1 r/min")).toBeCloseTo(9549.29659, 4);
  });

  it("G02: the grades are the standard's", () => {
    expect([...balanceGrades]).toEqual([...gradeSeries.grades]);
    expect(permissibleUnbalance("G 6.3", { mass: "1 kg", speed: "1500 r/min" }).inSeries).toBe(true);
    expect(permissibleUnbalance("G 6", { mass: "1 kg", speed: "1500 r/min" }).inSeries).toBe(false);
  });

  it("G10: 6350 W / N is G 0.665", () => {
    expectAgreement(apiGrade, gradeOfUnbalance("6350 g·mm", { mass: "1 kg", speed: "1 r/min" }));
  });

  it.each(unbalances)("$id: $statement", (reference) => {
    expectAgreement(reference, unbalanceOf(reference.mass, reference.radius, "oz·in"));
  });

  it("permits a heavier rotor more, and writes the whole as an unbalance", () => {
    // e_per in um is g·mm per kg by definition, ISO 21940-11 clause 6, from memory
    const { unbalance, eccentricity, grade } = permissibleUnbalance("G 2.5", { mass: "80 kg", speed: "3000 r/min" });
    expect(unbalance).toBeCloseTo(80 * eccentricity, 9);
    expect(eccentricity).toBeCloseTo(eccentricities[0].printed, 2);
    expect(grade).toBe(2.5);
  });

  it.each(["G6.3", "G  6.3", " G 6.3 ", "g 6.3", "G 6.3 mm/s", "G 6.3mm/s"])("reads the grade %s", (written) => {
    expect(balanceGrade(written)).toBe(6.3);
  });

  it("G13: without distances each plane has half; a pound is sixteen ounces", () => {
    const { planes: split, unbalance } = permissibleUnbalance("G 2.5", { mass: "80 kg", speed: "2980 r/min" });
    expect(split.left).toBeCloseTo(unbalance * planes.half, 9);
    expect(split.right).toBe(split.left);
    expect(unbalanceOf("1 lb", "1 in", "oz·in")).toBeCloseTo(planes.ouncesPerPound, 12);
  });

  it("the plane nearer to the centre of mass has the greater share, and both make the whole", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 5000 }), (left, right) => {
        const found = permissibleUnbalance("G 6.3", {
          mass: "400 kg",
          speed: "1480 r/min",
          planes: { left: `${left} mm`, right: `${right} mm` },
        });
        expect(found.planes.left + found.planes.right).toBeCloseTo(found.unbalance, 6);
        // moments about the centre of mass balance, as for the static load on the two planes
        expect(found.planes.left * left).toBeCloseTo(found.planes.right * right, 3);
      }),
    );
  });

  it("the force is U omega squared, and warns that G is no housing limit", () => {
    expect(centrifugalForce("1000 g·mm", "3000 r/min")).toBeCloseTo(1e-3 * (100 * Math.PI) ** 2, 9);
    expect(permissibleUnbalance("G 6.3", { mass: "1 kg", speed: "1500 r/min" }).note).toMatch(
      /no reading on a housing/,
    );
  });

  it.each([
    ["G", "syntax"],
    ["6.3", "syntax"],
    ["about G 6.3", "syntax"],
    ["G 6.3\n40", "syntax"],
    ["G -1", "not-positive"],
    ["G 6.3 in/s", "syntax"],
  ])("refuses the grade %s", (grade, code) => {
    expect(() => balanceGrade(grade)).toThrow(expect.objectContaining({ code }));
  });

  it("reads an unbalance however its units are joined", () => {
    // the ounce is 28.349523125 g and the inch 25.4 mm, exactly: NIST SP 811, Appendix B.8, from memory
    const grams = 4 * 28.349523125 * 25.4;
    const force = centrifugalForce(`${grams} g·mm`, "3000 r/min");
    for (const unit of ["oz·in", "oz-in", "oz in", "oz.in", "oz * in", "oz ⋅ in"]) {
      expect(centrifugalForce(`4 ${unit}`, "3000 r/min")).toBeCloseTo(force, 9);
      expect(unbalanceOf("4 oz", "1 in", unit)).toBeCloseTo(4, 12);
    }
    for (const micro of ["um", "µm", "μm"]) expect(unbalanceOf("1 kg", `300 ${micro}`)).toBeCloseTo(300, 9);
    for (const odd of ["g·mm2", "2 g·mm", "g·mm·s", "g"]) {
      expect(() => unbalanceOf("1 kg", "1 mm", odd)).toThrow(expect.objectContaining({ code: "unknown-unit" }));
    }
  });

  it("refuses bare numbers and units it has none of", () => {
    expect(() => unbalanceOf("4", "2 in")).toThrow(expect.objectContaining({ code: "missing-unit" }));
    expect(() => unbalanceOf("4 stone", "2 in")).toThrow(expect.objectContaining({ code: "unknown-unit" }));
    expect(() => centrifugalForce("4 oz", "3000 r/min")).toThrow(expect.objectContaining({ code: "unknown-unit" }));
    expect(centrifugalForce("4 oz-in", "3000 r/min")).toBe(centrifugalForce("4 oz·in", "3000 r/min"));
  });
});

describe("an acceleration-operated switch", () => {
  it("stands for the velocity and displacement of a sine at each speed", () => {
    const { rows } = mechanicalSwitch("2 g pk", { speeds: ["900 r/min", "50 Hz"] });
    expect(rows.map(({ speed }) => speed)).toEqual([900, 3000]);
    for (const { hertz, velocity, displacement } of rows) {
      const at = { at: { hertz } };
      expect(velocity.value).toBeCloseTo(convert(2, "g pk", "mm/s rms", at), 9);
      expect(displacement.value).toBeCloseTo(convert(2, "g pk", "um pp", at), 6);
    }
  });

  it("cannot protect below the speed at which the limit makes just its setting", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.constantFrom("7.1 mm/s rms", "0.35 in/s pk", "100 um pp"),
        (g, limit) => {
          const setting = `${g.toFixed(6)} g pk`;
          const { blindBelow } = mechanicalSwitch(setting, { limit });
          const { hertz } = blindBelow as { hertz: number };
          const at = (share: number) =>
            mechanicalSwitch(setting, { limit, speeds: [{ hertz: hertz * share }] }).rows[0]?.protects;
          expect([at(0.99), at(1.01)]).toEqual([false, true]);
        },
      ),
    );
  });

  it("operates at a limit that makes just its setting, and says nothing of protection without a limit", () => {
    const { rows } = mechanicalSwitch("2 g pk", { speeds: ["1490 r/min"] });
    expect(rows[0]).toMatchObject({ timesLimit: null, protects: null });
    const limit = `${rows[0]?.velocity.value} mm/s rms`;
    const { rows: held, blindBelow } = mechanicalSwitch("2 g pk", { speeds: ["1490 r/min"], limit });
    expect(held[0]).toMatchObject({ protects: true });
    expect(held[0]?.timesLimit).toBeCloseTo(1, 12);
    expect(blindBelow?.speed).toBeCloseTo(1490, 6);
    expect(blindBelow?.hertz).toBeCloseTo(1490 / 60, 8);
  });

  it("refuses a setting that is no acceleration and a limit that is one", () => {
    expect(() => mechanicalSwitch("7 mm/s rms")).toThrow(expect.objectContaining({ code: "wrong-quantity" }));
    expect(() => mechanicalSwitch("2 g pk", { limit: "1 g pk" })).toThrow(
      expect.objectContaining({ code: "wrong-quantity" }),
    );
  });
});
