import { currentLoop } from "veladis/sensor";
import { changeFromBaseline, classify, judge, parseMachine, parsePoints } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { requireName, requireOther, requirePage } from "../../src/severity/confirm-names";
import { refusalOf } from "../refusals/refusal-of";

/** Found in a trial by practitioners; what the trade writes on plates and routes is common practice, no source. */
describe("a name of a point", () => {
  it.each([
    "DE-H 12 1, DE-V 2 mm/s rms",
    "DE-H 9 3.0 mm/s rms",
    "DE-H (9) 3.0 mm/s rms",
    "DE-H: 9: 3.0 mm/s rms",
    "DE-H #9 3.0 mm/s rms",
    "DE-H 9. 3.0 mm/s rms",
    "DE-H 9e0 3.0 mm/s rms",
    "DE-H alarm 9 3.0 mm/s rms",
    "DE-H war 9 3.0 mm/s rms",
    "DE-H ovld 3 mm/s rms",
    "DE-H clipped 3 mm/s rms",
    "DE-H saturated 3 mm/s rms",
    "DE-H exceeds 3 mm/s rms",
    "DE-H min 3 mm/s rms",
    "DE-H x10 3 mm/s rms",
    "DE-H gain 3 mm/s rms",
    "DE-H stopped 3 mm/s rms",
    "DE-H delta 3 mm/s rms",
  ])("swallows no reading and no word on one: %s", (text) => {
    expect(refusalOf(() => parsePoints(text)).code).toBe("syntax");
  });

  // biome-ignore format: a row of a table is a line
  it.each([
    ["bearing 3 2.0 mm/s rms", "bearing 3"], ["Lager 1 H 2 mm/s rms", "Lager 1 H"], ["P-101A DE-H 2 mm/s rms", "P-101A DE-H"],
    ["Pump 2 NDE axial 2 mm/s rms", "Pump 2 NDE axial"], ["brg 4 2 mm/s rms", "brg 4"], ["No. 1 H 3 mm/s rms", "No. 1 H"],
    ["DE 1 9 mm/s rms", "DE 1"],
  ])("may hold the number of a bearing: %s", (text, name) => expect(parsePoints(text)[0]?.point).toBe(name));
});

describe("a speed", () => {
  it.each([
    "pump 90 kW 12 to 50 Hz category II",
    "screw compressor 400 kW 12 to 60 Hz rigid",
    "motor 400 kW rigid 0.02-0.06 kHz",
  ])("is not read from a range that ends at the frequency of a line: %s", (line) =>
    expect(refusalOf(() => parseMachine(line)).message).toContain("may be that of the line"),
  );

  it("counts poles as European plates have them, and pairs of poles", () => {
    // 120 x 50 / 12
    for (const poles of ["2p=12", "2p = 12", "6 pole pairs", "12-pole"])
      expect(parseMachine(`motor 400 kW ${poles} 50 Hz`).speed, poles).toEqual({ hertz: 50 / 6 });
  });

  it.each([
    "4-pole VFD",
    "4-pole inverter fed",
    "4-pole 50 Hz VFD",
    "4-pole variable speed",
    "4-pole, frequency converter",
  ])("from poles is refused where a drive varies it: %s", (words) => {
    const { code, fact } = refusalOf(() => parseMachine(`motor 400 kW ${words} rigid`));
    expect([code, fact]).toEqual(["missing-fact", "speed"]);
    expect(judge("4.6 mm/s rms", "motor 400 kW 600 to 1800 r/min VFD rigid").zone).toBe("C");
  });
});

describe("a reciprocating compressor that is no horizontal one", () => {
  it.each(["V", "W", "L", "V-4", "twin-V", "double V", "V-block", "vee", "vert.", "inclined", "star"])(
    "%s is refused",
    (words) => {
      expect(refusalOf(() => parseMachine(`reciprocating compressor ${words}, part piping`)).code).toBe(
        "unknown-option",
      );
    },
  );

  it("with its letters in other words is none of them", () => {
    expect(parseMachine("reciprocating compressor 300 kW, part piping, 400 V").part).toBe("piping");
  });
});

describe("a change since the baseline", () => {
  it("of a reading above the range of its loop is taken for significant, and says so", () => {
    const table = {
      scheme: "iso-10816-7-2009",
      machine: "pump 90 kW 2980 r/min category II",
      assume: "lowest limits",
    } as const;
    const clipped = currentLoop("0 to 3 mm/s rms").reading(20.9);
    const { significant, cautions } = changeFromBaseline(clipped, "2 mm/s rms", table);
    expect(significant).toBe(true);
    expect(cautions[0]).toContain("above the range of its loop");
    expect(changeFromBaseline("3.1 mm/s rms", "2 mm/s rms", table).significant).toBe(false);
    expect(changeFromBaseline("3.1 mm/s rms", currentLoop("0 to 2 mm/s rms").reading(20.9), table).significant).toBe(
      true,
    );
    expect(classify(clipped, table).cautions[0]).toContain("above the range");
  });
});

describe("who read a copy, and where", () => {
  it.each([
    "K. Other?",
    "maybe K. Other",
    "K. Other (not yet)",
    "Mr. Nobody",
    "N. N. Nobody",
    "anonymous",
    "niemand",
    "Dr.",
    "the plant",
  ])("%s is nobody", (name) => expect(refusalOf(() => requireName(name, "by")).code).toBe("syntax"));

  it.each(["Anna Exampel", "Anna Exmaple", "nana Example"])("%s is the one who read it first: Anna Example", (name) => {
    expect(refusalOf(() => requireOther(name, "Anna Example", "the name of")).code).toBe("out-of-range");
  });

  it("another first name is another person", () => {
    expect(requireOther("Berta Example", "Anna Example", "the name of")).toBe("Berta Example");
  });

  it.each(["~12", "maybe 12", "12*", "12 or 13", "from memory 12", "page 12 of a draft", "?12", "not page 12"])(
    "%s is no page",
    (page) => expect(refusalOf(() => requirePage(page, "page")).code).toBe("syntax"),
  );

  it("names and pages of people and copies stay", () => {
    for (const name of ["J. Example", "Dr. K. Sample", "Anna Noone-Berg", "Kim Na"])
      expect(requireName(name, "by")).toBe(name);
    for (const page of ["12", "p. iv", "p. 12, table A.1"])
      expect(requirePage(page, "page")).toContain(page.replace(/^12$/, "12"));
  });
});
