import {
  inPlace,
  requireFinite,
  requireGiven,
  requireNonNegative,
  requirePositive,
  shown,
  VeladisError,
} from "../core/index";
import { detectors } from "../detectors/index";
import { quantities, units } from "../units/index";
import type { Density } from "./density-type";
import { trends } from "./detrend";
import { sumOf } from "./samples";
import type { Spectrum } from "./spectrum-type";
import type { Averaging } from "./welch";
import { windows } from "./windows";

function requireNameIn(table: object, name: unknown, what: string, option: string): void {
  if (typeof name === "string" && Object.hasOwn(table, name)) return;
  throw new VeladisError("wrong-type", {
    expected: what,
    received: shown(name),
    option,
    allowed: Object.keys(table),
  });
}

/** How the lines were averaged. */
function requireAveraging({
  window,
  detrend,
  noiseBandwidth,
  coherentGain,
  segment,
  overlap,
  averages,
}: Averaging): void {
  requireNameIn(windows, window, "the window of the lines", "window");
  requireNameIn(trends, detrend, "what was taken off before the lines were made", "detrend");
  requirePositive(noiseBandwidth, "the noise bandwidth of the lines, above zero", { option: "noiseBandwidth" });
  requirePositive(coherentGain, "the coherent gain of the lines, above zero", { option: "coherentGain" });
  requirePositive(segment, "the segment of the lines, above zero", { option: "segment" });
  requirePositive(averages, "the averages of the lines, above zero", { option: "averages" });
  requireNonNegative(overlap, "the overlap of the lines, zero or more", { option: "overlap" });
}

/** Lines whose numbers can be counted on: a step of zero would make endless loops of those that walk them. */
function requireLineNumbers(lines: Omit<Density, "unit" | "squared">): void {
  const { rate, resolution, lowest: from, values, quantity } = lines;
  requireAveraging(lines);
  requirePositive(rate, "the sampling rate of the lines, above zero", { option: "rate" });
  requirePositive(resolution, "the resolution of the lines, above zero", { option: "resolution" });
  requireNonNegative(from, "the frequency from which on lines are given", { option: "lowest" });
  requireNameIn(quantities, quantity, "the quantity of the lines", "quantity");
  if (!(values instanceof Float64Array)) {
    throw new VeladisError("wrong-type", {
      expected: "lines in a Float64Array",
      received: shown(values),
      option: "values",
    });
  }
  if (Number.isFinite(sumOf(values))) return;
  values.forEach(
    (value, i) => void requireFinite(value, `a finite line at index ${i}`, { option: "values", index: i }),
  );
}

/**
 * The spectrum itself if it is one, as `spectrum` or a stream of spectra returns it.
 *
 * @throws {@link VeladisError} `missing-fact`, `wrong-type`, `not-positive`, `negative`, `not-a-number`, `not-finite`
 */
export function requireSpectrum(spectrum: Spectrum): Spectrum {
  return inPlace({ parameter: "spectrum" }, () => checkedSpectrum(spectrum));
}

function checkedSpectrum(spectrum: Spectrum): Spectrum {
  const { unit, detector, derivativeOrder } = requireGiven(spectrum, "a spectrum", { parameter: "spectrum" });
  requireNameIn(units, unit, "the unit of a spectrum", "unit");
  requireNameIn(detectors, detector, "the detector of a spectrum", "detector");
  if (!(Number.isInteger(derivativeOrder) && Math.abs(derivativeOrder) <= 2)) {
    throw new VeladisError(typeof derivativeOrder === "number" ? "out-of-range" : "wrong-type", {
      expected: "a derivative order from -2 to 2",
      received: shown(derivativeOrder),
      option: "derivativeOrder",
    });
  }
  requireLineNumbers(spectrum);
  return spectrum;
}

/**
 * The density itself if it is one, as `density` returns it.
 *
 * @throws {@link VeladisError} as {@link requireSpectrum}
 */
export function requireDensity(density: Density): Density {
  return inPlace({ parameter: "density" }, () => checkedDensity(density));
}

function checkedDensity(density: Density): Density {
  requireNameIn(
    units,
    requireGiven(density, "a density", { parameter: "density" }).squared,
    "the unit of a density",
    "squared",
  );
  requireLineNumbers(density);
  return density;
}
