import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { veladis } from "./in-process";
import { plantFiles } from "./plant-files";

const base = mkdtempSync(join(tmpdir(), "veladis-change-"));
let folder = "";
let count = 0;
beforeEach(() => {
  folder = join(base, `${count++}`);
  mkdirSync(folder);
  for (const [name, text] of Object.entries(plantFiles)) writeFileSync(join(folder, name), text);
});
afterAll(() => rmSync(base, { recursive: true, force: true }));

const at = (name: string): string => join(folder, name);

/** Adds an entry on the trip of LU-01, with some options another. */
function change(file: string, more: Readonly<Record<string, string | undefined>> = {}, ...switches: string[]) {
  const told = {
    ...{ date: "2026-12-01", tag: "LU-01", setting: "trip", old: "9 mm/s rms", new: "8.6 mm/s rms" },
    ...{ reason: "new baseline", who: "shift B", "approved-by": "plant engineer", ...more },
  };
  const args = Object.entries(told).flatMap(([name, value]) => (value === undefined ? [] : [`--${name}=${value}`]));
  return veladis(["plant", "change", at(file), ...args, ...switches]);
}

describe("plant change", () => {
  it("makes the file, and adds rows behind it: what stood there stays byte by byte", async () => {
    expect((await change("new.csv")).code).toBe(0);
    const first = readFileSync(at("new.csv"), "utf8");
    expect(first).toBe(
      "date,tag,setting,old,new,reason,who,approved by,until,put back\n2026-12-01,LU-01,trip,9 mm/s rms,8.6 mm/s rms,new baseline,shift B,plant engineer,,\n",
    );
    expect((await change("new.csv", { date: "2026-12-02", old: "8.6 mm/s rms", new: "8 mm/s rms" })).code).toBe(0);
    const second = readFileSync(at("new.csv"), "utf8");
    expect(second.slice(0, first.length)).toBe(first);
    expect(second.split("\n")).toHaveLength(4);
  });

  it("in the order, with the separator and the line ends of the file; own columns stay empty", async () => {
    const head =
      "room;put back;until;approved by;who;reason;new;old;setting;tag;date\r\nK2;;;chief;B;x;8,6 mm/s rms;9,0 mm/s rms;trip;LU-01;01.11.2026";
    writeFileSync(at("r.csv"), head);
    const { err, code } = await change(
      "r.csv",
      { date: "02.12.2026", old: "8,6 mm/s rms", new: "8,2 mm/s rms" },
      "--decimal-comma",
      "--dates=day-first",
    );
    expect([err, code]).toEqual(["", 0]);
    expect(readFileSync(at("r.csv"), "utf8")).toBe(
      `${head}\r\n;;;plant engineer;shift B;new baseline;8,2 mm/s rms;8,6 mm/s rms;trip;LU-01;02.12.2026\r\n`,
    );
  });

  it("an entry that does not go on from the record, or the list, is refused and nothing is written", async () => {
    const { err, code } = await change("plant-changes.csv", { tag: "LU-02", old: "8.4 mm/s rms", new: "8 mm/s rms" });
    expect([code, err]).toEqual([
      2,
      expect.stringContaining("trip of LU-02 is 9 mm/s rms by it; a change without an entry is entered first"),
    ]);
    const list = ["--list", at("plant.csv")];
    expect((await change("plant-changes.csv", { tag: "LU-09" }, ...list)).err).toContain(
      "the tag of one machine in the list",
    );
    expect((await change("plant-changes.csv", { old: "8 mm/s rms", new: "7 mm/s rms" }, ...list)).err).toContain(
      "trip of LU-01 as the list has it, 9 mm/s rms",
    );
    expect(readFileSync(at("plant-changes.csv"), "utf8")).toBe(plantFiles["plant-changes.csv"]);
    expect((await change("plant-changes.csv", {}, ...list)).code).toBe(0);
  });

  it("a tag that the record writes another way starts no second chain", async () => {
    const { code, err } = await change("plant-changes.csv", { tag: "lu-02", old: "8 mm/s rms", new: "7 mm/s rms" });
    expect([code, err]).toEqual([2, expect.stringContaining("LU-02")]);
    expect(readFileSync(at("plant-changes.csv"), "utf8")).toBe(plantFiles["plant-changes.csv"]);
  });

  it("a bypass has no cell in the list; one of years is told", async () => {
    const bypass = { setting: "bypass", old: undefined, new: "trip", until: "2036-12-01" };
    const { out, code } = await change("b.csv", bypass, "--list", at("plant.csv"));
    expect([code, out.includes("change its cell too"), out.includes("a bypass of more than 30 days")]).toEqual([
      0,
      false,
      true,
    ]);
  });

  it("a bypass needs approval and expiry; it is lifted by an entry of its own", async () => {
    const bypass = { setting: "bypass", old: undefined, new: "trip" };
    expect((await change("b.csv", bypass)).err).toContain("--until for a bypass");
    expect((await change("b.csv", { ...bypass, until: "2026-12-02", "approved-by": undefined })).err).toContain(
      "--approved-by for a bypass",
    );
    const opened = await change("b.csv", { ...bypass, until: "2026-12-02" });
    expect([opened.code, opened.out]).toEqual([
      0,
      expect.stringContaining("the machine has no protection from it until it is lifted"),
    ]);
    expect((await change("b.csv", { ...bypass, until: "2026-12-02" })).err).toContain(
      "by which trip of LU-01 is bypassed then",
    );
    const lifted = { setting: "bypass", old: "trip", new: undefined, "approved-by": undefined, date: "2026-12-02" };
    expect((await change("b.csv", lifted)).out).toContain("bypass of trip lifted");
    expect((await change("b.csv", lifted)).err).toContain("by which nothing of LU-01 is bypassed then");
  });

  it("a raised trip tells what it may cost; a lowered one does not", async () => {
    const raised = "the trip is raised or taken away";
    expect((await change("a.csv", { new: "9.8 mm/s rms" }, "--dry-run")).out).toContain(raised);
    expect((await change("a.csv", { new: undefined }, "--dry-run")).out).toContain(raised);
    expect((await change("a.csv", {}, "--dry-run")).out).not.toContain(raised);
    // 8.6 mm/s rms as a peak of a sine is 12.2 mm/s pk: below 9 mm/s rms all the same
    expect((await change("a.csv", { new: "12 mm/s pk" }, "--dry-run")).out).not.toContain(raised);
    const longer = await change("a.csv", { setting: "trip delay s", old: "8", new: "20" }, "--dry-run");
    expect([longer.code, longer.out]).toEqual([0, expect.stringContaining("the trip comes later")]);
    const cleared = await change("a.csv", { setting: "latching", old: "yes", new: "no" }, "--dry-run", "--json");
    expect(JSON.parse(cleared.out)).toMatchObject({
      answer: "plant change",
      written: false,
      setting: "latching",
      cautions: expect.arrayContaining([expect.stringContaining("start again by itself")]),
    });
  });

  it("cells that cannot be read are refused by their option", async () => {
    for (const [more, text] of [
      [{ old: "9" }, "a unit and a detector"],
      [{ date: "2026-02-30" }, "a day of the calendar"],
      [{ setting: "tripp" }, "did you mean: trip"],
      [{ new: "9.0 mm/s rms" }, "a value other than the old one"],
      [{ until: "2026-11-30" }, "a day on or after 2026-12-01"],
      [{ reason: " " }, "--reason"],
      [{ who: undefined }, "--who"],
    ] as const) {
      const { err, code } = await change("x.csv", more);
      expect([more, code, err]).toEqual([more, 2, expect.stringContaining(text)]);
    }
  });

  it("hostile text is kept as text that no spreadsheet runs and no terminal obeys", async () => {
    const { out } = await change("h.csv", {
      tag: "=1+1",
      setting: "description",
      old: undefined,
      new: '@x, "q"\n',
      reason: "-1",
      who: "\u001b[31m",
    });
    expect(out).not.toContain("\u001b");
    expect(readFileSync(at("h.csv"), "utf8").split("\n")[1]).toBe(
      '2026-12-01,\'=1+1,description,,"\'@x, ""q""\\u000a",\'-1,\\u001b[31m,plant engineer,,',
    );
  });

  it("a torn record, a folder and a link are not added to", async () => {
    writeFileSync(at("torn.csv"), `${plantFiles["plant-changes.csv"]}2026-12-01,LU-01,tr`);
    expect((await change("torn.csv")).err).toContain("torn at line 5");
    mkdirSync(at("dir"));
    symlinkSync(at("plant-changes.csv"), at("link.csv"));
    expect([(await change("dir")).code, (await change("link.csv")).code]).toEqual([2, 2]);
    expect(readFileSync(at("plant-changes.csv"), "utf8")).toBe(plantFiles["plant-changes.csv"]);
  });

  it("two that write at once are both kept, or one is told to try again", async () => {
    const many = await Promise.all(Array.from({ length: 6 }, (_, i) => change("plant-changes.csv", { tag: `T-${i}` })));
    const rows = readFileSync(at("plant-changes.csv"), "utf8");
    expect(rows.startsWith(plantFiles["plant-changes.csv"])).toBe(true);
    for (const [i, { code }] of many.entries()) expect(rows.includes(`T-${i},`)).toBe(code === 0);
  });
});

