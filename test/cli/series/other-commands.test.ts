import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { veladis } from "../in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-series-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let files = 0;
function file(content: string | Uint8Array): string {
  const path = join(folder, `file-${files++}.csv`);
  writeFileSync(path, content);
  return path;
}

const plain = (text: string) => text.replace(/\s+/g, " ");

async function data(args: readonly string[], input?: string) {
  const { out, err, code } = await veladis([...args, "--json"], input);
  expect([code, err.split("\n").length]).toEqual([0, 2]);
  return JSON.parse(out);
}

async function refused(args: readonly string[], input?: string) {
  const { out, err, code } = await veladis(args, input);
  expect([code, out]).toEqual([2, ""]);
  return plain(err);
}

describe("setpoints from a file", () => {
  const setpoints = (content: string) => ["setpoints", "--from", "mm/s rms", "--column", "2", "--file", file(content)];

  it("of `1,9 2,9 3,1`: the median is 2.9, not 9", async () => {
    const csv = "time;level, mm/s\n0;1,9\n1;2,9\n2;3,1\n";
    expect((await data([...setpoints(csv), "--decimal-comma"])).statistics).toMatchObject({ count: 3, median: 2.9 });
    expect(await refused(setpoints(csv))).toContain("--decimal-comma");
    const one = ["setpoints", "--from", "mm/s rms", "--column", "1", "--file", file("level\n1,9\n2,9\n3,1\n")];
    expect((await data([...one, "--decimal-comma"])).statistics.median).toBe(2.9);
  });

  it("a header with a comma and a space over decimal commas is refused, and read when told", async () => {
    const args = ["setpoints", "--from", "mm/s rms", "--column", "1", "--file", file("Level, mm/s\n1,9\n2,9\n3,1\n")];
    const err = await refused(args);
    expect(err).toContain("--decimal-comma");
    expect(err).toContain("--separator comma");
    expect((await data([...args, "--decimal-comma"])).statistics.median).toBe(2.9);
  });

  it("leaves rows out by --skip-bad, and says so on page, sheet and as data", async () => {
    const args = [...setpoints("time,level\n0,2\n1,N/A\n2,2.2\n3,\n4,2.1\n"), "--limits", "4.5 mm/s rms, 7.1 mm/s rms"];
    expect(await refused(args)).toContain('2 of 5 rows without: line 3 "N/A", line 5 empty');
    const { out, err } = await veladis([...args, "--skip-bad"]);
    expect(out).toContain("baseline of 3 readings, 2 not readable: median 2.100");
    expect(err).toContain('left out: 2 rows: 1 "N/A", 1 empty (lines 3, 5)\n');
    expect((await data([...args, "--skip-bad"])).read).toMatchObject({ leftOut: { rows: 2 }, rows: { in: 5 } });
    expect((await veladis([...args, "--skip-bad", "--sheet", "markdown"])).out).toContain("left out: 2 rows");
  });

  it("OL is never left out: the baseline would be too low", async () => {
    const err = await refused([...setpoints("time,level\n0,2\n1,OL\n2,2.2\n"), "--skip-bad"]);
    expect(err).toContain("write the end of the range in its place");
    expect(err).not.toContain("--sensor-fault");
  });

  it("reads times for --start-up alone, as they were told to be written", async () => {
    const args = setpoints(
      "time;level\n03/04/2026 10:00:00;9\n03/04/2026 10:01:00;2\n03/04/2026 10:02:00;2.2\n03/04/2026 10:03:00;2.1\n",
    );
    expect((await data(args)).statistics.count).toBe(4);
    expect(await refused([...args, "--start-up", "60"])).toContain("--times day-first or --times month-first");
    const { statistics, read } = await data([...args, "--start-up", "60", "--times", "day-first"]);
    expect(statistics).toMatchObject({ count: 3, excluded: 1 });
    expect(read.times).toMatchObject({ as: "dates, day first", clock: "2026-04-03 10:00:00" });
    expect(await refused([...args, "--times", "day-first"])).toContain("--start-up");
  });
});

describe("check of several levels", () => {
  const check = ["check", "--from", "mm/s rms", "--tolerance", "5 %"];

  it("reads decimal commas and semicolons", async () => {
    const { points } = await data([...check, "--decimal-comma"], "known;indicated\n2,5;2,6\n8,5;8,4\n10,5;10,5\n");
    expect(points.map((one: { known: { value: number } }) => one.known.value)).toEqual([2.5, 8.5, 10.5]);
  });

  it("refuses duplicate headings and bad cells, of which --skip-bad leaves out rows without a known level", async () => {
    expect(await refused(check, "known,indicated,indicated\n2,2.1,3\n")).toMatch(/2.*3/);
    const csv = "known,indicated\n2,2.1\n-,5.1\n8,8.1\n10,10.1\n";
    expect(await refused(check, csv)).toContain('1 of 4 rows without: line 3 "-"');
    const { points, read } = await data([...check, "--skip-bad"], csv);
    expect([points.length, read.leftOut.rows]).toEqual([3, 1]);
    expect((await veladis([...check, "--skip-bad"], csv)).out).toContain('left out: 1 row: 1 "-" (line 3)\n');
    expect((await veladis([...check, "--skip-bad", "--sheet", "markdown"], csv)).out).toContain("left out: 1 row");
  });

  it("never leaves OL out: a device over its range at a known level fails there", async () => {
    expect(await refused([...check, "--skip-bad"], "known,indicated\n2,2.1\n5,OL\n8,8.1\n")).toContain("fails there");
  });

  it.each(["22 mA", "3.5 mA", "sensor fault", "no reading", "-1 mm/s rms", "-", ""])(
    "never leaves out a known level at which the device shows %j",
    async (shows) => {
      const loop = ["check", "--file", "-", "--tolerance", "5 %", "--loop", "0 to 20 mm/s rms", "--skip-bad"];
      const csv = `known,indicated\n5 mm/s rms,8 mA\n10 mm/s rms,${shows}\n15 mm/s rms,16 mA\n`;
      expect(await refused(loop, csv)).toContain("fails there: such a row is never left out");
    },
  );
});

