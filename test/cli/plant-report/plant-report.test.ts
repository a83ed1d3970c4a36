import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { veladis } from "../in-process";

let folder = "";
const at = (name: string): string => join(folder, name);
const put = (name: string, text: string): string => {
  writeFileSync(at(name), text);
  return at(name);
};

const PLANT = `tag;kind;power;speed;nameplate;alarm;trip;baseline
PU-01;pump;90 kW;2980 r/min;category II in service;2,4 mm/s rms;5 mm/s rms;1,8 mm/s rms
PU-02;pump;90 kW;2980 r/min;category II in service;2,4 mm/s rms;5 mm/s rms;1,8 mm/s rms
`;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "veladis-report-"));
  put("plant.csv", PLANT);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const report = (...more: string[]) =>
  veladis(["plant", "report", at("plant.csv"), ...more, "--out", at("out"), "--on", "2026-11-20", "--decimal-comma"]);

it("writes a page for each machine and an index, and says where", async () => {
  const { out, code } = await report();
  expect(code).toBe(0);
  expect(out).toContain(`2 machines`);
  expect(out).toContain(at("out/index.html"));
  expect(out).toContain("Never defeat a trip.");
  expect(readdirSync(at("out")).sort()).toEqual(["index.html", "pu-01.html", "pu-02.html"]);
  expect(readFileSync(at("out/index.html"), "utf8")).toContain("No machine was read");
});

it("judges the last route, and draws those before it as history", async () => {
  const row = (date: string, level: string) => `tag;point;reading;date\nPU-01;DE-H;${level} mm/s rms;${date}\n`;
  const routes = [
    put("r1.csv", row("2026-09-07", "2,1")),
    put("r2.csv", row("2026-10-05", "2,6")),
    put("r3.csv", row("2026-11-02", "6,2")),
  ];
  expect((await report(...routes)).code).toBe(0);
  const page = readFileSync(at("out/pu-01.html"), "utf8");
  expect(page).toContain("6.20 mm/s rms: zone C");
  expect(page).toContain("3 readings in mm/s rms from 2026-09-07 to 2026-11-02");
  expect(page).toContain("since the last route of 2.60 mm/s rms on 2026-10-05");
  expect(readFileSync(at("out/index.html"), "utf8")).toContain("No reading on the route: PU-02.");
});

it("takes the route of the latest days for the last, in whatever order routes are given", async () => {
  const row = (date: string, level: string) => `tag;point;reading;date\nPU-01;DE-H;${level} mm/s rms;${date}\n`;
  const april = put("april.csv", row("2026-10-05", "6,2"));
  const march = put("march.csv", row("2026-09-07", "2,6"));
  expect((await report(april, march)).code).toBe(0);
  const page = readFileSync(at("out/pu-01.html"), "utf8");
  expect(page).toContain("6.20 mm/s rms: zone C");
  expect(page).toContain("since the last route of 2.60 mm/s rms on 2026-09-07");
});

it("refuses routes whose order no day tells: undated beside dated, of one day, a point read later on the earlier one", async () => {
  const row = (date: string, level: string) => `PU-01;DE-H;${level} mm/s rms;${date}\n`;
  const heads = "tag;point;reading;date\n";
  const dated = put("dated.csv", heads + row("2026-10-05", "6,2"));
  const undated = put("undated.csv", heads + row("", "2,2"));
  const same = put("same.csv", heads + row("2026-10-05", "2,2"));
  const over = put("over.csv", `${heads}${row("2026-09-01", "2,2")}PU-02;DE-H;2,2 mm/s rms;2026-11-01\n`);
  for (const [other, why] of [
    [undated, "1 route without a day"],
    [same, "both up to 2026-10-05"],
    [over, "PU-01 DE-H on 2026-09-01"],
  ] as const) {
    const { code, err } = await report(dated, other, "--replace");
    expect([code, err], why).toEqual([2, expect.stringContaining(why)]);
    expect(existsSync(at("out"))).toBe(false);
  }
});

it("names every refused reading on the page of its machine and on the index, beside a zone of the others", async () => {
  const route = put("r.csv", "tag;point;reading\nPU-01;DE-H;1 mm/s rms\nPU-01;NDE-H;9 mm/s\nPU-02;DE-H;9\n");
  expect((await report(route)).code).toBe(2);
  const [index, first, second] = ["index", "pu-01", "pu-02"].map((name) =>
    readFileSync(at(`out/${name}.html`), "utf8"),
  );
  expect(first).toContain("of the readings that could be read: 1 reading refused");
  expect(first).toContain("refused: NDE-H (line 3)");
  expect(second).toContain("not judged: 1 reading refused");
  expect(second).toContain("All readings of this machine on the route were refused");
  expect(index).toContain("refused: DE-H (line 4)");
  expect(index).toContain("refused: NDE-H (line 3)");
  expect(index).toContain("<strong>1 machine</strong> not judged: all readings refused");
  expect(index).not.toContain("No machine was read");
});

