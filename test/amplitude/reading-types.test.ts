import { describe, expect, it } from "vitest";
import { convert, parseAmplitude, readingType } from "../../src/index";
import { refusalOf } from "../refusals/refusal-of";

const FORM = 'an amplitude type such as "mm/s rms" or "dB re 1e-9 m/s"';

describe("a reading type", () => {
  it.each([
    [" mm/s rms", "mm/s rms"],
    ["mm/s rms ", "mm/s rms"],
    ["mm/s   rms", "mm/s rms"],
    ["(mm/s rms)", "mm/s rms"],
    ["[mm/s] rms", "mm/s rms"],
    ["\tmm/s\nrms", "mm/s rms"],
    ["mils peak to peak", "mil pp"],
    ["mils peak - to - peak", "mil pp"],
    ["inches per second zero to peak", "in/s pk"],
    ["metres per second squared r. m. s.", "m/s2 rms"],
    [" dB re 1 nm/s ", "dB re 1 nm/s"],
    ["dB  re  1  nm/s", "dB re 1 nm/s"],
    ["(dB re: 1 nm/s rms)", "dB re 1 nm/s"],
    ["dB RE ISO  1683  velocity", "dB re 1 nm/s"],
  ])("%j is %s", (written, type) => {
    expect(readingType(written)).toBe(type);
  });

  it("has 80 characters at the most, spaces counted", () => {
    expect(readingType("mm/s rms".padEnd(80))).toBe("mm/s rms");
    expect(readingType("mm/s rms".padStart(80))).toBe("mm/s rms");
    for (const tooLong of ["mm/s rms".padEnd(81), "mm/s rms".padStart(81), `mm/s${" ".repeat(74)}rms`]) {
      const { code, expected } = refusalOf(() => readingType(tooLong));
      expect([tooLong.length, code, expected]).toEqual([81, "syntax", FORM]);
    }
  });

  it.each(["()", "[,]", " _ "])("%j is none", (written) => {
    const { code, expected } = refusalOf(() => readingType(written));
    expect([code, expected]).toEqual(["syntax", FORM]);
  });

  it.each([
    ["inches per second", "in/s", "inches per second"],
    ["Metres  per second squared", "m/s2", "Metres per second squared"],
    ["(standard gravity)", "g", "standard gravity"],
    ["ips", "in/s", "ips"],
  ])("%j lacks its detector", (written, unit, received) => {
    const error = refusalOf(() => readingType(written));
    expect(error.code).toBe("missing-detector");
    expect(error.expected).toBe(`a detector after the unit, as in "${unit} rms"`);
    expect(error.received).toBe(`"${received}"`);
    expect(error.allowed).toEqual(["pk", "pp", "rms", "avg", "true pk"]);
  });

  it("of one word that is no unit is an unknown unit", () => {
    const { code, received } = refusalOf(() => readingType("furlongs"));
    expect([code, received]).toEqual(["unknown-unit", '"furlongs"']);
  });

  it.each(["dB", "dB re", "dB rms", "dB re rms", "dB xre 1 nm/s", "dB rest 1 nm/s", "dB 1 nm/s", "dB re:x 1 nm/s"])(
    "%j lacks its reference",
    (written) => {
      expect(refusalOf(() => readingType(written)).code).toBe("missing-reference");
    },
  );
});

describe("a reading", () => {
  it.each([
    "  4.5 mm/s rms at 25 Hz",
    "4.5 mm/s rms at 25 Hz  ",
    "4.5 mm/s rms   at   25 Hz",
    "4.5   mm/s   rms at 25   Hz",
    "4.5 mm/s rms\tat\n25 Hz",
    "4.5 mm/s rms  @  25 Hz",
    "4.5 mm/s rms@25 Hz",
  ])("%j is read with any white space", (written) => {
    expect(parseAmplitude(written)).toEqual({
      value: 4.5,
      unit: "mm/s",
      detector: "rms",
      quantity: "velocity",
      hertz: 25,
    });
  });

  it("has 200 characters at the most", () => {
    const reading = (length: number): string => `4.5${" ".repeat(length - 11)}mm/s rms`;
    expect(parseAmplitude(reading(200)).value).toBe(4.5);
    expect(refusalOf(() => parseAmplitude(reading(201))).code).toBe("syntax");
    expect(parseAmplitude(`${reading(200)} `).value).toBe(4.5);
  });

  it("with an empty frequency, or two, is none", () => {
    for (const written of ["4.5 mm/s rms at", "4.5 mm/s rms @", "4.5 mm/s rms at 25 Hz @ 50 Hz"]) {
      expect(refusalOf(() => parseAmplitude(written)).code).toBe("syntax");
    }
    expect(refusalOf(() => parseAmplitude("4.5 at 25 Hz")).code).toBe("missing-unit");
  });

  it("in decibels carries both its level and the linear value", () => {
    expect(parseAmplitude("-20 dB re 1 mm/s at 25 Hz")).toEqual({
      value: expect.closeTo(0.1, 15),
      unit: "mm/s",
      detector: "rms",
      quantity: "velocity",
      hertz: 25,
      level: { decibels: -20, re: "1 mm/s" },
    });
    expect(convert(-20, "dB re 1 mm/s", "mm/s rms")).toBeCloseTo(0.1, 15);
  });
});
