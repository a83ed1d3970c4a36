import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fromJson } from "veladis/json";
import { classify } from "veladis/severity";
import { afterAll, describe, expect, it } from "vitest";
import { duckdbRows } from "../sql/engines";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-route-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let files = 0;
const file = (content: string, name = `${files++}.csv`): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
const examples = "docs/examples";
const list = `${examples}/route-plant.csv`;
const april = `${examples}/route-april.csv`;
const march = `${examples}/route-march.csv`;
const judged = (route: string, ...more: string[]) => veladis(["plant", "judge", list, file(route), ...more]);

/** The rows of CSV without quotation marks in it, by the titles of the first. */
function rowsOf(csv: string): Record<string, string>[] {
  const [titles = "", ...rows] = csv.trimEnd().split("\n");
  return rows.map((row) => Object.fromEntries(row.split(",").map((cell, i) => [titles.split(",")[i], cell])));
}

describe("plant judge", () => {
  it("has the worst first, with limit, share and changes", async () => {
    const { out, code } = await veladis(["plant", "judge", list, april, "--before", march]);
    expect(code).toBe(0);
    // 5.9 of C/D 8.5 is 69.4 %; since the baseline of 2.2 it rose by 3.7, since 3.3 in March by 2.6
    expect(out).toMatch(/^C +Condensate pump +DE-V +5\.90 mm\/s rms +C\/D 8\.50 +69\.4 % +\+3\.70 \* +\+2\.60 \*$/m);
    expect(out).toContain("not read    Circulation pump 3");
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it("reads a column of frequencies with a decimal comma", async () => {
    const own = file("tag;kind;power;speed;category\nP-1;pump;90 kW;2980 r/min;category II\n");
    const route = file("tag;reading;at\nP-1;3,1 mm/s rms;24,7 Hz\n");
    const { code, err } = await veladis(["plant", "judge", own, route, "--decimal-comma"]);
    expect([err.includes("24,7"), code]).toEqual([false, 0]);
    expect((await veladis(["plant", "judge", own, route, "--decimal-comma", "--at", "24,7 Hz"])).code).toBe(0);
  });

  it("reads a unit from the cell, a column, the heading and a row below it, to one zone", async () => {
    const routes = [
      "tag,reading\nCondensate pump 1,5.9 mm/s rms\n",
      "tag,value,unit\nCondensate pump 1,5.9,mm/s rms\n",
      "tag,value,unit,detector\nCondensate pump 1,5.9,mm/s,rms\n",
      "velocity [mm/s rms],tag\n5.9,Condensate pump 1\n",
      "tag;reading\nCondensate pump 1;5.9 mm/s rms\n",
      "tag,reading\n,mm/s rms\nCondensate pump 1,5.9\n",
      `tag,overall in/s pk\nCondensate pump 1,${(5.9 * Math.SQRT2) / 25.4}\n`,
    ];
    for (const route of routes) {
      const { out, err } = await judged(route, "--json");
      expect(err.includes('"error"'), route).toBe(false);
      const verdict = fromJson("route verdict", out.split("\n")[0] as string);
      expect([verdict.zone, verdict.limit.name], route).toEqual(["C", "C/D"]);
    }
    const semicolons = readFileSync(list, "utf8").replaceAll('"2.8, 4.5 mm/s rms"', "").replaceAll(",", ";");
    const comma = file(semicolons.replace(/(?<=\d)\.(?=\d)/g, ","));
    const { out } = await veladis([
      "plant",
      "judge",
      comma,
      file("tag;reading;date\nCondensate pump 1;5,9 mm/s rms;13.04.2026\n"),
      "--decimal-comma",
      "--dates",
      "day-first",
      "--separator",
      "semicolon",
    ]);
    expect(out).toContain("read on 2026-04-13");
  });

  it("refuses by line and column, judges the others, and exits 2 unless it is to keep going", async () => {
    const route =
      "tag,reading,date\nID fan 9,3 mm/s rms,2026-04-13\nCondensate pump 1,3,2026-04-13\nCondensate pump 1,3 mm/s rms,2026-02-30\nCondensate pump 1,3 mm/s rms,2026-04-13\nCondensate pump 1\nTurbine 1,4 mm/s rms,2026-04-13\n,2 mm/s rms,\n";
    const { out, err, code } = await judged(route, "--separator", "comma");
    expect(code).toBe(2);
    expect(out).toMatch(/^1 reading of 1 machine judged: A 1; .*; 6 refused/m);
    expect(err).toContain("line 2, ID fan 9, column tag: unknown-option");
    expect(err).toContain("did you mean: ID fan 1");
    expect(err).toContain("line 3, Condensate pump 1: missing-unit");
    expect(err).toContain("line 4, Condensate pump 1, column date: out-of-range");
    expect(err).toContain("line 7, Turbine 1: missing-frequency");
    expect((await judged(route, "--separator", "comma", "--keep-going")).code).toBe(0);
  });

  it("counts a machine whose readings were all refused as not judged, and one of which some were as judged in part", async () => {
    const list = file(
      "tag,kind,table,trip\nLU-1,fan,iso-14694-2003,\nLU-2,fan,iso-14694-2003,\nLU-3,fan,iso-14694-2003,9\nLU-4,fan,iso-14694-2003,9\n",
    );
    const route = file(
      "tag,point,reading\nLU-1,DE-H,1 mm/s rms\nLU-1,NDE-H,9 mm/s\nLU-2,DE-H,9\nLU-3,DE-H,2 mm/s rms\nKW-9,DE-H,2 mm/s rms\n",
    );
    const { out, code } = await veladis(["plant", "judge", list, route]);
    expect(code).toBe(2);
    const text = out.replace(/\s+/g, " ");
    expect(text).toContain(
      "4 refused; 2 machines not judged, all their readings refused; 1 machine of the list not read",
    );
    expect(text).toContain("refused all readings, so that these are not judged: LU-2, LU-3");
    expect(text).toContain("the zone is that of those that could be read: LU-1");
    expect(out).toMatch(/^not read +LU-4$/m);
    expect(out).not.toContain("every machine of the list was read");
  });

  it("refuses by line a point whose name holds a state, a factor or another reading, as judge does", async () => {
    for (const point of ["DE clipped", "x10", "sensor fault", "DE at start-up", "DE 9 mm/s rms", "housing"]) {
      const { err, code } = await judged(`tag,point,reading\nCondensate pump 1,${point},2 mm/s rms\n`);
      expect(code, point).toBe(2);
      expect(err, point).toContain("column point: syntax");
      expect((await veladis(["judge", `${point} 2 mm/s rms, DE-V 2 mm/s rms`, "--machine", "pump 90 kW"])).code).toBe(
        2,
      );
    }
  });

  it("refuses a row whose speed, power, support, place or nameplate is not that of the list; one that agrees is judged", async () => {
    // the list has pump, 90 kW, 2980 r/min, rigid, category II
    for (const [heading, cell] of [
      ["speed", "9000 r/min"],
      ["speed [r/min]", "9000"],
      ["speed", "9000"],
      ["power", "250 kW"],
      ["support", "flexible"],
      ["place", "shaft"],
      ["nameplate", "category I"],
      ["kind", "fan"],
    ]) {
      const { out, code } = await judged(`tag,reading,${heading}\nCondensate pump 1,2 mm/s rms,${cell}\n`);
      expect([code, out.includes("1 refused")], `${heading} ${cell}`).toEqual([2, true]);
    }
    for (const [heading, cell] of [
      ["speed", "2980 r/min"],
      ["speed r/min", "2975"],
      ["power (kW)", "90"],
      ["support", "rigid"],
      ["nameplate", "category II"],
      ["speed", ""],
    ]) {
      const { err, code } = await judged(`tag,reading,${heading}\nCondensate pump 1,2 mm/s rms,${cell}\n`);
      expect([code, err.includes("play no part")], `${heading} ${cell}`).toEqual([0, false]);
    }
  });

  it("gives a refused reading as data beside the others, which is read back", async () => {
    const route = "tag,reading\nCondensate pump 1,3 mm/s rms\nCondensate pump 1,3\n";
    const { out, code } = await judged(route, "--json");
    expect(code).toBe(2);
    const line = out.split("\n").find((one) => one.includes('"refused reading"')) as string;
    const { from, line: at, code: why } = fromJson("refused reading", line);
    expect([from, at, why]).toEqual(["route", 3, "missing-unit"]);
  });

  it("refuses a unit that the heading contradicts, unless the heading is not to count", async () => {
    const route = "tag,reading [mm/s rms]\nCondensate pump 1,0.2 in/s pk\n";
    expect((await judged(route)).code).toBe(2);
    expect((await judged(route, "--file-units", "none")).code).toBe(0);
  });

  it("takes a frequency from the reading, a column or --at, and never from the list", async () => {
    const bare = "tag,reading\nCondensate pump 1,40 um pp\n";
    expect((await judged(bare)).code).toBe(2);
    expect((await judged(bare, "--at", "2980 r/min")).code).toBe(0);
    expect((await judged("tag,reading,at [r/min]\nCondensate pump 1,40 um pp,2980\n")).code).toBe(0);
    expect((await judged("tag,reading,at\nCondensate pump 1,40 um pp,2980\n")).code).toBe(2);
  });

  it("tells a bad zone by its exit code, and a reading over range", async () => {
    const bad = "tag,reading\nCondensate pump 1,9 mm/s rms\n";
    expect((await judged(bad, "--fail-from", "D")).code).toBe(1);
    expect((await judged("tag,reading\nCondensate pump 1,6 mm/s rms\n", "--fail-from", "D")).code).toBe(0);
    expect((await judged("tag,reading\nCondensate pump 1,OL\n", "--fail-from", "D", "--keep-going")).code).toBe(1);
    expect((await judged("tag,reading\nno such tag,6 mm/s rms\n", "--fail-from", "D", "--keep-going")).code).toBe(2);
  });

  it("gives CSV whose zones are those of classify, and tells sources and cautions once beside it", async () => {
    const { out, err } = await veladis(["plant", "judge", list, april, "--csv"]);
    const pump = rowsOf(out).find(({ tag }) => tag === "Condensate pump 1");
    const machine = "pump 90 kW 2980 r/min rigid housing category II";
    const alone = classify("5.9 mm/s rms", { scheme: "iso-10816-7-2009", machine });
    expect([pump?.zone, Number(pump?.["limit value"])]).toEqual([alone.zone, alone.limit.value]);
    expect(err).toContain("source      ISO 14694:2003");
    expect(err).toContain("Never defeat a trip");
  });

  it("writes one page that stands alone, with every text escaped", async () => {
    const page = join(folder, "route.html");
    const route =
      'tag,point,reading\nCondensate pump 1,"<img src=x onerror=alert(1)>",6 mm/s rms\nCondensate pump 1,DE & gear,6 mm/s rms\n"<script>x</script>",a,6 mm/s rms\n';
    await judged(route, "--html", page);
    const html = readFileSync(page, "utf8");
    expect(html).not.toMatch(/<script|<img|https?:\/\/[^<]*"/);
    expect(html).toContain("unsatisfactory for long-term operation");
    expect(html).toContain("Never defeat a trip");
    expect(html).toContain("size: A4");
    expect((await judged(route, "--html", page)).code).toBe(2);
    expect((await judged(route, "--html", page, "--replace", "--keep-going")).code).toBe(0);
  });

  it("keeps what would be a formula, or would steer a terminal, from being one", async () => {
    const { out } = await judged("tag,point,reading\nCondensate pump 1,@DE,6 mm/s rms\n", "--csv");
    expect(out).toContain(",'@DE,");
    const steered = await judged("tag,point,reading\nCondensate pump 1,a\u001b[31mb,6 mm/s rms\n");
    expect(steered.out).not.toContain("\u001b");
  });

  it("asks for two files, a column of tags and one of readings", async () => {
    expect((await veladis(["plant", "judge", list])).err).toContain("missing-option");
    expect((await judged("name,reading\na,1 mm/s rms\n")).err).toContain("headed tag");
    expect((await judged("tag,DE mm/s rms,NDE mm/s rms\nID fan 1,1,2\n")).err).toContain("--column");
    expect((await judged("tag,DE mm/s rms,NDE mm/s rms\nID fan 1,1,2\n", "--column", "DE mm/s rms")).code).toBe(0);
    expect((await judged("tag,tag,reading\na,b,1 mm/s rms\n")).err).toContain("one column of a route");
    expect((await veladis(["plant", "judge", list, april, "--csv", "--json"])).code).toBe(2);
    expect((await veladis(["plant", "judge", list, april, "--html", "route.txt"])).code).toBe(2);
  });
});

describe("a list as a spreadsheet writes it", () => {
  it("has the options that would read it told once, and but a few refusals", async () => {
    const rows = Array.from({ length: 9 }, (_, i) => `LU-${i};fan;7,1 mm/s rms;31.03.2026;8,1 mm/s rms`).join("\n");
    const list = file(`tag;kind;trip;check date;as found\n${rows}\n`);
    const { err, code } = await veladis(["plant", "audit", list, "--on", "2026-04-20"]);
    expect(code).toBe(2);
    expect(err).toContain("9 refused rows with numbers like 7,1 mm/s rms: add --decimal-comma");
    expect(err).toContain("9 refused rows with days like 31.03.2026: add --dates day-first");
    expect(err.match(/column /g)?.length).toBe(5);
    expect(err).toMatch(/\d+ refusals more; all with --json/);
    const read = await veladis([
      "plant",
      "audit",
      list,
      "--on",
      "2026-04-20",
      "--decimal-comma",
      "--dates",
      "day-first",
    ]);
    expect(read.err).not.toContain("refused rows with");
    expect((await veladis(["plant", "audit", list, "--on", "2026-04-20", "--json"])).err).not.toContain("more;");
  });
});

describe("plant setpoints", () => {
  it("has first what is set above the rules, and says that nothing changes by itself", async () => {
    const { out, code } = await veladis(["plant", "setpoints", list]);
    expect(code).toBe(0);
    expect(out).toMatch(/^Circulation pump 3, line 5: ABOVE THE RULES$/m);
    expect(out.indexOf("ABOVE THE RULES")).toBeLessThan(out.indexOf("WOULD BE LOWERED"));
    expect(out).toContain("changes nothing by itself");
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it("gives a row a setting as CSV, and data that is read back", async () => {
    const csv = await veladis(["plant", "setpoints", list, "--csv"]);
    expect(csv.out.split("\n")[1]).toMatch(/^Circulation pump 3,5,above the rules,trip,5\.6,4\.4,mm\/s rms,lower,/);
    const json = await veladis(["plant", "setpoints", list, "--json"]);
    const machine = fromJson("scheduled machine", json.out.split("\n")[0] as string);
    expect([machine.tag, machine.changes[0]?.proposed]).toEqual(["Circulation pump 3", 4.4]);
    expect((await veladis(["plant", "setpoints", list, "--full"])).out).toContain("[1]");
  });

  it("exits 2 where nothing is proposed for a row", async () => {
    const plant = file("tag,kind,trip\nP-1,pump,9 mm/s rms\nP-2,pump,9 mm/s\n");
    const { code, out } = await veladis(["plant", "setpoints", plant]);
    expect(code).toBe(2);
    expect(out).toContain("P-2, line 3: expected a detector");
    expect((await veladis(["plant", "setpoints", plant, "--keep-going"])).code).toBe(0);
  });
});

describe("sql --plant", () => {
  const asked = ["--table", "readings", "--column", "velocity", "--from", "mm/s rms"];

  it("judges each reading by the table or the limits of its machine's row, as plant judge does", async () => {
    const { out, err, code } = await veladis(["sql", "--plant", list, ...asked]);
    // the turbine's limits are of a displacement: it is refused by its line, and has no zone
    expect(code).toBe(2);
    expect(err).toContain("line 7: missing-frequency");
    const tags = ["ID fan 1", "Circulation pump 3", "Low-street booster pump", "Turbine 1"];
    await duckdbRows(
      `CREATE OR REPLACE TABLE readings AS SELECT tag, velocity FROM (VALUES ${tags.map((tag) => `('${tag}')`).join(", ")}) AS t(tag), (SELECT CAST(i AS DOUBLE) / 2 AS velocity FROM range(24) AS r(i)) AS v`,
    );
    const rows = (await duckdbRows(`SELECT tag, velocity, veladis_zone FROM (${out}) AS q ORDER BY tag, velocity`)) as [
      string,
      number,
      string | null,
    ][];
    const route = rows.map(([tag, velocity]) => `${tag},${velocity} mm/s rms`).join("\n");
    const csv = await judged(`tag,reading\n${route}\n`, "--csv");
    const zones = new Map(rowsOf(csv.out).map(({ tag, reading, zone }) => [`${tag} ${Number(reading)}`, zone]));
    expect(rows.length).toBe(96);
    for (const [tag, velocity, zone] of rows)
      expect(zone ?? undefined, `${tag} ${velocity}`).toBe(zones.get(`${tag} ${velocity}`));
  });

  it("refuses a row twice, a row that cannot be read, and options of another list", async () => {
    const plant = file(
      "tag,kind,power,speed,nameplate,trip\nP-1,pump,90 kW,2980 r/min,category II,\nP-2,pump,90 kW,2980 r/min,category II,\nP-2,pump,90 kW,2980 r/min,category II,\nP-3,pump,90 kW,2980 r/min,category II,9 mm/s\n",
    );
    const { out, err, code } = await veladis(["sql", "--plant", plant, ...asked, "--json"]);
    expect(code).toBe(2);
    expect(err).toContain("on lines 3 and 4");
    const rows = out
      .split("\n")
      .filter((line) => line.includes('"limit row"'))
      .map((line) => fromJson("limit row", line));
    expect(rows.map(({ machine, refused }) => [machine, refused === null])).toEqual([
      ["P-1", true],
      ["P-1", true],
      ["P-1", true],
      ["P-2", false],
      ["P-3", false],
    ]);
    expect((await veladis(["sql", "--plant", plant, ...asked, "--machines", list])).code).toBe(2);
    expect((await veladis(["sql", "--plant", plant, ...asked, "--scheme", "iso-10816-7-2009"])).err).toContain(
      "--scheme",
    );
  });
});
