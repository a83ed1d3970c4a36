import { execFileSync } from "node:child_process";
import { appendFileSync, mkdirSync, mkdtempSync, readdirSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { linesOf } from "../../src/cli/input/lines";
import { openFile } from "../../src/cli/input/open-file";
import { standardInput } from "../../src/cli/input/standard-input";
import { veladis } from "./in-process";
import { madeParquet } from "./parquet/made-file";

const folder = mkdtempSync(join(tmpdir(), "veladis-inputs-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const table = ["--column", "v", "--from", "mm/s rms", "--to", "in/s pk"];
const overall = ["--rate", "100", "--unit", "g", "--format", "float32"];
const levels = ["--from", "mm/s rms", "--scheme", "iso-10816-3-2009", "--machine", "group 2 rigid"];

describe.skipIf(process.platform === "win32")("what is no plain file is refused in a line, and not waited for", () => {
  const pipe = join(folder, "pipe");
  const inner = join(folder, "folder.parquet");
  beforeAll(() => {
    execFileSync("mkfifo", [pipe]);
    mkdirSync(inner);
  });
  const commands = (path: string): string[][] => [
    ["table", path, ...table],
    ["--file", path, "--to", "in/s pk"],
    ["--file", path, "--column", "v", "--from", "mm/s rms", "--to", "in/s pk"],
    ["overall", path, ...overall],
    ["setpoints", "--file", path, ...levels],
  ];
  it.each([
    ["a folder", folder],
    ["a folder", inner],
    ["a pipe", pipe],
    ["a device", "/dev/zero"],
    ["ENOENT", join(folder, "absent.csv")],
    ["ENOTDIR", join(pipe, "absent.csv")],
    ["ENAMETOOLONG", join(folder, "x".repeat(300))],
  ])("%s: %s", async (kind, path) => {
    for (const args of commands(path)) {
      const { out, err, code } = await veladis(args);
      expect([out, code], args[0]).toEqual(["", 2]);
      expect(err).toMatch(/^veladis: (?:wrong-type|unreadable)\n {2}expected: .*\n {2}received: .*\n$/);
      expect(err).toContain(kind);
      expect(err.includes("wrong-type")).toBe(kind.startsWith("a "));
    }
  });
});

describe("a Parquet file where text is read", () => {
  const path = join(folder, "parquet.csv");
  const trip = ["--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--delay", "2", "--timer-resets", "threshold"];
  const commands: string[][] = [
    ["table", path, ...table],
    ["table", path, ...table, "--separator", "comma"],
    ["--file", path, "--to", "in/s pk"],
    ["--file", path, ...table],
    ["setpoints", "--file", path, ...levels],
    ["simulate", "--file", path, ...trip, "--latching", "--from", "mm/s rms"],
    ["check", "--file", path, "--from", "mm/s rms", "--tolerance", "5 %"],
    ["overall", path, "--rate", "100", "--unit", "g"],
  ];
  it.each(commands)("is called one, and table with its ending is named: %s %s %s", async (...args) => {
    writeFileSync(path, madeParquet([{ name: "v", values: [1, 2, 3] }]));
    const { out, err, code } = await veladis(args);
    expect([out, code]).toEqual(["", 2]);
    expect(err).toContain("text (the command table alone reads Parquet, by the ending .parquet)");
  });

  it("a heading PAR1 is one", async () => {
    writeFileSync(path, "PAR1,v\nx,1\n");
    expect((await veladis(["table", path, ...table])).code).toBe(0);
  });
});

describe("a file that changes while it is read", () => {
  const path = join(folder, "changing.csv");
  it.each([
    ["grows without end", () => appendFileSync(path, "2\n".repeat(400_000))],
    ["shrinks", () => truncateSync(path, 600_000)],
  ])("%s", async (_, change) => {
    writeFileSync(path, `v\n${"1\n".repeat(400_000)}`);
    const read = async (): Promise<void> => {
      for await (const _chunk of await openFile(path)) change();
    };
    await expect(read()).rejects.toMatchObject({
      code: "unreadable",
      expected: expect.stringContaining("stays as it is"),
    });
  });

  it("gives no output", async () => {
    writeFileSync(path, `v\n${"1\n".repeat(400_000)}`);
    const out = join(folder, "changed.csv");
    writeFileSync(out, "kept\n");
    const run = veladis(["table", path, ...table, "--out", out, "--replace"]);
    const timer = setInterval(() => appendFileSync(path, "2\n"), 1);
    const { code, err } = await run.finally(() => clearInterval(timer));
    expect([code, err]).toEqual([2, expect.stringContaining("stays as it is")]);
    expect(readdirSync(folder).filter((name) => name.includes("changed"))).toEqual(["changed.csv"]);
  });
});

describe("standard input that fails", () => {
  it("is a refusal; a bug is none", async () => {
    const failing = (error: Error) =>
      standardInput(
        new Readable({
          read() {
            this.destroy(error);
          },
        }),
      ).toArray();
    const { message, ...system } = Object.assign(new Error("x"), { code: "EISDIR", syscall: "read" });
    await expect(failing(Object.assign(new Error(message), system))).rejects.toMatchObject({ received: "EISDIR" });
    await expect(failing(new TypeError("a bug"))).rejects.toThrow(TypeError);
  });
});

async function lines(...chunks: (string | Uint8Array)[]): Promise<string[]> {
  const found: string[] = [];
  for await (const { number, text } of linesOf(Readable.from(chunks.map((one) => Buffer.from(one))))) {
    expect(number).toBe(found.length + 1);
    found.push(text);
  }
  return found;
}

describe("lines", () => {
  const swapped = (text: string): Buffer => Buffer.from(text, "utf16le").swap16();
  it.each([
    ["line feeds", ["a\nb\n"], ["a", "b"]],
    ["with carriage returns", ["a\r\nb\r\n"], ["a", "b"]],
    ["of both kinds", ["a\nb\r\nc"], ["a", "b", "c"]],
    ["cut between the two", ["a\r", "\nb\r", "\n"], ["a", "b"]],
    ["carriage returns alone", ["a\rb\rc"], ["a", "b", "c"]],
    ["one line of them", ["a\r"], ["a"]],
    ["blank ones", ["\n\na\n"], ["", "", "a"]],
    ["nothing", [""], []],
    ["one letter", ["a"], ["a"]],
    ["a character cut in two", [Buffer.from("µ").subarray(0, 1), Buffer.from("µ\n").subarray(1)], ["µ"]],
    ["the mark of UTF-8", ["\ufeffa\n"], ["a"]],
    ["that of two files in one", ["\ufeffa\n\ufeffb\n"], ["a", "b"]],
    ["UTF-16", [Buffer.from("\ufeffµ\r\nb\r\n", "utf16le")], ["µ", "b"]],
    ["the other UTF-16, its mark cut in two", [Uint8Array.of(0xfe), Uint8Array.of(0xff), swapped("a\nµ")], ["a", "µ"]],
  ])("%s", async (_, chunks, expected) => {
    expect(await lines(...chunks)).toEqual(expected);
  });

  it.each([
    ["a zero byte", ["a\nb\0\n"], "line 2 with a zero byte"],
    ["UTF-16 without its mark", [Buffer.from("a\n", "utf16le")], "line 1 with a zero byte"],
    ["Latin-1", ["a\nb\n", Uint8Array.of(0xb5, 10)], "line 3 with bytes of something else"],
    ["a character that breaks off", ["a\n", Uint8Array.of(0xc2)], "line 2 with bytes of something else"],
    ["a carriage return within a line", ["a\nb\rc\n"], "line 2 with another line end within"],
    ["a line feed among carriage returns", ["a\rb\nc\r"], "line 2 with another line end within"],
  ])("%s is refused with its line", async (_, chunks, received) => {
    await expect(lines(...chunks)).rejects.toMatchObject({ code: "syntax", received });
  });

  it("128 MB without a line end are given up after the first of them", async () => {
    let read = 0;
    const endless = Readable.from(
      (function* () {
        for (; read < 2048; read++) yield Buffer.alloc(1 << 16, "x");
      })(),
    );
    const all = (async () => {
      for await (const line of linesOf(endless)) expect(line).toBeUndefined();
    })();
    await expect(all).rejects.toMatchObject({ received: "line 1 without an end" });
    expect(read).toBeLessThan(64);
  });

  it("answers those before the one that is refused", async () => {
    const { out, err, code } = await veladis(
      ["--to", "in/s pk"],
      [Buffer.from("25.4 mm/s pk\n1 \xb5m pp\n", "latin1")],
    );
    expect([out, code]).toEqual(["25.4 mm/s pk = 1.00 in/s pk\n", 2]);
    expect(err).toContain("iconv -f latin1 -t utf-8");
  });
});
