import { describe, expect, it } from "vitest";
import { uncertainPoints } from "../../src/conformity/index";
import { judge, judgePoints, parsePoints } from "../../src/severity/index";

const machine = "pump 90 kW 2980 r/min category II";
const told = (text: string) => parsePoints(text).map(({ point, reading }) => [point, reading.value]);

describe("points in one text", () => {
  it.each([
    [
      "DE-H 3.1, DE-V 2.2 mm/s rms",
      [
        ["DE-H", 3.1],
        ["DE-V", 2.2],
      ],
    ],
    [
      "DE-H 3,1; DE-V 2,25 mm/s rms",
      [
        ["DE-H", 3.1],
        ["DE-V", 2.25],
      ],
    ],
    [
      "bearing 1 H: 3.1 mm/s rms, bearing 2 H = 2 mm/s rms",
      [
        ["bearing 1 H", 3.1],
        ["bearing 2 H", 2],
      ],
    ],
    [
      "DE-X 80, DE-Y 60 um pp at 2980 r/min",
      [
        ["DE-X", 80],
        ["DE-Y", 60],
      ],
    ],
    ["1H 3 mm/s rms", []],
  ])("%s", (text, points) => {
    if (points.length > 0) expect(told(text)).toEqual(points);
    else expect(told(text)).toEqual([["1H", 3]]);
  });

  it("take a frequency and a type from the next that has it", () => {
    const [first] = parsePoints("DE-X 80, DE-Y 60 um pp at 3000 r/min");
    expect(first?.reading).toMatchObject({ unit: "um", detector: "pp", hertz: 50 });
  });

  it.each([
    ["DE-H 3.1, de h 2.2 mm/s rms", "out-of-range"],
    ["DE-H 3.1, 2.2 mm/s rms", "syntax"],
    ["DE-H, DE-V 2.2 mm/s rms", "syntax"],
    ["DE-H 3,1, DE-V 2,2 mm/s rms", "syntax"],
    ["DE-H 1,500; DE-V 2,2 mm/s rms", "not-a-number"],
    ["DE-H 3.1 mm/s rms, DE-V 2.2", "missing-unit"],
    ["", "syntax"],
    [Array.from({ length: 101 }, (_, i) => `P${i} 1`).join(", "), "out-of-range"],
  ])("refuses %s", (text, code) => {
    expect(() => parsePoints(text)).toThrow(expect.objectContaining({ code }));
  });
});

describe("a machine by its points", () => {
  it("is as bad as the worst of them", () => {
    const { governing, zone, headline, points } = judgePoints("DE-H 3.1, NDE-H 5.9, DE-V 2 mm/s rms", machine);
    expect([governing.point, zone, headline]).toEqual(["NDE-H", "C", "zone C"]);
    for (const { reading, verdict } of points) expect(verdict).toEqual(judge(reading, machine));
  });

  it("is possibly worse where one of them is", () => {
    const motor = "motor 400 kW 3570 r/min rigid housing";
    const answer = judgePoints("DE-H 5 mm/s rms, DE-V 0.5 mil pp", motor);
    expect(answer).toMatchObject({ zone: "C", worst: "D", possible: ["C", "D"], headline: "zone C or worse" });
  });

  it("names the directions of its bearings that were not read", () => {
    const unread = (names: string) =>
      judgePoints(
        names.split(", ").map((point) => ({ point, reading: "1 mm/s rms" }) as never),
        machine,
      ).notRead;
    expect(unread("DE-H, DE-V, DE-A")).toEqual([]);
    expect(unread("DE-H, NDE-V")).toEqual(["DE-V", "DE-A", "NDE-H", "NDE-A"]);
    expect(unread("1H, 1V")).toEqual(["1A"]);
    expect(unread("drive end horizontal")).toEqual(["drive end V", "drive end A"]);
    expect(unread("pump A, shaft, casing")).toEqual([]);
  });

  it("by one scheme where it is named", () => {
    const scheme = "iso-10816-3-2009";
    const { governing } = judgePoints("DE-H 3, DE-V 2 mm/s rms", "group 2 rigid", { scheme });
    expect(governing.verdict).toMatchObject({ scheme, zone: "C" });
  });

  it.each([
    ["no points", [], "missing-option"],
    ["nothing for a point", [null], "missing-option"],
    ["a point that is none", [5], "wrong-type"],
    ["a name that is none", [{ point: 1, reading: "1 mm/s rms" }], "wrong-type"],
    ["a point twice", [1, 2].map((n) => ({ point: "DE-H", reading: `${n} mm/s rms` })), "out-of-range"],
  ])("refuses %s", (_, points, code) => {
    expect(() => judgePoints(points as never, machine)).toThrow(expect.objectContaining({ code }));
  });
});

describe("a list of points of a megabyte", () => {
  it.each(["P 4.9 ", ", k=2", " ", "P 4.9 ± 0.1 (k=2) "])("of %s is refused before it is searched", (piece) => {
    const text = `DE-H${piece.repeat(1_000_000 / piece.length)}`;
    const start = performance.now();
    for (const read of [parsePoints, uncertainPoints]) expect(() => read(text)).toThrow("10000 characters or fewer");
    expect(performance.now() - start).toBeLessThan(500);
  });
});
