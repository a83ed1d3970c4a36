import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import * as fs from "node:fs";
import { hostname, tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { wholeFile } from "../../src/cli/table/whole-file";
import { veladis } from "./in-process";

const folder = fs.mkdtempSync(join(tmpdir(), "veladis-whole-"));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

let count = 0;
function place(): string {
  const inner = join(folder, `${++count}`);
  fs.mkdirSync(inner);
  return join(inner, "out.csv");
}
const beside = (path: string): string[] => fs.readdirSync(join(path, ".."));
const table = ["--column", "v", "--from", "mm/s rms", "--to", "in/s pk"];

describe("a file that is there whole or not at all", () => {
  it("is written beside its place by a name nobody can guess, and has the bytes that were given", async () => {
    const path = place();
    const listeners = (): number[] =>
      ["exit", "SIGINT", "SIGTERM", "SIGHUP"].map((name) => process.listenerCount(name));
    const before = listeners();
    const file = await wholeFile(path, false);
    expect(listeners()).toEqual(before.map((count) => count + 1));
    expect(beside(path)).toEqual([expect.stringMatching(/^\.out\.csv\.[0-9a-f]{8}-\d+-[0-9a-f]{16}\.part$/)]);
    void file.write(Buffer.from([0xff, 10]));
    void file.write(Uint8Array.of(0, 254));
    // the last portion is waited for, whoever asks
    await file.commit();
    expect(fs.readFileSync(path)).toEqual(Buffer.from([255, 10, 0, 254]));
    expect(beside(path)).toEqual(["out.csv"]);
    expect(listeners()).toEqual(before);
  });

  it("discards what it wrote, also when it was settled", async () => {
    for (const settled of [false, true]) {
      const path = place();
      const file = await wholeFile(path, false);
      await file.write(Buffer.from("x"));
      if (settled) await file.flush();
      await file.discard();
      expect(beside(path)).toEqual([]);
    }
  });

  it("follows no link: neither to write over its target, nor to take its place", async () => {
    const path = place();
    const target = join(path, "../target");
    fs.symlinkSync(target, path);
    for (const replace of [false, true]) {
      await expect(wholeFile(path, replace)).rejects.toMatchObject({ expected: expect.stringContaining("not a link") });
      fs.writeFileSync(target, "kept");
    }
    expect(fs.readFileSync(target, "utf8")).toBe("kept");
    expect(fs.lstatSync(path).isSymbolicLink()).toBe(true);
  });

  it("writes over nothing that came to its place meanwhile", async () => {
    const path = place();
    const file = await wholeFile(path, false);
    fs.writeFileSync(path, "kept");
    await expect(file.commit()).rejects.toMatchObject({ received: expect.stringContaining("EEXIST") });
    await file.discard();
    expect(fs.readFileSync(path, "utf8")).toBe("kept");
    expect(beside(path)).toEqual(["out.csv"]);
  });

  it.skipIf(process.platform === "win32")("is readable by those who could read the one it replaces", async () => {
    const path = place();
    fs.writeFileSync(path, "old", { mode: 0o600 });
    const file = await wholeFile(path, true);
    expect(fs.statSync(join(path, "..", beside(path)[0] as string)).mode & 0o777).toBe(0o600);
    await file.commit();
    expect(fs.statSync(path).mode & 0o777).toBe(0o600);
  });

  it.skipIf(process.platform === "win32")("a new one is readable by those whom the computer lets", async () => {
    const path = place();
    await (await wholeFile(path, false)).commit();
    expect(fs.statSync(path).mode & 0o777).toBe(0o666 & ~process.umask());
  });

  it("sweeps what dead runs of this computer left, and nothing else", async () => {
    const path = place();
    const { pid } = spawnSync(process.execPath, ["-e", ""]);
    const host = createHash("sha256").update(hostname()).digest("hex").slice(0, 8);
    const stale = `.out.csv.${host}-${pid}-0123456789abcdef.part`;
    const kept = [
      `.out.csv.${host}-${process.pid}-0123456789abcdef.part`,
      `.out.csv.00000000-${pid}-0123456789abcdef.part`,
      `.out.csv.${host}-x${pid}-0123456789abcdef.part`,
      `.other.csv.${host}-${pid}-0123456789abcdef.part`,
    ];
    for (const name of [stale, ...kept]) fs.writeFileSync(join(path, "..", name), "");
    await (await wholeFile(path, false)).discard();
    expect(beside(path).sort()).toEqual(kept.sort());
  });
});

describe("a previous output", () => {
  const input = join(folder, "in.csv");
  it.each([
    ["nothing", ""],
    ["blank lines", "\n\n\n"],
    ["no such column", "w\n1\n"],
    ["a quotation mark that nothing closes", 'v\n"1\n'],
  ])("outlives a run that fails: %s", async (_, content) => {
    const path = place();
    fs.writeFileSync(path, "kept");
    fs.writeFileSync(join(path, "../out.refused.csv"), "kept too");
    fs.writeFileSync(input, content);
    const { code } = await veladis(["table", input, ...table, "--out", path, "--replace"]);
    expect(code).toBe(2);
    expect(fs.readFileSync(path, "utf8")).toBe("kept");
    expect(fs.readFileSync(join(path, "../out.refused.csv"), "utf8")).toBe("kept too");
    expect(beside(path).sort()).toEqual(["out.csv", "out.refused.csv"]);
  });
});
