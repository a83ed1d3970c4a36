import { describe, expect, it } from "vitest";
import { veladis } from "../in-process";

const plain = (text: string) => text.replace(/\s+/g, " ");

async function refused(args: readonly string[], input: string) {
  const { out, err, code } = await veladis(args, input);
  expect([input, code, out]).toEqual([input, 2, ""]);
  return plain(err);
}

const convert = ["--column", "2", "--from", "mm/s rms", "--to", "in/s pk"];
const table = ["table", "--column", "2", "--from", "mm/s rms", "--to", "in/s pk"];
const simulate = [
  ...["simulate", "--from", "mm/s rms", "--threshold", "9 mm/s rms", "--hysteresis", "5 %", "--delay", "2"],
  ...["--timer-resets", "threshold", "--latching", "--sensor-fault", "alarm"],
];
const commands = [convert, table, [...simulate, "--time", "1", "--column", "2"]] as const;

describe("the first row is not lost as a header", () => {
  it.each([
    ["a number", "Fan 1;9.1", []],
    ["a number with the comma that was told", "Fan 1;9,1", ["--decimal-comma"]],
    ["a number with a comma", "Fan 1;9,1", []],
    ["a number with a point where a comma was told", "Fan 1;9.1", ["--decimal-comma"]],
    ["over range", "Fan 1;OL", []],
    ["over range in words", "Fan 1;over range", []],
    ["more than the range", "Fan 1;>20", []],
    ["no number", "Fan 1;NaN", []],
    ["a fault", "Fan 1;fault", []],
    ["an empty cell", "Fan 1; ", []],
    ["a whole reading", "Fan 1;4.1 mm/s rms", []],
    ["a whole reading with a comma", "Fan 1;4,1 mm/s rms", ["--decimal-comma"]],
    ["a date", "Fan 1;2026-03-04 10:00", []],
  ])("%s", async (_, first, more) => {
    for (const args of commands) {
      const err = await refused([...args, ...more], `${first}\n1;2\n2;3\n`);
      expect(err).toContain("a header line above the first row, or --header-line 1");
    }
  });

  it.each(["2026-03-04 10:00", "04.03.2026 10:00", "46085.5", "0", "04.03.26 10:00"])(
    "a time %s in the first row, beside a word",
    async (time) => {
      const err = await refused(simulate, `${time};level\n1;2\n2;3\n`);
      expect(err).toMatch(/in column 1 of the first row|a header line above/);
    },
  );

  it("where the line of the header is told, the first row is the header whatever it says", async () => {
    for (const first of ["Fan 1;9.1", "Fan 1;OL", "Fan 1;", "0;4.1 mm/s rms"]) {
      for (const args of commands) {
        const { code } = await veladis([...args, "--header-line", "1"], `${first}\n1;2\n2;3\n`);
        expect([first, code]).toEqual([first, 0]);
      }
    }
  });

  it("a column may be asked for by a name that reads as a value", async () => {
    const { out, code } = await veladis(["--column", "fault", ...convert.slice(2)], "tag;fault\nx;2\n");
    expect([code, out.split("\n").length]).toEqual([0, 3]);
  });

  it("headings are none, with a unit, a number or a word of a fault in them", async () => {
    for (const heading of ["Overall", "level mm/s rms", "fault level", "DE 1", "1x", "> alarm?", "info", "2nd floor"]) {
      const { code } = await veladis(convert, `tag;${heading}\nx;2\n`);
      expect([heading, code]).toEqual([heading, heading.startsWith(">") ? 2 : 0]);
    }
  });
});

describe("samples of overall", () => {
  const overall = ["overall", "--rate", "100", "--unit", "g", "--band", "20-40"];
  const samples = Array.from({ length: 200 }, (_, i) => (0.7 * Math.sin(1.9 * i)).toFixed(4)).join("\n");

  it.each(["OL", ">20", "over range", "fault", "nan", "inf", "4.1 g pk"])(
    "a first row %s is a row without a sample, and told",
    async (first) => {
      expect(await refused(overall, `${first}\n${samples}\n`)).toContain(`1 of 201 rows without: line 1 "${first}"`);
      const { code } = await veladis([...overall, "--header-line", "1"], `${first}\n${samples}\n`);
      expect(code).toBe(0);
    },
  );

  it("beside words it may be a heading, and is refused until it is told", async () => {
    const rows = samples.replaceAll(/^/gm, "x,");
    expect(await refused([...overall, "--column", "2"], `time,OL\n${rows}\n`)).toContain("--header-line 1");
    expect(await refused([...overall, "--column", "2"], `x,OL\n${rows}\n`)).toContain(
      '1 of 201 rows without: line 1 "OL"',
    );
  });
});
