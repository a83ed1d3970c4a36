import fc from "fast-check";
import {
  balanceGrade,
  balanceGrades,
  centrifugalForce,
  gradeOfUnbalance,
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
