import type { Spectrum } from "../../signal/index";
import type { Plot } from "../print/plot-text";

/** A multiple of the running speed, and where it should stand, in hertz. */
interface Expected {
  readonly order: number;
  readonly expected: number;
}

/** A spectrum between two frequencies as it is drawn in a terminal, with the multiples of the running speed below it. */
export function spectrumPlot(
  { unit, detector, resolution, values }: Pick<Spectrum, "unit" | "detector" | "resolution" | "values">,
  [from, to]: readonly [low: number, high: number],
  orders: readonly Expected[],
): Plot {
  return {
    ...{ unit: `${unit} ${detector}`, xUnit: "Hz", holds: false, levels: [], lanes: [], from, to },
    x: Float64Array.from(values, (_, k) => k * resolution),
    y: values,
    marks: orders.flatMap(({ order, expected }) =>
      expected >= from && expected <= to ? [{ text: `${order}x`, at: expected }] : [],
    ),
  };
}
