import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { machineList } from "../../src/cli/input/machine-list";
import { VeladisError } from "../../src/core/index";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-list-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = (content: string): string => {
  const path = join(mkdtempSync(join(folder, "one-")), "machines.csv");
  writeFileSync(path, content);
  return path;
};
const plain = { decimalComma: false };
const list = (content: string, words: string[] = [], name = "tag", as: object = plain) =>
  machineList(file(content), as as typeof plain, { name, words });

describe("a list of machines", () => {
  it("is read row by row: the name, and the words of all other columns that have any", async () => {
    const { machines, refused, account } = await list("tag;kind;power;note\nP-1; pump ;90 kW;\nV-2;fan;;rigid\n");
    expect(machines).toEqual([
      { name: "P-1", machine: "pump, 90 kW", line: 2 },
      { name: "V-2", machine: "fan, rigid", line: 3 },
    ]);
    expect(refused).toEqual([]);
    expect(account).toMatchObject({ rowsIn: 2, rows: 2, refused: 0 });
  });

  it("the words of the columns that are told, in that order", async () => {
    const { machines } = await list("kind,tag,power\npump,P-1,90 kW\n", ["power", "1"]);
    expect(machines).toEqual([{ name: "P-1", machine: "90 kW, pump", line: 2 }]);
  });

  it("a row without a name, with one that stands above, or of another width is refused with its line", async () => {
    const { machines, refused, account } = await list("tag,words\n P-1 ,pump\n,fan\nP-1,fan\nP-2\nP-3,fan\n");
    expect(machines.map((one) => [one.name, "error" in one])).toEqual([
      ["P-1", true],
      ["P-3", false],
    ]);
    expect(refused.map(({ line, error }) => [line, error.code, error.received])).toEqual([
      [3, "syntax", "an empty cell"],
      [4, "syntax", '"P-1", as on line 2'],
      [5, "length-mismatch", "1"],
    ]);
    expect(account).toMatchObject({ rowsIn: 5, rows: 4, refused: 1 });
  });

  it("a name whose words are refused, and that stands again below, judges by neither row", async () => {
    const { machines, refused } = await list("tag;words\nP-1;1,480 r/min pump\nP-1;pump\n", [], "tag", {
      decimalComma: true,
    });
    expect(refused.map(({ line, error }) => [line, error.code])).toEqual([[3, "syntax"]]);
    expect(machines).toEqual([{ name: "P-1", line: 2, error: expect.objectContaining({ code: "syntax" }) }]);
  });

  it("a machine whose words cannot be read stands in it with the reason", async () => {
    const { machines, refused } = await list("tag;words\nP-1;1,480 r/min pump\n", [], "tag", { decimalComma: true });
    expect(refused).toEqual([]);
    expect(machines).toEqual([{ name: "P-1", line: 2, error: expect.objectContaining({ code: "not-a-number" }) }]);
  });

  it("columns that are not there are refused", async () => {
    await expect(list("tag,words\nP-1,pump\n", [], "name")).rejects.toThrow(VeladisError);
    await expect(list("tag,words\nP-1,pump\n", ["kind"])).rejects.toThrow(VeladisError);
  });

  it("by the command: all rows are counted, and refused ones told", async () => {
    const rows = file("tag,words\nP-1,pump 90 kW category II 2980 r/min\nX-1,90 kW\n,fan\n");
    const asked = ["--table", "readings", "--column", "v", "--from", "mm/s rms"];
    const { out, err, code } = await veladis(["sql", "--machines", rows, "--name-column", "tag", ...asked]);
    expect(code).toBe(2);
    expect(out).toContain("'P-1'");
    expect(err).toContain("rows: 3 in = 1 answered + 2 refused + 0 skipped");
    expect(err).toMatch(/line 3|:3/);
  });
});
