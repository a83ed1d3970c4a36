import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { afterAll, describe, expect, it } from "vitest";
import { readDelimited } from "../../src/cli/delimited/read-delimited";
import type { RowsReader } from "../../src/cli/delimited/rows-reader";
import type { TimedSettings } from "../../src/cli/input/timed-columns";
import { timedSamples } from "../../src/cli/input/timed-samples";
import { profilesInPrint } from "../references/random-vibration";
import made from "../references/scipy-records.json";
import { expectClose } from "../signal/close";
import { veladis } from "./in-process";
import { madeParquet } from "./parquet/made-file";

const folder = mkdtempSync(join(tmpdir(), "veladis-records-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const overall = (path: string, ...more: string[]) => veladis(["overall", path, ...more]);

interface Level {
  readonly value: number;
  readonly detector: string;
}

/** The levels of all answers that a call printed as JSON. */
async function levels(path: string, ...more: string[]): Promise<number[]> {
  const { out, err, code } = await overall(path, ...more, "--json");
  expect(code, err).toBe(0);
  return out
    .trim()
    .split("\n")
    .flatMap((line) => {
      const answer = JSON.parse(line) as { levels?: Level[]; value?: number };
      return answer.levels?.map(({ value }) => value) ?? [answer.value as number];
    });
}

const rowsText = (header: string, ...columns: readonly (readonly number[])[]): string =>
  `${header}\n${(columns[0] as readonly number[]).map((_, i) => columns.map((one) => one[i]).join(",")).join("\n")}\n`;

const span = ["--band", "10-500"];

describe("lines of a spectrum by SciPy have the level of its record (NumPy)", () => {
  const windows = { boxcar: "rectangular" } as Readonly<Record<string, string>>;
  const cases = Object.entries(made.spectra);

  it.each(cases)(
    "%s, by the name of the window and by its noise bandwidth",
    async (name, { hertz, rms, bandwidth }) => {
      const path = file(`${name}.csv`, rowsText("Hz,mm/s rms", hertz, rms));
      const window = name === "nuttall" ? "nuttall4" : (windows[name] ?? name);
      const asked = ["--spectrum", ...span];
      const [byName = 0] = await levels(path, ...asked, "--window", window);
      const [byNumber = 0] = await levels(path, ...asked, "--noise-bandwidth", `${bandwidth}`);
      // names of windows are those of SciPy where there are several of one name
      if (name !== "nuttall") expectClose(byName, made.rms, 1e-9);
      expectClose(byNumber, made.rms, 1e-9);
    },
  );

  it("in dB, in peak, in r/min and in orders alike", async () => {
    const { hertz, rms } = made.spectra.hann;
    const peaks = rms.map((one) => one * Math.SQRT2);
    const asked = ["--spectrum", "--window", "hann", ...span];
    const inRpm = file(
      "rpm.csv",
      rowsText(
        "r/min,mm/s pk",
        hertz.map((one) => 60 * one),
        peaks,
      ),
    );
    const inOrders = file(
      "orders.csv",
      rowsText(
        "order,mm/s pk",
        hertz.map((one) => one / 24),
        peaks,
      ),
    );
    const decibels = rms.map((one) => (one > 0 ? 20 * Math.log10(one / 1e-6) : -400));
    const inDecibels = file("db.csv", rowsText("Hz,level", hertz, decibels));
    expectClose((await levels(inRpm, ...asked))[0] as number, made.rms, 1e-9);
    expectClose((await levels(inOrders, ...asked, "--speed", "1440 r/min"))[0] as number, made.rms, 1e-9);
    expectClose((await levels(inDecibels, ...asked, "--unit", "dB re 1e-9 m/s rms"))[0] as number, made.rms, 1e-9);
  });

  it("shows the levels at multiples of the shaft speed", async () => {
    const { hertz, rms } = made.spectra.flattop;
    const path = file("orders-of.csv", rowsText("Hz,mm/s rms", hertz, rms));
    const { out } = await overall(
      path,
      "--spectrum",
      "--window",
      "flattop",
      ...span,
      "--speed",
      "48 Hz",
      "--orders",
      "1,2,3",
    );
    // sines of 3, 0 and 1.2 mm/s pk there
    expect(out).toMatch(/^1x +48\.00 +48\.00 +0 +2\.12$/m);
    expect(out).toMatch(/^2x +96\.00 +nothing *$/m);
    expect(out).toMatch(/^3x +144\.00 +144\.00 +0 +0\.849$/m);
  });

  it("is drawn, and tells its zone by the exit code", async () => {
    const { hertz, rms } = made.spectra.hann;
    const path = file("drawn.csv", rowsText("Hz,mm/s rms", hertz, rms));
    const asked = ["--spectrum", "--window", "hann", ...span];
    const { out } = await overall(path, ...asked, "--plot");
    expect(out).toContain("a column is");
    const machine = ["--machine", "pump 90 kW 1490 r/min category II", "--fail-from"];
    // its lines reach no farther than a part of the band that the scheme asks for
    expect((await overall(path, ...asked, ...machine, "B")).err).toContain("a band that holds the 10 to 1000 Hz");
    const high = file(
      "high.csv",
      rowsText(
        "Hz,mm/s rms",
        hertz,
        rms.map((one) => 3 * one),
      ),
    );
    expect((await overall(high, ...asked, ...machine, "C")).code).toBe(1);
  });
});

describe("a list of tones", () => {
  const path = file("tones.csv", "r/min,in/s pk\n1180,0.12\n2360,0.05\n");

  it("has a verdict with a caution that says what it leaves out", async () => {
    const { out } = await overall(path, "--spectrum", "--tones", "--machine", "pump 90 kW 1490 r/min category II");
    expect(out.replace(/\s+/g, " ")).toContain("zone worse");
    // root of the sum of squares of two sines: 0.13 in/s pk
    expect(out).toContain("2.33 mm/s rms");
  });

  it.each(["--plot", "--fail-from"])("is refused for %s, which needs all lines", async (option) => {
    const more = option === "--plot" ? [option] : ["--machine", "pump 90 kW 1490 r/min category II", option, "C"];
    const { err, code } = await overall(path, "--spectrum", "--tones", ...more);
    expect(code).toBe(2);
    expect(err).toContain(option);
  });
});

describe("densities with slopes, against print and another computation", () => {
  it.each(profilesInPrint.map((one) => [one.id, one] as const))(
    "%s",
    async (id, { points, computed, printed, agrees, tolerance }) => {
      const path = file(
        `${id}.csv`,
        rowsText(
          "Hz,g2/Hz",
          points.map(([hertz]) => hertz),
          points.map(([, size]) => size),
        ),
      );
      const [level = 0] = await levels(path, "--density");
      expectClose(level, computed, 1e-7);
      expect(Math.abs(level - printed) <= tolerance).toBe(agrees);
    },
  );

  // the plateau and the slopes as the tables print them, the densities at the ends left out
  it.each([
    ["NAVMAT P-9492 (1979)", 20, 80, 350, 2000, 0.04, 3, -3, 6.06],
    ["MIL-STD-202G method 214A, condition I-A (from memory)", 50, 100, 1000, 2000, 0.02, 6, -6, 5.35],
    ["MIL-STD-202G method 214A, condition I-D (from memory)", 50, 100, 1000, 2000, 0.1, 6, -6, 11.95],
    ["MIL-STD-1540 minimum (from memory)", 20, 150, 600, 2000, 0.04, 3, -6, 6.14],
  ] as const)("%s, its ends by their slopes", async (_, a, b, c, d, plateau, up, down, grms) => {
    const path = file(
      "slopes.csv",
      `Hz,g2/Hz,dB/oct\n${a},,${up}\n${b},${plateau},0\n${c},${plateau},${down}\n${d},,\n`,
    );
    const [level = 0] = await levels(path, "--density", "--slope-column", "dB/oct");
    expect(Math.abs(level - grms)).toBeLessThan(0.01);
    // handbook formula: f^m over each span, m = slope / (10 log10 2), as integrals of powers
    const power = (slope: number): number => slope / (10 * Math.log10(2));
    const sloped = (from: number, to: number, at: number, m: number): number =>
      (plateau * ((to / at) ** m * to - (from / at) ** m * from)) / (m + 1);
    const minusOne = (from: number, to: number, at: number): number => plateau * at * Math.log(to / from);
    const falling = Math.abs(power(down) + 1) < 1e-9 ? minusOne(c, d, c) : sloped(c, d, c, power(down));
    expectClose(level, Math.sqrt(sloped(a, b, b, power(up)) + plateau * (c - b) + falling), 1e-9);
  });
});

describe("WAVE files by Python's wave module and SciPy", () => {
  const rms = (samples: readonly number[]): number => {
    const mean = samples.reduce((sum, one) => sum + one, 0) / samples.length;
    return Math.sqrt(samples.reduce((sum, one) => sum + (one - mean) ** 2, 0) / samples.length);
  };

  it.each(Object.entries(made.waves))("%s, each channel", async (name, { file: bytes, channels }) => {
    const path = file(`${name}.wav`, Buffer.from(bytes, "base64"));
    const asked = ["--unit", "mm/s", "--scale", "0.5", "--column", "1", "--column", "2", "--band", "8-512"];
    const found = await levels(path, ...asked);
    expect(found).toHaveLength(2);
    for (const [i, samples] of channels.entries()) expectClose(found[i] as number, 0.5 * rms(samples), 1e-6);
  });
});

describe("times of a record", () => {
  const times = made.spline.times;

  it("uneven ones are resampled as SciPy's natural cubic spline does", async () => {
    const uneven = file("uneven.csv", rowsText("time [s],mm/s", times, made.spline.values));
    const asked = ["--unit", "mm/s", "--band", "2-11"];
    const [level] = await levels(uneven, "--resample", ...asked);
    const rate = (times.length - 1) / ((times.at(-1) as number) - (times[0] as number));
    const [expected] = await levels(
      file("spline.csv", rowsText("mm/s", made.spline.even)),
      "--rate",
      `${rate}`,
      ...asked,
    );
    expectClose(level as number, expected as number, 1e-9);
    const { out } = await overall(uneven, "--resample", ...asked);
    expect(out).toContain("leaks into the lines below");
    expect((await overall(uneven, ...asked)).err).toContain("--resample takes samples at even times");
  });

  it("tones keep within 1 % up to the frequency that resampling is said to be good to", async () => {
    const at = Array.from({ length: 4096 }, (_, i) => (i + 0.4 * Math.sin(i * 2.399)) / 4096);
    const longest = Math.max(...at.slice(1).map((one, i) => one - (at[i] as number)));
    const highest = Math.floor(0.2 / longest);
    for (const hertz of [20, 0.5 * highest, 0.95 * highest]) {
      const path = file(
        "tone.csv",
        rowsText(
          "time [s],mm/s",
          at,
          at.map((one) => Math.sin(2 * Math.PI * hertz * one)),
        ),
      );
      const [level = 0] = await levels(path, "--resample", "--unit", "mm/s", "--band", `10-${highest}`);
      expect(Math.abs(level * Math.SQRT2 - 1), `${hertz}`).toBeLessThan(0.01);
    }
  });

  const even = Array.from({ length: 512 }, (_, i) => i / 512);
  const wave = even.map((one) => 3 * Math.sin(2 * Math.PI * 40 * one));
  const asked = ["--unit", "mm/s", "--band", "10-200"];

  it.each([
    ["in s", rowsText("time [s],mm/s", even, wave)],
    [
      "in ms, below a remark",
      `# logger\n${rowsText(
        "time [ms],mm/s",
        even.map((one) => 1000 * one),
        wave,
      )}`,
    ],
    ["without a unit", rowsText("time,mm/s", even, wave)],
    [
      "since 1970",
      rowsText(
        "time [s],mm/s",
        even.map((one) => 1_772_600_000 + one),
        wave,
      ),
    ],
    [
      "as dates",
      `time,mm/s\n${wave.map((one, i) => `${new Date(1_772_600_000_000 + 2 * i).toISOString()},${one}`).join("\n")}\n`,
    ],
  ])("%s say the rate", async (what, text) => {
    const path = file("even.csv", text);
    const shared = what === "as dates" ? ["--unit", "mm/s", "--band", "10-100"] : asked;
    expectClose((await levels(path, ...shared))[0] as number, 3 / Math.SQRT2, 1e-2);
    const { out } = await overall(path, ...shared);
    expect(out).toContain(what === "as dates" ? "at 500 a second" : "at 512 a second");
    expect(out.includes("taken as seconds, which the heading does not say")).toBe(what === "without a unit");
  });

  it("piped in are held, in a file read twice, with the same answer", async () => {
    const text = rowsText("time [s],mm/s", even, wave);
    const piped = await veladis(["overall", ...asked], text);
    const { out } = await overall(file("same.csv", text), ...asked);
    expect(piped.out.replaceAll("standard input", "")).toBe(out.replaceAll(join(folder, "same.csv"), ""));
  });

  it.each([
    ["that fall", "time [s],mm/s\n0,1\n0.2,1\n0.1,1\n", "before"],
    ["that stand still", "time [s],mm/s\n0,1\n0,1\n0.1,1\n", "at one time"],
    ["that may be serial dates", "time,mm/s\n45000.1,1\n45000.2,1\n45000.3,2\n", "serial date"],
    [
      "that may be milliseconds",
      "time,mm/s\n1772600000000.0,1.5\n1772600000002.0,1.5\n1772600000004.0,2.5\n",
      "milliseconds",
    ],
    ["that are no times", "time [s],mm/s\n0,1\nx,1\n0.2,2\n", 'line 3 time "x"'],
    [
      "with a date that no calendar has",
      "time,mm/s\n2026-02-28 10:00:00,1\n2026-02-30 10:00:01,1\n2026-02-28 10:00:02,2\n",
      'line 3 time "2026-02-30 10:00:01"',
    ],
    ["written in two ways", "time [s],mm/s\n0,1\n2026-03-04 10:00:00,1\n0.2,2\n", "2026-03-04"],
    ["one alone", "time [s],mm/s\n0,1\n", "1"],
  ])("%s are refused", async (_, text, said) => {
    for (const { code, err } of [
      await overall(file("odd.csv", text), ...asked),
      await veladis(["overall", ...asked], text),
    ]) {
      expect(code).toBe(2);
      expect(err).toContain(said);
    }
  });

  it("refuses a rate that they contradict, and takes one that they say", async () => {
    const path = file("rate.csv", rowsText("time [s],mm/s", even, wave));
    for (const more of [
      ["--column", "2"],
      ["--time", "1"],
    ]) {
      expect((await overall(path, ...asked, "--rate", "1024", ...more)).err).toContain("--rate 1024");
      expect((await overall(path, ...asked, "--rate", "512", ...more)).code).toBe(0);
    }
  });

  it("of day, past midnight, are held", async () => {
    const clock = (i: number): string => {
      const seconds = (86_399 + i / 512) % 86_400;
      const part = (n: number): string => String(Math.floor(n)).padStart(2, "0");
      return `${part(seconds / 3600)}:${part((seconds / 60) % 60)}:${(seconds % 60).toFixed(6).padStart(9, "0")}`;
    };
    const text = `time,mm/s\n${wave.map((one, i) => `${clock(i)},${one}`).join("\n")}\n`;
    expectClose((await levels(file("clock.csv", text), ...asked))[0] as number, 3 / Math.SQRT2, 1e-2);
  });
});

it("a record that has to be held is so up to a length", async () => {
  const rows: RowsReader = (visitor) =>
    readDelimited(
      Readable.from([Buffer.from("time [s],a\n0,1.5\n0.1,2\n0.2,1\n")]),
      "a.csv",
      { decimalComma: false },
      visitor,
    );
  const written = { decimalComma: false };
  const settings: TimedSettings = {
    ...{ file: "a.csv", written, column: undefined, time: undefined, scale: 1, waveform: false },
    unit: "g",
  };
  await expect(timedSamples(rows, settings, 2)).rejects.toThrow("at most 2 samples");
});

describe("Parquet", () => {
  const even = Array.from({ length: 512 }, (_, i) => i / 512);
  const wave = even.map((one) => 3 * Math.sin(2 * Math.PI * 40 * one));
  const path = file(
    "record.parquet",
    madeParquet([
      { name: "time [s]", values: even },
      { name: "DE", values: wave },
      { name: "NDE", values: wave.map((one) => one / 3) },
    ]),
  );

  it("holds records, each column answered", async () => {
    const found = await levels(path, "--unit", "mm/s", "--band", "10-200", "--column", "DE", "--column", "NDE");
    expectClose(found[0] as number, 3 / Math.SQRT2, 1e-9);
    expectClose(found[1] as number, 1 / Math.SQRT2, 1e-9);
  });

  it("holds lines", async () => {
    const { hertz, rms } = made.spectra.hann;
    const lines = file(
      "lines.parquet",
      madeParquet([
        { name: "Hz", values: hertz },
        { name: "mm/s rms", values: rms },
      ]),
    );
    expectClose((await levels(lines, "--spectrum", "--window", "hann", ...span))[0] as number, made.rms, 1e-9);
  });

  it("is refused where it is piped in or is none", async () => {
    const asked = ["overall", "--format", "parquet", "--unit", "mm/s"];
    expect((await veladis(asked, "x")).err).toContain("read from its end");
    expect((await overall(file("no.parquet", "a\n1\n"), "--unit", "mm/s")).err).toContain("a Parquet file");
    expect((await overall(path, "--unit", "mm/s", "--decimal-comma")).err).toContain("--decimal-comma, and Parquet");
  });
});

describe("several columns", () => {
  it("are refused a picture and standard input, and have the worst exit code", async () => {
    const asked = ["--rate", "2560", "--unit", "mm/s", "--column", "1", "--column", "2"];
    const wave = Array.from({ length: 2560 }, (_, i) => Math.sin((2 * Math.PI * 40 * i) / 2560));
    const text = rowsText(
      "a,b",
      wave.map((one) => 20 * one),
      wave,
    );
    const path = file("pair.csv", text);
    expect((await overall(path, ...asked, "--chart", join(folder, "x.svg"))).err).toContain(
      "one --column beside --chart",
    );
    expect((await veladis(["overall", ...asked], text)).err).toContain("a file for several columns");
    const machine = ["--machine", "pump 90 kW 1490 r/min category II", "--fail-from", "D"];
    const { code, out } = await overall(path, ...asked, ...machine);
    expect(out.match(/^column /gm)).toHaveLength(2);
    expect(code).toBe(1);
  });
});
