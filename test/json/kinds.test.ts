import { convertAmplitude, format } from "veladis";
import { explain } from "veladis/explain";
import { fromJson, toJson } from "veladis/json";
import { builtInSchemes, judge } from "veladis/severity";
import { bandOverall, density, densityOverall, spectrum } from "veladis/signal";
import { expect, it } from "vitest";

const samples = Array.from({ length: 256 }, (_, i) => 2 * Math.sin((2 * Math.PI * 20 * i) / 256));

it("a verdict comes back equal, frozen, and is explained", () => {
  const verdict = judge("3.8 mm/s rms", "pump 90 kW 2980 r/min category II rigid");
  const text = toJson("verdict", verdict);
  console.log(JSON.stringify(verdict).length, text.length);
  const back = fromJson("verdict", text);
  expect(back).toEqual(verdict);
  expect(explain(back).text).toBe(explain(verdict).text);
});
