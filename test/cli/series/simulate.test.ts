import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { veladis } from "../in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-series-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const words = ["simulate", "--hysteresis", "5 %", "--timer-resets", "threshold", "--latching", "--delay", "2"];
const gs = [...words, "--from", "g rms", "--threshold", "12.05 g rms"];
const plain = (text: string) => text.replace(/\s+/g, " ");

/** The answer as data, and what was told. */
async function simulated(args: readonly string[], input: string | readonly Uint8Array[]) {
  const { out, err, code } = await veladis([...gs, ...args, "--json"], input);
  expect([code, err.replace(/^\{"rows".*\n/, "")]).toEqual([0, ""]);
  return JSON.parse(out);
}

const trips = async (args: readonly string[], input: string) =>
  (await simulated(args, input)).events.flatMap(({ event, time }: { event: string; time: number }) =>
    event === "trip" ? [time] : [],
  );

async function refused(args: readonly string[], input: string) {
  const { out, err, code } = await veladis([...gs, ...args], input);
  expect([code, out]).toEqual([2, ""]);
  return plain(err);
}

describe("decimal commas under a header with a comma", () => {
  const rows = "0;3,2\n1;12,1\n2;12,1\n3;12,1\n4;3,2\n";

  it("`time;level, g rms` with 12,1: the trip is not lost", async () => {
    expect(await trips(["--decimal-comma"], `time;level, g rms\n${rows}`)).toEqual([3]);
  });

  it("and without --decimal-comma the option is named", async () => {
    const err = await refused([], `time;level, g rms\n${rows}`);
    expect(err).toContain("--decimal-comma for 7,1");
    expect(err).toContain('5 of 5 rows without: line 2 "3,2", line 3 "12,1"');
    // such a row holds a level, so that it is not left out
    expect(await refused(["--skip-bad"], `time;level, g rms\n${rows}`)).toContain("5 of 5 rows without");
  });

  it("a point is refused where commas were told", async () => {
    expect(await refused(["--decimal-comma"], "time;level\n0;3.2\n")).toContain("no point by --decimal-comma");
  });
});

describe("duplicate headings", () => {
  const csv = "time,level,level\n0,3,13\n1,3,13\n2,3,13\n3,3,13\n";

  it("asked for by name are refused, since a trip might be missed", async () => {
    const err = await refused(["--column", "level"], csv);
    expect(err).toMatch(/2/);
    expect(err).toMatch(/3/);
  });

  it("by number are read, and those nobody asks for do no harm", async () => {
    expect(await trips(["--column", "3"], csv)).toEqual([2]);
    expect(await trips(["--column", "2"], csv)).toEqual([]);
  });
});

describe("times", () => {
  it("30 February is no 1 March", async () => {
    const csv = "time,level\n2026-02-28 10:00:00,3\n2026-02-30 10:00:00,3\n";
    const err = await refused([], csv);
    expect(err).toContain('1 of 2 rows without: line 3 time "2026-02-30 10:00:00"');
    expect(err).toContain("a day of the calendar");
  });

  it("serial dates are told, and no seconds", async () => {
    const csv = "time,level\n46085.5,3\n46085.50001,13\n46085.50004,13\n";
    expect(await refused([], csv)).toContain("--times seconds or --times serial");
    const { begins, events, read } = await simulated(["--times", "serial"], csv);
    expect(begins).toBe("2026-03-04 12:00:00");
    // 1e-5 of a day is 0.864 s
    expect(events).toMatchObject([{ event: "trip", time: 2.864 }]);
    expect(read.times).toMatchObject({ as: "serial dates", first: "46085.5", clock: "2026-03-04 12:00:00" });
    const { err } = await veladis([...gs, "--times", "serial"], csv);
    expect(err).toContain("times: serial dates; the first is 2026-03-04 12:00:00\n");
  });

  it("double times are told with count and lines", async () => {
    const csv = "time,level\n0,3\n1,3\n1,4\n2,3\n2,3\n";
    const { err, code } = await veladis(gs, csv);
    expect(code).toBe(0);
    expect(err).toContain("times: 2 rows at the time of the row above (lines 4, 6)\n");
    expect((await simulated([], csv)).read.times.equal).toEqual({ rows: 2, lines: [4, 6] });
  });

  it("all equal make a history of no length, and no trip", async () => {
    expect(await trips([], "time,level\n5,13\n5,13\n5,13\n")).toEqual([]);
  });

  it("of two levels at one time the later row stands on", async () => {
    expect(await trips([], "time,level\n0,3\n1,3\n1,13\n4,3\n")).toEqual([3]);
    expect(await trips([], "time,level\n0,3\n1,13\n1,3\n4,3\n")).toEqual([]);
  });

  it("falling times are refused with count and lines", async () => {
    expect(await refused([], "time,level\n0,3\n2,3\n1,4\n3,3\n2,3\n")).toContain(
      "received: 2 rows before the row above: lines 4, 6",
    );
  });

  it("days or months first: told, proved by a row and told, or refused", async () => {
    const csv = "time;level\n03/04/2026 10:00:00;13\n03/04/2026 10:00:03;3\n";
    expect(await refused([], csv)).toContain("2026-04-03 10:00:00, or 2026-03-04 10:00:00");
    expect((await simulated(["--times", "month-first"], csv)).begins).toBe("2026-03-04 10:00:00");
    const proved = await veladis(gs, csv.replaceAll("04/2026", "14/2026"));
    expect(proved.err).toContain(
      "times: dates, month first, since line 2 admits no other order; the first is 2026-03-14 10:00:00\n",
    );
  });
});

describe("cells that are no level", () => {
  const csv = "time,level\n0,3\n1,N/A\n2,\n3,13\n4,n.a.\n5,N/A\n6,3\n";

  it("are refused together, with count and lines", async () => {
    expect(await refused([], csv)).toContain(
      "expected: a time and a level in each row of standard input; --skip-bad leaves such rows out received: 4 of 7 rows " +
        'without: line 3 "N/A", line 4 empty, line 6 "n.a.", line 7 "N/A"',
    );
    const many = `time,level\n${Array.from({ length: 25 }, (_, i) => `${i},x`).join("\n")}\n`;
    expect(await refused([], many)).toMatch(/25 of 25 rows without: line 2 "x",.* line 11 "x", and 15 more $/);
  });

  it("are left out by --skip-bad, told by kind and count", async () => {
    const { err, out, code } = await veladis([...gs, "--skip-bad"], csv);
    expect(code).toBe(0);
    expect(err).toContain('left out: 4 rows: 2 "N/A", 1 empty, 1 "n.a." (lines 3, 4, 6, 7)\n');
    expect(plain(out)).toContain("3 levels over 6.000 s, 4 rows left out,");
    const {
      read: { leftOut, rows },
      events,
    } = await simulated(["--skip-bad"], csv);
    expect(leftOut).toEqual({
      rows: 4,
      lines: [3, 4, 6, 7],
      kinds: [
        { what: '"N/A"', rows: 2 },
        { what: "empty", rows: 1 },
        { what: '"n.a."', rows: 1 },
      ],
    });
    expect(rows).toMatchObject({ in: 7, answered: 3, refused: 4 });
    expect(events).toMatchObject([{ event: "trip", time: 5 }]);
  });

  it("are not left out where levels are evenly spaced, since those behind would move in time", async () => {
    const every = ["--every", "1", "--column", "1"];
    expect(await refused([...every, "--skip-bad"], "level,x\n3,\nN/A,\n13,\n")).toContain("would move in time");
    expect(await refused(every, "level,x\n3,\nN/A,\n13,\n")).toContain("would move in time");
    // in a file of one column an empty line may be a level that is missing
    expect(await refused(every, "level\n3\n\n13\n")).toContain("a level in each row");
    expect(await trips(every, "level\n3\n13\n13\n13\n\n")).toEqual([3]);
  });

  it("an empty cell is a sensor fault only where that was told", async () => {
    const { events } = await simulated(["--sensor-fault", "alarm"], "time,level\n0,3\n1,\n2,fault\n5,3\n");
    expect(events).toMatchObject([{ event: "fault", time: 1 }, { event: "trip", time: 3 }, { event: "fault over" }]);
  });

  it.each(["OL", "ol", "O.L", "OVL", "OVER", "over range", "+OL", "inf", ">20"])(
    "%s is over range: never left out",
    async (cell) => {
      const over = `time,level\n0,3\n1,${cell}\n5,3\n`;
      expect(await refused([], over)).toContain("over range is above all that can be read");
      expect(await refused(["--skip-bad"], over)).toContain(`1 of 3 rows without: line 3 "${cell}"`);
      expect(await refused(["--skip-bad", "--sensor-fault", "hold"], over)).toContain("or use --sensor-fault alarm");
    },
  );

  it("OL is a sensor fault that counts as a high level by --sensor-fault alarm, and told", async () => {
    const over = "time,level\n0,3\n1,OL\n5,3\n";
    const {
      events,
      read: { overRange },
    } = await simulated(["--sensor-fault", "alarm"], over);
    expect(events).toMatchObject([{ event: "fault", time: 1 }, { event: "trip", time: 3 }, { event: "fault over" }]);
    expect(overRange).toEqual({ rows: 1, lines: [3] });
    const { err } = await veladis([...gs, "--sensor-fault", "alarm"], over);
    expect(err).toContain("over range: 1 row taken as a sensor fault (line 3)\n");
  });
});

describe("rows and files", () => {
  it("ragged rows are refused with the others", async () => {
    const csv = "time,level\n0,3\n1\n2,13,5\n3,13\n6,3\n";
    expect(await refused([], csv)).toContain("2 of 5 rows without: line 3 ragged, line 4 ragged");
    expect(await trips(["--skip-bad"], csv)).toEqual([5]);
  });

  it("a row that may be a remark is refused, with the options that settle it", async () => {
    const csv = "time,level\n0,3\n#1,13\n6,3\n";
    const err = await refused([], csv);
    expect(err).toContain("1 of 3 rows without: line 3 no row of the table");
    expect(err).toContain('--remarks "#"');
    expect((await simulated(["--remarks", "#"], csv)).read.rows).toMatchObject({
      answered: 2,
      skipped: { remarks: 1 },
    });
  });

  it("a torn last row is told", async () => {
    const { err, code } = await veladis(gs, "time,level\n0,3\n1,13\n2,1");
    expect([code, err]).toEqual([0, expect.stringContaining("torn")]);
    expect((await simulated([], "time,level\n0,3\n1,13\n2,1")).read.rows.torn).toBe(true);
    expect(await refused([], "time,level\n0,3\n1,13\n2")).toContain("line 4 ragged");
  });

  it("a folder as file is refused in one line", async () => {
    const { err, out, code } = await veladis([...gs, "--file", folder, "--json"]);
    expect([code, out, err.split("\n").length]).toEqual([2, "", 2]);
    expect(JSON.parse(err).error.code).toBe("wrong-type");
  });

  it("the account is on standard error", async () => {
    const csv = "# start of fan 1\ntime;level\n0;3\n\n1;3\n";
    const { err } = await veladis(gs, csv);
    expect(err).toContain("rows: 4 in = 2 answered + 0 refused + 2 skipped");
    expect(err).toContain("semicolon");
    const json = await veladis([...gs, "--json"], csv);
    expect(JSON.parse(json.err).rows).toBeDefined();
  });

  it("a file of no rows, or of bad ones alone, is refused", async () => {
    expect(await refused([], "time,level\n")).toContain("a time and a level in a row below the header");
    expect(await refused(["--skip-bad"], "time,level\n0,N/A\n")).toContain("received: none");
  });
});

describe("what is read, left out and refused", () => {
  /** A generator of whole numbers below n, the same on every run. */
  function below(seed: number) {
    let state = seed;
    return (n: number): number => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return Math.floor((state / 2 ** 32) * n);
    };
  }

  it("adds up to the rows that went in, whatever they are", async () => {
    const random = below(20260304);
    const cells = ["3", "12.5", "N/A", "", "x", '"a ""b"""', '"1\n2"', "1e999", "-", "fault"];
    for (let run = 0; run < 150; run++) {
      const rows = Array.from({ length: random(40) }, (_, i) => {
        const kind = random(12);
        if (kind === 0) return "";
        if (kind === 1) return "# a remark of three, cells, here";
        if (kind === 2) return `${i}`;
        return `${i},${cells[random(cells.length)]}`;
      });
      const csv = `time,level\n${rows.map((row) => `${row}\n`).join("")}`;
      const good = rows.filter((row) => /^\d+,(?:3|12\.5)$/.test(row)).length;
      const never = rows.filter((row) => row.endsWith(",1e999")).length;
      const skipped = rows.filter((row) => row === "" || row.startsWith("#")).length;
      const { out, err, code } = await veladis([...gs, "--skip-bad", "--json"], csv);
      if (never > 0 || good === 0) {
        const received = never > 0 ? `${never} of ${rows.length} row` : "none";
        const said = code === 2 ? JSON.parse(err).error.received : err;
        expect([csv, out, said]).toEqual([csv, "", expect.stringContaining(received)]);
        continue;
      }
      const { levels, read } = JSON.parse(out);
      const refused = rows.length - skipped - good;
      expect([csv, JSON.parse(err).rows]).toEqual([csv, read.rows]);
      expect([csv, read.rows]).toEqual([csv, expect.objectContaining({ in: rows.length, answered: good, refused })]);
      expect([levels, read.leftOut?.rows ?? 0, read.rows.skipped.blank + read.rows.skipped.remarks]).toEqual([
        good,
        refused,
        skipped,
      ]);
    }
  });
});