describe("plant audit --changes", () => {
  const audit = (...more: string[]) =>
    veladis(["plant", "audit", at("plant.csv"), "--changes", at("plant-changes.csv"), ...more]);

  it("findings on the record stand among those on the list", async () => {
    const { out } = await audit("--on", "2026-12-01");
    expect(out).toContain("never put back: trip delay s 5 to 8, until 2026-11-27, 4 days ago,");
    expect(out).toContain("changed without a record: trip delay s is 5 in the list, and 8 by");
    expect(out).toContain("the machine runs by a setting that was approved for a time alone");
    const csv = (await audit("--on", "2026-12-01", "--csv")).out;
    expect(csv).toContain("error,KP-1,5,never put back,");
    const json = JSON.parse((await audit("--on", "2026-12-01", "--json")).out);
    expect(json.changes.map(({ code }: { code: string }) => code)).toEqual([
      "never put back",
      "changed without a record",
    ]);
    expect((await audit("--on", "2026-12-01", "--fail-on", "error")).code).toBe(1);
  });

  it("with the list as it was before, a change without any entry is found", async () => {
    writeFileSync(
      at("before.csv"),
      plantFiles["plant.csv"].replace("5.6 mm/s rms,9 mm/s rms,8,8 %,yes", "5 mm/s rms,9 mm/s rms,8,8 %,yes"),
    );
    const { out } = await audit("--on", "2026-12-01", "--before", at("before.csv"));
    expect(out.replace(/\s+/g, " ")).toContain(
      "changed without a record: alarm is 5.6 mm/s rms in the list and was 5 mm/s rms; the record has no entry on it",
    );
  });

  it("without a day, without a record, and with a torn one", async () => {
    expect((await audit()).err).toContain("--on beside --changes");
    expect((await veladis(["plant", "audit", at("plant.csv"), "--before", at("plant.csv")])).err).toContain(
      "--changes beside --before",
    );
    writeFileSync(at("plant-changes.csv"), `${plantFiles["plant-changes.csv"]}2026-12-01,LU-01,tr\n`);
    const { code, err, out } = await audit("--on", "2026-12-01");
    expect([code, err.includes("line 5"), out.includes("never put back")]).toEqual([2, true, true]);
    expect((await audit("--on", "2026-12-01", "--keep-going")).code).toBe(0);
  });
});
