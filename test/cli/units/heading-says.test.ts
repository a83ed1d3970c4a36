import { describe, expect, it } from "vitest";
import { headingSays } from "../../../src/cli/delimited/heading-says";

/** What a heading says, in few words. */
function said(heading: string): string {
  return headingSays(heading)
    .map(({ unit, detector, level, frequency, time }) =>
      [unit, detector, level, frequency, time].filter(Boolean).join(" "),
    )
    .filter((words) => words !== "")
    .join(" + ");
}

/** The quantities and units of signals that it names. */
function named(heading: string): string {
  return headingSays(heading)
    .flatMap(({ quantity, signal }) => quantity ?? signal ?? [])
    .join(" + ");
}

// common practice, no source: ways in which people head columns
describe("what a heading says of its column", () => {
  // biome-ignore format: a row of a table is a line
  it.each([
    ["mm/s", "mm/s"], ["level in/s pk", "in/s pk"], ["reading (in/s pk)", "in/s pk"], ["a [m/s2]", "m/s2"], ["a [m/s²]", "m/s2"],
    ["Vibration, mm/s", "mm/s"], ["v in mm/s", "mm/s"], ["v / mm/s", "mm/s"], ["v/mm/s", "mm/s"], ["a/g", "g"], ["a / (m/s^2)", "m/s2"],
    ["Vibration (RMS, mm/s)", "mm/s + rms"], ["velocity RMS [mm/s]", "mm/s + rms"], ["Peak velocity (in/s)", "in/s + pk"],
    ["level mm/s RMS max", "mm/s rms"], ["mm/s RMS (10-1000 Hz)", "mm/s rms"], ["Vibration mm/s 10-1000 Hz", "mm/s"],
    ["VIB MM/S RMS", "mm/s rms"], ["DE G PK", "g pk"], ["vel_mm_s", "mm/s"], ["vel_mm_s_rms", "mm/s rms"], ["acc_m_s2", "m/s2"],
    ["acc_g", "g"], ["ips", "in/s"], ["inches per second", "in/s"], ["Shaft, µm pp", "um pp"], ["Shaft (mils peak to peak)", "mil pp"],
    ["level dB", "dB"], ["level (dB re 1e-9 m/s)", "dB re 1e-9 m/s"], ["level dB re 1 nm/s", "dB re 1 nm/s"],
    ["speed [r/min]", "r/min"], ["speed rpm", "r/min"], ["f (Hz)", "Hz"], ["Overall Peak", "pk"], ["mm/s: DE", "mm/s"],
    ["t [min]", "min"], ["time (ms)", "ms"], ["hours", "h"], ["t/s", "s"], ["time_ms", "ms"], ["Time, s", "s"], ["t [µs]", "us"],
    ["DE 1 g", "g"], ["point 3 mm/s pk", "mm/s pk"], ["Vibration (mm/s", "mm/s"], ["level RMS", "rms"],
  ])("%s", (heading, says) => expect(said(heading)).toBe(says));

  it.each([
    "value",
    "level",
    "Vibration average",
    "ID fan 1 DE",
    "10 min",
    "level (10 s)",
    "Feed pump in, DE",
    "",
    "#3 fan",
    "time",
    "DE V",
    "DE (V)",
    "Group G, DE",
    "ID fan G 3",
  ])("nothing: %s", (heading) => expect(said(heading) + named(heading)).toBe(""));

  // biome-ignore format: a row of a table is a line
  it.each([
    ["acc [G]", "g"], ["acc [ G ]", "g"], ["ACC G", "g"], ["acc_G", "g"], ["a / G", "g"], ["acc <g>", "g"], ["acc [g-force]", "g"], ["gRMS", "g rms"], ["a [GRMS]", "g rms"], ["g-rms", "g rms"],
    ["acc [m/s/s]", "m/s2"], ["m/s/s rms", "m/s2 rms"], ["a [m/s²rms]", "m/s2 rms"], ["acc [ms-2]", "m/s2"], ["acc [m.s-2]", "m/s2"], ["acc [m s⁻²]", "m/s2"], ["acc_ms2", "m/s2"], ["a (m/s**2)", "m/s2"], ["a m/sec^2", "m/s2"], ["a mmps2", "mm/s2"],
    ["v mmps", "mm/s"], ["v [mmps RMS]", "mm/s rms"], ["VEL MMPS", "mm/s"], ["v [mm.s-1]", "mm/s"], ["v mm / s", "mm/s"], ["mm/s-rms", "mm/s rms"], ["v inch/sec", "in/s"],
    ["x micrometer", "um"], ["DISP UM PP", "um pp"], ["x [µM]", "um"], ["DISP MM", "mm"], ["time (millis)", "ms"], ["t_nanos", "ns"], ["t micros", "us"],
  ])("%s, as people head columns alone", (heading, says) => expect(said(heading)).toBe(says));

  // biome-ignore format: a row of a table is a line
  it.each([
    ["velocity", "velocity"], ["Vel. DE", "velocity"], ["vel_mm_s", "velocity"], ["ACC-X", "acceleration"], ["displacement, shaft", "displacement"], ["velocity from acceleration", "velocity + acceleration"], ["limits acc. to the maker", ""],
    ["acc mV", "acceleration + mV"], ["a (100 mV/g)", "mV/g"], ["a (1 g = 100 mV)", "mV"], ["a [V]", "V"], ["a (V/g)", "V/g"], ["DE 4-20 mA", "mA"], ["ch1 counts", "counts"],
  ])("%s: quantities and units of signals", (heading, says) => expect(named(heading)).toBe(says));

  // biome-ignore format: a row of a table is a line
  it.each([
    ["G-pk", "g pk"], ["G'", ""], ["MG", ""], ["g force", "g"], ["gforces", "g"], ["gpeak", "g pk"], ["G pp", "g pp"], ["MM pp", "mm pp"], ["MMX", ""], ["μM", "um"], ["UMX", ""],
    ["a [feet/s/s]", "ft/s2"], ["a [inches / sec / sec]", "in/s2"], ["a [m/seconds²]", "m/s2"], ["a [m/second^2]", "m/s2"], ["a [meters/sec²]", "m/s2"], ["a [metre/s2]", "m/s2"],
    ["v [in s^-1]", "in/s"], ["v [ft⋅s⁻¹]", "ft/s"], ["a [ins2]", "in/s2"], ["ms2x", ""], ["v [inps]", "in/s"], ["v mmps-pk", "mm/s pk"], ["v [mm/s1]", "mm/s"], ["a m/s2-pp", "m/s2 pp"], ["v mm/speak", "mm/s pk"],
    ["x [millimeter]", "mm"], ["v [centimeter/s]", "cm/s"], ["x [nanometer]", "nm"], ["mdB", ""], ["dBm", ""], ["x__um", "um"],
    ["VelRMS", "rms"], ["vPeak", "pk"], ["RMS1", "rms"], ["PEAK2PEAK", "pk"], ["v rms.", "rms"], ["mm/s.:", "mm/s"], ["true peak", "true pk"], ["peak to peak", "pp"], ["peak  to  peak [um]", "um + pp"],
    ["DE;mm/s", "mm/s"], ["DE|mm/s", "mm/s"], ["[DE / mm/s]", "mm/s"], ["[mm/s; rms]", "mm/s + rms"], ["speed r/min at DE", ""], ["mm/s at DE", "mm/s"], ["g rms at DE", "g rms"], ["um at DE", ""], ["3 dB", "dB"], ["3 um", "um"], ["3 s", ""],
    ["v (m/s / rms)", "m/s + rms"], ["v (RMS of x) [mm/s]", "mm/s + rms"], ["x () [um]", "um"], ["v (a) mm/s (b)", "mm/s"], ["v__RMS", "rms"], ["vel__mm/s", "mm/s"], ["v_mm_s2", "mm/s2"], ["v_mm_spk", ""], ["v_mm_s_", "mm/s"], ["peak__to__peak", "pp"],
  ])("%s, spelled in other ways", (heading, says) => expect(said(heading)).toBe(says));

  it.each([
    ["time", "time"],
    ["t", "time"],
    ["T", ""],
    ["times (UTC)", "time"],
    ["time stamp", "time"],
    ["Timestamps", "time"],
    ["date and time", "time"],
    ["date/time", "time"],
    ["datetime", "time"],
    ["clock", "time"],
    ["elapsed time", "time"],
    ["elapsed [s]", "time"],
    ["freq", "frequency"],
    ["Frequency [Hz]", "frequency"],
    ["frequencies", "frequency"],
    ["time waveform", ""],
    ["fan time", ""],
    ["frequency band", ""],
  ])("%s: the axis", (heading, axis) => {
    expect(
      headingSays(heading)
        .flatMap((one) => one.axis ?? [])
        .join(),
    ).toBe(axis);
  });

  // biome-ignore format: a row of a table is a line
  it.each([
    ["level", "level"], ["Levels DE", "Levels"], ["lvl", "lvl"], ["overall", "overall"], ["amplitude", "amplitude"], ["magnitudes", "magnitudes"], ["severity", "severity"], ["reading 1", "reading"],
    ["trend", "trend"], ["history", "history"], ["crest factor", "crest"], ["kurtosis", "kurtosis"], ["OA", "OA"], ["spectra", "spectra"], ["spectrum", "spectrum"], ["v_eff", "v eff"], ["a eff", "a eff"], ["aeff", "aeff"],
    ["Schwingpegel", "Schwingpegel"], ["Schwinggeschwindigkeit", "Schwinggeschwindigkeit"], ["Schwingstaerke", "Schwingstaerke"], ["Amplituden", "Amplituden"], ["Effektivwert", "Effektivwert"], ["Maximalwerte", "Maximalwerte"],
    ["niveaux", "niveaux"], ["nivel", "nivel"], ["livello", "livello"], ["valeur efficace", "efficace"], ["max", "max"], ["maximum", "maximum"], ["min", "min"], ["minima", "minima"], ["r/min", ""], ["10 min", ""], ["per min", ""],
    ["mean", "mean"], ["mean removed", ""], ["mean-free", ""], ["averaged", "averaged"], ["avg", "avg"], ["median", "median"], ["alarms", "alarms"], ["hourly", "hourly"], ["yearly", "yearly"], ["täglich", "täglich"], ["monatlicher", "monatlicher"],
    ["raw amplitude", ""], ["sampled level", ""], ["wave form level", ""], ["waveforms max", ""], ["subsample level", "level"], ["sublevel", ""], ["levelled", ""], ["LevelDE", "Level"], ["level1", "level"],
  ])("%s: a value over time", (heading, word) => {
    expect(headingSays(heading).find(({ overTime }) => overTime)?.written ?? "").toBe(word);
  });

  it("of a text too long for a heading the last 200 characters count", () => {
    expect(said(`mm/s rms ${"x".repeat(200)}`)).toBe("");
    expect(said(`${"x ".repeat(200)}[mm/s]`)).toBe("mm/s");
  });
});
