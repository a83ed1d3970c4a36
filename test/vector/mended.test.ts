import { parseUncertain } from "veladis/uncertainty";
import { differenceOfVectors, parseVector, slowRollCompensated, sumOfVectors } from "veladis/vector";
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
  });

  it("phases of uncertain amplitudes are said to be exact", () => {
    const one = {
      ...parseVector("40 um pp ∠ 66° at 1x of 5400 r/min"),
      amplitude: parseUncertain("40 ± 0.2 um pp (k=2) at 90 Hz"),
    };
    const other = parseVector("40 um pp ∠ 60° at 1x of 5400 r/min");
    expect(differenceOfVectors(one, other).assumedFacts).toContain(
      "the phases are exact: an uncertainty of theirs is not carried",
    );
    expect(differenceOfVectors(other, other).assumedFacts?.join()).not.toContain("exact");
  });
});
