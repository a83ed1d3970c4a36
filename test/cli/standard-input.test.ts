import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const csv = "time,level\n0,3\n2,3.1\n4,3.2\n";
const trip = ["--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--delay", "1", "--latching", "--timer-resets"];

describe("- is standard input", () => {
  it.each<[string, readonly string[], string]>([
    ["table", ["table", "-", "--column", "level", "--from", "mm/s rms", "--to", "in/s pk"], csv],
    ["convert", ["--file", "-", "--column", "level", "--from", "mm/s rms", "--to", "in/s pk"], csv],
    ["a route", ["--file", "-", "--to", "in/s pk"], "DE: 4.1 mm/s rms\n"],
    ["simulate", ["simulate", "--file", "-", "--from", "mm/s rms", ...trip, "threshold"], csv],
    ["setpoints", ["setpoints", "--file", "-", "--from", "mm/s rms", "--scheme", "none"], csv],
    [
      "check",
      ["check", "--file", "-", "--from", "mm/s rms", "--tolerance", "5 %"],
      "known,indicated\n2,2.1\n5,5\n8,8\n",
    ],
    ["overall", ["overall", "-", "--rate", "100", "--unit", "g", "--band", "20-40"], "0.1\n-0.2\n0.2\n".repeat(50)],
  ])("%s", async (_, args, input) => {
    const piped = await veladis(args, input);
    expect([piped.code, piped.err.includes("ENOENT")]).toEqual([0, false]);
    const nothing = await veladis(args);
    expect(nothing.code).toBe(2);
    expect(nothing.err).toContain("veladis: missing-option");
  });
});