describe("columns of a check that are not read", () => {
  const check = ["check", "--file", "-", "--tolerance", "5 %"];
  const rows = (heading: string, cell: string) =>
    `known,indicated,${heading}\n4 mm/s rms,4.1 mm/s rms,${cell}\n8 mm/s rms,8.1 mm/s rms,${cell}\n`;

  // biome-ignore format: a row of a table is a line
  it.each([
    ["tolerance", "1 %", "--tolerance"], ["Tolerance_pct", "1", "--tolerance"], ["uncertainty (k=2)", "2 %", "--uncertainty"],
    ["as left", "4 mm/s rms", "as left in a file each"], ["as_left", "4", "as left in a file each"], ["Sensor", "100 mV/g", "--sensor"],
    ["loop", "0 to 20 mm/s rms", "--loop"], ["detector", "pk", "--from"], ["unit", "in/s pk", "--from"],
    ["freq", "40 Hz", "frequency (Hz)"], ["rpm", "2400", "speed (r/min)"], ["Hz", "40", "frequency (Hz)"], ["rule", "guard band", "--rule"],
  ])("are refused where they decide it: %s", async (heading, cell, instead) => {
    const told = await refused(check, rows(heading, cell));
    expect(told).toContain(instead);
    expect(told).toContain(`column 3 "${heading}"`);
  });

  it("are named in text, JSON and sheet where they do not", async () => {
    const csv = rows("remark", "in order");
    expect((await veladis(check, csv)).out).toContain('columns not read: 3 "remark"\n');
    expect((await data(check, csv)).read.columnsNotRead).toEqual([{ number: 3, heading: "remark" }]);
    expect((await veladis([...check, "--sheet", "markdown"], csv)).out).toContain('columns not read: 3 "remark"');
    expect((await veladis(check, "known,indicated\n4 mm/s rms,4 mm/s rms\n")).out).not.toContain("not read");
  });
});

describe("samples for overall", () => {
  const overall = ["overall", "--rate", "100", "--unit", "g", "--band", "20-40"];
  const samples = Array.from({ length: 200 }, (_, i) => (0.7 * Math.sin(1.9 * i)).toFixed(4));
  const rms = async (args: readonly string[], input: string | readonly Uint8Array[]) => {
    const { out, err, code } = await veladis([...overall, ...args, "--json"], input);
    expect([code, err]).toEqual([0, expect.stringMatching(/^\{"rows":.*\}\n$/)]);
    const { count, levels } = JSON.parse(out);
    return { count, value: levels[0].value, rows: JSON.parse(err).rows };
  };
  const bare = `${samples.join("\n")}\n`;

  it("without a header the first row is a sample, and is counted", async () => {
    const with1 = await rms([], `acceleration\n${bare}`);
    const without = await rms([], bare);
    expect(without).toMatchObject({ count: 200, value: with1.value, rows: { in: 200, answered: 200 } });
    expect(with1.rows).toMatchObject({ in: 200, answered: 200 });
  });

  it("a number as heading beside words is refused until it is told", async () => {
    const csv = `time,1,2\n${samples.map((one, i) => `${i / 100},9,${one}`).join("\n")}\n`;
    expect(await refused([...overall, "--column", "3"], csv)).toContain("--header-line 1");
    expect((await rms(["--column", "3", "--header-line", "1"], csv)).count).toBe(200);
  });

  it("decimal commas, a quoted header, UTF-16", async () => {
    const commas = `"a, drive end"\n${bare.replaceAll(".", ",")}`;
    const { value } = await rms([], bare);
    expect((await rms(["--decimal-comma"], commas)).value).toBe(value);
    expect((await rms(["--decimal-comma"], bare.replaceAll(".", ","))).value).toBe(value);
    expect((await rms([], [Buffer.from(`\uFEFFa\n${bare}`, "utf16le")])).value).toBe(value);
    expect(await refused(overall, bare.replaceAll(".", ","))).toContain("--decimal-comma");
  });

  it("rows that hold no sample are refused together; none can be left out", async () => {
    const holed = ["a,b", ...samples.map((one, i) => (i % 90 === 5 ? `${i},` : `${i},${one}`)), "7"].join("\n");
    const err = await refused([...overall, "--column", "b"], `${holed}\n`);
    expect(err).toContain("4 of 201 rows without: line 7 empty, line 97 empty, line 187 empty, line 202 ragged");
    expect(err).toContain("samples are evenly spaced");
    expect(await refused([...overall, "--skip-bad"], bare)).toContain("unknown-option");
  });

  it("a torn last row is told", async () => {
    const { err } = await veladis(overall, samples.join("\n"));
    expect(err).toContain("torn");
  });
});
