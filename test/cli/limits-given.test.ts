import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { classify, defineScheme } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const limits = ["--limits", "2.6, 4.2, 6.8 mm/s rms"];
const zoneOf = async (...args: string[]) => JSON.parse((await veladis(["judge", ...args, "--json"])).out).zone;

describe("limits given in one line", () => {
  // biome-ignore format: a row of a table is a line
  it.each<[reading: string, zone: string]>([
    ["2.6 mm/s rms", "A"], ["2.61 mm/s rms", "B"], ["4.2 mm/s rms", "B"], ["4.21 mm/s rms", "C"], ["6.9 mm/s rms", "D"],
    // 0.25 x 25.4 / sqrt 2 = 4.49
    ["0.25 in/s pk", "C"],
  ])("%s is in zone %s", async (reading, zone) => expect(await zoneOf(reading, ...limits)).toBe(zone));

  it("each with its unit, and with a machine whose facts then play no part", async () => {
    expect(await zoneOf("5 mm/s rms", "--limits", "2.6 mm/s rms, 4.2 mm/s rms, 6.8 mm/s rms")).toBe("C");
    const { out } = await veladis(["judge", "5 mm/s rms", ...limits, "--machine", "fan 90 kW"]);
    expect(out).toMatch(/^set aside +power 90 kW: plays no part/m);
    // whoever typed them knows where they are from, the program does not
    expect(out).toContain("(reported: check the source)");
  });

  // biome-ignore format: a row of a table is a line
  it.each<[args: string[], says: RegExp]>([
    [["--limits", "2.6, 4.2 mm/s rms"], /upper limits of zones A, B and C/],
    [["--limits", "2.6, 4.2, 3 mm/s rms"], /ascending/],
    [["--limits", "0.1 in/s pk, 4.2, 6.8 mm/s rms"], /in one unit/],
    [["--limits", "2.6, 4.2, 6.8"], /unit/],
    [["--limits", "2,6, 4,2, 6,8 mm/s rms"], /upper limits of zones/],
    [[...limits, "--scheme", "iso-20816-3-2022"], /--scheme too/],
    [[...limits, "--confirmed", "copy.csv"], /--confirmed too|can be read/],
  ])("%j is refused", async (args, says) => {
    const { out, err, code } = await veladis(["judge", "5 mm/s rms", ...args]);
    expect([out, code]).toEqual(["", 2]);
    expect(err).toMatch(says);
  });
});

describe("the template of a scheme", () => {
  it("is a scheme that judges, once it is in a file", async () => {
    const { out } = await veladis(["schemes", "--template"]);
    const scheme = defineScheme(JSON.parse(out));
    expect(classify("3 mm/s rms", { scheme, machine: "fan 90 kW rigid" }).zone).toBe("B");
    const path = join(mkdtempSync(join(tmpdir(), "veladis-")), "own.json");
    writeFileSync(path, out);
    expect(await zoneOf("3 mm/s rms", "--scheme", path, "--machine", "fan 90 kW flexible")).toBe("B");
    expect((await veladis(["schemes", path])).out).toContain("support flexible");
  });

  it("stands alone", async () => {
    expect((await veladis(["schemes", "--template", "--json"])).err).toMatch(/--template alone/);
  });
});

