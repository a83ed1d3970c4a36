import { describe, expect, it } from "vitest";
import { classify } from "../../src/entries/severity";
import {
  convertAmplitude,
  equivalents,
  format,
  levelReferences,
  parseAmplitude,
  readingType,
  significant,
} from "../../src/index";

describe("significant", () => {
  it.each([
    [7.184205000001, 3, "7.18"],
    [0, 3, "0"],
    [-0, 3, "0"],
    [1, 3, "1.00"],
    [99.95, 3, "100"],
    [99.99, 2, "100"],
    [999.9, 3, "1000"],
    [1234.5, 3, "1230"],
    [123456, 3, "123000"],
    [999999, 3, "1.00e6"],
    [1e6, 3, "1.00e6"],
    [1.5e21, 2, "1.5e21"],
    [0.0001, 3, "0.000100"],
    [0.00012345, 3, "0.000123"],
    [0.00009999, 3, "0.000100"],
    [0.000099999, 4, "0.0001000"],
    [1e-7, 3, "1.00e-7"],
    [-2.5, 2, "-2.5"],
    [5, 1, "5"],
    [12.345678901234567, 17, "12.345678901234567"],
    [0.1, 17, "0.10000000000000001"],
    [0.00012, 1, "0.0001"],
    [95000, 1, "100000"],
    [94999, 1, "90000"],
    [-1234, 2, "-1200"],
    [950000, 1, "1e6"],
  ])("%d to %i digits is %s", (value, digits, text) => {
    expect(significant(value, digits)).toBe(text);
  });

  it.each([0, 18, -1, 2.5, Number.NaN, Number.POSITIVE_INFINITY])("%d digits are refused", (digits) => {
    expect(() => significant(1, digits)).toThrow(expect.objectContaining({ code: "out-of-range" }));
  });
});

describe("format", () => {
  it("writes plain spelling, whatever the type was written in", () => {
    expect(format(1, readingType("µm Peak-to-Peak"))).toBe("1.00 um pp");
    expect(format(1, "dB re FTA velocity")).toBe("1.0 dB re 1 uin/s");
  });

  it("writes an amplitude, and a level as a level", () => {
    expect(format(parseAmplitude("0.25 in/s pk"))).toBe("0.250 in/s pk");
    expect(format(parseAmplitude("95 dB re ISO 1683 velocity"))).toBe("95.0 dB re 1 nm/s");
    expect(format(convertAmplitude("1 mm/s rms", "dB re 1 nm/s"), { digits: 5 })).toBe("120.000 dB re 1 nm/s");
    expect(format(parseAmplitude("95 dB re ISO 1683 velocity"), { digits: 1 })).toBe("95.0 dB re 1 nm/s");
  });
});

describe("levels", () => {
  it.each(Object.entries(levelReferences))("0 dB re %s is its reference", (name, { value, unit }) => {
    expect(parseAmplitude(`0 dB re ${name}`)).toMatchObject({ value, unit, detector: "rms" });
    expect(parseAmplitude(`0 db RE ${name.toUpperCase()}`)).toMatchObject({ value, unit });
  });

  it("reads the ways people write a reference", () => {
    for (const text of ["95 dB re 1e-9 m/s", "95 dB re: 1 nm/s", "95 dB (re 1 nm/s)", "95 dB ref 1nm/s rms"]) {
      expect(convertAmplitude(text, "mm/s rms").value).toBeCloseTo(0.056234, 6);
    }
  });

  it("a negative level is a small reading", () => {
    expect(parseAmplitude("-20 dB re 1 mm/s").value).toBeCloseTo(0.1, 15);
  });
});

