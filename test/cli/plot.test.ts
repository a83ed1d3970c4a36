import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Plot, plotText } from "../../src/cli/print/plot-text";
import { veladis } from "./in-process";

const none = { unit: "mm/s rms", xUnit: "s", levels: [], marks: [], lanes: [] } as const;

/** What a plot says, read as a person does: the height of a row, and the filled height of each column. */
function readBack(text: string): { readonly row: number; readonly heights: readonly number[] } {
  const lines = text.split("\n");
  const row = Number(/a row is (\S+)/.exec(text)?.[1]);
  const width = (lines.find((line) => line.includes("└")) as string).replace(/[^─]/g, "").length;
  const cells = lines
    .filter((line) => line.includes("┤"))
    .map((line) => [...(line.split("┤")[1] as string).padEnd(width)]);
  const eighths = (cell: string | undefined): number => Math.max(0, "▁▂▃▄▅▆▇█".indexOf(cell ?? " ") + 1);
  const heights = Array.from(
    { length: width },
    (_, c) => (cells.reduce((sum, line) => sum + eighths(line[c]), 0) / 8) * row,
  );
  return { row, heights };
}

describe("a plot in the terminal", () => {
  it("is read back within one cell at any width", () => {
    // below a millionth of the smallest scale nothing is read from a plot
    const value = fc.double({ min: 0, max: 1e6, noNaN: true }).map((one) => (one < 1e-9 ? 0 : one));
    const scale = fc.constantFrom(1e-6, 1, 1e3);
    fc.assert(
      fc.property(
        fc.array(value, { minLength: 2, maxLength: 400 }),
        scale,
        fc.integer({ min: 20, max: 200 }),
        (all, by, width) => {
          const y = all.map((one) => one * by);
          const x = y.map((_, i) => i);
          const text = plotText({ ...none, x, y, from: 0, to: y.length - 1, holds: false }, width);
          const { row, heights } = readBack(text);
          const highest = new Array<number | undefined>(heights.length).fill(undefined);
          y.forEach((one, i) => {
            const c = Math.min(heights.length - 1, Math.floor((i / (y.length - 1)) * heights.length));
            highest[c] = Math.max(highest[c] ?? 0, one);
          });
          highest.forEach((one, c) => {
            expect(Math.abs((heights[c] as number) - (one ?? 0))).toBeLessThanOrEqual(row);
          });
        },
      ),
    );
  });

  it("holds a level until the next, so that a rare one is seen for as long as it stood", () => {
    const plot: Plot = { ...none, x: [0, 10, 30], y: [4, 9, 4], from: 0, to: 40, holds: true };
    const { heights } = readBack(plotText(plot, 80));
    const at = (time: number) => heights[Math.floor((time / 40) * heights.length)] as number;
    expect([at(5), at(12), at(29), at(35)]).toEqual([4, 9, 9, 4].map((level) => expect.closeTo(level, 0)));
  });

  it("is as wide as the window allows", () => {
    const levels = [{ text: "threshold 9.00", value: 9 }];
    const plot: Plot = { ...none, levels, x: [0, 1, 2], y: [4, 9.5, 4], from: 0, to: 2, holds: true };
    for (const width of [80, 160]) {
      const widths = plotText(plot, width)
        .split("\n")
        .map((line) => [...line].length);
      expect(Math.max(...widths)).toBeLessThanOrEqual(width);
      expect(Math.max(...widths)).toBeGreaterThan(width - 5);
    }
  });

  it("leaves a column empty where no value is known, and marks a level above all values", () => {
    const levels = [{ text: "threshold 9.00", value: 9 }];
    const text = plotText({ ...none, levels, x: [0, 1, 2], y: [4, Number.NaN, 4], from: 0, to: 3, holds: false }, 80);
    expect(text).toMatch(/┄{40,} threshold 9\.00/);
  });

  it("of one value, of none above zero, or of no span is drawn too", () => {
    for (const y of [[0], [5], [Number.NaN]]) {
      const text = plotText({ ...none, x: [0], y, from: 0, to: 0, holds: true }, 80);
      expect(text).not.toMatch(/NaN|Infinity|undefined/);
    }
  });
});

describe("--plot", () => {
  const rows = "seconds,level\n0,4\n10,9.5\n14,9.5\n30,4\n40,4\n";
  const words = ["simulate", "--from", "mm/s rms", "--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--delay", "3"];
  const played = [...words, "--timer-resets", "threshold", "--latching", "--plot"];

  it("of simulate has threshold, reset level, the output and the masks", async () => {
    const masks = ["--inhibit", "5", "--commands", "bypass on at 32, bypass off at 36, reset at 38"];
    const { out, code } = await veladis([...played, ...masks], rows);
    expect(code).toBe(0);
    expect(out).toMatch(/ threshold 9\.00/);
    expect(out).toMatch(/ reset level 8\.28/);
    const lane = (name: string) => new RegExp(`^ *([·█]+) ${name}$`, "m").exec(out)?.[1] ?? "";
    // the trip is at 13 s of 40 s, the reset at 38 s
    const set = lane("output set");
    expect(set.indexOf("█") / set.length).toBeCloseTo(13 / 40, 1);
    expect(set.lastIndexOf("█") / set.length).toBeCloseTo(38 / 40, 1);
    expect(lane("inhibited")).toMatch(/^█+·+$/);
    expect(lane("bypassed")).toMatch(/^·+█+·+$/);
  });

  it("of overall has the band and the orders, and no escape of a terminal", async () => {
    const samples = Array.from({ length: 4096 }, (_, i) => Math.sin((2 * Math.PI * 25 * i) / 2560)).join("\n");
    const { out } = await veladis(
      ["overall", "--rate", "2560", "--unit", "g", "--speed", "1500 r/min", "--plot"],
      samples,
    );
    expect(out).toMatch(/^ +10\.00 +1000 Hz$/m);
    expect(out).toMatch(/^ +1x 3x$/m);
    expect(out).not.toContain("\u001b");
  });
});
