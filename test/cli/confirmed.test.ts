import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const id = "iso-10816-7-2009";
const machine = ["--machine", "pump 90 kW 2980 r/min category I"];
let folder = "";
let header: string[] = [];
let rows: string[][] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "veladis-confirmed-"));
  const { out } = await veladis(["schemes", id, "--sheet", "csv"]);
  const cells = (line: string): string[] =>
    [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)]
      .map(([, cell]) => cell as string)
      .slice(0, header.length || 15);
  const [first = "", ...others] = out.trimEnd().split("\n");
  header = cells(first);
  rows = others.map(cells).filter(([, , , limit]) => limit !== "signature");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

type Change = Readonly<Record<string, string>>;

/** The sheet, filled in by a person for whom all agrees, but for the changes of single rows; its path. */
function filledIn(changes: Readonly<Record<number, Change>> = {}, name = "filled.csv", end = "\n"): string {
  const lines = rows.map((row, i) => {
    const filled: Change = { agrees: "yes", page: "12", by: "J. Example", on: "2024-03-04", ...changes[i] };
    return row.map((cell, k) => filled[header[k] as string] ?? cell).join(",");
  });
  return written(`${[header.join(","), ...lines].join("\n")}${end}`, name);
}

function written(text: string, name: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const blank: Change = { agrees: "", page: "", by: "", on: "" };
const lower: Change = { agrees: "", printed: "6.3" };

describe("the file of confirmations", () => {
  it("has a row for each limit, and is taken when it is filled in", async () => {
    expect(rows).toHaveLength(25);
    const { out, code } = await veladis(["judge", "6.4 mm/s rms", ...machine, "--confirmed", filledIn({ 2: lower })]);
    expect(code).toBe(0);
    expect(out).toContain("zone D");
    expect(out).toContain("by J. Example, 2024-03-04, p. 12");
    expect(out.replace(/\s+/g, " ")).toContain(
      "caution DIFFERS FROM THE TABLE AS SHIPPED: category I, power up to 200 kW, C/D: the copy prints 6.3 mm/s rms, the table as shipped has 6.5 (reported)",
    );
  });

  it("may be filled in in part; several files are taken together, a limit in one of them", async () => {
    const first = filledIn(Object.fromEntries(rows.map((_, i) => [i, i < 3 ? {} : blank])), "one.csv");
    const rest = filledIn(Object.fromEntries(rows.map((_, i) => [i, i < 3 ? blank : {}])), "rest.csv");
    const counted = async (...files: string[]) =>
      (await veladis(["schemes", ...files.flatMap((file) => ["--confirmed", file])])).out.match(
        /ISO|iso-10816-7-2009 .*/,
      )?.[0];
    expect(await counted(first)).toMatch(/3 confirmed$/);
    expect(await counted(first, rest)).toMatch(/ 25 confirmed$/);
    const { err, code } = await veladis(["schemes", "--confirmed", first, "--confirmed", first]);
    expect(code).toBe(2);
    expect(err).toContain("line 2 of one.csv: each limit once");
  });

  it("may come as JSON, with the same checks and the lines", async () => {
    const one = { scheme: id, edition: "2009", row: "category I, power up to 200 kW", limit: "C/D", as: "mm/s rms" };
    const signed = { printed: 6.3, page: "12", by: "J. Example", on: "2024-03-04" };
    const path = written(JSON.stringify([{ ...one, ...signed }], null, 2), "good.json");
    expect((await veladis(["judge", "6.4 mm/s rms", ...machine, "--confirmed", path])).out).toContain("zone D");
    const two = [
      { ...one, ...signed },
      { ...one, ...signed, limit: "B/D" },
    ];
    const bad = written(JSON.stringify(two, null, 2), "bad.json");
    expect((await veladis(["schemes", "--confirmed", bad])).err).toContain("line 13 of bad.json: a limit of the row");
    for (const [text, words] of [
      ["{}", "a list of confirmations"],
      ["[1]", "line 1 of x.json"],
      ["[{", "confirmations as JSON"],
      ["[]", "a confirmation in x.json"],
    ])
      expect((await veladis(["schemes", "--confirmed", written(text as string, "x.json")])).err).toContain(words);
  });

  it("all wrong elements of a JSON file are told, as rows of a CSV file are, and nothing is taken", async () => {
    const one = { scheme: id, edition: "2009", row: "category I, power up to 200 kW", limit: "C/D", as: "mm/s rms" };
    const signed = { printed: 6.3, page: "12", by: "J. Example", on: "2024-03-04" };
    const all = [
      7,
      { ...one, ...signed },
      null,
      { ...one, ...signed, limit: "B/D" },
      { ...one, readAt: "here" },
      [one],
    ];
    const path = written(`[\n${all.map((element) => JSON.stringify(element)).join(",\n")}\n]\n`, "wrong.json");
    const { out, err, code } = await veladis(["judge", "6.4 mm/s rms", ...machine, "--confirmed", path]);
    expect([code, out]).toEqual([2, ""]);
    expect([...err.matchAll(/line (\d+) of wrong\.json/g)].map(([, line]) => line)).toEqual(["2", "4", "5", "6", "7"]);
    expect(err).toContain("received: 5 with one, all told above");
  });

  it.each<[string, Change, string]>([
    ["another edition", { edition: "2018" }, "line 4 of filled.csv: the edition"],
    ["another row", { row: "category IX" }, "line 4 of filled.csv: a row of the table"],
    ["another unit", { as: "in/s rms" }, "line 4 of filled.csv: unit and detector"],
    ["agrees and a value", { printed: "6.5" }, "one of the two"],
    ["neither", { agrees: "" }, "neither in a row that is filled in"],
    ["a word for yes", { agrees: "ja" }, "agrees, yes or nothing"],
    ["a decimal comma", { agrees: "", printed: '"6,3"' }, "with a point for decimals"],
    ["a value that raises a limit", { agrees: "", printed: "6.6" }, "second, the name of another person"],
    ["a slip", { agrees: "", printed: "9.2", second: "K. Example" }, "looks like peak for RMS"],
    ["a changed sheet", { shipped: "6.4" }, "print a new check sheet"],
    ["another scheme", { scheme: "iso-10816-7" }, "the id of a built-in scheme"],
    ["no name", { by: "" }, "by, the name of who read it"],
    ["a day of another form", { on: "3/4/2024" }, "2024-03-04"],
    ["no name, as a fact that is missing", { by: "" }, "veladis: missing-fact"],
    [
      "no page and no day",
      { page: "", on: "" },
      "page, the page on which the value stands; on, the day on which it was read",
    ],
    [
      "another unit behind the value",
      { agrees: "", printed: "6.3 in/s rms" },
      "line 4 of filled.csv: printed, the value of your copy, in the unit and detector of the row, mm/s rms",
    ],
    ["a unit without its detector", { agrees: "", printed: "6.3 mm/s" }, "in the unit and detector of the row"],
    ["a ragged line", { by: "J., Example" }, "line 4 of filled.csv: 15 cells"],
  ])("is refused whole for %s, with the line", async (_, change, words) => {
    const { out, err, code } = await veladis([
      "judge",
      "2 mm/s rms",
      ...machine,
      "--confirmed",
      filledIn({ 2: change }),
    ]);
    expect([code, out]).toEqual([2, ""]);
    expect(err.replace(/\s+/g, " ")).toContain(words);
  });

  it("a value may have the unit and detector of its row behind it", async () => {
    const file = filledIn({ 2: { agrees: "", printed: "6.3 mm/s  RMS" } });
    const { out } = await veladis(["judge", "6.4 mm/s rms", ...machine, "--confirmed", file]);
    expect(out.replace(/\s+/g, " ")).toContain("the copy prints 6.3 mm/s rms");
  });

  it("all faulty rows are told at once, up to ten, then how many there are", async () => {
    const three = filledIn({ 0: { by: "" }, 2: { agrees: "", printed: "6.6" }, 4: { edition: "2018" } }, "x.csv");
    const { out, err, code } = await veladis(["schemes", "--confirmed", three]);
    expect([code, out]).toEqual([2, ""]);
    expect([...err.matchAll(/expected: (line \d+) of x.csv/g)].map(([, line]) => line)).toEqual([
      "line 2",
      "line 4",
      "line 6",
    ]);
    expect(err).toContain("received: 3 with one, all told above");
    const all = filledIn(Object.fromEntries(rows.map((_, i) => [i, { by: "" }])), "all.csv");
    const many = (await veladis(["schemes", "--confirmed", all])).err;
    expect(many.match(/by, the name of who read it/g)).toHaveLength(10);
    expect(many).toContain("received: 25 with one, the first 10 of them told above");
    const lines = (await veladis(["schemes", "--json", "--confirmed", three])).err.trimEnd().split("\n");
    expect(lines.map((line) => Object.keys(JSON.parse(line)))).toEqual(Array(4).fill(["error"]));
  });

  it("two faults of one row of the table are both told, and nothing that follows from them alone", async () => {
    const raised = filledIn({ 0: { agrees: "", printed: "2.6" }, 1: { agrees: "", printed: "4.1" } }, "x.csv");
    const { err } = await veladis(["schemes", "--confirmed", raised]);
    expect(err.match(/expected: line/g)).toHaveLength(2);
  });

  describe("written by a spreadsheet with decimal commas", () => {
    const semicolons = (printed: string, comma = true): string => {
      const cells = rows.map((row, i) => {
        const filled: Change = {
          agrees: i === 2 ? "" : "yes",
          printed: i === 2 ? printed : "",
          page: "12",
          by: "J. Example",
          on: "2024-03-04",
        };
        return row.map(
          (cell, k) =>
            filled[header[k] as string] ?? (comma && header[k] === "shipped" ? cell.replace(".", ",") : cell),
        );
      });
      return written(`${[header, ...cells].map((row) => row.join(";")).join("\n")}\n`, "x.csv");
    };

    it("is taken where shipped shows them too", async () => {
      const { out, err } = await veladis(["judge", "6.4 mm/s rms", ...machine, "--confirmed", semicolons("6,3")]);
      expect(err).toBe("");
      expect(out.replace(/\s+/g, " ")).toContain("the copy prints 6.3 mm/s rms, the table as shipped has 6.5");
    });

    it.each<[string, string, boolean, string]>([
      ["shipped has points", "6,3", false, "printed, the value of your copy, with a point for decimals"],
      [
        "shipped has commas and the value a point",
        "6.3",
        true,
        "printed, the value of your copy, with a comma for decimals",
      ],
    ])("is refused where %s", async (_, printed, comma, words) => {
      expect((await veladis(["schemes", "--confirmed", semicolons(printed, comma)])).err).toContain(
        `line 4 of x.csv: ${words}`,
      );
    });
  });

  it("lines with # in front are told, and refused where they have the cells of a row", async () => {
    const path = filledIn({}, "x.csv");
    const lines = readFileSync(path, "utf8").split("\n");
    const remarked = written([lines[0], "# the copy of the plant", ...lines.slice(1)].join("\n"), "x.csv");
    const told = await veladis(["judge", "2 mm/s rms", ...machine, "--confirmed", remarked]);
    expect([told.code, told.err]).toEqual([0, `${remarked}: 1 line with # in front passed over as a remark\n`]);
    const json = await veladis(["judge", "2 mm/s rms", ...machine, "--json", "--confirmed", remarked]);
    expect(JSON.parse(json.err)).toEqual({ confirmed: { file: remarked, remarks: 1 } });
    // the cell in quotes has a comma in it
    const struck = written([lines[0], `#${lines[1]}`, ...lines.slice(2)].join("\n"), "x.csv");
    expect((await veladis(["schemes", "--confirmed", struck])).err).toContain(
      "line 2 of x.csv: a row without # in front",
    );
  });

  it("a key twice in JSON is refused with its line: the last would win", async () => {
    const one = `"scheme": "${id}", "edition": "2009", "row": "category I, power up to 200 kW", "limit": "C/D", "as": "mm/s rms"`;
    const signed = `"page": "12", "by": "J. Example", "on": "2024-03-04"`;
    for (const key of ["printed", "prin\\u0074ed"]) {
      const path = written(`[\n{ ${one}, ${signed},\n"printed": 6.5,\n"${key}": 6.3 }]`, "x.json");
      const { err, code } = await veladis(["schemes", "--confirmed", path]);
      expect(code).toBe(2);
      expect(err).toContain('expected: line 4 of x.json: each key once\n  received: "printed" twice');
    }
    const twoObjects = written(`[{ ${one}, ${signed}, "printed": 6.5 }]`, "x.json");
    expect((await veladis(["schemes", "--confirmed", twoObjects])).code).toBe(0);
  });

  it.each<[string, () => string, string]>([
    [
      "nothing filled in",
      () => written(`${[header, ...rows].map((one) => one.join(",")).join("\n")}\n`, "x.csv"),
      "no row that is filled in",
    ],
    ["a torn last line", () => filledIn({}, "x.csv", ""), "a line end behind the last row"],
    ["an unknown column", () => written(`${header.join(",")},remark\n`, "x.csv"), "a column"],
    ["a column twice", () => written(`${header.join(",")},by\n`, "x.csv"), "each column once"],
    ["a column less", () => written("scheme,edition,row,limit,as,printed,page,by\n", "x.csv"), "the column on"],
    ["no file", () => join(folder, "none.csv"), "a file that can be read"],
  ])("is refused for %s", async (_, file, words) => {
    const { err, code } = await veladis(["schemes", "--confirmed", file()]);
    expect(code).toBe(2);
    expect(err.replace(/\s+/g, " ")).toContain(words);
  });
});

describe("confirmed limits in every command", () => {
  const signed = "confirmed by J. Example, 2024-03-04, p. 12";

  it("judge: by line, as JSON, by one scheme, at points, since a baseline", async () => {
    const file = ["--confirmed", filledIn({ 2: lower })];
    const line = await veladis(["judge", ...machine, ...file], "6.4 mm/s rms\n");
    expect(line.out).toContain(`limits ${signed}`);
    expect(line.out).toContain("DIFFERS FROM THE TABLE AS SHIPPED");
    const { out } = await veladis(["judge", "6.4 mm/s rms", ...machine, ...file, "--json", "--scheme", id]);
    expect(JSON.parse(out)).toMatchObject({ verified: true, confirmed: [signed], zone: "D" });
    const points = await veladis(["judge", "DE-H 6.4 mm/s rms", ...machine, ...file]);
    expect(points.out).toContain("zone D");
    const since = await veladis(["judge", "6.4 mm/s rms", ...machine, ...file, "--since", "1 mm/s rms"]);
    expect(since.code).toBe(0);
  });

  it("table: in the cell of the limits, with the difference among what is to be known", async () => {
    const args = ["table", "--column", "v", "--from", "mm/s rms", ...machine, "--confirmed", filledIn({ 2: lower })];
    const { out } = await veladis(args, "v,at\n6.4,1\n");
    expect(out).toContain(`D,D,${id},"${signed}"`);
    expect(out).toContain("DIFFERS FROM THE TABLE AS SHIPPED");
  });

  it("setpoints: the trip, the warning, the source and the sheet", async () => {
    const args = ["setpoints", "--baseline", "2 mm/s rms", ...machine, "--confirmed", filledIn({ 2: lower })];
    const { out } = await veladis(args);
    expect(out).toMatch(/TRIP +6\.300/);
    expect(out).toContain("DIFFERS FROM THE TABLE AS SHIPPED");
    expect(out).toContain(signed);
    expect((await veladis([...args, "--sheet", "markdown"])).out).toContain("J. Example, 2024-03-04");
    expect(JSON.parse((await veladis([...args, "--json"])).out).confirmed).toEqual([signed]);
  });

  it("the calculator: judge and setpoints", async () => {
    const lines =
      'judge(6.4 mm/s rms, "pump 90 kW 2980 r/min category I")\nsetpoints(2 mm/s rms, "pump 90 kW 2980 r/min category I", "iso-10816-7-2009")\n';
    const { out } = await veladis(["--confirmed", filledIn({ 2: lower })], lines);
    expect(out).toContain("zone D");
    expect(out).toContain("trip: 6.30 mm/s rms");
    expect(out.split(signed).length).toBeGreaterThan(2);
  });

  it("schemes: the grades, the table, and what is left to confirm", async () => {
    const file = ["--confirmed", filledIn({ 2: lower, 0: blank })];
    expect((await veladis(["schemes", id, ...file])).out).toMatch(/C\/D +6\.3 mm\/s rms +confirmed/);
    expect((await veladis(["schemes", ...machine, ...file])).out).toContain(id);
    const left = (await veladis(["schemes", id, "--sheet", "csv", ...file])).out.trimEnd().split("\n");
    expect(left.map((line) => line.includes(",signature,"))).toEqual([false, true, false]);
    const { out } = await veladis(["schemes", id, "--sheet", "html", ...file]);
    expect(out.split("\u2610")).toHaveLength(2);
    expect(out).toContain(signed);
  });
});

describe("a table of one's own", () => {
  const own = "docs/examples/drive-rule.json";
  const drive = ["--machine", "gear drive 200 kW"];

  /** The sheet of the own table, signed, with other values for single limits. */
  async function signedOwn(changes: Readonly<Record<number, string>> = {}, name = "own.csv"): Promise<string> {
    const { out } = await veladis(["schemes", own, "--sheet", "csv"]);
    const [head, ...lines] = out.trimEnd().split("\n");
    const limits = lines.filter((line) => !line.includes(",signature,"));
    const filled = limits.map((line, i) => {
      const signature = `${changes[i] === undefined ? "yes," : `,${changes[i]}`},3,J. Example,2024-03-04,,`;
      return line.replace(/,{7}$/, `,${signature}`);
    });
    return written(`${[head, ...filled].join("\n")}\n`, name);
  }

  it("has a page and a check sheet, which names its file", async () => {
    expect((await veladis(["schemes", own])).out).toMatch(/B\/C +3\.5 mm\/s rms/);
    const { out } = await veladis(["schemes", own, "--sheet", "html"]);
    expect(out).toContain("Hollowmere site rule 7");
    expect(out.split("\u2610")).toHaveLength(4);
    expect(out).toContain("--scheme your-table.json --confirmed your-table.csv");
  });

  it("is judged by as it was confirmed, in every command that takes it", async () => {
    const file = ["--confirmed", await signedOwn({ 1: "3.2" })];
    const judged = await veladis(["judge", "3.4 mm/s rms", ...drive, "--scheme", own, ...file, "--json"]);
    expect(JSON.parse(judged.out)).toMatchObject({ zone: "C", verified: true });
    expect((await veladis(["judge", "3.4 mm/s rms", ...drive, "--scheme", own])).out).toContain("zone B");
    const table = ["table", "--column", "v", "--from", "mm/s rms", ...drive, "--scheme", own, ...file];
    expect((await veladis(table, "v,at\n3.4,1\n")).out).toContain("DIFFERS FROM THE TABLE AS SHIPPED");
    const proposed = await veladis(["setpoints", "--baseline", "1 mm/s rms", ...drive, "--scheme", own, ...file]);
    expect(proposed.out.replace(/\s+/g, " ")).toContain("confirmed by J. Example, 2024-03-04, p. 3");
    expect((await veladis(["schemes", own, ...file])).out).toMatch(/B\/C +3\.2 mm\/s rms +confirmed/);
    const left = await veladis(["schemes", own, "--sheet", "csv", ...file]);
    expect(left.out.trimEnd().split("\n")).toHaveLength(1);
  });

  it("is told of where its confirmations are given without it, and faults are told by line", async () => {
    const alone = await veladis(["judge", "3.4 mm/s rms", ...drive, "--confirmed", await signedOwn()]);
    expect(alone.code).toBe(2);
    expect(alone.err.replace(/\s+/g, " ")).toContain("or of one of your own that is named too");
    const raised = await signedOwn({ 1: "3.6" }, "raised.csv");
    const { err, code } = await veladis(["schemes", own, "--confirmed", raised]);
    expect(code).toBe(2);
    expect(err.replace(/\s+/g, " ")).toMatch(/line 3 of raised\.csv: second, the name of another person/);
  });

  it("with an id that another has is refused, and so is another than that of a built-in id", async () => {
    const text = readFileSync(own, "utf8");
    const twin = written(text, "twin.json");
    const file = ["--confirmed", await signedOwn()];
    const both = await veladis(["schemes", own, twin, ...file]);
    expect(both.err.replace(/\s+/g, " ")).toContain("schemes with an id each");
    const taken = written(text.replace("hollowmere-circulation-drives", id), "taken.json");
    for (const more of [[], ["--sheet", "html"], ["--sheet", "csv"], file]) {
      const { err, code } = await veladis(["schemes", taken, ...more]);
      expect([more, code, err.replace(/\s+/g, " ")]).toEqual([more, 2, expect.stringContaining("an id of its own")]);
    }
  });
});

describe("the check sheet", () => {
  it("names every limit, and has room for the edition, names, days and signatures", async () => {
    const { out } = await veladis(["schemes", id, "--sheet", "html"]);
    expect(out.split("\u2610")).toHaveLength(26);
    for (const words of [
      "Edition of the copy in hand",
      "Name",
      "Date",
      "Signature",
      "Second name",
      "Table A.1",
      "MEMORY",
    ])
      expect(out).toContain(words);
  });

  it("names the limits that are disputed, and so does the page of the table", async () => {
    const sheet = (await veladis(["schemes", id, "--sheet", "html"])).out;
    expect(sheet).toMatch(/disputed limits.*category I, power up to 200 kW, C\/D: the extract prints 6\.5/s);
    const { out } = await veladis(["schemes", id]);
    expect(out.match(/ disputed/g)).toHaveLength(2);
    expect(out).toMatch(/C\/D +6\.5 mm\/s rms +reported, disputed/);
    expect(out.replace(/\s+/g, " ")).toContain("disputed: the extract prints 6.5; a course handbook");
    const { source, sources } = JSON.parse((await veladis(["judge", "6.6 mm/s rms", ...machine, "--json"])).out);
    expect(sources[source].disputed).toMatch(/prints 6\.6/);
  });

  it.each([
    [["schemes", "--sheet", "html"], "one scheme by name"],
    [["schemes", id, "iso-10816-3-2009", "--sheet", "html"], "one scheme by name"],
    [["schemes", id, "--sheet", "csv", "--json"], "--sheet with nothing but schemes by name"],
    [["schemes", "--sheet", "csv", ...machine], "--machine too"],
  ])("%j is refused", async (args, words) => {
    const { err, code } = await veladis(args);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });
});
