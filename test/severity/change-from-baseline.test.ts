import { VeladisError } from "veladis";
import { changeFromBaseline } from "veladis/severity";
import { describe, expect, it } from "vitest";

// ISO 10816-1/-3 and ISO 20816-1:2016, Criterion II (from memory): a change of more than 25 % of the upper limit of
// zone B, up or down. Group 1 rigid: B/C 4.5 mm/s RMS, so 1.125 mm/s RMS.
const table = { scheme: "iso-10816-3-2009", machine: "group 1 rigid" } as const;

describe("a change since the baseline", () => {
  it.each([
    ["3.13 mm/s rms", "2 mm/s rms", true, "rise"],
    ["3.125 mm/s rms", "2 mm/s rms", false, "rise"],
    ["3.12 mm/s rms", "2 mm/s rms", false, "rise"],
    ["0.8 mm/s rms", "2 mm/s rms", true, "fall"],
    ["0.875 mm/s rms", "2 mm/s rms", false, "fall"],
    ["2 mm/s rms", "2 mm/s rms", false, "none"],
  ] as const)("%s since %s", (now, before, significant, direction) => {
    expect(changeFromBaseline(now, before, table)).toMatchObject({
      significant,
      direction,
      allowed: 1.125,
      verified: false,
    });
  });

  it("may be written in other units on either side", () => {
    const change = changeFromBaseline("0.18 in/s pk", "1.8 mm/s rms", table);
    expect(change).toMatchObject({ unit: "in/s", detector: "pk", significant: true, direction: "rise" });
    // 0.18 in/s peak is 3.233 mm/s RMS
    expect(change.change * 25.4 * Math.SQRT1_2).toBeCloseTo(1.433, 3);
    expect(change.allowed * 25.4 * Math.SQRT1_2).toBeCloseTo(1.125, 6);
    expect(change.ratio).toBeCloseTo(1.433 / 1.125, 3);
    expect(change.limit).toMatchObject({
      name: "B/C",
      printed: { value: 4.5 },
      provenance: "reported",
      verified: false,
    });
  });

  it("takes the column of the reading's own quantity", () => {
    const change = changeFromBaseline("40 um rms", "25 um rms", table);
    expect(change).toMatchObject({ allowed: 57 / 4, significant: true, limit: { verified: false } });
    // also where its frequency would carry it to the other column, and whatever its detector
    expect(changeFromBaseline("40 um rms at 25 Hz", "25 um rms", table).allowed).toBe(57 / 4);
    const peaks = changeFromBaseline("80 um pp at 25 Hz", "50 um pp", table);
    expect(peaks.limit.printed).toMatchObject({ value: 57, unit: "um" });
    expect(peaks.allowed).toBeCloseTo((57 * 2 * Math.SQRT2) / 4, 9);
    // a quantity the table has no column of: by way of the first one
    const acceleration = changeFromBaseline("0.2 g rms at 25 Hz", "0.1 g rms", table);
    expect(acceleration.limit.printed).toMatchObject({ value: 4.5, unit: "mm/s" });
  });

  it("is significant only beyond float noise", () => {
    const none = { value: 0, unit: "mm/s", detector: "rms", quantity: "velocity", hertz: undefined } as const;
    const changed = (value: number) => changeFromBaseline({ ...none, value }, none, table).significant;
    expect(changed(1.125 * (1 + 0.99 * 2 ** -23))).toBe(false);
    expect(changed(1.125 * (1 + 1.01 * 2 ** -23))).toBe(true);
  });

  it("says what is from memory and what to do about it", () => {
    const told = (now: string, before: string) => changeFromBaseline(now, before, table).cautions;
    const criterion = "the criterion is from memory: check it against the standard";
    const cause = "find the cause of a significant change; a fall can be a failure too";
    expect(told("4 mm/s rms", "2 mm/s rms")).toEqual([
      criterion,
      "the limit B/C is read on a page whose making is unknown: check it against the standard",
      cause,
    ]);
    const printed = { scheme: "iso-10816-5-2000", machine: "hydro set group 2" } as const;
    expect(changeFromBaseline("4 mm/s rms", "2 mm/s rms", printed).cautions).toEqual([criterion, cause]);
  });

  it("may have a level for its baseline, of which the value is known", () => {
    const change = changeFromBaseline("3 mm/s rms", "120 dB re 1e-9 m/s", table);
    expect(change.change).toBeCloseTo(2, 9);
  });

  it("is refused where there is no zone B, for levels, and without a frequency", () => {
    const refused = (now: string, before: string, options: Parameters<typeof changeFromBaseline>[2]) =>
      expect(() => changeFromBaseline(now, before, options)).toThrow(VeladisError);
    refused("3 mm/s rms", "2 mm/s rms", { scheme: "iec-60034-14-2003", machine: "280 mm grade A mounting free" });
    refused("120 dB re 1e-9 m/s", "2 mm/s rms", table);
    refused("3 mm/s rms", "40 um pp", table);
    refused("1 g pk", "2 g pk", table);
    expect(changeFromBaseline("3 mm/s rms at 25 Hz", "40 um pp at 25 Hz", table).direction).toBe("rise");
  });
});
