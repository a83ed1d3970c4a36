import { convertAmplitude } from "veladis";
import { classify, iso10816Part3Of2009, judge } from "veladis/severity";
import { parseUncertain } from "veladis/uncertainty";
import {
  convertVector,
  differenceOfVectors,
  formatVector,
  parseVector,
  shaftAbsolute,
  slowRollCompensated,
  sumOfVectors,
} from "veladis/vector";
import { describe, expect, it } from "vitest";

const vertical = "40 um pp ∠ 60° at 1x of 5400 r/min, direction vertical";

describe("vectors that do not go together", () => {
  it("of two directions or two probes are not added", () => {
    const across = "30 um pp ∠ 150° at 1x of 5400 r/min, direction horizontal";
    expect(() => sumOfVectors(vertical, across)).toThrow("two vectors of one direction");
    expect(() =>
      differenceOfVectors(
        "40 um pp ∠ 60° at 1x of 5400 r/min, probe 1Y",
        "30 um pp ∠ 60° at 1x of 5400 r/min, probe 2X",
      ),
    ).toThrow("two vectors of one probe");
    expect(sumOfVectors(vertical, "30 um pp ∠ 60° at 1x of 5400 r/min").amplitude.value).toBeCloseTo(70, 9);
  });

  it("slow roll is taken off once", () => {
    const slow = "6 um pp ∠ 150° at 1x of 300 r/min";
    const left = slowRollCompensated(vertical, slow);
    expect(() => slowRollCompensated(left, slow)).toThrow("slow roll is taken off once");
    expect(() => slowRollCompensated(formatVector(left), slow)).toThrow("slow roll is taken off once");
    expect(() => slowRollCompensated(vertical, `${slow}, slow roll taken off at 250 r/min`)).toThrow("taken off once");
    const { slowRollSpeed: _, assumed: _a, history: _h, ...parts } = left;
    expect(() => slowRollCompensated(parts, slow)).toThrow("slow roll is taken off once");
  });

  it("slow roll stays taken off after a history that is told in one step", () => {
    let vector = slowRollCompensated(vertical, "6 um pp ∠ 150° at 1x of 300 r/min");
    for (let i = 0; i < 80; i++) vector = convertVector(vector, i % 2 === 0 ? "mm/s pk" : "um pp");
    expect(vector.history.some(({ note }) => note?.startsWith("slow roll"))).toBe(false);
    expect(() => slowRollCompensated(vector, "6 um pp ∠ 150° at 1x of 300 r/min")).toThrow("taken off once");
    expect(shaftAbsolute(vector, "4 mm/s pk ∠ 30° at 1x of 5400 r/min").slowRollSpeed).toBe(5);
  });

  it("a vector with run-out and one without are put together with a caution", () => {
    const left = slowRollCompensated(vertical, "6 um pp ∠ 150° at 1x of 300 r/min");
    for (const act of [differenceOfVectors, sumOfVectors]) {
      for (const mixed of [act(left, vertical), act(vertical, formatVector(left))]) {
        expect(mixed.cautions.join()).toContain("slow roll was taken off one of the two only");
        expect(mixed.slowRollSpeed).toBe(5);
      }
      const other = slowRollCompensated(vertical, "6 um pp ∠ 150° at 1x of 320 r/min");
      expect(act(left, other).cautions.join()).not.toContain("one of the two only");
      expect(act(left, other).slowRollSpeed).toBe(320 / 60);
      expect(act(vertical, vertical).cautions).toEqual([]);
    }
  });

  it("of which one names a direction or a probe say what is taken for granted", () => {
    const bare = "30 um pp ∠ 60° at 1x of 5400 r/min";
    for (const act of [differenceOfVectors, sumOfVectors]) {
      expect(act(vertical, bare).assumedFacts).toContain("one direction for both: only one names it");
      expect(act(bare, `${bare}, probe 1Y`).assumedFacts).toContain("one probe for both: only one names it");
      expect(act(bare, bare).assumedFacts.join()).not.toContain("names it");
    }
  });

  it("phases of uncertain amplitudes are said to be exact", () => {
    const one = {
      ...parseVector("40 um pp ∠ 66° at 1x of 5400 r/min"),
      amplitude: parseUncertain("40 ± 0.2 um pp (k=2) at 90 Hz"),
    };
    const other = parseVector("40 um pp ∠ 60° at 1x of 5400 r/min");
    expect(differenceOfVectors(one, other).assumedFacts).toContain("the phases are exact: neither was given with a ±");
    const known = parseVector("40 um pp ∠ 60 ± 1° at 1x of 5400 r/min");
    expect(differenceOfVectors(one, known).assumedFacts).toContain("one phase is exact: it was not given with a ±");
    expect(differenceOfVectors(known, known).assumedFacts.join()).not.toContain("exact");
    expect(differenceOfVectors(other, other).assumedFacts?.join()).not.toContain("exact");
  });
});

describe("a vector where a reading stands", () => {
  it("is refused, and its amplitude named", () => {
    const vector = parseVector("4 mm/s pk ∠ 30° at 1x of 1480 r/min") as never;
    const machine = "pump 90 kW 2980 r/min rigid category II";
    const reading = expect.objectContaining({
      code: "unknown-option",
      message: expect.stringContaining("vector.amplitude"),
    });
    expect(() => convertAmplitude(vector, "um pp")).toThrow(reading);
    expect(() => judge(vector, machine)).toThrow(reading);
    expect(() =>
      classify(vector, { scheme: iso10816Part3Of2009, machine: "pump 90 kW 2980 r/min rigid group 3" }),
    ).toThrow(reading);
    const { amplitude } = parseVector("4 mm/s pk ∠ 30° at 1x of 1480 r/min");
    expect(judge(amplitude, machine).zone).toBe(judge("4 mm/s pk at 1480 r/min", machine).zone);
  });
});
