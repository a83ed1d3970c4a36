import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const device = ["--running", "2 mm/s rms at 2970 r/min", "--threshold", "7.5 mm/s rms", "--hysteresis", "5 %"];
const rest = ["--timer-resets", "threshold", "--detector", "rms", "--time-constant", "1", "--high-pass", "10"];

describe("the largest shocks of the command", () => {
  it.each(["0", "2"])("do not trip as they are printed, with a delay of %s s", async (delay) => {
    const asked = ["shock", ...device, "--delay", delay, ...rest];
    const { out } = await veladis(asked);
    const rows = out
      .split("\n")
      .map((line) => line.trim().split(/\s{2,}/))
      .filter((cells) => cells.length === 3 && /^\d/.test(cells[0] as string));
    expect(rows).toHaveLength(4);
    for (const [length, , largest] of rows as [string, string, string][]) {
      const one = ["--shock", `${largest} g pk`, "--length", length, "--shape", "half-sine"];
      expect((await veladis([...asked, ...one])).out, `${largest} g for ${length} ms`).toMatch(/^no trip/);
    }
  });
});