describe("readings as people write them", () => {
  it.each([
    ["0.25 in/s pk at 1500 r/min", { value: 0.25, unit: "in/s", detector: "pk", hertz: 25 }],
    ["0.25in/s pk@1500rpm", { value: 0.25, unit: "in/s", detector: "pk", hertz: 25 }],
    ["4.5 mm/s (RMS)", { value: 4.5, unit: "mm/s", detector: "rms", hertz: undefined }],
    ["4.5 mm/s, r.m.s.", { value: 4.5, unit: "mm/s", detector: "rms" }],
    ["4.5 mm/s_rms", { value: 4.5, unit: "mm/s", detector: "rms" }],
    ["3 mils peak to peak at 2x 1480 rpm", { value: 3, unit: "mil", detector: "pp", hertz: 1480 / 30 }],
    ["12 microns P-P", { value: 12, unit: "um", detector: "pp" }],
    ["0.5 g's peak", { value: 0.5, unit: "g", detector: "pk" }],
    ["1e-3 m/s² rms", { value: 0.001, unit: "m/s2", detector: "rms" }],
    ["0 mm/s rms", { value: 0 }],
    [".5 inches per second zero to peak", { value: 0.5, unit: "in/s", detector: "pk" }],
    ["5 mm/s rms AT 25 HZ", { value: 5, hertz: 25 }],
  ])("%j", (text, expected) => {
    expect(parseAmplitude(text)).toMatchObject(expected);
  });

  it("gives a frozen amplitude", () => {
    expect(Object.isFrozen(parseAmplitude("1 g pk"))).toBe(true);
  });
});

describe("equivalents", () => {
  it("applies a crest factor only within the reading's own quantity", () => {
    const rows = equivalents("2 g rms at 25 Hz", { crestFactor: 4 });
    expect(rows.map(({ unit }) => unit)).toEqual(["mm/s", "in/s", "um", "mil", "m/s2", "g"]);
    expect(rows.at(-1)?.pk).toMatchObject({ value: 8, crestFactor: 4, assumed: ["crest-factor"] });
    expect(rows[0]?.pk.assumed).toEqual(["one-frequency", "sine"]);
  });

  it("takes a frequency from the options", () => {
    expect(equivalents("1 mm/s rms", { at: "25 Hz" }).length).toBe(6);
  });

  it.each([
    ["0.25 in/s pk", ["mm/s", "in/s"]],
    ["80 um pp", ["um", "mil"]],
    ["2 ft/s2 rms", ["m/s2", "g"]],
  ])("of %s without a frequency has the rows of its quantity", (reading, expected) => {
    const rows = equivalents(reading);
    expect(rows.map(({ unit }) => unit)).toEqual(expected);
    for (const { unit, rms, pk, pp } of rows) {
      expect([rms, pk, pp].map((answer) => `${answer.unit} ${answer.detector}`)).toEqual([
        `${unit} rms`,
        `${unit} pk`,
        `${unit} pp`,
      ]);
    }
  });

  it("applies a crest factor without a frequency, too", () => {
    const [metric] = equivalents("2 mm/s rms", { crestFactor: 3 });
    expect([metric?.rms.value, metric?.pk.value, metric?.pp.value]).toEqual([2, 6, 12]);
  });
});

describe("a reading that says in as what it is written in", () => {
  const level = { as: "dB re 1 nm/s", value: 122.92, unit: "nm/s", detector: "rms", quantity: "velocity" } as never;

  it("is a level where it says one, never so many nm/s", () => {
    expect(format(level)).toBe("122.9 dB re 1 nm/s");
    expect(convertAmplitude(level, "mm/s rms").value).toBeCloseTo(1e-6 * 10 ** (122.92 / 20), 12);
    const linear = { as: "dB re 1 nm/s", ...convertAmplitude("1.4 mm/s rms", "dB re 1 nm/s") } as never;
    expect(format(linear)).toBe("122.9 dB re 1 nm/s");
    expect(format({ ...(level as object), value: -3 } as never)).toBe("-3.0 dB re 1 nm/s");
  });

  it("is linear where it says so, and refused where unit and detector say another", () => {
    const plain = { as: "mm/s rms", value: 4.5, unit: "mm/s", detector: "rms", quantity: "velocity" };
    expect(format(plain as never)).toBe("4.50 mm/s rms");
    for (const as of ["in/s rms", "mm/s pk"]) {
      expect(() => format({ ...plain, as } as never)).toThrow(expect.objectContaining({ code: "wrong-type" }));
    }
  });

  it("is what classify gives for its limit", () => {
    const { limit } = classify("120 dB re 1 nm/s", { scheme: "iso-10816-3-2009", machine: "group 2 rigid" });
    expect(limit && format(limit as never)).toBe("122.9 dB re 1 nm/s");
  });
});
