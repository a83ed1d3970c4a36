import { VeladisError } from "veladis";
import { classify, judge, judgePoints, type Machine, machineNotes, parseMachine } from "veladis/severity";
import { describe, expect, it } from "vitest";

const motor = "motor 200 kW 1480 r/min";
const support = (machine: Machine | string) => judge("2.1 mm/s rms", machine).machine.support;

// rigid in a direction from 25 % above excitation: motor manual 3BFP 000 063 R0101 REV D, 7.4.3.2, page 54; 18 Hz is
// below 1.25 x 24.7 Hz, 65 Hz above
describe("a natural frequency of one direction", () => {
  it.each([
    `${motor} natural 18 Hz horizontally`,
    `${motor} natural frequency 18 Hz horizontal`,
    `${motor} horizontal natural frequency 18 Hz`,
    `${motor} natural 18 Hz in the horizontal direction`,
  ])("is that of this direction, and of no other: %s", (line) => {
    expect(parseMachine(line).byDirection).toEqual({ horizontal: { naturalFrequency: { hertz: 18 } } });
    expect(support(`${line}, direction horizontal`)).toBe("flexible");
    for (const untold of [line, `${line}, direction axial`]) {
      const { machine, machineClass } = judge("2.1 mm/s rms", untold);
      expect(machine).not.toHaveProperty("support");
      expect(machineClass.support).toBe("rigid");
    }
  });

  it("of a direction that is none of the three is refused", () => {
    expect(() => parseMachine(`${motor} natural 18 Hz laterally`)).toThrow(VeladisError);
  });

  it.each(["vertical pump, 90 kW, 1480 r/min, natural 65 Hz", `${motor} natural 18 Hz, shaft horizontal`])(
    "is not meant by the direction of a shaft: %s",
    (line) => expect(parseMachine(line).naturalFrequency).toBeDefined(),
  );
});

