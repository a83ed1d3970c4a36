import { readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { convert } from "../../src/index";
import { root } from "../examples/fences";
import { veladis } from "./in-process";

const objects = (text: string): Record<string, unknown>[] =>
  text
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line) as Record<string, unknown>);

const temporary = (name: string, text: string): string => {
  const path = join(tmpdir(), `veladis-${process.pid}-${name}`);
  writeFileSync(path, text);
  return path;
};

describe("one reading", () => {
  it.each([
    [["0.25 in/s pk at 1500 r/min to mm/s rms"], "0.25 in/s pk at 1500 r/min = 4.49 mm/s rms  (sine)\n"],
    [["0.25", "in/s", "pk", "to", "mm/s", "rms"], "0.25 in/s pk = 4.49 mm/s rms  (sine)\n"],
    [["convert", "1 in/s pk to mm/s pk"], "1 in/s pk = 25.4 mm/s pk\n"],
    [
      ["3 mils peak to peak at 1500 rpm to in/s pk"],
      "3 mils peak-to-peak at 1500 rpm = 0.236 in/s pk  (one frequency)\n",
    ],
    [["2 g rms with crest factor 4 to g pk"], "2 g rms = 8.00 g pk  (crest factor 4)\n"],
    [["2 g rms crest factor 4 to g pk"], "2 g rms = 8.00 g pk  (crest factor 4)\n"],
    [["1 mm/s rms", "--to", "in/s pk", "--digits", "5"], "1 mm/s rms = 0.055678 in/s pk  (sine)\n"],
    [["1 mm/s rms", "--to", "um pp", "--at", "25 Hz"], "1 mm/s rms at 25 Hz = 18.0 um pp  (one frequency, sine)\n"],
    [["1 mm/s rms to um pp", "--at", "25 Hz"], "1 mm/s rms at 25 Hz = 18.0 um pp  (one frequency, sine)\n"],
    [["4.5", "--from", "mm/s rms", "--to", "in/s rms"], "4.5 mm/s rms = 0.177 in/s rms\n"],
    [["1 mm/s rms to dB re 1e-9 m/s"], "1 mm/s rms = 120.0 dB re 1e-9 m/s\n"],
    [
      ["0.25 in/s pk at 1500 r/min to mm/s rms, mil pp and g pk"],
      "0.25 in/s pk at 1500 r/min = 4.49 mm/s rms  (sine)\n" +
        "0.25 in/s pk at 1500 r/min = 3.18 mil pp  (one frequency)\n" +
        "0.25 in/s pk at 1500 r/min = 0.102 g pk  (one frequency)\n",
    ],
  ])("%j", async (args, out) => {
    expect(await veladis(args)).toMatchObject({ code: 0, out, err: "" });
  });

  it("as JSON: one object an answer, with whole digits and what was assumed", async () => {
    const { out, code } = await veladis(["0.25 in/s pk at 1500 r/min to mm/s rms, mil pp", "--json"]);
    expect(code).toBe(0);
    expect(objects(out)).toEqual([
      expect.objectContaining({
        value: convert(0.25, "in/s pk", "mm/s rms"),
        unit: "mm/s",
        detector: "rms",
        quantity: "velocity",
        hertz: 25,
        assumed: ["sine"],
        text: "4.49 mm/s rms",
        from: expect.objectContaining({ value: 0.25, unit: "in/s", detector: "pk", hertz: 25 }),
      }),
      expect.objectContaining({ unit: "mil", detector: "pp", assumed: ["one-frequency"] }),
    ]);
  });

  it("without a target: a table of equivalents, in JSON all of them", async () => {
    const { out } = await veladis(["0.25 in/s pk"]);
    expect(out).toMatch(/mm\/s +4\.49 +6\.35 +12\.7\n/);
    expect(out).toMatch(/with a frequency \(at 1500 r\/min\) also the other quantities/);
    expect(objects((await veladis(["0.25 in/s pk at 25 Hz", "--json"])).out)).toHaveLength(18);
  });

  it.each([
    [["0.25 in/s to mm/s rms"], "missing-detector"],
    [["0.25 in/s pk to mil pp"], "missing-frequency"],
    [["0.25 in/s pk to"], "syntax"],
    [["0.25 in/s pk to mm/s rms to g pk"], "syntax"],
    [["0.25 in/s pk to mm/s rms,"], "syntax"],
    [["-1 mm/s rms to g pk"], "negative"],
    [["--", "-1 mm/s rms to in/s pk"], "negative"],
    [["--bogus"], "unknown-option"],
    [["1 g pk", "--digits", "0"], "out-of-range"],
    [["1 g pk", "--digits", "many"], "not-a-number"],
    [["2 g rms with crest factor many to g pk"], "not-a-number"],
    [["--file", "no/such/file", "--to", "g pk"], "unreadable"],
    [["--file", "README.md"], "missing-option"],
    [["--column", "2", "--file", "README.md"], "missing-option"],
    [["x".repeat(1 << 20)], "syntax"],
  ])("%j is refused on standard error, exit 2", async (args, code) => {
    const human = await veladis(args);
    expect(human).toMatchObject({ code: 2, out: "" });
    expect(human.err).toContain(`: ${code}\n  expected: `);
    expect(human.err.length).toBeLessThan(1500);
    if (args[0] === "--") return;
    const json = await veladis([...args, "--json"]);
    expect(json).toMatchObject({ code: 2, out: "" });
    expect(objects(json.err)).toEqual([{ error: expect.objectContaining({ code }) }]);
  });
});

