import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { overall, overallStream, spectrum } from "veladis/signal";
import { describe, expect, it } from "vitest";
import { runCommand } from "../../src/cli/commands/index";
import type { Io } from "../../src/cli/input/io";
import { failureText } from "../../src/cli/print/failure";
import { expectClose } from "./close";
import { invented, tones } from "./signals";

const folder = mkdtempSync(join(tmpdir(), "veladis-signal-"));
const RATE = 5120;
const wave = Float32Array.from(invented(3 * RATE, RATE));

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** Bytes of numbers as a converter of either end writes them. */
function bytesOf(
  samples: ArrayLike<number>,
  kind: "Float32" | "Float64" | "Int16" | "Int32",
  little = true,
): Uint8Array {
  const size = { Float32: 4, Float64: 8, Int16: 2, Int32: 4 }[kind];
  const view = new DataView(new ArrayBuffer(size * samples.length));
  for (let i = 0; i < samples.length; i++) view[`set${kind}`](size * i, samples[i] as number, little);
  return new Uint8Array(view.buffer);
}

const csv = (rows: ArrayLike<number>, title = "acceleration"): string => `${title}\n${Array.from(rows).join("\n")}\n`;

/** Runs the command; what it printed, what it said, how it ended. */
async function command(args: readonly string[], piped?: string | Buffer | readonly Buffer[]) {
  const printed = { out: "", err: "", progress: [] as string[] };
  const io: Io = {
    piped:
      piped === undefined
        ? undefined
        : Readable.from(typeof piped === "string" ? [Buffer.from(piped)] : [piped].flat()),
    colour: false,
    out: (text) => {
      printed.out += text;
    },
    err: (text) => {
      printed.err += text;
    },
    progress: (text) => {
      printed.progress.push(text);
    },
  };
  try {
    return { code: await runCommand("overall", args, io), ...printed };
  } catch (error) {
    return { code: 2, ...printed, err: failureText(error, args.includes("--json")) };
  }
}

interface Page {
  readonly file: string;
  readonly count: number;
  readonly levels: readonly { readonly value: number; readonly method: string; readonly text: string }[];
  readonly lines: readonly { readonly hertz: number; readonly value: number }[];
  readonly orders?: readonly { readonly order: number; readonly line?: { readonly hertz: number } }[];
  readonly judgement?: { readonly zone: string; readonly scheme: string };
  readonly cautions?: readonly string[];
}

async function page(args: readonly string[], piped?: string | Buffer | readonly Buffer[]): Promise<Page> {
  const { out, err, code } = await command([...args, "--json"], piped);
  expect(err).toMatch(/^$|^\{"rows":.*\}\n$/);
  expect(code).toBe(0);
  expect(out.trim().split("\n").length).toBe(1);
  return JSON.parse(out) as Page;
}

const basic = ["--rate", `${RATE}`, "--unit", "g"];
const expected = overall(wave, { rate: RATE, unit: "g", band: [10, 1000], as: "mm/s rms" }).value;

describe("a file of samples", () => {
  const counts = Int16Array.from(wave, (value) => Math.round(value / 0.0002));
  const sources: readonly (readonly [what: string, name: string, content: string | Uint8Array, ...args: string[]])[] = [
    ["CSV with a header", "one.csv", csv(wave)],
    ["CSV without one", "bare.csv", Array.from(wave).join("\n")],
    [
      "CSV with a remark and a blank line above the header, CR LF and a byte order mark",
      "dos.csv",
      `\uFEFF# fan\r\n\r\na\r\n${Array.from(wave).join("\r\n")}\r\n`,
    ],
    [
      "CSV, column by name",
      "two.csv",
      `t,"a, drive end"\n${Array.from(wave, (v, i) => `${i / RATE},"${v}"`).join("\n")}\n`,
      "--column",
      "a, drive end",
    ],
    [
      "CSV, column by number, semicolons",
      "semi.csv",
      Array.from(wave, (v, i) => `${i};${v};x`).join("\n"),
      "--column",
      "2",
    ],
    ["CSV in mg", "mg.csv", csv(wave.map((v) => v * 1000)), "--scale", "0.001"],
    ["float32", "a.f32", bytesOf(wave, "Float32")],
    ["float64", "a.f64", bytesOf(wave, "Float64")],
    ["float32, big end first", "big.raw", bytesOf(wave, "Float32", false), "--format", "f32", "--endian", "big"],
    ["int16", "a.i16", bytesOf(counts, "Int16"), "--scale", "0.0002"],
    ["int32", "a.dat", bytesOf(counts, "Int32"), "--scale", "0.0002", "--format", "int32"],
  ];

  it.each(sources.map(([what, name, content, ...args]) => ({ what, name, content, args })))(
    "$what",
    async ({ name, content, args }) => {
      const { count, levels } = await page([file(name, content), ...basic, ...args]);
      expect(count).toBe(wave.length);
      expectClose(
        levels[0]?.value,
        expected,
        name.includes("i16") || name.includes("dat") || name === "mg.csv" ? 1e-3 : 1e-12,
      );
    },
  );

  it("is read in pieces that cut samples and lines in two", async () => {
    const bytes = bytesOf(wave, "Float64");
    const pieces = Array.from({ length: Math.ceil(bytes.length / 1001) }, (_, i) =>
      Buffer.from(bytes.subarray(1001 * i, 1001 * (i + 1))),
    );
    const { levels } = await page([...basic, "--format", "float64"], pieces);
    expectClose(levels[0]?.value, expected, 1e-12);
  });

  it("may be piped in", async () => {
    const { file: name, levels } = await page(basic, csv(wave));
    expect(name).toBe("standard input");
    expectClose(levels[0]?.value, expected, 1e-12);
  });
});

