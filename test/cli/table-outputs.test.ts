import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it, vi } from "vitest";
import { byteSink } from "../../src/cli/table/byte-sink";
import { grouped, progressOf } from "../../src/cli/table/progress";
import { wholeFile } from "../../src/cli/table/whole-file";

const folder = mkdtempSync(join(tmpdir(), "veladis-outputs-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("a count of rows", () => {
  it.each([
    [0, "0"],
    [999, "999"],
    [1000, "1 000"],
    [12345, "12 345"],
    [1234567, "1 234 567"],
  ])("%d is %s", (count, text) => expect(grouped(count)).toBe(text));
});

describe("progress", () => {
  const watched = (act: (progress: ReturnType<typeof progressOf>, at: (ms: number) => void) => void): string[] => {
    const shown: string[] = [];
    const now = vi.spyOn(performance, "now").mockReturnValue(0);
    try {
      act(progressOf({ progress: (text: string) => void shown.push(text) } as never, "plant/in.csv"), (ms) => {
        now.mockReturnValue(ms);
      });
    } finally {
      now.mockRestore();
    }
    return shown;
  };

  it("shows bar, share, rows and rows a second, at most ten times a second, and clears the line", () => {
    const shown = watched((progress, at) => {
      progress.show(1, 0);
      at(99);
      progress.show(10, 0.1);
      at(500);
      progress.show(1000, 0.5);
      at(599);
      progress.show(1100, 0.51);
      at(1000);
      progress.show(3000, 1);
      progress.end();
    });
    expect(shown).toEqual([
      `in.csv  ${"#".repeat(12)}${".".repeat(12)} 50 %  1 000 rows, 2 000 a second`,
      `in.csv  ${"#".repeat(24)} 100 %  3 000 rows, 3 000 a second`,
      "",
    ]);
  });

  it("of a length that is not known has no bar; what was never shown is not cleared", () => {
    const shown = watched((progress, at) => {
      at(100);
      progress.show(1, undefined);
    });
    expect(shown).toEqual(["in.csv  1 row, 10 a second"]);
    expect(watched((progress) => progress.end())).toEqual([]);
    const unseen = progressOf({ progress: undefined } as never);
    expect([unseen.show(1, 0), unseen.end()]).toEqual([undefined, undefined]);
  });
});

describe("bytes that are gathered for one write", () => {
  it("are those that were given, however many, and none is left behind", () => {
    const sink = byteSink();
    const long = "\u00e9".repeat(1 << 18);
    sink.text(long);
    sink.text("x");
    sink.bytes(Uint8Array.of(0, 255));
    sink.text("y".repeat(3 << 18));
    const taken = sink.take();
    expect(taken.length).toBe((1 << 18) + 3 + (3 << 18));
    expect(taken.toString("latin1")).toBe(`${long}x\u0000\u00ff${"y".repeat(3 << 18)}`);
    sink.text("z");
    expect(sink.take().toString()).toBe("z");
    expect(taken[0]).toBe(0xe9);
    expect(sink.take()).toHaveLength(0);
  });
});

describe("an output that cannot be begun", () => {
  it("says so, and takes its listeners back", async () => {
    const listeners = (): number[] =>
      ["exit", "SIGINT", "SIGTERM", "SIGHUP"].map((name) => process.listenerCount(name));
    const before = listeners();
    const place = mkdtempSync(join(folder, "one-"));
    // no folder can be written to beside so long a name
    const path = join(place, `${"n".repeat(240)}.csv`);
    await expect(wholeFile(path, false)).rejects.toMatchObject({
      code: "unwritable",
      expected: "a folder that can be written to",
      received: expect.stringMatching(/one-.*: ENAMETOOLONG$/),
    });
    expect(listeners()).toEqual(before);
    expect(readdirSync(place)).toEqual([]);
  });

  it("an older file that may be replaced stays until the new one is whole", async () => {
    const path = join(mkdtempSync(join(folder, "one-")), "out.csv");
    writeFileSync(path, "old");
    const whole = await wholeFile(path, true);
    await whole.write(Buffer.from("new"));
    expect(readFileSync(path, "utf8")).toBe("old");
    await whole.commit();
    expect(readFileSync(path, "utf8")).toBe("new");
  });
});
