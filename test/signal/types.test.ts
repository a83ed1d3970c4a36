import { format } from "veladis";
import { classify } from "veladis/severity";
import { type DensityUnit, overall, profileOverall, type SpectrumOverall, spectrum } from "veladis/signal";
import { expectTypeOf, it } from "vitest";

const samples = Float64Array.from({ length: 64 }, (_, i) => i % 7);
const options = { rate: 64, unit: "g", band: [2, 30], as: "mm/s rms" } as const;

it("an overall is an amplitude: it can be formatted and judged", () => {
  const level = overall(samples, options);
  expectTypeOf(level).toEqualTypeOf<SpectrumOverall>();
  expectTypeOf(format).toBeCallableWith(level);
  expectTypeOf(classify).toBeCallableWith(level, { scheme: "iso-10816-7-2009", machine: "pump category II 90 kW" });
});

it("what cannot be meant does not compile", () => {
  const refused = [
    // @ts-expect-error no unit of vibration
    () => overall(samples, { ...options, unit: "V" }),
    // @ts-expect-error no detector
    () => overall(samples, { ...options, as: "mm/s" }),
    // @ts-expect-error no such edges
    () => overall(samples, { ...options, edges: "soft" }),
    // @ts-expect-error no such window
    () => overall(samples, { ...options, window: "kaiser" }),
    // @ts-expect-error a band has two edges
    () => overall(samples, { ...options, band: [10] }),
    // @ts-expect-error the rate is needed
    () => overall(samples, { unit: "g", band: [2, 30], as: "mm/s rms" }),
    // @ts-expect-error a line may be zero and then has no level
    () => spectrum(samples, { rate: 64, unit: "g", as: "dB re 1 um/s2" }),
    // @ts-expect-error a unit with a stroke is squared in brackets
    () => profileOverall([], { unit: "m/s22/Hz", as: "g rms" }),
  ];
  expectTypeOf(refused).toBeArray();
  expectTypeOf<"g2/Hz" | "(m/s2)2/Hz" | "(mm/s)2/Hz" | "um2/Hz">().toExtend<DensityUnit>();
});
