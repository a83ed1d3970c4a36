import { explain } from "veladis/explain";
import { formatVector, shaftAbsolute, slowRollCompensated } from "veladis/vector";
import { describe, expect, it } from "vitest";

const reading = "40 um pp ∠ 60° at 1x of 5400 r/min";
const slow = "6 um pp ∠ 150° at 1x of 300 r/min";

describe("slow roll taken off", () => {
  // arithmetic: at a right angle by Pythagoras, root(40^2 + 6^2) = 40.447
  it("is a difference of vectors at two speeds, in the reading's unit and at its speed", () => {
    const answer = slowRollCompensated(`${reading}, probe 1Y`, `${slow}, probe 1y`);
    expect(formatVector(answer)).toBe(
      "40.4 um pp ∠ 51.5° at 1x of 5400 r/min, probe 1Y, slow roll taken off at 300 r/min",
    );
    expect(answer.amplitude.hertz).toBe(90);
    expect(answer.assumed).toEqual(["one-frequency"]);
    expect(answer.assumedFacts).toEqual(["both phases count from one mark on the shaft"]);
    expect(explain(answer).text).toContain("40 um pp - 6 um pp at 90 degrees = 40.45 um pp  (slow roll at 300 r/min)");
    expect(
      formatVector(slowRollCompensated("2 mil pp ∠ 0° at 1x of 5400 r/min", "12.7 um pk ∠ 0° at 1x of 300 r/min")),
    ).toBe("1.00 mil pp ∠ 0° at 1x of 5400 r/min, slow roll taken off at 300 r/min");
  });

  it("says which probe was not named", () => {
    expect(slowRollCompensated(reading, slow).assumedFacts).toContain("one probe for both: neither names it");
    const half = slowRollCompensated(`${reading}, probe 1Y`, slow);
    expect(half.assumedFacts).toContain("one probe for both: only one names it");
    expect(half.probe).toBe("1Y");
  });

  // API 610, 6.9.4.9 (clause from memory), as its tables here quote it: 25 % of the limit or 6.5 um (0.25 mil), whichever is less; not checked against a printed copy
  it.each([
    ["6 um pp", {}, /no limit was given/],
    ["6 um pp", { limit: "40 um pp" }, undefined],
    ["6 um pp", { limit: "20 um pp" }, /6\.00 um pp is more than 5\.00 um pp/],
    ["3.1 um pk", { limit: "1 mil pp" }, undefined],
    ["6.4 um pp", { limit: "100 um pp" }, /6\.40 um pp is more than 6\.35 um pp/],
    ["0.3 mil pp", {}, /7\.62 um pp is more than 6\.35 um pp/],
  ])("run-out of %s with %j is told beside the works test", (runOut, options, expected) => {
    const { cautions } = slowRollCompensated(reading, `${runOut} ∠ 150° at 1x of 300 r/min`, options);
    expect(cautions[0]).toMatch(/API 610 .* works test alone .*judged by the reading as it came/);
    if (expected === undefined) expect(cautions.length).toBe(1);
    else expect(cautions[1]).toMatch(expected);
  });

  // a tenth of running speed: common practice, no source
  it("says when the slow roll was not slow", () => {
    const at = (speed: string) => slowRollCompensated(reading, slow.replace("300", speed)).cautions.join();
    expect(at("540")).not.toMatch(/tenth/);
    expect(at("900")).toMatch(/slow roll at 900 r\/min is faster than a tenth of 5400 r\/min/);
  });

  it.each<[string, string, string, object?]>([
    [reading, slow.replace("300", "5400"), "out-of-range"],
    [reading, slow.replace("300", "6000"), "out-of-range"],
    [reading, slow.replace("1x", "2x"), "wrong-frequency"],
    [reading.replace("1x", "2x"), slow.replace("1x", "2x"), "wrong-frequency"],
    [reading.replace("um pp", "mm/s pk"), slow.replace("um pp", "mm/s pk"), "wrong-quantity"],
    [reading, "6 um pp", "missing-fact"],
    ["40 um pp", slow, "missing-fact"],
    [`${reading}, probe 1Y`, `${slow}, probe 1X`, "out-of-range"],
    [`${reading}, direction up`, `${slow}, direction left`, "out-of-range"],
    [reading, slow, "wrong-quantity", { limit: "4 mm/s rms" }],
    [reading, slow, "not-positive", { limit: "0 um pp" }],
    [reading, slow, "unknown-option", { limits: "50 um pp" }],
  ])("of %s, %s is refused as %s", (a, b, code, options) => {
    expect(() => slowRollCompensated(a, b, options)).toThrow(expect.objectContaining({ code }));
  });
});

describe("shaft absolute", () => {
  const relative = "30 um pp ∠ 0° at 1x of 5400 r/min";

  // arithmetic: 20 um peak at 90 Hz is 2 pi 90 x 0.02 = 11.3097 mm/s peak, which leads it by 90 degrees; 30-40-50
  it("adds the casing as a displacement, whatever it was read in", () => {
    for (const casing of ["40 um pp ∠ 90°", "11.30973 mm/s pk ∠ 0°", "6.395536 m/s2 pk ∠ 270°"]) {
      const answer = shaftAbsolute(relative, `${casing} at 1x of 5400 r/min`);
      expect(formatVector(answer)).toBe("50.0 um pp ∠ 53.1° at 1x of 5400 r/min");
      expect(answer.assumed).toEqual(["one-frequency"]);
    }
  });

  it("names the direction, the mark and the sense of the sensors that were taken for granted", () => {
    const facts = shaftAbsolute(relative, "40 um pp ∠ 90° at 1x of 5400 r/min").assumedFacts.join("; ");
    expect(facts).toMatch(
      /one mark.*one direction for both: neither names it.*motion in one sense positive.*filters turn/,
    );
    const named = shaftAbsolute(
      `${relative}, probe 1Y, direction up`,
      "40 um pp ∠ 90° at 1x of 90 Hz, probe V1, direction Up",
    );
    expect(named.assumedFacts.join()).not.toMatch(/names it/);
    expect(named.direction).toBe("up");
    expect("probe" in named).toBe(false);
  });

  it.each([
    [relative, "4 mm/s pk ∠ 0° at 1x of 5300 r/min", "wrong-frequency"],
    [relative, "4 mm/s pk ∠ 0° at 2x of 5400 r/min", "wrong-frequency"],
    ["4 mm/s pk ∠ 0° at 1x of 5400 r/min", "4 mm/s pk ∠ 0° at 1x of 5400 r/min", "wrong-quantity"],
    [`${relative}, direction up`, "4 mm/s pk ∠ 0° at 1x of 5400 r/min, direction left", "out-of-range"],
    [relative, "4 mm/s pk", "missing-fact"],
  ])("of %s and %s is refused as %s", (a, b, code) => {
    expect(() => shaftAbsolute(a, b)).toThrow(expect.objectContaining({ code }));
  });

  it("where the casing has no phase says the two ends, with the casing as a displacement", () => {
    expect(() => shaftAbsolute(relative, "11.30973 mm/s pk")).toThrow(/from 10\.0 um pp to 70\.0 um pp/);
  });
});
