import { defineDetector, toolkit } from "veladis/kit";
import { expect, it } from "vitest";

it("a detector reads about the mean, which is taken off (definition of a detector in this library)", () => {
  const twice = defineDetector({
    symbol: "twice",
    num: 1,
    den: 1,
    rootTwo: 1,
    ofSamples: (samples) =>
      2 * Math.sqrt(Array.from(samples).reduce((sum, one) => sum + one * one, 0) / samples.length),
    name: "twice the RMS value",
    source: { title: "Hollowmere workshop sheet 4", provenance: "memory" },
  });
  const kit = toolkit({ detectors: [twice] });
  expect(kit.read([11, 9], "twice")).toBe(2);
  expect(kit.read([1, -1], "twice")).toBe(2);
  expect(kit.read([11, 9], "rms")).toBe(1);
});
