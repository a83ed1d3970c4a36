import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkAgainstKnown } from "../../src/entries/protection";
import { judge } from "../../src/entries/severity";
import { parseUncertain, uncertaintyOf } from "../../src/entries/uncertainty";
import { veladis } from "../cli/in-process";

const machine = "pump 90 kW 2980 r/min category II";

describe("a ± behind the frequency at the end of a line", () => {
  it("may be the reading's, and is refused with both ways to write it", () => {
    expect(() => parseUncertain("4.95 mm/s rms at 49.7 Hz ± 5 % (k=2)")).toThrow(
      'of the reading "4.95 mm/s rms ± 5 % (k=2) at 49.7 Hz", of the frequency "at 49.7 ± 2.485 Hz (k=2)"',
    );
    for (const text of [
      "6 mm/s rms at 40 Hz ± 2 % (k=2)",
      "6 mm/s rms at 40 Hz ± 0.3",
      "6 mm/s rms at 40 Hz ± 0.3, k=2",
      "6 mm/s rms @ 40 Hz +/- 2 %",
      "6 mm/s rms at 40 Hz ± 1 dB (k=2)",
      "6 mm/s rms at 40 Hz ± 0.3 mm/s (k=2)",
      "6 mm/s rms at 2x 1200 r/min ± 2 %",
    ]) {
      expect(() => parseUncertain(text), text).toThrow("the ± right behind what it is of");
    }
    expect(() =>
      checkAgainstKnown({ known: "6 mm/s rms at 40 Hz ± 2 % (k=2)", indicated: "6.2 mm/s rms", tolerance: "5 %" }),
    ).toThrow("the ± right behind what it is of");
  });

  it("is the frequency's where the reading has its own, or where it is in a unit of frequency", () => {
    for (const text of [
      "6 ± 0.1 mm/s rms at 40 Hz ± 2 % (k=2)",
      "6 mm/s rms ± 1 % at 40 Hz ± 0.8",
      "6 mm/s rms, 95 % within 5.9 to 6.1 at 40 Hz ± 2 %",
      "6 mm/s rms at 40 Hz ± 0.8 Hz",
      "6 mm/s rms at 40 Hz ± 48 r/min",
      "6 mm/s rms at 40 ± 0.8 Hz",
      "6 mm/s rms at 40 ± 2 % Hz",
    ]) {
      expect(parseUncertain(text).history?.[0]?.hertzUncertainty, text).toBeDefined();
    }
  });

  it("both ways of the refusal are read, and each says what it says", () => {
    const percent = fc.double({ min: 0.1, max: 9, noNaN: true }).map((one) => one.toPrecision(2));
    fc.assert(
      fc.property(
        percent,
        fc.constantFrom("", " (k=2)", " (95 %)"),
        fc.constantFrom("40 Hz", "2x 1200 r/min"),
        (amount, k, at) => {
          let told = "";
          try {
            parseUncertain(`6 mm/s rms at ${at} ± ${amount} %${k}`);
          } catch (error) {
            told = (error as Error).message;
          }
          const [, ofReading = "", ofFrequency = ""] = /reading "(.*?)", of the frequency "(.*?)"/.exec(told) ?? [];
          expect(uncertaintyOf(parseUncertain(ofReading)).expanded).toBeGreaterThan(0);
          expect(parseUncertain(`6 mm/s rms ${ofFrequency}`).history?.[0]?.hertzUncertainty).toBeDefined();
        },
      ),
    );
  });

  it("makes no verdict milder", async () => {
    const own = await veladis(["judge", "4.95 mm/s rms ± 5 % (k=2) at 49.7 Hz", "--machine", machine]);
    expect(own.out).toContain("zone C, by guard band");
    expect(judge("4.95 mm/s rms", machine).zone).toBe("B");
    for (const more of [[], ["--uncertainty", "5 % (k=2)"]]) {
      const { code, err } = await veladis([
        "judge",
        "4.95 mm/s rms at 49.7 Hz ± 5 % (k=2)",
        "--machine",
        machine,
        ...more,
      ]);
      expect(code).not.toBe(0);
      expect(err).toContain("the ± right behind what it is of");
    }
    for (const written of ["4.95 ± 0.1 mm/s rms", "4.95 mm/s rms ± 0 %", "4.95 mm/s rms, 95 % within 4.9 to 5"]) {
      const { err } = await veladis(["judge", written, "--machine", machine, "--uncertainty", "5 % (k=2)"]);
      expect(err, written).toContain("one uncertainty of a reading: behind ± or in --uncertainty");
    }
  });
});
