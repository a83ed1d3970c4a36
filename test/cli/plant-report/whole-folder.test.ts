import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { wholeFolder } from "../../../src/cli/table/whole-folder";

const MARK = "<!-- one of ours -->";
let folder = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "veladis-folder-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const opened = (name: string, replace = false, inputs: readonly string[] = []) =>
  wholeFolder(join(folder, name), { replace, mark: MARK, inputs });

async function written(name: string, text: string, replace = false): Promise<void> {
  const one = await opened(name, replace);
  await one.write("index.html", `${MARK}${text}`);
  await one.commit();
}

it("is not there before it is whole, and leaves nothing beside it", async () => {
  const one = await opened("out");
  await one.write("index.html", MARK);
  expect(readdirSync(folder)).not.toContain("out");
  await one.commit();
  expect(readdirSync(folder)).toEqual(["out"]);
  expect(readdirSync(join(folder, "out"))).toEqual(["index.html"]);
});

it("that is given up leaves nothing, and the one before as it was", async () => {
  await written("out", "first");
  const one = await opened("out", true);
  await one.write("index.html", "second");
  await one.discard();
  expect(readdirSync(folder)).toEqual(["out"]);
  expect(readFileSync(join(folder, "out", "index.html"), "utf8")).toBe(`${MARK}first`);
});

it("replaces an earlier one whole when told so, and not otherwise", async () => {
  await written("out", "first");
  await expect(written("out", "second")).rejects.toMatchObject({ code: "missing-option", option: "out" });
  await written("out", "second", true);
  expect(readdirSync(folder)).toEqual(["out"]);
  expect(readFileSync(join(folder, "out", "index.html"), "utf8")).toBe(`${MARK}second`);
});

it("takes the place of an empty folder", async () => {
  mkdirSync(join(folder, "out"));
  await written("out", "first");
  expect(readdirSync(join(folder, "out"))).toEqual(["index.html"]);
});

it.each([
  ["a file of somebody", (at: string) => writeFileSync(join(at, "notes.txt"), "mine")],
  ["a folder", (at: string) => mkdirSync(join(at, "more"))],
  ["a link", (at: string) => symlinkSync("/", join(at, "away"))],
])("with %s in it is never replaced", async (_, put) => {
  await written("out", "first");
  put(join(folder, "out"));
  await expect(opened("out", true)).rejects.toMatchObject({ code: "unwritable", option: "out" });
  expect(readdirSync(join(folder, "out")).length).toBe(2);
});

it("never stands where a file or a link stands, nor about a file that is read", async () => {
  writeFileSync(join(folder, "file"), "mine");
  symlinkSync(folder, join(folder, "link"));
  await expect(opened("file", true)).rejects.toMatchObject({ code: "wrong-type" });
  await expect(opened("link", true)).rejects.toMatchObject({ code: "wrong-type" });
  await written("out", "first");
  const input = join(folder, "out", "index.html");
  await expect(opened("out", true, [input])).rejects.toMatchObject({ code: "unknown-option" });
  await expect(opened("nowhere/out")).rejects.toMatchObject({ code: "unwritable" });
});

it("never writes a file twice, which would lose the first", async () => {
  const one = await opened("out");
  await one.write("a.html", MARK);
  await expect(one.write("a.html", MARK)).rejects.toMatchObject({ code: "unwritable" });
  await one.discard();
  expect(readdirSync(folder)).toEqual([]);
});
