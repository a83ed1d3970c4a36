import { convertAmplitude } from "veladis";
import { checkAgainstKnown } from "veladis/protection";
import { judge } from "veladis/severity";
import { formatUncertain, parseUncertain, ratioOf, uncertaintyOf, withUncertainty } from "veladis/uncertainty";
import { parseVector, slowRollCompensated } from "veladis/vector";
import { describe, expect, it } from "vitest";

const machine = "pump 90 kW 2980 r/min rigid category II";

describe("an uncertainty", () => {
  it("is not that of a value that was put in place of another", () => {
    const known = parseUncertain("0.15 ± 0.02 in/s rms (k=2)");
    const other = { ...known, value: 0.19 };
    expect(() => uncertaintyOf(other)).toThrow("a value that was replaced by 0.19 in/s rms");
    expect(() => formatUncertain({ ...known, unit: "mm/s" })).toThrow("as the last step of its history says");
    // what does not follow from its history is not judged at all
    expect(() => judge(other, machine)).toThrow("a value of 0.15, as the last step of its history says");
    expect(() => checkAgainstKnown({ known: other, indicated: "4.826 mm/s rms", tolerance: "5 %" })).toThrow(
      "replaced",
    );
  });

  it("is not that of a frequency that was put in place of another", () => {
    const known = parseUncertain("4.9 ± 0.3 mm/s rms (k=2) at 25 ± 0.5 Hz (k=2)");
    const replaced = "a frequency that was replaced: 50 Hz in place of 25 Hz";
    const other = { ...known, hertz: 50 };
    for (const type of ["um pp", "cm/s rms"] as const) {
      expect(() => convertAmplitude(other, type)).toThrow("a reading at 25 Hz, as the last step of its history says");
    }
    const without = convertAmplitude({ ...known, hertz: undefined }, "um pp", { at: "50 Hz" });
    expect(() => formatUncertain(without)).toThrow(replaced);
    // the noise of its last digits is no other frequency
    const near = uncertaintyOf(convertAmplitude({ ...known, hertz: Math.fround(25.000001) }, "um pp"));
    expect(near.parts.length).toBe(2);
  });

  it("of the frequency of a slow roll is not laid on the running speed", () => {
    const slow = {
      ...parseVector("6 um pp ∠ 150° at 1x of 300 r/min"),
      amplitude: parseUncertain("6 um pp at 5 ± 0.1 Hz"),
    };
    const left = slowRollCompensated("40 um pp ∠ 60° at 1x of 5400 r/min", slow);
    expect(uncertaintyOf(convertAmplitude(left.amplitude, "mm/s rms")).parts).toEqual([]);
  });

  it("from outside is refused where no text could state it", () => {
    const given = { does: "given", value: 4.9, type: "mm/s rms", hertz: 25 } as const;
    const known = { standard: 0.1, distribution: "normal", stated: "± 0.2 (k=2)" } as const;
    const of = (more: object) => () => uncertaintyOf({ history: [{ ...given, ...more }] });
    const bound = { ...known, distribution: "rectangular", standard: 4.9 / Math.sqrt(3) };
    expect(of({ uncertainty: bound })).not.toThrow();
    expect(of({ uncertainty: { ...bound, standard: 2.84 } })).toThrow("at most the number it is of, 4.9");
    expect(of({ uncertainty: { ...known, standard: 5 } })).toThrow("at most the number it is of, 4.9");
    expect(of({ hertzUncertainty: { ...known, in: "dB" } })).toThrow("which is 0.1 dB");
    // the widest that a text may state comes back from JSON
    for (const text of [
      "4.9 ± 4.9 mm/s rms",
      "4.9 ± 4.9 mm/s rms (k=1)",
      "4.9 ± 20 dB mm/s rms",
      "3 ± 20 dB re 1 nm/s",
    ]) {
      const back = JSON.parse(JSON.stringify(withUncertainty(text, "± 100 %", "sensor")));
      expect(uncertaintyOf(back, { draws: 1000 }).parts.length).toBe(2);
    }
  });

  it("of one reading that comes in twice is one input", () => {
    const reading = parseUncertain("4.9 ± 0.3 mm/s rms (k=2)");
    expect(uncertaintyOf(ratioOf(reading, reading)).standard).toBeCloseTo(0, 12);
    const moved = convertAmplitude(reading, "in/s rms");
    expect(uncertaintyOf(ratioOf(reading, moved)).standard).toBeCloseTo(0, 12);
    const check = checkAgainstKnown({ known: reading, indicated: reading, tolerance: "5 %" });
    expect(check.uncertainty ?? 0).toBeCloseTo(0, 12);
  });

  it("is told with its unit, which need not be that of its name", () => {
    const told = (text: string) =>
      uncertaintyOf(convertAmplitude(parseUncertain(text), "um pp")).parts.map(({ name, stated }) => [name, stated]);
    expect(told("4.9 mm/s rms at 1500 ± 10 r/min")).toEqual([["25 Hz", "± 10 r/min"]]);
    expect(told("4.9 mm/s rms at 1500 r/min ± 0.1 Hz")).toEqual([["25 Hz", "± 0.1 Hz"]]);
    expect(told("4.9 ± 0.3 mm/s rms (k=2) at 25 Hz")).toEqual([["4.9 mm/s rms", "± 0.3 mm/s rms (k=2)"]]);
    expect(told("95 ± 0.5 dB re 1 nm/s at 25 Hz")).toEqual([["95 dB re 1 nm/s", "± 0.5 dB"]]);
    const { parts } = uncertaintyOf(withUncertainty("4.9 mm/s rms", "± 0.05", "display"));
    expect(parts[0]).toMatchObject({ name: "display", stated: "± 0.05 mm/s rms" });
  });

  it("takes draws enough to say something of the ends", () => {
    expect(() => uncertaintyOf("4.4 ± 1.5 mm/s rms (k=2)", { draws: 2 })).toThrow("a whole number of 1000 to 10000000");
    expect(() => uncertaintyOf("4.4 mm/s rms", { draws: 10 })).toThrow("a whole number of 1000 to 10000000");
    expect(() => uncertaintyOf("4.4 ± 0.1 mm/s rms", 5 as never)).toThrow("options such as");
  });

  it("of a frequency that has no variance once it divides is refused", () => {
    expect(() => parseUncertain("2 g pk at 25 ± 5 Hz (k=1)")).toThrow("at most 12 % of it");
    expect(parseUncertain("2 g pk at 25 ± 5 Hz").hertz).toBe(25);
  });

  it("that lies unevenly is told by its ends", () => {
    const level = convertAmplitude(parseUncertain("120 ± 6 dB re 1e-9 m/s (k=2)"), "mm/s rms");
    expect(formatUncertain(level)).toMatch(/^1\.00 mm\/s rms, 95 % within 0\.5\d+ to (1\.9\d|2\.0\d)$/);
  });
});
