import { convert, convertAmplitude, format, VeladisError } from "veladis";
import { explain } from "veladis/explain";
import { answerKinds, fromJson, jsonVersion, toJson } from "veladis/json";
import { TripLogic } from "veladis/protection";
import { classify, confirmableLimits, judge, schemeById } from "veladis/severity";
import { bandOverall, density, densityOverall, spectrum } from "veladis/signal";
import { parseUncertain, uncertaintyOf } from "veladis/uncertainty";
import { formatVector, parseVector } from "veladis/vector";
import { describe, expect, it } from "vitest";
import { settings } from "../trip/trip-settings";
import { makers } from "./answers";

const machine = "pump 90 kW 2980 r/min category II rigid";
const samples = Array.from({ length: 256 }, (_, i) => 2 * Math.sin((2 * Math.PI * 20 * i) / 256));
const shape = { rate: 256, unit: "mm/s" } as const;

describe("what came back is used as the first was", () => {
  it("a reading is converted on, with its history", () => {
    const first = convertAmplitude("0.25 in/s pk", "mm/s rms");
    const back = fromJson("amplitude", toJson("amplitude", first));
    expect(convertAmplitude(back, "mm pp", { at: "25 Hz" })).toEqual(convertAmplitude(first, "mm pp", { at: "25 Hz" }));
    // 0.25 in/s pk is 0.25 x 25.4 / sqrt 2 mm/s rms, by the definition of the inch
    expect(back.value).toBeCloseTo((0.25 * 25.4) / Math.SQRT2, 12);
    expect(back.value).toBe(convert(0.25, "in/s pk", "mm/s rms"));
  });

  it("an uncertainty is carried on", () => {
    const first = parseUncertain("4.9 mm/s rms ± 5 % (k=2)");
    expect(uncertaintyOf(fromJson("amplitude", toJson("amplitude", first)))).toEqual(uncertaintyOf(first));
  });

  it("a verdict is explained", () => {
    const verdict = judge("3.81 mm/s rms", machine);
    const back = fromJson("verdict", toJson("verdict", verdict));
    expect(explain(back).text).toBe(explain(verdict).text);
  });

  it("a spectrum and a density give their overall", () => {
    const first = spectrum(samples, shape);
    const back = fromJson("spectrum", toJson("spectrum", first));
    expect(back.values).toBeInstanceOf(Float64Array);
    expect(bandOverall(back, [10, 30])).toEqual(bandOverall(first, [10, 30]));
    const power = density(samples, shape);
    expect(densityOverall(fromJson("density", toJson("density", power)), [10, 30])).toEqual(
      densityOverall(power, [10, 30]),
    );
  });

  it("a trip goes on from its state", () => {
    const logic = new TripLogic(settings);
    logic.run([0.1, 0.6], 1);
    const resumed = new TripLogic(settings, fromJson("trip state", toJson("trip state", logic.snapshot())));
    expect(resumed.run([0.6, 0.6], 1)).toEqual(logic.run([0.6, 0.6], 1));
  });

  it("a scheme judges, and a vector is printed", () => {
    const scheme = fromJson("scheme", toJson("scheme", schemeById("iso-10816-3-2009")));
    const asked = { machine: "group 2 rigid" };
    expect(classify("4 mm/s rms", { scheme, ...asked })).toEqual(
      classify("4 mm/s rms", { scheme: "iso-10816-3-2009", ...asked }),
    );
    const vector = parseVector("40 um pp ∠ 60° at 1x of 5400 r/min");
    expect(formatVector(fromJson("vector", toJson("vector", vector)))).toBe(formatVector(vector));
  });
});

describe("what is written", () => {
  it("has a source once, and half the size", () => {
    const verdict = judge("3.81 mm/s rms", machine);
    const text = toJson("verdict", verdict);
    const source = JSON.stringify(verdict.source);
    expect(JSON.stringify(verdict).split(source).length).toBeGreaterThan(10);
    expect(text.split(source)).toHaveLength(2);
    expect(text.length).toBeLessThan(JSON.stringify(verdict).length / 2);
    const limits = confirmableLimits("iso-10816-3-2009");
    expect(JSON.parse(toJson("confirmable limit[]", limits)).sources.length).toBeLessThan(limits.length);
  });

  it("has words where JSON has no numbers", () => {
    const verdict = judge("0 mm/s rms", machine);
    expect(verdict.margin.ratio).toBe(Number.POSITIVE_INFINITY);
    expect(JSON.parse(toJson("verdict", verdict)).margin).toEqual({ ratio: "Infinity", decibels: "Infinity" });
    const status = { ...new TripLogic(settings).snapshot(), timer: -0 };
    expect(Object.is(fromJson("trip state", toJson("trip state", status)).timer, -0)).toBe(true);
  });

  it("is one line that a terminal may print", () => {
    const back = { ...parseVector("40 um pp ∠ 60° at 1x of 5400 r/min"), cautions: ["a\u009bb\u2028c\nd\ud800"] };
    const text = toJson("vector", back);
    expect(text).not.toMatch(/[\p{Cc}\u2028\ud800]/u);
    expect(fromJson("vector", text).cautions).toEqual(back.cautions);
  });

  it("keeps what was put beside, if it is plain data", () => {
    const noted = { ...convertAmplitude("4 mm/s rms", "in/s pk"), place: undefined, note: { by: ["DE-H"] } };
    expect(fromJson("amplitude", toJson("amplitude", noted))).toEqual(noted);
    expect(() => toJson("amplitude", { ...noted, sources: [] } as never)).toThrow(VeladisError);
    for (const note of [() => 1, new Map(), new Date(0), 1n, Number.NaN, Float64Array.of(1)]) {
      expect(() => toJson("amplitude", { ...noted, note } as never)).toThrow(VeladisError);
    }
  });

  it("every kind has a maker in the tests, or is a part of one that has", () => {
    const made = new Set(makers.map(([kind]) => kind.replace("[]", "")));
    expect(answerKinds().length).toBeGreaterThan(made.size);
    for (const kind of made) expect(answerKinds()).toContain(kind);
    expect(jsonVersion).toBe(1);
    expect(format(fromJson("amplitude", toJson("amplitude", convertAmplitude("1 mm/s rms", "mm/s pk"))))).toBe(
      "1.41 mm/s pk",
    );
  });
});
