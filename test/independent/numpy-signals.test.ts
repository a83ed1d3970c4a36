import { baseline } from "veladis/protection";
import { convertDensity, convertSpectrum, density, densityOverall, overall, spectrum } from "veladis/signal";
import { describe, expect, it } from "vitest";
import fixture from "../references/numpy-random-signals.json";
import { expectClose } from "../signal/close";

/**
 * Source: NumPy and SciPy (versions and seed in the fixture), by test/references/make-random-signals.py. The records
 * are random and invented; more of SciPy is in test/signal/scipy.test.ts.
 */
const RELATIVE = 1e-9;
/** Statistics of a list come from sums of a few dozen numbers. */
const STATISTICS = 1e-12;

type Parts = (typeof fixture.overalls)[number]["record"];

/** The record that its parts tell; the noise has the same integers in every language. */
function recordOf({ n, rate, offset, drift, tones, noise: [size = 0, seed = 0] }: Parts): Float64Array {
  let state = seed;
  return Float64Array.from({ length: n }, (_, i) => {
    state = (Math.imul(1664525, state) + 1013904223) >>> 0;
    const t = i / rate;
    const sines = (tones as [number, number, number][]).map(
      ([a, hertz, phase]) => a * Math.sin(2 * Math.PI * hertz * t + phase),
    );
    return sines.reduce((sum, one) => sum + one, offset + drift * t + size * (state / 2 ** 32 - 0.5));
  });
}

const averaging = ({ record, segment, overlap, window, detrend }: Omit<(typeof fixture.spectra)[number], "bins">) =>
  ({ rate: record.rate, segment, overlap: overlap / segment, window, detrend }) as {
    rate: number;
    segment: number;
    overlap: number;
    window: "hann";
    detrend: "mean";
  };

/** Everything but the bin of 0 Hz. */
const firstBin = ({ record, segment }: { readonly record: Parts; readonly segment: number }) => ({
  lowest: record.rate / segment,
});

describe(`random records against NumPy ${fixture.software.numpy} and SciPy ${fixture.software.scipy}`, () => {
  it(`${fixture.overalls.length} overalls: bands, windows, detectors, true peak, integration and differentiation`, () => {
    for (const [i, row] of fixture.overalls.entries()) {
      const { record, unit, band, to, window, oversample, detrend, value } = row;
      const options = { rate: record.rate, unit, band, as: to, window, detrend, oversample };
      const level = overall(recordOf(record), options as unknown as Parameters<typeof overall>[1]);
      expectClose(level.value, value, RELATIVE, `overall ${i}: ${JSON.stringify(options)}`);
    }
  });

  it(`${fixture.spectra.length} spectra: the highest lines and others, in other types`, () => {
    for (const [i, row] of fixture.spectra.entries()) {
      const { record, unit, to, bins, values } = row;
      const own = spectrum(recordOf(record), { ...averaging(row), unit: unit as "g" });
      const lines = convertSpectrum(own, to as "mm/s rms", firstBin(row));
      bins.forEach(
        (bin, k) => void expectClose(lines.values[bin], values[k] as number, RELATIVE, `spectrum ${i}, bin ${bin}`),
      );
    }
  });

  it(`${fixture.densities.length} densities: bins, integrated or differentiated, and the RMS value of a band`, () => {
    for (const [i, row] of fixture.densities.entries()) {
      const { record, unit, to, bins, values, band, rms } = row;
      const own = density(recordOf(record), { ...averaging(row as never), unit: unit as "g" });
      const squared = /\//.test(to) ? (`(${to})2/Hz` as const) : (`${to}2/Hz` as const);
      const psd = convertDensity(own, squared as "g2/Hz", firstBin(row));
      bins.forEach(
        (bin, k) => void expectClose(psd.values[bin], values[k] as number, RELATIVE, `density ${i}, bin ${bin}`),
      );
      expectClose(densityOverall(psd, band as [number, number]).value, rms, RELATIVE, `density ${i}`);
    }
  });

  it(`${fixture.baselines.length} baselines: median, mean, deviations, percentile and outliers`, () => {
    for (const [i, row] of fixture.baselines.entries()) {
      const own = baseline(row.values, { as: "mm/s rms", percentile: row.percent });
      const close = (value: number, wanted: number, what: string) =>
        wanted === 0 ? expect(value, what).toBe(0) : expectClose(value, wanted, STATISTICS, `baseline ${i}: ${what}`);
      close(own.median, row.median, "median");
      close(own.mean, row.mean, "mean");
      close(own.standardDeviation, row.deviation, "standard deviation");
      close(own.spread, row.spread, "robust spread");
      close(own.percentile.value, row.percentile, "percentile");
      close(own.withoutOutliers.mean, row.good.mean, "mean without outliers");
      close(own.withoutOutliers.standardDeviation, row.good.deviation, "standard deviation without outliers");
      expect([own.lowest, own.highest, own.withoutOutliers.count]).toEqual([row.lowest, row.highest, row.good.count]);
      expect(own.outliers.map(({ index }) => index)).toEqual(row.outliers);
    }
  });
});
