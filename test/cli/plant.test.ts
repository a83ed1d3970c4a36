import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fromJson } from "veladis/json";
import { afterAll, describe, expect, it, vi } from "vitest";
import { veladis } from "./in-process";
import { workbook } from "./made-workbook";

const folder = mkdtempSync(join(tmpdir(), "veladis-plant-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = (content: string | Uint8Array, name = "plant.csv"): string => {
  const path = join(mkdtempSync(join(folder, "one-")), name);
  writeFileSync(path, content);
  return path;
};

const heading = "tag,kind,power,speed,nameplate,alarm,trip,trip delay s,baseline,check date,interval months,room";
const rows = [
  "HW-P1,pump,90 kW,2980 r/min,category II,3.5 mm/s rms,6 mm/s rms,4,2.2 mm/s rms,2026-03-10,12,K1",
  "HW-P2,pump,90 kW,2980 r/min,category II,3.5 mm/s rms,14 mm/s rms,4,2.2 mm/s rms,2024-03-10,12,K2",
];
const list = file([heading, ...rows, ""].join("\n"));
const torn = file(
  [heading, ...rows, rows[0]?.replace("HW-P1", "HW-P3").replace(",4,", ",4 s,"), "HW-P4,pump", ""].join("\n"),
);
const audit = (...args: string[]) => veladis(["plant", "audit", ...args]);

describe("veladis plant", () => {
  it("alone, with --help and behind help lists its commands", async () => {
    const { out, code } = await veladis(["plant"]);
    expect(code).toBe(0);
    expect(out).toMatch(/^ {2}plant audit +every machine/m);
    expect((await veladis(["plant", "--help"])).out).toBe(out);
    expect((await veladis(["help", "plant"])).out).toBe(out);
    expect((await veladis(["help", "plant", "audit"])).out).toBe((await audit("--help")).out);
    expect((await veladis(["help"])).out).toContain("  plant audit");
  });

  it.each([
    [["plant", "adit"], "plant audit"],
    [["audit", "plant.csv"], "plant audit"],
    [["help", "plant", "templat"], "plant template"],
    [["plnt"], undefined],
  ])("%j is refused with the nearest", async (args, near) => {
    const { err, code, out } = await veladis(args);
    expect([code, out]).toEqual([2, ""]);
    if (near !== undefined) expect(err).toContain(`did you mean: ${near}`);
  });

  it("completes the second word, and the options of both", async () => {
    const following = async (...words: string[]) =>
      (await veladis(["completion", "--words", "--", ...words])).out.split("\n");
    expect(await following("plan")).toContain("plant");
    expect(await following("plant", "")).toEqual(expect.arrayContaining(["audit", "template"]));
    expect(await following("plant", "audit", "--fail")).toEqual(["--fail-on", ""]);
    expect(await following("plant", "audit", "--fail-on", "")).toEqual(["error", "warning", "note", ""]);
  });
});

describe("plant template", () => {
  it("is a list that its own audit reads, with commas and with semicolons", async () => {
    const { out } = await veladis(["plant", "template"]);
    const { out: german } = await veladis(["plant", "template", "--semicolon"]);
    const one = await audit(file(out), "--on", "2026-11-28", "--fail-on", "warning");
    const other = await audit(file(german), "--decimal-comma", "--on", "2026-11-28", "--fail-on", "warning");
    expect([one.code, other.code]).toEqual([0, 0]);
    const behind = (text: string) => text.slice(text.indexOf("\n"));
    expect(behind(other.out)).toBe(behind(one.out));
  });

  it("--columns explains each column, within 100 columns of text", async () => {
    const { out } = await veladis(["plant", "template", "--columns"]);
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    expect(out).toMatch(/^baseline deviation {2}reading/m);
    const { out: data } = await veladis(["plant", "template", "--json"]);
    expect(JSON.parse(data.split("\n")[0] as string)).toMatchObject({ column: "tag", holds: "text" });
    expect((await veladis(["plant", "template", "--json", "--semicolon"])).code).toBe(2);
  });
});

describe("plant audit", () => {
  it("prints the worst first, why, what was not checked, the limits and the cautions, within 100 columns", async () => {
    const { out, err, code } = await audit(list, "--on", "2026-11-28");
    expect(code).toBe(0);
    expect(out).toMatch(/^error +HW-P2 +3 +trip above ceiling: the trip of 14.0 mm\/s rms is above 10.6/m);
    expect(out).toMatch(/^warning +HW-P2 +3 +check overdue/m);
    for (const title of ["why", "not checked", "limits", "cautions"])
      expect(out).toMatch(new RegExp(`^${title}$`, "m"));
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    expect(err).toContain('columns of your own, kept and not read: "room"');
    expect(err).toContain("rows: 2 in = 2 answered + 0 refused");
  });

  it("ends with 1 where a finding is as bad as --fail-on names", async () => {
    expect((await audit(list, "--fail-on", "error")).code).toBe(1);
    const sound = file([heading, rows[0], ""].join("\n"));
    expect((await audit(sound, "--on", "2026-11-28", "--fail-on", "error")).code).toBe(0);
    expect((await audit(sound, "--on", "2026-11-28", "--fail-on", "note")).code).toBe(1);
    expect((await audit(list, "--fail-on", "bad")).code).toBe(2);
  });

  it("a list without rows is no sound plant", async () => {
    const { err, code } = await audit(file("tag,kind\n"), "--fail-on", "note");
    expect([code, err]).toEqual([2, expect.stringContaining("nothing can be said of none")]);
  });

  it("names rows that are refused by line, tag and column, and answers the others", async () => {
    const { out, err, code } = await audit(torn);
    expect(code).toBe(2);
    expect(err).toMatch(/line 4, HW-P3, column trip delay s: not-a-number/);
    expect(err).toMatch(/line 5: length-mismatch/);
    expect(out.replace(/\s+/g, " ")).toContain("2 machines looked at; 2 rows refused, of which nothing is said");
    expect(out).not.toContain("HW-P3");
    expect((await audit(torn, "--keep-going")).code).toBe(0);
    expect((await audit(torn, "--keep-going", "--fail-on", "error")).code).toBe(1);
    expect((await audit(torn, "--fail-on", "error")).code).toBe(2);
  });

  it("as JSON is read back, and as a table has a row a finding", async () => {
    const { out, err } = await audit(torn, "--json", "--on", "2026-11-28");
    const back = fromJson("plant audit", out);
    expect(back.findings[0]).toMatchObject({ tag: "HW-P2", severity: "error", code: "trip above ceiling" });
    expect(back.refused).toHaveLength(2);
    for (const line of err.trim().split("\n")) expect(() => JSON.parse(line)).not.toThrow();
    const { out: table } = await audit(torn, "--csv", "--on", "2026-11-28");
    expect(table.trim().split("\n")).toHaveLength(back.findings.length + 1);
    expect((await audit(list, "--csv", "--json")).code).toBe(2);
  });

  it.each([
    ["no file", [], "missing-option"],
    ["two files", [list, list], "unknown-option"],
    ["a file that is not there", ["no-such.csv"], "unreadable"],
    ["a day that is none", [list, "--on", "2026-02-30"], "out-of-range"],
    ["a heading that is nearly ours", [file("tag,kind,trip dely s\nA,fan,1\n")], "unknown-option"],
    ["a row of units", [file("tag,kind,trip\n,,mm/s rms\nA,fan,7\n")], "syntax"],
    ["no machine", [file("room,owner\nK1,B\n")], "missing-fact"],
  ])("%s is refused", async (_, args, code) => {
    const printed = await audit(...args);
    expect([printed.code, printed.out]).toEqual([2, ""]);
    expect(printed.err).toContain(code);
  });

  it("reads standard input, a column that is said to be one's own, and dates with the day first", async () => {
    const text = "tag;kind;steps;check date\nA;fan;3;31.03.2026\n";
    const args = ["plant", "audit", "-", "--separator", "semicolon", "--own", "steps", "--dates", "day-first"];
    const { out, code } = await veladis([...args, "--on", "2026-11-28"], text);
    expect(code).toBe(0);
    expect(out).toContain("-: 1 machine looked at on 2026-11-28");
    expect((await veladis(args.slice(0, -2), text)).err).toContain("missing-option");
  });

  it("nothing in a cell steers a terminal, a page of text or a spreadsheet", async () => {
    const hostile = file('tag,kind,nameplate\n"\u001b[31mX",fan,"=cmd()"\n"=1+1",fan,"\u202eevil"\n');
    for (const form of [[], ["--csv"], ["--json"]]) {
      const { out, err } = await audit(hostile, ...form);
      for (const sign of ["\u001b", "\u202e"]) expect(out + err).not.toContain(sign);
    }
    expect((await audit(hostile, "--csv")).out).toMatch(/,'=1\+1,/);
  });

  it("takes a table of one's own that a row names", async () => {
    const rule = "docs/examples/drive-rule.json";
    const { out } = await veladis(["schemes", rule, "--json"]);
    const { id } = JSON.parse(out);
    const own = file(`tag,kind,power,speed,trip,table\nA,gear drive,200 kW,1490 r/min,5.6 mm/s rms,${id}\n`);
    expect((await audit(own)).code).toBe(2);
    const printed = await audit(own, "--scheme", rule);
    expect(printed.code).toBe(0);
    expect(printed.out).toContain(`${id} (`);
  });
});

describe("a workbook", () => {
  const cells = [
    ["tag", "kind", "power", "speed", "trip", "trip delay s", "check date", "latching"],
    ["HW-P1", "pump", "90 kW", "2980 r/min", "6 mm/s rms", 4, new Date(Date.UTC(2026, 2, 10)), true],
    [],
    ["HW-P2", "pump", "90 kW", "2980 r/min", "6 mm/s rms", "4 s", new Date(Date.UTC(2026, 2, 10)), false],
  ];

  it("is read as the same list in text, with its own rows as lines", async () => {
    const { out, err, code } = await audit(file(workbook({ plant: cells }), "plant.xlsx"), "--json");
    expect(code).toBe(2);
    expect(JSON.parse(err.trim()).error).toMatchObject({ line: 4, tag: "HW-P2", column: "trip delay s" });
    const text =
      "tag,kind,power,speed,trip,trip delay s,check date,latching\nHW-P1,pump,90 kW,2980 r/min,6 mm/s rms,4,2026-03-10,yes\n";
    const same = await audit(file(text), "--json");
    expect({ ...JSON.parse(out), refused: [] }).toEqual(JSON.parse(same.out));
  });

  it("of several sheets needs the name of one", async () => {
    const two = file(workbook({ plant: cells.slice(0, 2), spare: [["x"]] }), "plant.xlsx");
    expect((await audit(two)).err).toContain("--worksheet");
    expect((await audit(two, "--worksheet", "plant")).code).toBe(0);
    expect((await audit(two, "--worksheet", "plants")).err).toContain("plant, spare");
  });

  it("that is none, or with options of text, is refused", async () => {
    expect((await audit(file("tag,kind\nA,fan\n", "plant.xlsx"))).err).toContain("unreadable");
    const book = file(workbook({ plant: cells }), "plant.xlsx");
    expect((await audit(book, "--separator", "comma")).err).toContain("options for a workbook");
  });

  it("without the package that reads it says what to install", async () => {
    vi.doMock("read-excel-file/node", () => {
      throw new Error("not there");
    });
    const { err, code } = await audit(file(workbook({ plant: cells }), "plant.xlsx"));
    vi.doUnmock("read-excel-file/node");
    expect(code).toBe(2);
    expect(err).toMatch(/npm install read-excel-file; a list saved as \.csv needs none/);
  });
});
