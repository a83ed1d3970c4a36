import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { wholeFile } from "../../src/cli/table/whole-file";
import { convert } from "../../src/index";
import { classify } from "../../src/severity/index";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-table-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let files = 0;
const place = (name = "out.csv"): string => join(mkdtempSync(join(folder, `${files++}-`)), name);
const file = (content: string | Uint8Array, name = "in.csv"): string => {
  const path = place(name);
  writeFileSync(path, content);
  return path;
};
/** What a row of a velocity says where the scheme limits displacement too, and nobody told a frequency. */
const notJudged = "not judged: limits in um rms: needs the frequency of the velocity, or the running speed";

const usual = "condition in service: not given, assumed; place housing: not given, assumed";

const rowsOf = (text: string): string[][] =>
  text
    .trimEnd()
    .split(/\r?\n/)
    .map((row) => row.split(","));

const readings = [
  "tag,value,unit,detector,speed,machine",
  "feed pump A,2.1,mm/s,rms,2980,pump 250 kW rigid category II",
  "feed pump A,0.16,in/s,pk,2980,pump 250 kW rigid category II",
  "ID fan 1,80,um,pp,1485,fan 132 kW rigid BV-3 housing",
  "ID fan 1,9.9,mm/s,rms,,fan 132 kW rigid BV-3 housing",
  "",
].join("\n");
const byRow = ["--column", "value", "--from-column", "unit", "--detector-column", "detector"];
const speed = ["--speed-column", "speed", "--speed-unit", "r/min", "--at", "1x"];
const fixed = ["--column", "v", "--from", "mm/s rms", "--to", "in/s pk"];

describe("columns", () => {
  it("the same type for all rows", async () => {
    const path = file("v\n1\n2.5\n0\n1e-3\n+7.25\n");
    const { out, code, err } = await veladis(["table", path, ...fixed]);
    expect(rowsOf(out)).toEqual([
      ["v", "in/s pk", "assumed"],
      ...["1", "2.5", "0", "1e-3", "+7.25"].map((cell) => [
        cell,
        String(convert(Number(cell), "mm/s rms", "in/s pk")),
        "sine",
      ]),
    ]);
    expect(code).toBe(0);
    expect(err).toBe("rows: 5 in = 5 answered + 0 refused + 0 skipped; separator: none, one column\nassumed   sine\n");
  });

  it("unit, detector and speed of each row; the frequency an order of the speed", async () => {
    const { out, err, code } = await veladis(["table", file(readings), ...byRow, "--to", "mm/s rms", ...speed]);
    const rows = rowsOf(out);
    expect(rows.map((row) => row[6])).toEqual([
      "mm/s rms",
      "2.1",
      String(convert(0.16, "in/s pk", "mm/s rms")),
      String(convert(80, "um pp", "mm/s rms", { at: { hertz: 1485 / 60 } })),
      "9.9",
    ]);
    expect(rows.map((row) => row[7])).toEqual(["assumed", "", "sine", "one frequency; sine", ""]);
    expect([err, code]).toEqual([
      "rows: 4 in = 4 answered + 0 refused + 0 skipped; separator: comma\nassumed   sine (2 rows)\n          one frequency (1 row)\n",
      0,
    ]);
  });

  it("a column of frequencies, with and without a unit in the cell", async () => {
    const path = file("v,f\n1,25\n1,1500 r/min\n1,2x 750 r/min\n");
    const at = ["--at-column", "f", "--at-unit", "Hz"];
    const { out } = await veladis(["table", path, "--column", "1", "--from", "g pk", "--to", "mm/s rms", ...at]);
    const expected = String(convert(1, "g pk", "mm/s rms", { at: "25 Hz" }));
    expect(
      rowsOf(out)
        .slice(1)
        .map((row) => row[2]),
    ).toEqual([expected, expected, expected]);
  });

  it("whole readings, levels and crest factors", async () => {
    const path = file("v\n0.25 in/s pk\n3 mil pp at 1500 r/min\n95 dB re 1e-9 m/s\n3 mil pp\n");
    const { out } = await veladis(["table", path, "--column", "v", "--to", "mm/s rms", "--at", "25 Hz"]);
    const values = rowsOf(out)
      .slice(1)
      .map((row) => Number(row[1]));
    expect(values[0]).toBeCloseTo(4.49, 2);
    expect(values[1]).toBe(values[3]);
    expect(values[2]).toBeCloseTo(convert(95, "dB re 1e-9 m/s", "mm/s rms"), 12);
    const crest = ["--from", "g rms", "--to", "g pk, dB re 1e-6 m/s2", "--crest-factor", "4", "--digits", "3"];
    expect((await veladis(["table", file("v\n2\n"), "--column", "v", ...crest])).out).toBe(
      "v,g pk,dB re 0.000001 m/s2,assumed\n2,8.00,146,crest factor 4\n",
    );
  });

  it("a decimal comma, where it is told", async () => {
    const path = file("Zeit;Wert;Drehzahl\r\n06:00;7,1;1485\r\n06:05;1.250,5;1485\r\n");
    const told = ["--decimal-comma", "--column", "Wert", "--from", "um pp", "--to", "mm/s rms", "--digits", "4"];
    const order = ["--speed-column", "Drehzahl", "--speed-unit", "r/min", "--at", "1x"];
    const { out, err, code } = await veladis(["table", path, ...told, ...order]);
    expect(out).toContain('06:00;7,1;1485;0,3904;"one frequency; sine"\r\n');
    expect(err).toContain("line 3: not-a-number");
    expect(code).toBe(2);
  });
});

