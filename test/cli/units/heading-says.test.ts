import { describe, expect, it } from "vitest";
import { headingSays } from "../../../src/cli/delimited/heading-says";

/** What a heading says, in few words. */
function said(heading: string): string {
  return headingSays(heading)
    .map(({ unit, detector, level, frequency, time }) =>
      [unit, detector, level, frequency, time].filter(Boolean).join(" "),
    )
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
  ])("nothing: %s", (heading) => expect(said(heading)).toBe(""));
});