describe("what is printed", () => {
  const path = file("page.f32", bytesOf(wave, "Float32"));

  it("levels first, in what was asked for; then how, and the lines", async () => {
    const { out, code, progress } = await command([path, ...basic, "--to", "mm/s rms, um pp", "--speed", "1482 r/min"]);
    expect(code).toBe(0);
    const [first, second, third, , how] = out.split("\n");
    expect(first).toMatch(/^\d+\.\d mm\/s rms$/);
    expect(second).toMatch(/^\d+ um pp$/);
    expect(third).toBe("");
    expect(out).toContain("15360 samples, 3.000 s at 5120 a second, in g");
    expect(how).toContain("overall from 10 to 1000 Hz, edges included");
    expect(out).toMatch(/^ *24\.70 +1482 +1\.00 /m);
    expect(out).toMatch(/^1x +24\.70 +24\.70 /m);
    expect(progress[progress.length - 1]).toBe("");
  });

  it("lines have the frequency and size of the tones", async () => {
    const { lines, orders } = await page([path, ...basic, "--to", "g pk", "--lines", "3", "--speed", "24.7 Hz"]);
    expect(lines.map(({ hertz }) => Math.round(hertz * 10) / 10)).toEqual(expect.arrayContaining([24.7, 49.4]));
    expectClose(lines[0]?.value, 1.2, 0.02);
    expect(orders?.map(({ order }) => order)).toEqual([1, 2, 3, 4]);
  });

  it("band, edges, window and causal filter as in the library", async () => {
    const options = { rate: RATE, unit: "g", band: [20, 500], as: "mm/s rms" } as const;
    const value = async (...args: string[]): Promise<number> =>
      (await page([path, ...basic, "--band", "20-500", ...args])).levels[0]?.value as number;
    expect(await value()).toBe(overall(wave, options).value);
    expect(await value("--edges", "3dB", "--order", "4")).toBe(
      overall(wave, { ...options, edges: "-3 dB", order: 4 }).value,
    );
    expect(await value("--window", "hann")).toBe(overall(wave, { ...options, window: "hann" }).value);
    expect(await value("--detrend", "linear")).toBe(overall(wave, { ...options, detrend: "linear" }).value);
    const stream = overallStream(options);
    stream.push(wave);
    expect(await value("--causal")).toBe(stream.read().value);
  });

  it("a caution where the wave is clipped", async () => {
    const clipped = wave.map((value) => Math.min(1, value));
    const { out } = await command([file("clipped.f32", bytesOf(clipped, "Float32")), ...basic]);
    expect(out).toMatch(/caution: \d+ samples in a row/);
    expect((await command([path, ...basic])).out).not.toContain("caution");
  });

  it("levels in decibels", async () => {
    const { levels } = await page([path, ...basic, "--to", "dB re 1e-9 m/s"]);
    expect(levels[0]?.text).toMatch(/^1\d\d\.\d dB re 1e-9 m\/s$/);
  });
});

describe("the zone", () => {
  // an invented pump: 4 mm/s rms at 24 Hz
  const samples = tones(2 * RATE, RATE, [(4 * Math.SQRT2 * 2 * Math.PI * 24) / 9806.65, 24]);
  const path = file("pump.f64", bytesOf(samples, "Float64"));

  it("is by the table for the machine, from the samples", async () => {
    const { judgement, levels } = await page([path, ...basic, "--machine", "pump 90 kW 1480 r/min category II rigid"]);
    expectClose(levels[0]?.value, 4, 1e-9);
    expect(judgement).toMatchObject({ zone: "B", scheme: "iso-10816-7-2009" });
  });

  it("warns of another band than the table's", async () => {
    const args = [path, ...basic, "--machine", "pump 90 kW 1480 r/min category II rigid", "--band", "20-500"];
    const { out } = await command(args);
    expect(out).toContain("the scheme asks for a band of 10 to 1000 Hz, the level is from 20 to 500 Hz");
    expect((await page(args)).cautions).toHaveLength(1);
  });

  it("of a shaft is not judged from an accelerometer on the housing", async () => {
    const { err, code } = await command([
      path,
      ...basic,
      "--scheme",
      "iso-7919-3-2009",
      "--machine",
      "motor 1480 r/min shaft",
    ]);
    expect(code).toBe(2);
    expect(err).toContain("samples of the shaft's displacement");
  });
});