it("calls start-up a zone, and findings by the names of their rules", async () => {
  put(
    "plant.csv",
    "tag;kind;power;support;nameplate;table;trip\nLU-01;fan;132 kW;rigid;BV-3;iso-14694-2003;9 mm/s rms\n",
  );
  const route = put("r.csv", "tag;reading\nLU-01;2,1 mm/s rms\n");
  expect((await report(route)).code).toBe(0);
  const [index, page] = ["index", "lu-01"].map((name) => readFileSync(at(`out/${name}.html`), "utf8"));
  for (const text of [index, page]) expect(text).toMatch(/<span class="zone z0[^"]*">start-up zone<\/span>/);
  expect(
    [...(page as string).matchAll(/<p class="what">.*? <span class="aside">[a-z][a-z ]+<\/span><\/p>/g)].length,
  ).toBe([...(page as string).matchAll(/<li class="finding (?:error|warning|note)">/g)].length);
});

it("draws histories of a folder, and names what of them it left out", async () => {
  put("PU-02.csv", "time;DE velocity (mm/s rms);temperature\n2026-01-05;2,1;40\n2026-02-05;;41\n2026-03-05;2,4;41\n");
  const made = await report("--history", `PU-02=${at("PU-02.csv")}`);
  expect(made.code).toBe(0);
  const page = readFileSync(at("out/pu-02.html"), "utf8");
  expect(page).toContain("2 readings in mm/s rms from 2026-01-05 to 2026-03-05");
  expect(page).toContain("1 row without a level of zero or more, drawn as a gap (line 3)");
  expect(page).toContain("not drawn, since the heading says no unit and detector: temperature");
});

it("answers the rest where rows, readings or a history are refused, and exits 2 but with --keep-going", async () => {
  put("plant.csv", `${PLANT}PU-03;pump;90 kW;2980 r/min;category II in service;2,4;5 mm/s rms;1,8 mm/s rms\n`);
  const route = put("r.csv", "tag;reading\nPU-01;3 mm/s rms\nKW-99;3 mm/s rms\nPU-02;fast\n");
  const history = put("h.csv", "time;level\n2026-01-05;3\n");
  const { code, err } = await report(route, "--history", `PU-01=${history}`);
  expect(code).toBe(2);
  expect(err).toMatch(/line 4, PU-03, column alarm: missing-unit/);
  expect(err).toMatch(/r\.csv, line 3: unknown-option/);
  const index = readFileSync(at("out/index.html"), "utf8");
  for (const told of ["PU-03", "KW-99", "h.csv"]) expect(index).toContain(told);
  expect(existsSync(at("out/pu-03.html"))).toBe(false);
  expect((await report(route, "--history", `PU-01=${history}`, "--replace", "--keep-going")).code).toBe(0);
});

it("exits 1 by --fail-on, and tells as JSON what was written", async () => {
  const { code, out } = await report("--fail-on", "warning", "--json");
  expect(code).toBe(1);
  expect(JSON.parse(out)).toMatchObject({ pages: 3, machines: 2, refused: [] });
});

it.each([
  ["a list that is not there", ["nowhere.csv", "--out", "out"], /unreadable/],
  ["no folder", ["plant.csv"], /--out/],
  ["a day that no calendar has", ["plant.csv", "--out", "out", "--on", "2026-02-30"], /a day of the calendar/],
  [
    "a history of a tag that the list does not have",
    ["plant.csv", "--out", "out", "--history", "XX=plant.csv"],
    /TAG=file/,
  ],
  ["the folder that the list stands in", ["plant.csv", "--out", ".", "--replace"], /none of the files read/],
])("refuses %s, and leaves nothing", async (_, args, why) => {
  const [list, ...more] = args.map((one) => (/^(?:plant\.csv|nowhere\.csv|out|\.)$/.test(one) ? at(one) : one));
  const { code, err } = await veladis(["plant", "report", list as string, ...more, "--decimal-comma"]);
  expect(code).toBe(2);
  expect(err).toMatch(why);
  expect(readdirSync(folder)).toEqual(["plant.csv"]);
});
