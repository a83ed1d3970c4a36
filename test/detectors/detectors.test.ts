import { describe, expect, it } from "vitest";
import { detectorFacts } from "../../src/entries/facts";
import { type Detector, type DetectorEntry, detectorSymbol, detectors } from "../../src/index";

const table = Object.entries(detectors) as [Detector, DetectorEntry][];
/** One period of a sine of peak 1, in enough samples that the sums are those of the integral. */
const sine = Float64Array.from({ length: 4096 }, (_, i) => Math.sin((2 * Math.PI * i) / 4096));

describe("the catalogue of detectors", () => {
  it.each(table)("%s reads a sine of peak 1 as its ratio says", (symbol, ratio) => {
    const { ofSamples } = detectorFacts[symbol];
    const expected = (ratio.num / ratio.den) * Math.PI ** ratio.pi * Math.SQRT2 ** ratio.rootTwo;
    expect(ofSamples(sine)).toBeCloseTo(expected, 6);
    expect(ofSamples(sine.map((value) => 3 * value))).toBeCloseTo(3 * expected, 5);
  });

  it.each(table)("%s reads the same from the sums of a wave as from its samples", (symbol) => {
    const { ofSamples, ofSums } = detectorFacts[symbol];
    const wave = [3, -1, 0, -2];
    const sums = { count: 4, squares: 14, sizes: 6, low: -2, high: 3 };
    expect(ofSums?.(sums)).toBe(ofSamples(wave));
  });

  it("reads other waves as they are: a square wave of 1 is 1 by every detector but peak-to-peak", () => {
    const square = Float64Array.from({ length: 100 }, (_, i) => (i < 50 ? 1 : -1));
    expect(table.map(([symbol]) => [symbol, detectorFacts[symbol].ofSamples(square)])).toEqual([
      ["pk", 1],
      ["pp", 2],
      ["rms", 1],
      ["avg", 1],
      ["true pk", 1],
    ]);
  });

  it("reads a lopsided wave: peak-to-peak is not twice the peak", () => {
    const wave = [3, -1, 0, -2];
    expect(detectorFacts.pk.ofSamples(wave)).toBe(3);
    expect(detectorFacts.pp.ofSamples(wave)).toBe(5);
    expect(detectorFacts.avg.ofSamples(wave)).toBe(1.5);
    expect(detectorFacts.rms.ofSamples(wave)).toBe(Math.sqrt(3.5));
  });

  it.each([
    ["peak", "pk"],
    ["0-pk", "pk"],
    ["zero to peak", "pk"],
    ["P-P", "pp"],
    ["pk–pk", "pp"],
    ["p/p", "pp"],
    ["p p", "pp"],
    ["Zero-Peak", "pk"],
    ["Peak to Peak", "pp"],
    ["r.m.s.", "rms"],
    ["RMS", "rms"],
    ["rectified mean", "avg"],
    ["Average", "avg"],
    ["true peak", "true pk"],
    ["True-Peak", "true pk"],
    ["true pk", "true pk"],
    [" rms ", "rms"],
    ["rms.", "rms"],
    ["peak - to - peak", "pp"],
    ["p . p", "pp"],
  ])("%j is %s", (spelling, symbol) => {
    expect(detectorSymbol(spelling)).toBe(symbol);
  });

  it("no spelling means two detectors", () => {
    const spellings = table.flatMap(([symbol, { spoken }]) => [symbol, ...spoken]);
    expect(new Set(spellings).size).toBe(spellings.length);
    for (const [symbol] of table) expect(detectorSymbol(symbol)).toBe(symbol);
    for (const [symbol, { spoken }] of table) for (const name of spoken) expect(detectorSymbol(name)).toBe(symbol);
  });

  it.each(["p", "mean", "rsm", "", " - ", "constructor", ".rms", "rms..", "-pk"])("%j is none", (spelling) => {
    expect(() => detectorSymbol(spelling)).toThrow(/detector/);
  });
});
