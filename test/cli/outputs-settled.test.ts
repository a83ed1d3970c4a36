import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { outputsOf } from "../../src/cli/table/table-outputs";
import { wholeFile } from "../../src/cli/table/whole-file";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-settled-"));
afterAll(() => rmSync(folder, { recursive: true }));

describe("what is in its place is whole", () => {
  it("commit waits for the last write, however large", async () => {
    const path = join(folder, "large.csv");
    const file = await wholeFile(path, false);
    const portion = Buffer.alloc(1 << 25, "x");
    for (let i = 0; i < 4; i++) void file.write(portion);
    await file.commit();
    expect(readFileSync(path).length).toBe(4 * portion.length);
  });

  it("the outputs of a table stand in their places when commit is done", async () => {
    const out = join(folder, "out.csv");
    const settings = { file: undefined, out, refused: undefined, replace: false } as Parameters<typeof outputsOf>[1];
    const outputs = await outputsOf(
      { piped: undefined, colour: false, out: () => undefined, err: () => undefined },
      settings,
    );
    void outputs.write(Buffer.from("a\n"));
    void outputs.refuse?.(Buffer.from("b\n"));
    await outputs.commit(1);
    expect([readFileSync(out, "utf8"), readFileSync(join(folder, "out.refused.csv"), "utf8")]).toEqual(["a\n", "b\n"]);
  });
});

describe("a missing cell in convert --column", () => {
  it("is refused, and nothing is added behind the row", async () => {
    const path = join(folder, "short.csv");
    writeFileSync(path, "place,level,remark\nID fan 1,4.1,ok\nID fan 2,4.2\nID fan 3,,ok\nID fan 4,4.3,ok,ok\n");
    const args = ["--file", path, "--column", "level", "--from", "mm/s rms", "--to", "mm/s rms"];
    const { out, err, code } = await veladis(args);
    expect([out, code]).toEqual(["place,level,remark,mm/s rms\nID fan 1,4.1,ok,4.1\nID fan 3,,ok,\n", 2]);
    expect(err).toContain("line 3: length-mismatch");
    expect(err).toContain("line 4: not-a-number");
    expect(err).toContain("line 5: length-mismatch");
  });
});