describe("a support by direction", () => {
  const told = `${motor} rigid horizontally, flexible axially`;

  it("the direction of the reading picks it, and the answer names that", () => {
    expect(support(`${told}, direction horizontal`)).toBe("rigid");
    const { machine, assumedFacts } = judge("2.1 mm/s rms", `${told}, direction axial`);
    expect(machine.support).toBe("flexible");
    expect(assumedFacts).toContain("axial reading, support flexible: told for this direction");
  });

  it("a direction not told takes the lower limits, named, and is asked for where nothing is assumed", () => {
    const { machineClass, assumedFacts } = judge("2.1 mm/s rms", told);
    expect(machineClass.support).toBe("rigid");
    expect(assumedFacts).toContain("direction of the reading: not given, and the support differs by direction");
    const scheme = "iso-10816-3-2009";
    expect(() => classify("2.1 mm/s rms", { scheme, machine: `${told} group 2` })).toThrow(/support: /);
  });

  it("what is told without a direction is for the others", () => {
    const mixed = `${motor} rigid, flexible in the axial direction`;
    expect(support(`${mixed}, direction vertical`)).toBe("rigid");
    expect(support(`${mixed}, direction axial`)).toBe("flexible");
    expect(judge("2.1 mm/s rms", mixed).machineClass.support).toBe("rigid");
    expect(support(`${motor} flexible, flexible axially`)).toBe("flexible");
  });

  it("points take theirs by the direction in their names, and nothing is cautioned then", () => {
    const { points, cautions } = judgePoints("DE-H 3.1, DE-V 3.1, DE-A 3.1 mm/s rms", told);
    expect(points.map(({ verdict }) => verdict.machineClass.support)).toEqual(["rigid", "rigid", "flexible"]);
    expect(cautions).toEqual([]);
    expect(judgePoints("DE-H 3.1, DE-V 3.1 mm/s rms", `${motor} rigid`).cautions).toHaveLength(1);
  });

  it.each([
    "horizontally rigid, vertically flexible",
    "horizontally rigid vertically flexible",
    "horizontal: rigid, vertical: flexible",
    "in the horizontal direction rigid, in the vertical direction flexible",
    "rigid horizontally flexible vertically",
    "rigid horizontally, vertically flexible",
  ])("in either order of words: %s", (words) => {
    expect(support(`${motor} ${words}, direction horizontal`)).toBe("rigid");
    expect(support(`${motor} ${words}, direction vertical`)).toBe("flexible");
    const { notUnderstood } = machineNotes(`${motor} ${words}`);
    expect(notUnderstood).toEqual([]);
  });

  it.each(["axially flexible coupling", "axial: flexible pipe", "horizontal rigid", "measured horizontally rigid"])(
    "is not said by a part behind a direction, nor by a direction of the machine or the reading: %s",
    (words) => expect(parseMachine(`${motor} ${words}`).byDirection).toBeUndefined(),
  );

  it.each(["rigid horizontally flexible", "horizontally rigid vertically"])(
    "that may be of two is refused: %s",
    (words) => {
      expect(() => parseMachine(`${motor} ${words}`)).toThrow(/each support with its direction/);
    },
  );

  it("as data it is the same", () => {
    const machine: Machine = {
      type: "motor",
      power: "200 kW",
      speed: "1480 r/min",
      byDirection: { horizontal: { support: "rigid" }, axial: { support: "flexible" } },
    };
    for (const direction of ["horizontal", "vertical", "axial"] as const) {
      expect(judge("2.1 mm/s rms", { ...machine, direction }).headline).toBe(
        judge("2.1 mm/s rms", `${told}, direction ${direction}`).headline,
      );
    }
    expect(machineNotes({ ...machine, direction: "axial" }).assumedFacts).toHaveLength(1);
  });

  it.each([
    [`${motor} rigid axially, flexible axially`, 'one axial support, "rigid" or "flexible"'],
    [`${motor} natural 18 Hz axially, natural 65 Hz axially`, "one axial naturalFrequency"],
    [`${motor} flexible axially, natural 65 Hz axially`, "a rigid support"],
    [`${motor} direction axial, direction vertical`, "one direction of the reading"],
    [`${motor} horizontal natural 18 Hz vertically`, "one direction of a natural frequency"],
    [{ type: "motor", byDirection: { lateral: {} } }, "a direction"],
    [{ type: "motor", byDirection: { axial: { stiffness: 1 } } }, "a fact of a direction"],
    [{ type: "motor", direction: "lateral" }, "the direction of the reading"],
  ])("two values, and what there is none of, are refused: %j", (machine, expected) => {
    expect(() => judge("2.1 mm/s rms", machine as string)).toThrow(expected);
  });

  it("a point in another direction than the one told is refused", () => {
    expect(() => judgePoints("DE-A 3.1 mm/s rms", `${told}, direction vertical`)).toThrow("a point in the vertical");
  });

  it.each([
    ["flexible axial fan 400 kW", "flexible"],
    ["rigid vertical pump 90 kW", "rigid"],
  ])("a direction that is part of a kind is none: %s", (line, expected) => {
    expect(parseMachine(line)).toMatchObject({ support: expected });
    expect(parseMachine(line)).not.toHaveProperty("byDirection");
  });
});

describe("a letter in the name of a point", () => {
  const told = "motor 400 kW 1480 r/min rigid horizontally, flexible vertically, flexible axially";
  const taken = (point: string) => judgePoints(`${point} 4 mm/s rms`, told).points[0]?.verdict.assumedFacts.join();

  it.each(["P-101-A", "Bearing-A", "FAN-A", "LINE-V", "UNIT 2-V", "DE-H-A", "P-101-A DE-V", "FAN vertical"])(
    "%s is no direction: the lower limits are taken, and named",
    (point) => {
      expect(taken(point)).toContain("direction of the reading: not given");
    },
  );

  it.each([
    ["DE-A", "axial"],
    ["motor NDE V", "vertical"],
    ["1H", "horizontal"],
    ["bearing 2 V", "vertical"],
    ["B1-A", "axial"],
    ["D-V", "vertical"],
    ["outboard axial", "axial"],
    ["non-drive end-H", "horizontal"],
  ])("%s is %s, behind an end of the machine", (point, way) => {
    expect(taken(point)).toContain(`${way} reading`);
  });
});
