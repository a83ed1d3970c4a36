import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { veladis } from "../in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-columns-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let files = 0;
function file(content: string): string {
  const path = join(folder, `file-${files++}.csv`);
  writeFileSync(path, content);
  return path;
}

const plain = (text: string) => text.replace(/\s+/g, " ");
const simulate = [
  ...["simulate", "--from", "mm/s rms", "--threshold", "9 mm/s rms", "--hysteresis", "5 %", "--delay", "2"],
  ...["--timer-resets", "threshold", "--latching"],
];
const setpoints = (content: string) => ["setpoints", "--from", "mm/s rms", "--file", file(content)];

async function refused(args: readonly string[], input?: string) {
  const { out, err, code } = await veladis(args, input);
  expect([code, out]).toEqual([2, ""]);
  return plain(err);
}

async function answered(args: readonly string[], input?: string) {
  const { out, err, code } = await veladis(args, input);
  expect([code, err.split("\n").length]).toEqual([0, 2]);
  return args.includes("--json") ? JSON.parse(out) : plain(out);
}

describe("columns that are not told", () => {
  const three = "time,DE,NDE\n0,3,10\n1,3,10\n4,3,10\n";

  it("of more than two are refused, and listed", async () => {
    for (const args of [simulate, [...simulate, "--time", "1"], [...simulate, "--every", "1"]]) {
      const err = await refused(args, three);
      expect(err).toContain("which of the columns holds the levels, as in --column 2");
      expect(err).toContain("time, DE, NDE");
    }
    expect(await refused(setpoints(three))).toContain("time, DE, NDE");
    const { events, read } = await answered([...simulate, "--column", "NDE", "--json"], three);
    expect(events).toMatchObject([{ event: "trip", time: 2 }]);
    expect(read.columns).toEqual({ level: { number: 3, heading: "NDE" }, time: { number: 1, heading: "time" } });
  });

  it("of two are the first and the second, whatever their names, and are told", async () => {
    const { read } = await answered([...simulate, "--json"], "time,level\n0,3\n1,3\n");
    expect(read.columns).toEqual({ level: { number: 2, heading: "level" }, time: { number: 1, heading: "time" } });
    expect(await answered(simulate, "time,level\n0,3\n1,3\n")).toContain(
      'columns levels in column 2 "level", times in column 1 "time" levels in mm/s rms',
    );
    // a first row of numbers is no header where they happen to be those of the columns
    expect(await refused(simulate, "2,1\n3,1\n")).toContain("a header line above");
  });

  it("the only column holds the readings of setpoints, and evenly spaced levels", async () => {
    const args = setpoints("reading\n2\n2.2\n2.1\n");
    expect((await answered([...args, "--json"])).read.columns).toEqual({ level: { number: 1, heading: "reading" } });
    expect(await answered([...args, "--limits", "4.5 mm/s rms, 7.1 mm/s rms"])).toContain(
      'outliers 0; levels in column 1 "reading"',
    );
    expect((await answered([...simulate, "--every", "1", "--json"], "level\n3\n3\n")).levels).toBe(2);
    expect(await refused(simulate, "level\n3\n3\n")).toContain("a column of times and another of levels");
  });

  it("one for both, levels and times, is refused", async () => {
    const csv = "level,time\n3,0\n3,1\n3,2\n";
    expect(await refused([...simulate, "--column", "level"], csv)).toContain("column 1 for both");
    expect(await refused([...simulate, "--time", "time"], csv)).toContain("column 2 for both");
    expect(await refused([...setpoints(csv), "--column", "1", "--start-up", "1"])).toContain("column 1 for both");
  });

  it("check tells its two", async () => {
    const args = ["check", "--from", "mm/s rms", "--tolerance", "5 %", "--json"];
    const { read } = await answered(args, "indicated,known\n2.1,2\n5.1,5\n10,10\n");
    expect(read.columns).toEqual({
      known: { number: 2, heading: "known" },
      indicated: { number: 1, heading: "indicated" },
    });
  });
});

