import { closeSync, mkdtempSync, openSync, rmdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { standardInput } from "../../src/cli/input/standard-input";
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

describe("nothing on standard input", () => {
  const gate = ["judge", "--machine", "pump 90 kW category II", "--fail-from", "B"];

  it.each<[string, readonly string[], string]>([
    ["a gate", gate, ""],
    ["a gate with remarks alone", gate, "# of Monday\n\n"],
    ["a gate that keeps going", [...gate, "--keep-going"], ""],
    ["a gate whose lines are all refused", [...gate, "--keep-going"], "DE\n"],
    ["lines to convert", ["--to", "in/s pk"], ""],
    ["a route", ["--file", "-", "--to", "in/s pk"], "# of Monday\n"],
    ["a route that keeps going", ["--file", "-", "--to", "in/s pk", "--keep-going"], ""],
  ])("is refused: %s", async (_, args, input) => {
    const { code, out } = await veladis(args, input);
    expect([code, out]).toEqual([2, ""]);
  });

  it("a folder in its place is named as one", async () => {
    const folder = mkdtempSync(join(tmpdir(), "standard-input-"));
    const descriptor = openSync(folder, "r");
    const stdin = Object.assign(Readable.from([]), { fd: descriptor });
    await expect(standardInput(stdin).toArray()).rejects.toMatchObject({ code: "unreadable", received: "a folder" });
    closeSync(descriptor);
    rmdirSync(folder);
    // one that is closed is no folder
    await expect(standardInput(Object.assign(Readable.from([]), { fd: 999_999 })).toArray()).resolves.toEqual([]);
  });
});