describe("lines of standard input", () => {
  it("are answered one by one; refused ones are reported with their number", async () => {
    const { out, err, code } = await veladis(
      ["--to", "mm/s rms"],
      "4.1 mm/s rms\n\n# a remark\nfan: 0.2 in/s pk\nfoo\r\n2 g",
    );
    expect(out).toBe("4.1 mm/s rms = 4.10 mm/s rms\nfan: 0.2 in/s pk = 3.59 mm/s rms  (sine)\n");
    expect(err).toContain("veladis: line 5: syntax");
    expect(err).toContain("veladis: line 6: missing-detector");
    expect(code).toBe(2);
    expect((await veladis(["--to", "mm/s rms", "--keep-going"], "foo\n")).code).toBe(0);
  });

  it("may be bare numbers", async () => {
    expect((await veladis(["--from", "g rms", "--to", "m/s2 rms"], "1\n2\n")).out).toBe(
      "1 g rms = 9.81 m/s2 rms\n2 g rms = 19.6 m/s2 rms\n",
    );
  });

  it("as JSON carry their line and place", async () => {
    const { out } = await veladis(["--to", "mm/s rms", "--json"], "\nfan: 1 in/s rms\n");
    expect(objects(out)).toEqual([expect.objectContaining({ line: 2, place: "fan", value: 25.4 })]);
  });
});

describe("a route file", () => {
  it("shows levels in decibels under the heading of a level", async () => {
    const file = temporary("levels.txt", "fan: 1 m/s rms\npump: 120 dB re 1e-9 m/s\n");
    const { out } = await veladis(["--file", file, "--to", "dB re 1e-9 m/s, mm/s rms"]);
    expect(out).toMatch(/fan +1 m\/s rms +180\.0 +1000$/m);
    expect(out).toMatch(/pump +120 dB re 1e-9 m\/s +120\.0 +1\.00$/m);
  });

  it("becomes one table; refused lines stay in it and are explained", async () => {
    const { out, err, code } = await veladis(["--file", `${root}/docs/examples/route.txt`, "--to", "mm/s rms"]);
    const lines = readFileSync(`${root}/docs/examples/route.txt`, "utf8").split("\n");
    const readings = lines.filter((line) => line !== "" && !line.startsWith("#"));
    expect(out.split("\n").filter((line) => /^ +\d+ {2}/.test(line))).toHaveLength(readings.length);
    expect(out).toMatch(/14 converted, 3 refused\n$/);
    for (const number of [14, 15, 22]) {
      expect(out).toMatch(new RegExp(`^ +${number} .* REFUSED$`, "m"));
      expect(err).toContain(`line ${number}: `);
    }
    expect(code).toBe(2);
  });

  it("as JSON", async () => {
    const { out, err } = await veladis([
      "--file",
      `${root}/docs/examples/route.txt`,
      "--to",
      "mm/s rms, in/s pk",
      "--json",
    ]);
    expect([objects(out).length, objects(err).length]).toEqual([2 * 14, 3]);
    expect(objects(err)[0]).toMatchObject({ error: { line: 14, code: "missing-unit" } });
  });
});

