import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fromJson } from "veladis/json";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { veladis } from "./in-process";
import { plantFiles } from "./plant-files";

const base = mkdtempSync(join(tmpdir(), "veladis-checks-"));
let folder = "";
let count = 0;
beforeEach(() => {
  folder = join(base, `${count++}`);
  mkdirSync(folder);
  for (const [name, text] of Object.entries(plantFiles)) writeFileSync(join(folder, name), text);
});
afterAll(() => rmSync(base, { recursive: true, force: true }));

const at = (name: string): string => join(folder, name);
const checks = (...more: string[]) => veladis(["plant", "checks", at("plant.csv"), ...more]);
const shaker = ["--shaker", "8 Hz to 3 kHz", "--stroke", "5 mm pp", "--acceleration", "6 g pk"];

describe("plant checks", () => {
  it("which devices are to be checked, and why", async () => {
    const { out, code } = await checks("--on", "2026-12-01");
    expect(code).toBe(0);
    expect(out.split("\n\ncautions")[0]).toMatchInlineSnapshot(`
      "checks on 2026-12-01: 4 of 6 devices to be checked, 1 without an interval, 1 not due; next LU-02 on
      2027-04-14

      tag    check                  due         days over  why
      -----  ---------------------  ----------  ---------  ----------------------------------------------
      BP-L   left out of tolerance  2026-06-18        166  last checked 2026-06-18; as left it read
                                                           10.0 % low; due at once, whatever the interval
      KP-1   never checked                                 no check date in the list, to be checked every
                                                           12 months: taken as due at once
      LU-01  overdue                2026-10-31         31  last checked 2025-10-31, every 12 months: due
                                                           2026-10-31, 31 days ago; as left it read 1.3 %
                                                           low
      SP-A   overdue                2026-11-28          3  last checked 2025-11-28, every 12 months: due
                                                           2026-11-28, 3 days ago; as left it read 1.7 %
                                                           high
      UP-3   no interval                                   last checked 2026-05-20; as left it read the
                                                           known level; no interval in the list"
    `);
    expect(out).toContain("Never defeat a trip.");
  });

  it("exit 1 where a device is due and that is asked for; 2 for a refused row unless told to keep going", async () => {
    expect((await checks("--on", "2026-12-01", "--fail-on", "due")).code).toBe(1);
    expect((await checks("--on", "2025-01-01", "--fail-on", "due")).code).toBe(1);
    writeFileSync(at("plant.csv"), `${plantFiles["plant.csv"]}XX,nonsense${",".repeat(23)}\n`);
    const { out, err, code } = await checks("--on", "2026-12-01");
    expect([code, out.includes("XX"), err.includes("line 8, XX, column kind")]).toEqual([2, false, true]);
    expect((await checks("--on", "2026-12-01", "--keep-going")).code).toBe(0);
  });

  it("a round by one setting of the shaker", async () => {
    const { out } = await checks("--on", "2026-12-01", ...shaker);
    expect(out.slice(out.indexOf("round on"), out.indexOf("\n\ncautions"))).toMatchInlineSnapshot(`
      "round on the bench: 2 settings of the shaker for 4 devices (common practice, no source)

         shaker                                          sheet             should show
      -  ----------------------------------------------  ----------------  --------------
      1  5 mm/s rms at 79.4 Hz (28.3 um pp, 0.360 g pk)  SP-A-2026-12-01   5 mm/s rms
                                                         KP-1-2026-12-01   5 mm/s rms
                                                         BP-L-2026-12-01   0.2784 in/s pk
      2  7 mm/s rms at 79.4 Hz (39.7 um pp, 0.504 g pk)  LU-01-2026-12-01  7 mm/s rms

      - no band in the list, taken to hold the frequency: KP-1; find out before the check
      - before: record the settings as found, and under the site's procedure disconnect the device from
        the trip of the running machine; while it is disconnected the machine has no vibration trip from
        it
      - levels lie between alarm and trip, the tolerance away from both (5 % where the list has none), so
        that the alarm may be given; where that leaves no room, in the middle; with one setpoint alone at
        70 to 100 % of the trip, or 100 to 125 % of the alarm
      - one level at one frequency proves the reading there; trip, reset, delay, latch and failure are
        proven by the steps of the sheet
      - after: put every setting back, reconnect the device to the trip, lift every bypass and record it"
    `);
  });

  it("as CSV and as JSON that is read again", async () => {
    const csv = (await checks("--on", "2026-12-01", ...shaker, "--csv")).out.split("\n");
    expect(csv[0]).toBe(
      "tag,line,state,due,days over,last check,interval months,why,what would mend it,source,setting,shaker,sheet,should show,left out because",
    );
    expect(csv).toHaveLength(8);
    const lines = (await checks("--on", "2026-12-01", ...shaker, "--json")).out.trim().split("\n");
    const kinds = lines.map((line) => JSON.parse(line).answer as "due check");
    expect(kinds).toEqual([...Array(6).fill("due check"), "bench setting", "bench setting"]);
    for (const [i, line] of lines.entries()) expect(fromJson(kinds[i] as "due check", line)).toBeTruthy();
  });

  it("sheets and the file of results, which is read again; never over what is there", async () => {
    const { out } = await checks("--on", "2026-12-01", ...shaker, "--sheets", at("round"));
    expect(out).toContain(`sheets in ${at("round")}: 4, and results.csv to be filled in`);
    expect(readdirSync(at("round")).sort()).toEqual([
      "BP-L-2026-12-01.html",
      "KP-1-2026-12-01.html",
      "LU-01-2026-12-01.html",
      "SP-A-2026-12-01.html",
      "results.csv",
    ]);
    const sheet = readFileSync(at("round/BP-L-2026-12-01.html"), "utf8");
    for (const text of ["BP-L-2026-12-01", "0.2784 in/s pk", "as found, in/s pk", "Bench test", "Never defeat a trip"])
      expect(sheet).toContain(text);
    expect(readFileSync(at("round/KP-1-2026-12-01.html"), "utf8")).toContain("no band in the list");
    const back = await checks("--on", "2026-12-05", "--results", at("round/results.csv"));
    expect([back.code, back.out.split("\n")[0]]).toEqual([
      0,
      "0 results, 4 still open: SP-A-2026-12-01, KP-1-2026-12-01, BP-L-2026-12-01, LU-01-2026-12-01",
    ]);
    const again = await checks("--on", "2026-12-01", ...shaker, "--sheets", at("round"));
    expect([again.code, again.err]).toEqual([2, expect.stringContaining("or --replace")]);
    expect((await checks("--on", "2026-12-01", ...shaker, "--sheets", at("round"), "--replace")).code).toBe(0);
  });

  it("a results.csv that was filled in is replaced by nothing", async () => {
    const sheets = ["--on", "2026-12-01", ...shaker, "--sheets", at("round"), "--replace"];
    expect((await checks(...sheets)).code).toBe(0);
    const filled = readFileSync(at("round/results.csv"), "utf8").replace(/^(LU-01.*?),,/m, "$1,2026-12-02,");
    writeFileSync(at("round/results.csv"), filled);
    const { code, err } = await checks(...sheets);
    expect([code, err]).toEqual([2, expect.stringContaining("nobody has filled in")]);
    expect(readFileSync(at("round/results.csv"), "utf8")).toBe(filled);
  });

  it("no new list where no result was taken", async () => {
    writeFileSync(at("results.csv"), plantFiles["results.csv"].replaceAll("2026-12-0", "2027-12-0"));
    const { code, err } = await checks("--on", "2026-12-05", "--results", at("results.csv"), "--out", at("new.csv"));
    expect([code, existsSync(at("new.csv")), err.includes("is not written")]).toEqual([2, false, true]);
  });

  it("a list of headings alone answers nothing: exit 2", async () => {
    writeFileSync(at("plant.csv"), `${plantFiles["plant.csv"].split("\n")[0]}\n`);
    expect((await checks("--on", "2026-12-01", "--fail-on", "due")).code).toBe(2);
    for (const name of ["audit", "setpoints"])
      expect([name, (await veladis(["plant", name, at("plant.csv"), "--keep-going"])).code]).toEqual([name, 2]);
  });

  it("frequencies with a decimal comma", async () => {
    const { err, out } = await checks("--on", "2026-12-01", ...shaker, "--at", "24,7 Hz; 79,4 Hz", "--json");
    expect([out, err.length > 0]).toEqual(["", true]);
    writeFileSync(at("c.csv"), "tag;kind;alarm;trip;band\nLU-01;fan;5,6 mm/s rms;9,25 mm/s rms;5 Hz to 1000 Hz\n");
    const told = ["plant", "checks", at("c.csv"), "--decimal-comma", "--on", "2026-12-01", ...shaker];
    expect((await veladis([...told, "--at", "24,7 Hz"])).out).toContain("at 24.7 Hz");
    const both = [...told, "--at", "24,7 Hz, 79,4 Hz", "--sheets", at("commas")];
    expect((await veladis(both)).out).toContain("at 79.4 Hz");
  });

  it("hostile tags get names of files that are none, and sheets that run nothing", async () => {
    const row = (tag: string) =>
      `${tag},fan,132 kW,1485 r/min,rigid,BV-3,,100 mV/g,,10 Hz to 1000 Hz,5.6 mm/s rms,9 mm/s rms${",".repeat(13)}\n`;
    const heading = plantFiles["plant.csv"].split("\n")[0];
    writeFileSync(
      at("plant.csv"),
      `${heading}\n${["../../evil", "<script>x</script>", "=1+1", "a/b", "A_b", "\u001b[31m"].map(row).join("")}`,
    );
    const { out } = await checks("--on", "2026-12-01", ...shaker, "--sheets", at("round"));
    expect(out).not.toContain("\u001b");
    expect(readdirSync(at("round")).sort()).toEqual(
      [
        "A_b-2026-12-01-2.html",
        "__.._evil-2026-12-01.html",
        "_1_1-2026-12-01.html",
        "_31m-2026-12-01.html",
        "_script_x_script_-2026-12-01.html",
        "a_b-2026-12-01.html",
        "results.csv",
      ].sort(),
    );
    expect(existsSync(join(folder, "..", "evil-2026-12-01.html"))).toBe(false);
    for (const name of readdirSync(at("round"))) {
      const text = readFileSync(at(`round/${name}`), "utf8");
      expect(text).not.toContain("\u001b");
      expect(text).not.toMatch(name === "results.csv" ? /(^|,)=/m : /<script>/);
    }
    // the guarded number is read again
    const filled = readFileSync(at("round/results.csv"), "utf8").replace(
      /^('=1\+1.*?),,(.*?),,,,$/m,
      "$1,2026-12-02,$2,7 mm/s rms,,5 %,B",
    );
    writeFileSync(at("filled.csv"), filled);
    expect((await checks("--on", "2026-12-05", "--results", at("filled.csv"))).out).toMatch(/^1 result, 5 still open/);
  });

  it("results: each verdict, the readings in doubt, and the list with its new cells alone changed", async () => {
    const { out, code } = await checks(
      "--on",
      "2026-12-05",
      "--results",
      at("results.csv"),
      "--out",
      at("new.csv"),
      "--fail-on",
      "doubt",
    );
    expect(code).toBe(1);
    expect(out.slice(0, out.indexOf("\nthe list with"))).toMatchInlineSnapshot(`
      "3 results, 1 still open: BP-L-2026-12-01

      tag    check date  known                  as found      as left       checked by
      -----  ----------  ---------------------  ------------  ------------  ----------
      LU-01  2026-12-03  6 mm/s rms at 79.4 Hz  5.4 mm/s rms  5.9 mm/s rms  shift B
                                                -10 %, fail   -1.7 %, pass
      SP-A   2026-12-03  6 mm/s rms at 79.4 Hz  6.1 mm/s rms  as found      shift B
                                                +1.7 %, pass
      KP-1   2026-12-04  5 mm/s rms at 79.4 Hz  5.1 mm/s rms  as found      shift A
                                                +2.0 %, pass

      readings in doubt
      - LU-01, readings after 2025-10-31 up to 2026-12-03: it reads low and trips late, the dangerous
        kind; as found on 2026-12-03 it read 10.0 % low at 6 mm/s rms at 79.4 Hz; a trip set to 9 mm/s rms
        comes at 10 mm/s rms, the error taken as proportional; look back at these readings as if they were
        higher, at trips that did not come, and at what the machine may have suffered
      - BP-L, all readings up to 2026-06-18: it reads low and trips late, the dangerous kind; as found on
        2026-06-18 it read 10.0 % low at 0.3 in/s pk at 40 Hz; a trip set to 0.35 in/s pk comes at 0.3889
        in/s pk, the error taken as proportional; look back at these readings as if they were higher, at
        trips that did not come, and at what the machine may have suffered
      - BP-L, readings after 2026-06-18 and from now on: it reads low and trips late, the dangerous kind;
        as left on 2026-06-18 it read 10.0 % low at 0.3 in/s pk at 40 Hz; a trip set to 0.35 in/s pk comes
        at 0.3889 in/s pk, the error taken as proportional; look back at these readings as if they were
        higher, at trips that did not come, and at what the machine may have suffered
      "
    `);
    const before = plantFiles["plant.csv"].split("\n");
    const after = readFileSync(at("new.csv"), "utf8").split("\n");
    expect(after).toHaveLength(before.length);
    // by hand: the six cells of the last check, all others as they were
    expect(after[1]).toBe(
      (before[1] as string).replace(
        "2025-10-31,8 mm/s rms at 40 Hz,7.9 mm/s rms,7.9 mm/s rms,5 %,shift B",
        "2026-12-03,6 mm/s rms at 79.4 Hz,5.4 mm/s rms,5.9 mm/s rms,5 %,shift B",
      ),
    );
    expect([after[0], after[2], after[5], after[6]]).toEqual([before[0], before[2], before[5], before[6]]);
    // read again, the same results are in the list already
    const again = await veladis([
      "plant",
      "checks",
      at("new.csv"),
      "--on",
      "2026-12-05",
      "--results",
      at("results.csv"),
    ]);
    expect([again.code, again.err.match(/column date: out-of-range/g)?.length]).toEqual([2, 3]);
  });

  it("never over the list unless told", async () => {
    const args = ["--on", "2026-12-05", "--results", at("results.csv"), "--out", at("plant.csv")];
    expect((await checks(...args)).code).toBe(2);
    expect(readFileSync(at("plant.csv"), "utf8")).toBe(plantFiles["plant.csv"]);
    expect((await checks(...args, "--replace")).code).toBe(0);
    expect(readFileSync(at("plant.csv"), "utf8")).toContain("2026-12-03,6 mm/s rms at 79.4 Hz");
    const over = await checks(
      "--on",
      "2026-12-06",
      "--results",
      at("results.csv"),
      "--out",
      at("results.csv"),
      "--replace",
    );
    expect([over.code, readFileSync(at("results.csv"), "utf8")]).toEqual([2, plantFiles["results.csv"]]);
  });

  it("byte by byte: a mark, semicolons, decimal commas, line ends of both kinds, blank lines, remarks and quotes", async () => {
    const list =
      '\ufeff# our list\r\ntag;kind;"own; column";check date;known;as found;as left;tolerance;checked by;trip;note µ\r\n\r\nLU-01;fan;"a;""b""\nc";31.10.2025;8,0 mm/s rms;7,9 mm/s rms;7,9 mm/s rms;5 %;shift B;9,0 mm/s rms;é\n# remark\r\nLU-02;fan;;;;;;;;9,0 mm/s rms; last';
    writeFileSync(at("plant.csv"), list);
    writeFileSync(
      at("results.csv"),
      'number;tag;date;known;as found;as left;tolerance;by\nLU-01-2026-12-01;LU-01;03.12.2026;8,0 mm/s rms;7,1 mm/s rms;7,8 mm/s rms;5 %;"M; ""x"""\n',
    );
    const { err, code } = await checks(
      "--on",
      "05.12.2026",
      "--dates",
      "day-first",
      "--decimal-comma",
      "--results",
      at("results.csv"),
      "--out",
      at("new.csv"),
    );
    expect([code, err.includes("refused")]).toEqual([0, true]);
    expect(readFileSync(at("new.csv"), "utf8")).toBe(
      list.replace(
        "31.10.2025;8,0 mm/s rms;7,9 mm/s rms;7,9 mm/s rms;5 %;shift B",
        '2026-12-03;8,0 mm/s rms;7,1 mm/s rms;7,8 mm/s rms;5 %;"M; ""x"""',
      ),
    );
  });

  it("a list without one of the columns, from a pipe, or that changes meanwhile is not written again", async () => {
    writeFileSync(at("plant.csv"), "tag,kind,trip\nLU-01,fan,9 mm/s rms\n");
    const lacks = await checks(
      "--on",
      "2026-12-05",
      "--results",
      at("results.csv"),
      "--out",
      at("new.csv"),
      "--keep-going",
    );
    expect([lacks.code, lacks.err]).toEqual([
      2,
      expect.stringContaining("check date, known, as found, as left, tolerance, checked by"),
    ]);
    const piped = await veladis(
      ["plant", "checks", "-", "--on", "2026-12-05", "--results", at("results.csv"), "--out", at("new.csv")],
      plantFiles["plant.csv"],
    );
    expect([piped.code, piped.err]).toEqual([2, expect.stringContaining("standard input")]);
    expect(existsSync(at("new.csv"))).toBe(false);
  });

  it("options that play no part are refused", async () => {
    const refused = async (...args: string[]) => (await checks(...args)).err.split("\n")[0]?.replace("veladis: ", "");
    expect(await refused()).not.toBe(undefined);
    for (const args of [
      ["--stroke", "5 mm pp"],
      ["--sheets", "x"],
      ["--out", "x"],
      ["--replace"],
      ["--csv", "--json"],
      ["--results", "r", "--ahead", "3"],
      ["--results", "r", "--shaker", "80 Hz"],
    ]) {
      const { code } = await checks("--on", "2026-12-01", ...args);
      expect([args, code]).toEqual([args, 2]);
    }
  });
});

describe("a list in Latin-1", () => {
  it("is written again in it, and one with two bytes a character is not", async () => {
    const list = plantFiles["plant.csv"].replace("boiler house", "Südhalle");
    writeFileSync(at("plant.csv"), Buffer.from(list, "latin1"));
    writeFileSync(
      at("results.csv"),
      Buffer.from(plantFiles["results.csv"].replace("shift B", "Käthe \u0080"), "latin1"),
    );
    const { code } = await checks(
      "--encoding",
      "latin-1",
      "--on",
      "2026-12-05",
      "--results",
      at("results.csv"),
      "--out",
      at("new.csv"),
    );
    const written = readFileSync(at("new.csv")).toString("latin1");
    expect([code, written.includes("Südhalle"), written.includes("5 %,Käthe \u0080,12")]).toEqual([0, true, true]);
    expect(written.split("\n")[5]).toBe(list.split("\n")[5]);
  });
});