describe("refused, with a reason", () => {
  const good = file("good.f32", bytesOf(wave, "Float32"));
  const nan = Float32Array.from(wave);
  nan[4321] = Number.NaN;
  const clipped = Int16Array.from(wave, (value) => Math.round(value * 10000));
  clipped[777] = 32767;
  const empty = file("empty.csv", "");

  it.each<readonly [what: string, args: readonly string[], says: RegExp]>([
    ["no rate", [good, "--unit", "g"], /sampling rate/],
    ["rate 0", [good, "--rate", "0", "--unit", "g"], /not-positive/],
    ["no unit", [good, "--rate", "5120"], /unit of the samples/],
    ["no file", basic, /a file of samples/],
    ["two files", [good, good, ...basic], /one file/],
    ["a file that is not there", [join(folder, "none.csv"), ...basic], /a file that can be read/],
    ["a file that does not say its format", [file("a.bin", "1234"), ...basic], /--format float32/],
    ["an unknown format", [good, ...basic, "--format", "float16"], /"float16"/],
    ["an unknown end", [good, ...basic, "--endian", "middle"], /little, big/],
    [
      "a file cut off",
      [file("odd.f32", bytesOf(wave, "Float32").subarray(0, 4001)), ...basic],
      /4001 bytes, which leaves 1 over/,
    ],
    ["NaN in a raw file", [file("nan.f32", bytesOf(nan, "Float32")), ...basic], /index 4321/],
    ["NaN in a CSV file", [file("nan.csv", "a\n1\nNaN\n2\n"), ...basic], /line 3/],
    ["NaN first in a CSV file", [file("first.csv", "NaN\n1\n2\n"), ...basic], /line 1/],
    ["a decimal comma", [file("comma.csv", "a;b\n1,5;2\n"), ...basic, "--column", "1"], /comma/],
    ["an empty cell", [file("hole.csv", "a,b\n1,2\n3,\n"), ...basic, "--column", "b"], /line 3 empty/],
    ["a short row", [file("short.csv", "a,b\n1,2\n3\n"), ...basic, "--column", "b"], /line 3 ragged/],
    ["several columns and none named", [file("cols.csv", "t,a\n1,2\n"), ...basic], /which of the columns/],
    ["a column that is not there", [file("cols2.csv", "t,a\n1,2\n"), ...basic, "--column", "b"], /t, a/],
    [
      "whole numbers at the end of their range",
      [file("clip.i16", bytesOf(clipped, "Int16")), ...basic, "--scale", "0.0001"],
      /index 777: the converter overflowed/,
    ],
    ["whole numbers without their size", [file("int.i16", bytesOf([1, 2], "Int16")), ...basic], /one count/],
    ["a scale of zero", [good, ...basic, "--scale", "0"], /not zero/],
    ["an empty file", [empty, ...basic], /a header line, and rows below it/],
    ["one sample", [file("one-sample.csv", "1\n"), ...basic], /one sample/],
    ["a dead channel", [file("dead.csv", csv(new Float64Array(99).fill(0.5))), ...basic], /dead or disconnected/],
    ["a band above half the rate", [good, ...basic, "--band", "10-2561"], /half the sampling rate/],
    ["a band that is none", [good, ...basic, "--band", "1000"], /10-1000/],
    ["a band in words", [good, ...basic, "--band", "low-high"], /lower edge/],
    ["unknown edges", [good, ...basic, "--edges", "soft"], /ideal, -3 dB/],
    ["ideal edges of a causal filter", [good, ...basic, "--edges", "ideal", "--causal"], /can be held/],
    ["an answer without detector", [good, ...basic, "--to", "mm/s"], /missing-detector/],
    ["an unknown option", [good, ...basic, "--fft", "1"], /unknown-option/],
  ])("%s", async (_, args, says) => {
    const { code, err, out } = await command(args);
    expect(code).toBe(2);
    expect(err).toMatch(says);
    expect(out).toBe("");
  });
});

describe("a long record", () => {
  it("goes through the causal filter and an averaged spectrum, and says so", async () => {
    const piece = Float32Array.from(tones(1 << 20, RATE, [1, 25]));
    const pieces = Array.from({ length: 5 }, () => Buffer.from(piece.buffer));
    const { out, progress } = await command([...basic, "--format", "float32", "--json"], pieces);
    const { levels, count } = JSON.parse(out) as Page;
    expect(count).toBe(5 * piece.length);
    expect(levels[0]?.method).toBe("filter");
    expectClose(levels[0]?.value, 9806.65 / (2 * Math.PI * 25) / Math.SQRT2, 2e-3);
    expect(progress.some((text) => text.includes("million samples"))).toBe(true);
    const first = spectrum(piece, { rate: RATE, unit: "g", segment: 4096 });
    expect(first.averages).toBe(511);
  });
});
