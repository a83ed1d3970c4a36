import { convertUnbalance, gradeOfUnbalance, journalUnbalance } from "veladis/protection";
import { describe, expect, it } from "vitest";

describe("4 W / N", () => {
  // source: API 610 and API 617, both forms from memory; the pound and the ounce are exact (NIST SP 811, appendix B)
  it.each([
    ["400 lb", "3600 r/min"],
    ["120 kg", "2980 r/min"],
    ["2 t", "11000 r/min"],
  ])("of %s at %s is 4 W / N in oz·in and 6350 W / N in g·mm", (mass, speed) => {
    const pounds = { lb: 1, kg: 1 / 0.45359237, t: 1000 / 0.45359237 }[mass.split(" ")[1] as "lb"];
    const load = (Number.parseFloat(mass) * pounds) / 2;
    const turns = Number.parseFloat(speed);
    const { planes, loads, unbalance } = journalUnbalance({ mass, speed: speed as "3600 r/min" });
    expect(planes.left).toBe(planes.right);
    expect(convertUnbalance(`${planes.left} g·mm`, "oz·in")).toBeCloseTo((4 * load) / turns, 9);
    expect(planes.left / ((6350 * loads.left) / turns)).toBeCloseTo(1, 4);
    expect(unbalance).toBeCloseTo(planes.left + planes.right, 6);
  });

  it("goes by the load on each journal: the plane nearer to the centre of mass has more", () => {
    const { loads, planes } = journalUnbalance({
      mass: "120 kg",
      speed: "2980 r/min",
      planes: { left: "300 mm", right: "500 mm" },
    });
    // moments about the centre of mass: 300 x left = 500 x right
    expect(loads.left).toBeCloseTo(75, 9);
    expect(loads.right).toBeCloseTo(45, 9);
    expect(planes.left / planes.right).toBeCloseTo(75 / 45, 9);
  });

  it("is the grade that gradeOfUnbalance tells, the same for every rotor", () => {
    const rotor = { mass: "120 kg", speed: "2980 r/min" } as const;
    const { unbalance, grade } = journalUnbalance(rotor);
    expect(gradeOfUnbalance(`${unbalance} g·mm`, rotor)).toBeCloseTo(grade, 9);
    expect(journalUnbalance({ mass: "9 t", speed: "9000 r/min" }).grade).toBeCloseTo(grade, 9);
  });
});