describe("a column of CSV", () => {
  const csv = "time,level,note\n1,0.5,a\n2,,b\n3,abc,c\n4,-1,d\n5,1,e\n";

  it("by name or number: each row as it was, with a column more for each target", async () => {
    for (const column of ["level", "2"]) {
      const { out, err, code } = await veladis(["--column", column, "--from", "g rms", "--to", "m/s2 rms, g pk"], csv);
      expect(out.split("\n")).toEqual([
        "time,level,note,m/s2 rms,g pk (sine)",
        `1,0.5,a,${0.5 * 9.80665},${0.5 * Math.SQRT2}`,
        "2,,b,,",
        "3,abc,c,,",
        "4,-1,d,,",
        `5,1,e,9.80665,${Math.SQRT2}`,
        "",
      ]);
      for (const line of [3, 4, 5]) expect(err).toContain(`line ${line}: `);
      expect(err).toMatch(
        /2 rows converted, 3 refused; assumed: g pk \(sine\)\nrows: 5 in = 2 answered \+ 3 refused \+ 0 skipped; separator: comma\n$/,
      );
      expect(code).toBe(2);
    }
  });

  it("converts the whole measured file row for row", async () => {
    const file = `${root}/docs/examples/pump-rig/normal-excerpt.csv`;
    const rows = readFileSync(file, "utf8").trimEnd().split("\n");
    const { out, err, code } = await veladis([
      ...["--file", file, "--column", "accelerometer_1_g_rms"],
      ...["--from", "g rms", "--to", "m/s2 rms, g pk"],
    ]);
    const converted = out.trimEnd().split("\n");
    expect(converted).toHaveLength(rows.length);
    converted.slice(1).forEach((row, i) => {
      const cells = row.split(",");
      const level = Number(cells[1]);
      expect(row.startsWith(rows[i + 1] as string)).toBe(true);
      expect(cells.slice(4).map(Number)).toEqual([
        convert(level, "g rms", "m/s2 rms"),
        convert(level, "g rms", "g pk"),
      ]);
    });
    expect(err).toContain(`${rows.length - 1} rows converted, 0 refused`);
    expect(code).toBe(0);
  });

  it("takes quotes, semicolons, tabs, a byte order mark and Windows line ends", async () => {
    const args = ["--column", "level", "--from", "mm/s rms", "--to", "in/s rms"];
    expect((await veladis(args, '\uFEFF"level";"where"\r\n25.4;"a;b"\r\n')).out).toBe(
      '\uFEFF"level";"where";in/s rms\r\n25.4;"a;b";1\r\n',
    );
    expect((await veladis(args, "where\tlevel\nx\t25.4\n")).out).toBe("where\tlevel\tin/s rms\nx\t25.4\t1\n");
    expect((await veladis(args, "where|level\nx|25.4\n")).out).toBe("where|level|in/s rms\nx|25.4|1\n");
  });

  const told = ["--column", "level", "--from", "mm/s rms", "--to", "in/s rms"];

  it("keeps UTF-16 and Latin-1", async () => {
    const text = "level;ort\r\n25.4;Lüfter\r\n";
    const answer = "level;ort;in/s rms\r\n25.4;Lüfter;1\r\n";
    const wide = await veladis(told, [Buffer.from(`\ufeff${text}`, "utf16le")]);
    expect(wide.bytes).toEqual(Buffer.from(`\ufeff${answer}`, "utf16le"));
    const narrow = await veladis([...told, "--encoding", "latin-1"], [Buffer.from(text, "latin1")]);
    expect(narrow.bytes).toEqual(Buffer.from(answer, "latin1"));
    const untold = await veladis(told, [Buffer.from(text, "latin1")]);
    expect(untold).toMatchObject({ code: 2, out: "", err: expect.stringContaining("--encoding latin-1") });
  });

  it("refuses ragged rows, so that what is added never stands in another column", async () => {
    const { out, err, code } = await veladis(told, "level,note\n25.4,a\n25.4,a,6\n25.4\n# remark\n#1,2\n50.8,b\n");
    expect(out).toBe("level,note,in/s rms\n25.4,a,1\n#1,2,\n50.8,b,2\n");
    expect(err.match(/line \d: [a-z-]+/g)).toEqual([
      "line 3: length-mismatch",
      "line 4: length-mismatch",
      "line 6: syntax",
    ]);
    expect(err).toContain("rows: 6 in = 2 answered + 3 refused + 1 skipped (1 remark); separator: comma\n");
    expect(code).toBe(2);
  });

  it("a missing cell is refused, as is an empty one", async () => {
    const { out, err } = await veladis(["--column", "2", ...told.slice(2)], "a,level\nx\nx,\nx,25.4\n");
    expect(out).toBe("a,level,in/s rms\nx,,\nx,25.4,1\n");
    expect(err).toMatch(/line 2: length-mismatch[\s\S]*line 3: not-a-number/);
  });

  it("a decimal comma is refused, or told and kept", async () => {
    const { out, err } = await veladis(told, "level;ort\n50,8;a\n");
    expect(out).toBe("level;ort;in/s rms\n50,8;a;\n");
    expect(err).toContain("(--decimal-comma where a comma stands for them)");
    const comma = [...told, "--decimal-comma"];
    expect((await veladis(comma, "level;ort\n6,35;a\n6.35;a\n")).out).toBe(
      "level;ort;in/s rms\n6,35;a;0,25\n6.35;a;\n",
    );
    expect((await veladis(comma, "level\n6,35\n")).out).toBe("level;in/s rms\n6,35;0,25\n");
  });

  it("keeps the lines above the header; refuses a title that is there, and a heading that stands twice", async () => {
    expect((await veladis([...told, "--header-line", "3"], "sep=;\nx\nlevel;a\n25.4;b\n")).out).toBe(
      "sep=;\nx\nlevel;a;in/s rms\n25.4;b;1\n",
    );
    expect((await veladis(told, "level, in/s rms\n25.4,1\n")).err).toContain('a second column "in/s rms"');
    expect((await veladis(told, "level,level\n25.4,1\n")).err).toContain("by its number, 1 or 2");
  });

  it("without quotes a single cell that holds the separator cannot be kept, and is refused", async () => {
    const plain = ["--quotes", "none", "--separator", "none", "--decimal-comma"];
    const { out, err, code } = await veladis([...told.with(1, "1"), ...plain], 'level\n25,4\n1;"2\n');
    expect(out).toBe("level;in/s rms\n25,4;1\n");
    expect([code, err]).toEqual([2, expect.stringContaining("1 row converted, 1 refused")]);
  });

  it("as JSON: the account is an object on standard error", async () => {
    const { out, err } = await veladis([...told, "--json"], "level,a\n25.4,b\n\nx,b\n");
    expect(objects(out)).toEqual([expect.objectContaining({ line: 2, value: 1 })]);
    expect(objects(err)).toEqual([
      { error: expect.objectContaining({ line: 4, code: "not-a-number" }) },
      {
        rows: {
          ...{ in: 3, answered: 1, refused: 1, skipped: { blank: 1, remarks: 0, preamble: 0 } },
          ...{ separator: "comma", torn: false },
        },
      },
    ]);
  });

  it("options that say how a file is written want --column", async () => {
    const { err, code } = await veladis(["1 mm/s rms to in/s rms", "--separator", "tab", "--decimal-comma"]);
    expect([code, err]).toEqual([2, expect.stringContaining("received: --separator --decimal-comma")]);
  });

  it("names the columns there are", async () => {
    const { err, code } = await veladis(["--column", "9", "--from", "g rms", "--to", "g pk"], csv);
    expect(err).toContain("allowed: time, level, note");
    expect(code).toBe(2);
  });

  it("as JSON, from a file, with levels", async () => {
    const file = temporary("levels.csv", "x\n1\n");
    const { out } = await veladis([
      "--file",
      file,
      "--column",
      "x",
      "--from",
      "m/s rms",
      "--to",
      "dB re 1e-9 m/s",
      "--json",
    ]);
    expect(objects(out)).toEqual([expect.objectContaining({ line: 2, level: { decibels: 180, re: "1e-9 m/s" } })]);
    const { out: plain } = await veladis([
      "--file",
      file,
      "--column",
      "x",
      "--from",
      "m/s rms",
      "--to",
      "dB re 1e-9 m/s",
    ]);
    expect(plain).toBe("x,dB re 1e-9 m/s\n1,180\n");
  });
});