describe("limits in one line elsewhere", () => {
  it("of the shaft, where the machine says so", async () => {
    const args = ["--limits", "40, 60, 90 um pp", "--machine", "compressor shaft 9000 r/min"];
    expect((await veladis(["judge", "61 um pp", ...args])).out).toMatch(/^61 um pp: zone C/);
    const table = await veladis(["table", "--column", "1", "--from", "um pp", ...args], "v\n39\n91\n");
    expect(table.out.split("\n").map((line) => line.split(",")[1])).toEqual(["zone", "A", "D", undefined]);
    const record = Array.from({ length: 4096 }, (_, i) => 50 * Math.sin((2 * Math.PI * i) / 20)).join("\n");
    const overall = await veladis(["overall", "--rate", "2000", "--unit", "um", "--band", "10-900", ...args], record);
    // 50 peak is 100 peak-to-peak
    expect(overall.out).toMatch(/zone D/);
  });

  it("of a table, for the shaft of all rows by --machine alone", async () => {
    const args = [
      "table",
      "--column",
      "v",
      "--from",
      "um pp",
      "--machine-column",
      "machine",
      "--limits",
      "50, 80, 120 um pp",
    ];
    const file = "machine,v\nsteam turbine 5400 r/min shaft,61\n";
    const refused = await veladis(args, file);
    expect([refused.code, refused.err]).toEqual([2, expect.stringContaining("--machine shaft says")]);
    const read = await veladis([...args, "--machine", "shaft"], file);
    expect([read.code, read.out.split("\n")[1]]).toEqual([0, expect.stringContaining(",61,B,B,limits-given")]);
  });

  it("of setpoints, with commas for decimals beside a file that has them", async () => {
    const path = join(mkdtempSync(join(tmpdir(), "veladis-")), "levels.csv");
    writeFileSync(path, "level\n1,9\n2,0\n2,1\n2,0\n");
    const from = ["setpoints", "--file", path, "--from", "mm/s rms", "--decimal-comma", "--json", "--limits"];
    const read = async (limits: string) => JSON.parse((await veladis([...from, limits])).out).limits;
    expect(await read("2; 4,5 mm/s rms")).toMatchObject({ lower: 2, upper: 4.5 });
    expect(await read("2,8; 4,5; 7,1 mm/s rms")).toMatchObject({ lower: 4.5, upper: 7.1 });
    expect(await read("4.5, 7.1 mm/s rms")).toMatchObject({ lower: 4.5, upper: 7.1 });
    expect((await veladis([...from, "4,500; 7,1 mm/s rms"])).err).toContain("4500, or 4,5");
  });

  it("of setpoints, with A/B named where it stands before them", async () => {
    const args = ["setpoints", "--baseline", "2 mm/s rms", "--machine", "pump 1180 r/min", "--limits"];
    const [two, three] = await Promise.all(
      ["4.2, 6.8 mm/s rms", "2.6, 4.2, 6.8 mm/s rms"].map((one) => veladis([...args, one])),
    );
    expect(two?.out).toMatch(/^TRIP +6\.800/m);
    expect(three?.out).toMatch(/^TRIP +6\.800/m);
    expect(three?.out.replace(/\s+/g, " ")).toContain("A/B of 2.60 mm/s rms plays no part");
  });

  // biome-ignore format: a row of a table is a line
  it.each<[args: string[], says: RegExp]>([
    [["5, 4.2, 6.8 mm/s rms"], /ascending/], [["0, 4.2, 6.8 mm/s rms"], /above zero/], [["5 um pp, 4.2, 6.8 mm/s rms"], /in one unit/],
    [["4.2, 4.2 mm/s rms"], /ascending/], [["0, 6.8 mm/s rms"], /above zero/], [["0.2 in/s pk, 6.8 mm/s rms"], /in one unit/],
    [["4.2, 6.8 mm/s rms", "--scheme", "iso-20816-3-2022"], /--scheme too/], [["4.2, 6.8 mm/s rms", "--scheme", "none"], /--scheme too/],
    [["2; 4,5 mm/s rms"], /read one way/], [["2, 4,5 mm/s rms"], /read one way/],
    [["4.2, 6.8 mm/s rms", "--confirmed", "copy.csv"], /--confirmed too/],
  ])("of setpoints, refused: %j", async (args, says) => {
    const { out, err, code } = await veladis(["setpoints", "--baseline", "2 mm/s rms", "--limits", ...args]);
    expect([out, code]).toEqual(["", 2]);
    expect(err).toMatch(says);
  });
});
