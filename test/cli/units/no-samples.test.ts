import { describe, expect, it } from "vitest";
import { veladis } from "../in-process";

const overall = ["overall", "--unit", "mm/s", "--rate", "100", "--band", "20-40"];
const rows = (row: (i: number) => string): string => Array.from({ length: 200 }, (_, i) => `${row(i)}\n`).join("");
const wave = (i: number): string => (3 * Math.sin(2 * Math.PI * 0.3 * i)).toFixed(6);

async function refusal(args: readonly string[], input: string): Promise<string> {
  const { code, err } = await veladis(args, input);
  return code === 0 ? "" : err.replace(/\n\s*/g, " ");
}

describe("what is no waveform is not taken for samples", () => {
  // biome-ignore format: a row of a table is a line
  it.each(["vel mm/s rms", "mm/s pk", "velocity RMS [mm/s]", "v pp (mm/s)", "mm/s_rms", "true peak mm/s"])(
    "levels headed %s are refused, with where they belong", async (heading) => {
      const told = await refusal([...overall, "--column", "2"], `n,${heading}\n${rows((i) => `${i},${wave(i)}`)}`);
      expect(told).toContain(`--unit mm/s, and the heading "${heading}" of column 2`);
      expect(told).toContain("levels are for veladis table or veladis judge");
      const by = [...overall, "--column", "2", "--file-units", "none"];
      expect(await refusal(by, `n,${heading}\n${rows((i) => `${i},${wave(i)}`)}`)).toBe("");
    },
  );

  // biome-ignore format: a row of a table is a line
  it.each([
    "level", "Level [mm/s]", "Pegel", "Schwingungspegel", "amplitude", "velocity rms", "overall", "Overall (mm/s)", "Schwinggeschwindigkeit", "Effektivwert",
    "trend DE", "vib_level", "vibration severity", "readings", "niveau", "RMS", "pk", "crest factor",
    "daily max", "Max", "min", "vel_min", "hourly", "weekly mean", "mean", "average", "avg", "median", "VelRMS", "vRMS", "aRms", "accRms", "RMS1", "OA", "Spectrum", "veff", "velPk", "MaxVel", "alarm", "trend", "Mittelwert", "Tageswert",
    "täglich", "Maximalwert",
  ])("a heading that names a level, a detector or a trend is refused: %s; --waveform says that they are samples", async (heading) => {
    const csv = `n,${heading}\n${rows((i) => `${i},${wave(i)}`)}`;
    const told = await refusal([...overall, "--column", "2"], csv);
    expect(told).toContain(`the heading "${heading}" of column 2`);
    expect(told).toContain("a trend of them for veladis setpoints");
    expect(told).toContain("--waveform where they are samples all the same");
    expect(await refusal([...overall, "--column", "2", "--waveform"], csv)).toBe("");
  });

  it("--waveform says nothing of the unit: a heading of another is refused all the same", async () => {
    const csv = `n,level (in/s)\n${rows((i) => `${i},${wave(i)}`)}`;
    expect(await refusal([...overall, "--column", "2", "--waveform"], csv)).toContain('which says "in/s"');
  });

  it.each([
    "waveform amplitude",
    "raw level",
    "samples",
    "levelled probe",
    "vibration",
    "DE 1480 r/min",
    "mean removed",
    "x (10 min)",
  ])("samples headed %s are read", async (heading) => {
    expect(await refusal([...overall, "--column", "2"], `n,${heading}\n${rows((i) => `${i},${wave(i)}`)}`)).toBe("");
  });

  it.each([
    ["t [s]", (i: number) => `${60 * i}`],
    ["date", (i: number) => `2026-03-04 ${`${10 + Math.floor(i / 60)}`}:${`${i % 60}`.padStart(2, "0")}`],
  ])("rows with times minutes apart (%s) are a trend, refused with where it belongs", async (heading, at) => {
    const told = await refusal([...overall, "--column", "2"], `${heading},v\n${rows((i) => `${at(i)},${wave(i)}`)}`);
    expect(told).toContain("60 s from row to row");
    expect(told).toContain("levels so far apart are a trend, for veladis setpoints or veladis simulate");
  });

  it.each(["time", "Time", "timestamp", "t", "Time (s)", "frequency", "Freq [Hz]", "date time"])(
    "a column headed %s is refused",
    async (heading) => {
      const csv = `${heading},a\n${rows((i) => `${i / 100},${wave(i)}`)}`;
      expect(await refusal([...overall, "--column", "1"], csv)).toContain(`the heading "${heading}" of column 1`);
      expect(await refusal(overall, csv.replaceAll(/,.*/g, ""))).toContain(`the heading "${heading}" of column 1`);
    },
  );

  it.each(["time waveform", "T", "a", "time signal mm/s", "velocity"])(
    "samples headed %s are read",
    async (heading) => {
      expect(await refusal([...overall, "--column", "2"], `n,${heading}\n${rows((i) => `${i},${wave(i)}`)}`)).toBe("");
    },
  );

  it.each(["frequency", "Frequency (Hz)", "f [Hz]", "freq", "CPM"])(
    "amplitudes beside a column %s that rises are a spectrum, refused with where it belongs",
    async (heading) => {
      const csv = `${heading},amplitude\n${rows((i) => `${i + 1},${Math.abs(Number(wave(i)))}`)}`;
      expect(await refusal([...overall, "--column", "2"], csv)).toContain("bandOverall of veladis/signal");
      // told to be samples, they are beside a frequency still
      const told = await refusal([...overall, "--column", "2", "--waveform"], csv);
      expect(told).toContain(`column 1 "${heading}", which rises from row to row`);
      expect(told).toContain("bandOverall of veladis/signal");
      expect(await refusal([...overall, "--column", "2", "--file-units", "none"], csv)).toBe("");
    },
  );

  it("a mains frequency beside the samples is no axis: it stands still", async () => {
    const csv = `mains [Hz],a\n${rows((i) => `${i < 100 ? 49.9 : 50},${wave(i)}`)}`;
    expect(await refusal([...overall, "--column", "2"], csv)).toBe("");
  });

  it("levels of a table, of convert and of simulate are no times either", async () => {
    const csv = "date,time\n1,4.1\n2,4.2\n";
    expect(await refusal(["--column", "2", "--from", "mm/s rms", "--to", "in/s pk"], csv)).toContain('heading "time"');
    const table = ["table", "--column", "2", "--from", "mm/s rms", "--to", "in/s pk"];
    expect(await refusal(table, csv)).toContain('heading "time"');
  });
});
