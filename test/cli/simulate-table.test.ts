import { TripLogic } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { riddenOut } from "../../src/cli/print/ridden-out";
import { veladis } from "./in-process";

/** A start and three knocks of invented lengths: 4 s above 9, 7 s above 6, and 12 s above 6. */
const levels = [2, 2, 9.5, 9.5, 9.5, 9.5, 2, 2, 7, 7, 7, 7, 7, 7, 7, 2, 2, ...Array(12).fill(6.5), 2, 2];
const file = `${["s,level", ...levels.map((level, i) => `${i},${level}`)].join("\n")}\n`;
const words = [
  "simulate",
  "--from",
  "mm/s rms",
  "--hysteresis",
  "8 %",
  "--timer-resets",
  "threshold",
  "--non-latching",
];
const plain = (text: string) => text.replace(/ +/g, " ");

/** The lengths of the runs of levels at a threshold, counted by hand as it were. */
const runs = (threshold: number): number[] =>
  levels
    .map((level) => (level >= threshold ? "x" : " "))
    .join("")
    .split(" ")
    .map((run) => run.length)
    .filter((length) => length > 0);

describe("a table of thresholds and delays", () => {
  it("tells for each pair trips, first trip, what was ridden out, and the margin", async () => {
    const { out } = await veladis([...words, "--threshold", "6, 9 mm/s rms", "--delay", "3,5,15"], file);
    for (const line of [
      "6.00 3 3 5 29 0 - - normal",
      "6.00 5 2 13 29 1 4 - normal",
      "6.00 15 0 - - 3 12 3 normal",
      "9.00 3 1 5 6 0 - - normal",
      "9.00 5 0 - - 1 4 1 normal",
      "9.00 15 0 - - 1 4 11 normal",
    ]) {
      expect(plain(out)).toMatch(new RegExp(`\\n ?${line.replaceAll(".", "\\.")}\\n`));
    }
    expect(plain(out)).toContain("\n6.00 mm/s rms 3 trips, the first at 2 s\n9.00 mm/s rms trip at 2 s\n");
    expect(out).toContain("threshold     6.000, 9.000 mm/s rms, each tried");
  });

  it("is a line of JSON for each pair, as the library has it", async () => {
    const { out } = await veladis([...words, "--threshold", "6; 9 mm/s rms", "--delay", "5,15", "--json"], file);
    const lines = out
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(lines.map(({ settings }) => [settings.threshold, settings.onDelay])).toEqual([
      ["6 mm/s rms", 5],
      ["6 mm/s rms", 15],
      ["9 mm/s rms", 5],
      ["9 mm/s rms", 15],
    ]);
    for (const { settings, events, rodeOut } of lines) {
      const times = levels.map((_, i) => i);
      expect(events).toEqual(JSON.parse(JSON.stringify(new TripLogic(settings).run(levels, times))));
      const short = runs(Number.parseFloat(settings.threshold)).filter((length) => length < settings.onDelay);
      expect(rodeOut.times).toBe(short.length);
      expect(rodeOut.longest).toBe(Math.max(...short));
    }
  });

  it("a level that is up at the end is not ridden out: how long it lasts is not known", () => {
    const events = [
      { time: 4, event: "timing", level: 7 },
      { time: 6, event: "rode out", level: 2 },
      { time: 9, event: "timing", level: 7 },
    ] as const;
    expect(riddenOut(events, 8)).toEqual({ times: 1, longest: 2, margin: 6 });
    expect(riddenOut([], 8)).toEqual({ times: 0, longest: null, margin: null });
  });
});