describe("negative levels", () => {
  it("are refused with the other bad cells, by line, all together", async () => {
    const csv = "time,level\n0,3\n1,-3\n2,N/A\n3,-1e-3\n4,3\n5,2\n";
    const told = '3 of 6 rows without: line 3 negative "-3", line 4 "N/A", line 5 negative "-1e-3"';
    for (const err of [await refused(simulate, csv), await refused(setpoints(csv))]) {
      expect(err).toContain(told);
      expect(err).toContain("a level of zero or more");
      expect(err).not.toContain("index");
    }
    const { read } = await answered([...setpoints(csv), "--skip-bad", "--json"]);
    expect(read.leftOut.rows).toBe(3);
    expect((await answered([...simulate, "--json"], "time,level\n0,-0\n1,0\n")).levels).toBe(2);
  });
});

describe("times of a setpoints file", () => {
  it("are read where --time tells them: falling ones refused, double ones told", async () => {
    const falling = "time,level\n0,2\n2,2.1\n1,2.2\n3,2\n";
    expect((await answered([...setpoints(falling), "--json"])).read.times).toBeUndefined();
    expect(await refused([...setpoints(falling), "--time", "time"])).toContain("1 row before the row above: line 4");
    const double = setpoints("time,level\n0,2\n1,2.1\n1,2.2\n3,2\n");
    const { err } = await veladis([...double, "--time", "time"]);
    expect(err).toContain("times: 1 row at the time of the row above (line 4)\n");
    const { statistics, read } = await answered([...double, "--time", "time", "--json"]);
    expect([statistics.count, statistics.excluded, read.times.equal]).toEqual([4, 0, { rows: 1, lines: [4] }]);
  });
});

describe("blank lines and remarks among evenly spaced rows", () => {
  const overall = ["overall", "--rate", "100", "--unit", "g", "--band", "20-40"];
  const samples = Array.from({ length: 200 }, (_, i) => (0.7 * Math.sin(1.9 * i)).toFixed(4));
  const broken = (line: string, at: number, from = samples) => [...from.slice(0, at), line, ...from.slice(at)];
  const text = (lines: readonly string[]) => `${lines.join("\n")}\n`;

  it.each(["", "  ", "# sensor off"])(
    "samples: a line `%s` is refused, since what follows moves in time",
    async (line) => {
      expect(await refused(overall, text(broken(line, 100)))).toContain(
        "one above line 102, where a sample may be missing",
      );
      expect(await refused(overall, text(broken(line, 1)))).toContain("one above line 3,");
      expect(await refused(overall, text(["a", ...broken(line, 100)]))).toContain("one above line 103,");
      const pairs = samples.map((one, i) => `${i},${one}`);
      const err = await refused([...overall, "--column", "2"], text(["n,a", ...broken(line, 100, pairs)]));
      expect(err).toContain("one above line 103,");
    },
  );

  it.each(["", "  ", "# sensor off"])(
    "samples: a line `%s` before the first or behind the last is harmless",
    async (line) => {
      for (const lines of [
        [line, ...samples],
        [line, "a", ...samples],
        ["a", line, line, ...samples],
        ["a", ...samples, line, line],
        [...samples, line],
      ]) {
        const { out, code } = await veladis([...overall, "--json"], text(lines));
        expect([code, JSON.parse(out).count]).toEqual([0, 200]);
      }
    },
  );

  it("levels of simulate --every, of several columns too; a cell with line ends is no hole", async () => {
    const every = [...simulate, "--every", "1", "--column", "1"];
    for (const line of ["", "# sensor off"]) {
      expect(await refused(every, `level\n3\n${line}\n13\n`)).toContain(
        "one above line 4, where a level may be missing",
      );
      expect(await refused(every, `level,x\n3,\n${line}\n13,\n`)).toContain("one above line 4,");
      expect((await answered([...every, "--json"], `level,x\n${line}\n3,"a\n\nb"\n3,\n${line}\n`)).levels).toBe(2);
    }
  });
});