describe("zones", () => {
  it("of one machine, as classify says, with how far the limits are known", async () => {
    const values = ["0.5", "1.4", "1.41", "2.8", "4.5", "4.51", "30"];
    const path = file(`v\n${values.join("\n")}\n`);
    const machine = ["--machine", "group 2 rigid", "--scheme", "iso-10816-3-2009"];
    const { out, err } = await veladis(["table", path, "--column", "v", "--from", "mm/s rms", ...machine]);
    const options = { scheme: "iso-10816-3-2009", machine: "group 2 rigid" } as const;
    expect(rowsOf(out)).toEqual([
      ["v", "zone", "worst", "scheme", "limits", "assumed"],
      ...values.map((value) => {
        const { zone, worst } = classify(`${value} mm/s rms`, options);
        return [value, zone, worst, options.scheme, "reported", ...`"${usual}; ${notJudged}"`.split(",")];
      }),
    ]);
    // without the speed the displacement of this scheme is not judged
    expect(err).toContain("zones     A or worse 2, B or worse 2, C or worse 1, D 2\n");
    expect(err).toContain("known     7 rows judged by limits read on a page whose making is unknown");
    expect(err).toContain("licensed practice govern");
  });

  it("of the machine of each row, by the table that is for it", async () => {
    const machine = ["--machine-column", "machine"];
    const { out } = await veladis(["table", file(readings), ...byRow, ...speed, ...machine]);
    expect(rowsOf(out).map((row) => row.slice(6, 10))).toEqual([
      ["zone", "worst", "scheme", "limits"],
      ["A", "A", "iso-10816-7-2009", "reported"],
      ["A", "A", "iso-10816-7-2009", "reported"],
      ["start-up", "start-up", "iso-14694-2003", "MEMORY"],
      ["shutdown", "shutdown", "iso-14694-2003", "MEMORY"],
    ]);
  });

  it("the running speed of a row is a fact of its machine", async () => {
    const path = file("v,n\n50,1500\n50,12000\n");
    const told = ["--from", "um pp", "--speed-column", "n", "--speed-unit", "r/min", "--scheme", "api-617-8th-shaft"];
    const { out } = await veladis(["table", path, "--column", "v", ...told, "--machine", "compressor shaft"]);
    const zone = (n: number) =>
      classify("50 um pp", { scheme: "api-617-8th-shaft", machine: `compressor shaft ${n} r/min` }).zone;
    expect(
      rowsOf(out)
        .slice(1)
        .map((row) => row[2]),
    ).toEqual([zone(1500), zone(12000)]);
  });

  it("a cell of several lines says no more than one line", async () => {
    const path = file('v,unit,m\n3,"mm/s\trms","group 2\nrigid"\n3,"mm/s rms\n25\ngroup 1 flexible",group 2 rigid\n');
    const told = ["--column", "v", "--from-column", "unit", "--machine-column", "m", "--scheme", "iso-10816-3-2009"];
    const { out, err } = await veladis(["table", path, ...told]);
    expect(out).toContain(`rigid",C,D,iso-10816-3-2009,reported,"${usual}; ${notJudged}"\n`);
    expect(err).toContain("rows: 2 in = 1 answered + 1 refused");
  });

  it("a speed told twice and equal is one fact; one that differs is refused with both named", async () => {
    const told = ["--column", "v", "--from", "mm/s rms", "--machine", "group 2 rigid 1500 r/min"];
    const own = ["--speed-column", "n", "--scheme", "iso-10816-3-2009"];
    const run = (rows: string, unit = "r/min") =>
      veladis(["table", file(`v,n\n${rows}`), ...told, ...own, "--speed-unit", unit]);
    const { err, code } = await run("1,1480\n");
    expect([code, err]).toEqual([2, expect.stringContaining('"group 2 rigid 1500 r/min" and 1480 r/min')]);
    for (const [rows, unit] of [
      ["1,1500\n", "r/min"],
      ["1,25\n", "Hz"],
      // 32-bit float noise
      [`1,${1500 * (1 + 1e-7)}\n`, "r/min"],
    ] as const) {
      const { code, out } = await run(rows, unit);
      expect([code, out]).toEqual([0, expect.stringContaining(",A,")]);
    }
    expect((await run("1,1500.01\n")).code).toBe(2);
    // a range is no speed that a column could be equal to
    const range = [...told.slice(0, 5), "group 2 rigid 1400 to 1500 r/min"];
    expect((await veladis(["table", file("v,n\n1,1500\n"), ...range, ...own, "--speed-unit", "r/min"])).code).toBe(2);
  });

  it("what is assumed is said; with --strict it is refused", async () => {
    const path = file("v\n2\n");
    const told = ["--column", "v", "--from", "mm/s rms", "--machine", "pump 250 kW", "--scheme", "iso-10816-7-2009"];
    expect((await veladis(["table", path, ...told])).out).toContain("not given, and taken for its lower limits");
    const { code, err, out } = await veladis(["table", path, ...told, "--strict"]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain("missing-fact");
  });

  it("by all schemes that a machine's facts admit: the worst governs, what else is possible stands beside it", async () => {
    const path = file(
      "v,m\n2,motor 1485 r/min rigid\n30,steam turbine 12 MW 5400 r/min\n5,motor 400 kW group 2 rigid\n1,motor 400 kW 1485 r/min rigid wibble\n",
    );
    const velocity = ["--column", "v", "--from", "mm/s rms", "--machine-column", "m"];
    const { out, err, code } = await veladis(["table", path, ...velocity]);
    expect(code).toBe(2);
    expect(out).toMatch(/^2,.*,C,C,iso-20816-3-2022 \+ iso-10816-1-1995-annexB,MEMORY,.*power above 15 kW: not given/m);
    expect(out).toMatch(/^1,.*set aside: ""rigid wibble"": not understood/m);
    expect(err).toMatch(/group 2 and a power of 400 kW/);
    const displacement = ["--column", "v", "--from", "um pp", "--machine", "steam turbine 12 MW 5400 r/min"];
    const other = await veladis(["table", file("v\n160\n"), ...displacement]);
    expect(other.out).toMatch(
      /^160,D,D,iso-20816-3-2022 \+ iso-20816-3-2022-shaft,.*place: not given, and the worse of/m,
    );
    // displacement alone: 6 mil pp is 20.1 mm/s rms at 3570 r/min
    const alone = ["--column", "v", "--from", "mil pp", "--machine", "motor 400 kW 3570 r/min rigid housing"];
    expect((await veladis(["table", file("v\n6\n0.5\n"), ...alone])).out).toMatch(/\n6,D,D,.*\n0\.5,A,D,/);
  });

  it("by a table of one's own", async () => {
    const scheme = {
      ...{ id: "site-rule", kind: "grades", standard: "Site rule", edition: "1", title: "Rule", status: "guide" },
      ...{ statusNote: "invented", scope: "any", place: "housing", measuredOn: "housings", band: null },
      grades: ["fine", "watch, soon"],
      classes: [{ criteria: [{ as: "mm/s rms", limits: { fine: 2 }, source: { title: "r", provenance: "memory" } }] }],
    };
    const by = file(JSON.stringify(scheme), "rule.json");
    const { out } = await veladis(["table", file("v\n1\n3\n"), "--column", "v", "--from", "mm/s rms", "--scheme", by]);
    const own = `"${usual}"`;
    expect(out).toBe(
      `v,zone,worst,scheme,limits,assumed\n1,fine,fine,site-rule,MEMORY,${own}\n3,"watch, soon","watch, soon",site-rule,MEMORY,${own}\n`,
    );
  });
});

describe("refused rows", () => {
  const bad = 'tag,v\n"two\nlines",1\n\na,-1\nb,\nc,"7,1"\nd,NaN\ne\nf,1e400\n"g\nh",x\ni,2\n';

  it("go to a file of their own with line and reason, and are counted", async () => {
    const out = place();
    const { code, err } = await veladis(["table", file(bad), ...fixed, "--out", out]);
    expect(code).toBe(2);
    expect(readFileSync(out, "utf8").split("\n").filter(Boolean)).toHaveLength(4);
    const refused = readFileSync(out.replace(".csv", ".refused.csv"), "utf8");
    expect(refused.split("\n").map((row) => row.split(",").slice(0, 2).join(","))).toEqual([
      "line,refused",
      "5,negative",
      "6,not-a-number",
      "7,not-a-number",
      "8,not-a-number",
      "9,length-mismatch",
      "10,sensor-fault",
      "11,not-a-number",
      'h",x',
      "",
    ]);
    expect(refused).toContain('5,negative,"expected an amplitude of zero or more, received -1",a,-1\n');
    expect(err).toMatch(
      /^rows: 10 in = 2 answered \+ 7 refused [^\n]*\nwritten {3}.*out\.csv\n {10}.*out\.refused\.csv: refused rows\n/,
    );
  });

  it("--keep-going exits with 0, --refused names the file, none is made without need", async () => {
    const [out, refused] = [place(), place("bad.csv")];
    const args = ["--out", out, "--refused", refused, "--keep-going"];
    expect((await veladis(["table", file(bad), ...fixed, ...args])).code).toBe(0);
    expect(readFileSync(refused, "utf8")).toContain("negative");
    // an older file of refused rows does not outlive a run without any
    expect((await veladis(["table", file("v\n1\n"), ...fixed, ...args, "--replace"])).code).toBe(0);
    expect(existsSync(refused)).toBe(false);
  });

  it("have ten reasons on standard error where there is no file for them", async () => {
    const { err, out } = await veladis(["table", file(`v\n${"-1\n".repeat(25)}`), ...fixed]);
    expect(err.match(/negative/g)).toHaveLength(10);
    expect(err).toContain("15 more refused; --refused <file> lists them all\n");
    expect(out).toBe("v,in/s pk,assumed\n");
  });

  it("a row without the frequency it needs", async () => {
    const path = file("v,n\n1,1500\n1,\n1,0\n");
    const told = ["--column", "v", "--from", "g pk", "--to", "mm/s rms", "--speed-column", "n", "--at", "1x"];
    const { err } = await veladis(["table", path, ...told, "--speed-unit", "r/min"]);
    expect(err).toContain("line 3: missing-frequency");
    expect(err).toContain("line 4: not-positive");
    expect((await veladis(["table", path, ...told])).err).toContain("--speed-unit");
  });
});

describe("as JSON", () => {
  it("an object a row, one a refused row, and the summary", async () => {
    const machine = ["--machine", "group 2 rigid", "--scheme", "iso-10816-3-2009", "--json"];
    const { out, err, code } = await veladis(["table", file("tag,v\nfän,2.54\nb,-1\n"), ...fixed, ...machine]);
    expect(JSON.parse(out)).toEqual({
      line: 2,
      cells: { tag: "fän", v: "2.54" },
      "in/s pk": convert(2.54, "mm/s rms", "in/s pk"),
      zone: "B",
      worst: "D",
      scheme: "iso-10816-3-2009",
      limits: "reported",
      assumed: `sine; ${usual}; ${notJudged}`,
    });
    const [error, summary] = err
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(error.error).toMatchObject({ line: 3, code: "negative" });
    expect(summary.summary).toEqual({
      account: {
        ...{ in: 2, answered: 1, refused: 1, skipped: { blank: 0, remarks: 0, preamble: 0 } },
        ...{ separator: "comma", torn: false },
      },
      ...{ rows: 2, written: 1, refused: 1, zones: { B: 1 }, worst: { D: 1 }, known: { reported: 1 } },
      assumed: ["sine", ...usual.split("; "), notJudged],
    });
    expect(code).toBe(2);
    expect((await veladis(["table", file("v,v\n1,2\n"), ...fixed, "--json"])).err).toContain("syntax");
  });
});

describe("rows stay as they were, byte for byte", () => {
  const bytes = (text: string): Buffer => Buffer.from(text, "latin1");
  it.each<[what: string, content: Buffer, row: string, end: string, ...told: string[]]>([
    ["Windows line ends", bytes("a,v\r\nx,1\r\n"), "x,1,", "\r\n"],
    ["old line ends", bytes("a,v\rx,1\r"), "x,1,", "\r"],
    ["no line end behind the last row", bytes("a,v\nx,1"), "x,1,", "\n"],
    ["quotes that need not be", bytes('"a","v"\n"x","1"\n'), '"x","1",', "\n"],
    ["quotes, separators and line ends in cells", bytes('a,v\n"x ""y"", \nz",1\n'), '"x ""y"", \nz",1,', "\n"],
    ["inch marks, where quotes are none", bytes('a,v\n3" line,1\n'), '3" line,1,', "\n", "--quotes", "none"],
    ["semicolons", bytes("a;v\nx,y;1\n"), "x,y;1;", "\n"],
    ["tabs", bytes("a\tv\nx\t1\n"), "x\t1\t", "\n"],
    ["pipes", bytes("a|v\nx,y|1\n"), "x,y|1|", "\n"],
    ["Latin-1", bytes("a,v\n\xb5\xe9\xff\x96,1\n"), "\xb5\xe9\xff\x96,1,", "\n", "--encoding", "latin-1"],
    ["blank lines before the header", bytes("\n\na,v\nx,1\n"), "x,1,", "\n"],
  ])("%s, in a file and on standard output", async (_, content, row, end, ...more) => {
    const out = place();
    const input = file(content);
    expect((await veladis(["table", input, ...fixed, ...more, "--out", out])).code).toBe(0);
    expect(readFileSync(out, "latin1")).toContain(`${row}${convert(1, "mm/s rms", "in/s pk")}`);
    expect((await veladis(["table", input, ...fixed, ...more])).bytes).toEqual(readFileSync(out));
    expect(readFileSync(out, "latin1").endsWith(end)).toBe(true);
  });

  it("keeps the mark of UTF-8, and UTF-16 of both kinds", async () => {
    const out = place();
    await veladis(["table", file("\ufeffv,tag\n1,µ\n"), ...fixed, "--out", out]);
    expect(readFileSync(out, "utf8")).toMatch(/^\ufeffv,tag,in\/s pk,assumed\n1,µ,/);
    const utf16 = Buffer.from("\ufeffv\ttag\r\n1\tµ\r\n2\n", "utf16le");
    const kept = ["--out", out, "--replace", "--keep-going", "--separator", "tab"];
    for (const swap of [(bytes: Buffer) => bytes, (bytes: Buffer) => Buffer.from(bytes).swap16()]) {
      await veladis(["table", file(swap(utf16)), ...fixed, ...kept]);
      expect(swap(readFileSync(out)).toString("utf16le")).toMatch(
        /^\ufeffv\ttag\tin\/s pk\tassumed\r\n1\tµ\t0\.05\d+\tsine\r\n$/,
      );
      const refused = readFileSync(out.replace(".csv", ".refused.csv"));
      expect(swap(refused).toString("utf16le")).toMatch(/^\ufeffline\trefused\treason\tv\ttag\r\n3\tlength-mismatch\t/);
    }
  });

  it("keeps the lines above the header, in the file of refused rows too", async () => {
    const out = place();
    const input = file("sep=;\nExport, of\nv;tag\n1,5;x\n2.5;y\n");
    const told = ["--decimal-comma", "--header-line", "3", "--digits", "3", "--out", out];
    expect((await veladis(["table", input, ...fixed, ...told])).err).toContain("+ 2 skipped (2 above the header)");
    expect(readFileSync(out, "utf8")).toBe("sep=;\nExport, of\nv;tag;in/s pk;assumed\n1,5;x;0,0835;sine\n");
    const refused = out.replace(".csv", ".refused.csv");
    expect(readFileSync(refused, "utf8")).toMatch(
      /^sep=;\nExport, of\nline;refused;reason;v;tag\n5;not-a-number;.*;2\.5;y\n$/,
    );
    // mended, it is input like any other
    const mended = file(readFileSync(refused, "utf8").replace(";2.5;", ";2,5;"));
    expect((await veladis(["table", mended, ...fixed, ...told, "--replace"])).code).toBe(0);
  });

  it("what Latin-1 cannot write is refused", async () => {
    const scheme = {
      ...{ id: "Ω", kind: "grades", standard: "Site rule", edition: "1", title: "Rule", status: "guide" },
      ...{ statusNote: "invented", scope: "any", place: "housing", measuredOn: "housings", band: null },
      grades: ["fine", "watch"],
      classes: [{ criteria: [{ as: "mm/s rms", limits: { fine: 2 }, source: { title: "r", provenance: "memory" } }] }],
    };
    const by = [
      "--scheme",
      file(JSON.stringify({ ...scheme, grades: ["fine", "Ω"] }).replace("Ω", "site"), "rule.json"),
    ];
    const args = ["--column", "v", "--from", "mm/s rms", ...by, "--encoding", "latin-1"];
    expect((await veladis(["table", file("v\n1\n"), ...args])).code).toBe(0);
    const { err, code } = await veladis(["table", file("v\n3\n"), ...args]);
    expect([code, err]).toEqual([2, expect.stringContaining("text that Latin-1 can write")]);
  });

  it("one column: a cell that holds the separator of what is added is put in quotes", async () => {
    const out = await veladis([
      "table",
      file("Vibration, mm/s;x\n4,9\n"),
      "--column",
      "1",
      ...fixed.slice(2),
      "--decimal-comma",
      "--separator",
      "none",
      "--digits",
      "3",
    ]);
    expect(out.out).toBe('"Vibration, mm/s;x";in/s pk;assumed\n4,9;0,273;sine\n');
    const plain = file('v\n4 "mm/s, rms\n');
    const { err } = await veladis([
      "table",
      plain,
      "--column",
      "v",
      "--to",
      "in/s pk",
      "--quotes",
      "none",
      "--separator",
      "none",
    ]);
    expect(err).toContain("1 refused");
  });

  it("without quotes a cell that is added holds no separator", async () => {
    const path = file('v;tag\n1;3"\n');
    const told = ["--quotes", "none", "--from", "um pp", "--to", "mm/s rms", "--at", "25 Hz", "--digits", "3"];
    expect((await veladis(["table", path, "--column", "v", ...told])).out).toBe(
      'v;tag;mm/s rms;assumed\n1;3";0.0555;one frequency  sine\n',
    );
  });
});

describe("an output is there whole or not at all", () => {
  const good = (): string => file("v\n1\n2\n");
  const left = (path: string): string[] => readdirSync(join(path, ".."));

  it("is not overwritten without --replace, and comes out the same again with it", async () => {
    const [input, out] = [good(), place()];
    expect((await veladis(["table", input, ...fixed, "--out", out])).code).toBe(0);
    const before = readFileSync(out);
    const { code, err } = await veladis(["table", input, ...fixed, "--out", out]);
    expect(code).toBe(2);
    expect(err).toContain("--replace");
    expect((await veladis(["table", input, ...fixed, "--out", out, "--replace"])).code).toBe(0);
    expect(readFileSync(out)).toEqual(before);
    expect(left(out)).toEqual(["out.csv"]);
  });

  it.each([
    ["no column", (input: string) => [input, "--from", "mm/s rms", "--to", "in/s pk"]],
    ["a column there is none of", (input: string) => [input, ...fixed.with(1, "w")]],
    ["nothing to add", (input: string) => [input, "--column", "v", "--from", "mm/s rms"]],
    ["a type that is none", (input: string) => [input, ...fixed.with(3, "mm/s")]],
    ["no frequency", (input: string) => [input, ...fixed.with(5, "g pk")]],
    ["an order without the speed", (input: string) => [input, ...fixed, "--at", "1x"]],
    [
      "a machine that is none",
      (input: string) => [input, ...fixed, "--machine", "group 9", "--scheme", "iso-10816-3-2009"],
    ],
    ["two ways to say one thing", (input: string) => [input, ...fixed, "--from-column", "v"]],
    ["a detector alone", (input: string) => [input, "--column", "v", "--to", "in/s pk", "--detector", "rms"]],
    ["two files", (input: string) => [input, input, ...fixed]],
    ["a file that is not there", () => ["nowhere.csv", ...fixed]],
    ["a folder", () => [folder, ...fixed]],
    ["a table without a header", () => [file("0.5\n2\n"), ...fixed.with(1, "1")]],
    ["a file that is no table", () => [file(""), ...fixed]],
    ["a quotation mark that nothing closes", () => [file(`v\n"1\n${"2\n".repeat(1.5e6)}`), ...fixed]],
    ["Parquet that is none", () => [file("v\n1\n", "in.parquet"), ...fixed]],
    ["a column that is there already", () => [file("v,in/s pk\n1,2\n"), ...fixed]],
    ["no input", () => fixed],
  ])("%s is refused and leaves nothing behind", async (_, args) => {
    const out = place();
    const { code, err } = await veladis(["table", ...args(good()), "--out", out]);
    expect(code).toBe(2);
    expect(err).toMatch(/^veladis: [a-z-]+\n {2}expected: /);
    expect(left(out)).toEqual([]);
  });

  it.each([
    ["a header", "v\n"],
    ["a header, blank lines and a remark", "v,w\n\n# nothing\n"],
  ])("is left as it was by %s alone, which is refused", async (_, content) => {
    const out = place();
    const refused = out.replace(".csv", ".refused.csv");
    writeFileSync(out, "kept\n");
    writeFileSync(refused, "kept too\n");
    const { err, code } = await veladis(["table", file(content), ...fixed, "--out", out, "--replace"]);
    expect([err, code]).toEqual([
      "veladis: missing-fact\n  expected: a header line, and rows below it\n  received: no rows\n",
      2,
    ]);
    expect([readFileSync(out, "utf8"), readFileSync(refused, "utf8")]).toEqual(["kept\n", "kept too\n"]);
    for (const args of [["table"], []]) {
      const printed = await veladis([...args, ...fixed], content);
      expect([printed.out, printed.code]).toEqual(["", 2]);
    }
  });

  it("names the older file of refused rows that --replace removes", async () => {
    const out = place();
    const refused = out.replace(".csv", ".refused.csv");
    const args = ["table", file("v\n1\n"), ...fixed, "--out", out, "--replace"];
    expect((await veladis(args)).err).not.toContain("removed");
    writeFileSync(refused, "of an earlier run\n");
    const { err } = await veladis(args);
    expect(err.replaceAll(/\s+/g, " ")).toContain(`removed ${refused}, of an earlier run: no row was refused`);
    expect(existsSync(refused)).toBe(false);
    writeFileSync(refused, "of an earlier run\n");
    const { summary } = JSON.parse((await veladis([...args, "--json"])).err);
    expect([summary.removed, existsSync(refused)]).toEqual([refused, false]);
  });

  it("goes neither over its input, nor over what is no plain file, nor into a folder there is none of", async () => {
    const input = good();
    const linked = join(input, "..", "link.csv");
    symlinkSync(input, linked);
    // a pipe of its own: a run that is wrong, as under mutation, would move its output over a device of the computer
    const pipe = join(mkdtempSync(join(folder, "pipe-")), "pipe");
    spawnSync("mkfifo", [pipe]);
    for (const out of [input, linked, pipe, join(input, ".."), join(folder, "nowhere", "out.csv")]) {
      expect((await veladis(["table", input, ...fixed, "--out", out, "--replace"])).code, out).toBe(2);
    }
    const out = place();
    expect((await veladis(["table", input, ...fixed, "--out", out, "--refused", out])).code).toBe(2);
    expect(readFileSync(input, "utf8")).toBe("v\n1\n2\n");
    expect(left(input).sort()).toEqual(["in.csv", "link.csv"]);
  });

  it("is moved to its place when the last portion is written", async () => {
    const path = place();
    const whole = await wholeFile(path, false);
    const portion = "1,2\n".repeat(1 << 18);
    for (let i = 0; i < 8; i++) void whole.write(Buffer.from(portion));
    await whole.commit();
    expect(readFileSync(path, "utf8")).toHaveLength(8 * portion.length);
  });
});

describe("no wrong number from a file", () => {
  const told = ["--from", "mm/s rms", "--machine", "group 2 rigid", "--scheme", "iso-10816-3-2009"];
  const zoneOf = async (content: string, column: string, ...more: string[]) =>
    veladis(["table", file(content), "--column", column, ...told, ...more]);

  it("the header with a comma and decimal commas: refused, with --decimal-comma 4.9 is in zone D", async () => {
    const content = "Vibration, mm/s\n4,9\n";
    const { err, out, code } = await zoneOf(content, "1");
    expect([out, code]).toEqual(["", 2]);
    expect(err).toContain('--decimal-comma where "4,9" is one number, or --separator comma where it is 2 cells');
    const comma = await zoneOf(content, "Vibration, mm/s", "--decimal-comma");
    expect(comma.out).toMatch(/^"?Vibration, mm\/s"?;zone;.*\n4,9;D;D;/);
  });

  it("Velocity;Remarks, if any", async () => {
    const { out } = await zoneOf("Velocity;Remarks, if any\n4,9;ok, or so\n", "Velocity", "--decimal-comma");
    expect(out).toMatch(
      /\n4,9;ok, or so;D;D;iso-10816-3-2009;reported;"condition in service: not given, assumed; place housing: [^;]*; not judged: limits in um rms: [^;]*"\n$/,
    );
    const { err, code } = await zoneOf("Velocity;Remarks, if any\n4,9;ok\n", "Velocity");
    expect([code, err]).toEqual([2, expect.stringContaining("--decimal-comma where a comma stands for them")]);
  });

  it("ragged rows are refused, and so is a row that may be a remark", async () => {
    const { out, err } = await zoneOf("tag,v\nx,1\nx,1,9\nx\n#3 fan,4.2\n# remark\n\n", "v");
    expect(out.trimEnd().split("\n")).toHaveLength(2);
    expect(err.match(/line \d: [a-z-]+/g)).toEqual([
      "line 3: length-mismatch",
      "line 4: length-mismatch",
      "line 5: syntax",
    ]);
    expect(err).toContain("rows: 6 in = 1 answered + 3 refused + 2 skipped (1 blank, 1 remark); separator: comma\n");
  });

  it("a line end in a quoted header loses no row", async () => {
    const { out, err } = await zoneOf('"Velocity\nin mm/s";tag\n4.9;x\n', "1");
    expect(out).toMatch(/\n4\.9;x;D;/);
    expect(err).toContain("rows: 1 in = 1 answered");
  });

  it("blank lines with --replace: the output that was there is untouched, one line, exit 2", async () => {
    const out = place();
    writeFileSync(out, "kept\n");
    for (const content of ["\n\n\n", "", "\r\n \r\n"]) {
      const { err, code } = await zoneOf(content, "v", "--out", out, "--replace", "--json");
      expect(code).toBe(2);
      expect(err.trimEnd().split("\n")).toHaveLength(1);
      expect(JSON.parse(err).error).toMatchObject({ code: "missing-fact", received: "nothing" });
      expect(readFileSync(out, "utf8")).toBe("kept\n");
    }
  });

  it("duplicate headings are refused where they are asked for by name", async () => {
    const content = "v,tag,v\n1,x,4.9\n";
    const { err, code } = await zoneOf(content, "v");
    expect([code, err]).toEqual([2, expect.stringContaining("a column by its number, 1 or 3")]);
    expect((await zoneOf(content, "3")).out).toContain("1,x,4.9,D,");
    expect((await zoneOf(content.replace("v,tag,v", "tag,v , tag"), "v")).code).toBe(2);
    expect((await zoneOf("tag, v ,tag\nx,4.9,y\n", "v")).out).toContain("x,4.9,y,D,");
  });

  it("options for delimited text are refused beside Parquet", async () => {
    const { err, code } = await zoneOf("", "v", "--header-line", "3");
    expect(code).toBe(2);
    expect(err).toContain("fewer lines");
    const parquet = ["table", file("PAR1", "in.parquet"), "--column", "v", ...told, "--separator", "tab"];
    expect((await veladis(parquet)).err).toContain("received: --separator, and Parquet");
  });

  it("--at 2x is twice the running speed", async () => {
    const order = ["--speed-column", "n", "--speed-unit", "r/min", "--digits", "6"];
    const at = async (times: string) =>
      (
        await veladis([
          "table",
          file("v,n\n50,1500\n"),
          ...["--column", "v", "--from", "um pp", "--to", "mm/s rms"],
          ...order,
          "--at",
          times,
        ])
      ).out;
    for (const [times, hertz] of [
      ["1x", 25],
      ["2x", 50],
      ["0.5x", 12.5],
    ] as const) {
      const value = Number(convert(50, "um pp", "mm/s rms", { at: { hertz } }).toPrecision(6));
      expect(Number((await at(times)).split("\n")[1]?.split(",")[2]), times).toBe(value);
    }
  });

  it("the frequency of a reading is its own: another in the column is refused", async () => {
    const path = file("v,f\n3 mil pp at 1500 r/min,25\n3 mil pp at 1500 r/min,50\n3 mil pp,50\n");
    const { out, err } = await veladis([
      "table",
      path,
      ...["--column", "v", "--to", "mm/s rms", "--at-column", "f", "--at-unit", "Hz"],
    ]);
    const value = (hertz: number) => String(convert(3, "mil pp", "mm/s rms", { at: { hertz } }));
    expect(
      rowsOf(out)
        .slice(1)
        .map((row) => row[2]),
    ).toEqual([value(25), value(50)]);
    expect(err).toContain("line 3: ");
  });
});
