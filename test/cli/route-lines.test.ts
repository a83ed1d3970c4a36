import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { splitPlace } from "../../src/cli/input/split-place";
import { parseAmplitude } from "../../src/index";
import { codeOf } from "../refusals/refusal-of";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-route-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let count = 0;
const route = async (text: string, ...more: string[]) => {
  const path = join(folder, `${count++}.txt`);
  writeFileSync(path, text);
  const { out, err, code } = await veladis(["--file", path, "--to", "mm/s rms", ...more]);
  const rows = out.split("\n").slice(2, out.split("\n").indexOf(""));
  return { rows: rows.map((row) => row.trim().split(/\s{2,}/)), err, code };
};
const pump = ["--machine", "pump 90 kW 2980 r/min category II"];

/** Route sheets as people write them: common practice, no source. */
describe("the place of a line", () => {
  const place = (line: string) => splitPlace(line, (text) => void parseAmplitude(text));

  it.each([
    ["ID fan 1: 4.1 mm/s rms", "ID fan 1", "4.1 mm/s rms"],
    ["P-101A: DE-H: 4.1 mm/s rms", "P-101A: DE-H", "4.1 mm/s rms"],
    ["P-103 12:30: 4.1 mm/s rms", "P-103 12:30", "4.1 mm/s rms"],
    ["x: 95 dB re: 1e-9 m/s", "x", "95 dB re: 1e-9 m/s"],
    ["P-101A\tDE-V\t2.2 mm/s rms", "P-101A, DE-V", "2.2 mm/s rms"],
    ["P-101A\tDE-V\t2.2\tmm/s\trms", "P-101A, DE-V", "2.2 mm/s rms"],
    ["12:30\tP-103\tDE-V\t4.1 mm/s rms", "12:30, P-103, DE-V", "4.1 mm/s rms"],
    ["| Fan 4 | DE-V | 4.1 mm/s rms at 25 Hz |", "Fan 4, DE-V", "4.1 mm/s rms at 25 Hz"],
    ["1\tFan 4\t4.1 mm/s rms", "1, Fan 4", "4.1 mm/s rms"],
    ["P-101A: DE-H\t4.1 mm/s rms", "P-101A, DE-H", "4.1 mm/s rms"],
    ["4.1  mm/s  rms", "", "4.1  mm/s  rms"],
  ])("%j", (line, where, reading) => {
    expect(place(line)).toEqual([where, reading]);
  });

  it.each(["DE-H\t3.1\t2.2 mm/s rms", "3\t4.1 mm/s rms", "DE-H\t3 mm/s rms\t2.2 mm/s rms", "3.1\tDE-H\t2.2 mm/s rms"])(
    "a number that may be another reading refuses %j",
    (line) => {
      expect(codeOf(() => place(line))).toBe("syntax");
    },
  );

  // biome-ignore format: a row of a table is a line
  it.each([
    "P-7: DE-H: 12.0, DE-V: 2.2 mm/s rms", "P-137: DE-H: 12.0 mm/s rms, DE-V: 2.2 mm/s rms", "P-7: DE-H: 12 mm/s rms; DE-V: 2.2 mm/s rms",
    "P-137 12 mm/s rms: 2.2 mm/s rms", "P-1 | DE-H 12 mm/s rms | DE-V: 2.2 mm/s rms", "P-1\tDE-H 12 mm/s rms\tDE-V: 2.2 mm/s rms",
    "P-1  DE-H 12 mm/s rms  DE-V: 2.2 mm/s rms", "P-1\t12\t: 2.2 mm/s rms", "Fan DE (3.1): 2.2 mm/s rms", "Fan DE alarm 7.1: 3.1 mm/s rms",
    "P-7: DE-H 12, DE-V: 2.2 mm/s rms", "P-7: DE-H = 12, DE-V: 2.2 mm/s rms", "P-7:12, DE-V: 2.2 mm/s rms", "DE-H 98 mV pk, DE-V: 2.2 mm/s rms",
    "DE-H\t12\tDE-V\t2.2 mm/s rms", "DE-H 12 pk, DE-V: 2.2 mm/s rms",
    "Fan 8 at 2980 rpm: 40 um pp", "Fan 8 50 Hz: 40 um pp", "Fan 8 at 2980: 40 um pp", "Fan 8 (2980 r/min)\tDE\t40 um pp",
    "Motor 400 kW 3570 r/min DE: 40 um pp", "Fan 1485 U/min: 40 um pp", "Fan 1485 1/min DE: 40 um pp", "Fan 1485 min-1: 40 um pp", "Fan 1485/min: 40 um pp",
    "Fan 1485 tr/min: 40 um pp", "Fan 1485 Upm: 40 um pp", "Fan 8 1485 r / min: 40 um pp", "Motor 4 pole 1485 r/min: 40 um pp",
  ])("a reading or a speed in the place refuses %j", (line) => {
    expect(codeOf(() => place(line))).toBe("syntax");
  });

  it.each([
    "P-7",
    "Fan 8",
    "Turbine 1 bearing 2",
    "Turbine 1 in hall 3",
    "Motor 400 kW DE",
    "Pump 1 / Motor 2",
    "Mill 3 minor bearing",
    "2026-03-04 12:30 Fan 8",
    "04.03.2026, Fan 8 V",
  ])("%j is a name", (name) => {
    expect(place(`${name}: 4.1 mm/s rms`)).toEqual([name, "4.1 mm/s rms"]);
  });

  it.each(["Motor 400 kW 3570 r/min DE", "Fan 1485 U/min"])("%s beside another --at is refused", async (name) => {
    const { rows, code } = await route(`${name}: 40 um pp\n`, "--at", "740 r/min");
    expect([code, rows[0]?.at(-1)]).toEqual([2, "REFUSED"]);
  });

  it("so does a heading, and a line that is piped in", async () => {
    const { rows, code } = await route("Fan 8 at 2980 rpm:\n  DE: 40 um pp\n", "--at", "740 r/min");
    expect([code, rows[0]?.at(-1)]).toEqual([2, "REFUSED"]);
    const piped = await veladis(["--to", "mm/s rms"], "P-7: DE-H: 12.0, DE-V: 2.2 mm/s rms\n");
    expect([piped.out, piped.code]).toEqual(["", 2]);
  });

  it("a colon for a decimal point is no end of a place", async () => {
    expect((await route("x: 3:1 mm/s rms\n")).code).toBe(2);
  });
});

describe("several points of a machine", () => {
  it("takes the type of --from as it is spelt, for one reading and for points", async () => {
    const { rows, code } = await route("ID fan 1: 3.1\nID fan 2: DE-H 3.1, DE-V 2.2\n", "--from", "mm/srms");
    expect([code, rows.map((row) => row.at(-1))]).toEqual([0, ["3.10", "3.10", "2.20"]]);
  });

  it("on one line, each a row", async () => {
    const { rows } = await route("ID fan 2: DE-H 3.1, DE-V 2.2 mm/s rms, load 80 %\n");
    expect(rows).toEqual([
      ["1", "ID fan 2, DE-H", "3.1 mm/s rms", "3.10", "load 80 %"],
      ["1", "ID fan 2, DE-V", "2.2 mm/s rms", "2.20", "load 80 %"],
    ]);
  });

  it("indented below their machine, until a line is not", async () => {
    const { rows, code } = await route(
      "Feed pump B:\n  DE-H: 3.1 mm/s rms\n\tDE-V 2.2 mm/s rms\nFeed pump C: 5 mm/s rms\n",
    );
    expect([code, rows.map(([, place]) => place)]).toEqual([
      0,
      ["Feed pump B, DE-H", "Feed pump B, DE-V", "Feed pump C"],
    ]);
  });

  it("a heading with nothing below it is a reading that is missing", async () => {
    const { err, code } = await route("Feed pump C:\nFeed pump D: 5 mm/s rms\nFeed pump E:\n");
    expect(code).toBe(2);
    expect(err.match(/line \d: syntax/g)).toEqual(["line 1: syntax", "line 3: syntax"]);
  });

  it("judged under the name of their machine", async () => {
    const { out } = await veladis(["judge", ...pump], "P-1: DE-H 3.1, DE-V 2 mm/s rms\n");
    expect(out).toMatch(/^P-1: DE-H 3\.10 mm\/s rms: zone A.*not read: DE-A: /);
  });
});

describe("speed and load at the reading", () => {
  it("a bare number behind at is refused, and read with --speed-unit", async () => {
    const bare = await veladis(["3 mm/s rms at 3000 to um pp"]);
    expect([bare.code, bare.err]).toEqual([2, expect.stringMatching(/3000 r\/min.*3000 Hz.*--speed-unit/s)]);
    // 3 sqrt 2 x 2 / (2 pi 50) x 1000
    const told = await veladis(["3 mm/s rms at 3000 to um pp", "--speed-unit", "r/min"]);
    expect(told.out).toContain(" = 27.0 um pp");
    expect((await veladis(["3 mm/s rms to um pp", "--at", "3000", "--speed-unit", "rpm"])).out).toContain(
      " = 27.0 um pp",
    );
    expect((await veladis(["3 mm/s rms at 50 Hz to um pp", "--speed-unit", "rpm"])).code).toBe(2);
  });

  it("a running speed is no frequency, and is named", async () => {
    const { out } = await veladis(["4 mm/s rms, speed 1485 r/min, load 80 % to in/s pk"]);
    expect(out).toContain("(running speed 1485 r/min: not taken as the frequency; load 80 %)");
    expect((await veladis(["40 um pp, speed 1485 r/min to mm/s rms"])).err).toContain("missing-frequency");
  });

  it("a judged one has the speed of its machine, and contradicts no other", async () => {
    const { out } = await veladis(["judge", "4 mm/s rms, speed 2980 r/min", "--machine", "pump 90 kW category II"]);
    expect(out).toMatch(/^machine +pump, 90 kW, 2980 r\/min, category II$/m);
    expect((await veladis(["judge", "4 mm/s rms, speed 1485 r/min", ...pump])).err).toContain("one speed");
  });

  it("a load that a table is not for is told", async () => {
    const motor = ["--machine", "motor 200 kW 2980 r/min elastic", "--scheme", "nema-mg1-7-table-7-1"];
    const loaded = await veladis(["judge", "0.1 in/s pk at 2980 r/min, load 80 %", ...motor]);
    expect(loaded.out.replace(/\s+/g, " ")).toContain("load 80 %, OUTSIDE what NEMA MG 1");
    const idle = await veladis(["judge", "3 mm/s rms, no load", ...pump]);
    expect(idle.out.replace(/\s+/g, " ")).toContain("load none, OUTSIDE what limits in service are for");
    const usual = await veladis(["judge", "3 mm/s rms, load 80 %", ...pump]);
    expect(usual.out).toMatch(/^load +80 %; limits are for steady running/m);
    const data = JSON.parse((await veladis(["judge", "3 mm/s rms, load 80 %", ...pump, "--json"])).out);
    expect(data).toMatchObject({ load: "80 %", written: "3 mm/s rms, load 80 %" });
  });

  it("two of one are refused", async () => {
    expect((await veladis(["4 mm/s rms, load 80 %, load 70 %"])).err).toContain("one load at a reading");
  });
});

describe("names that are none", () => {
  it.each([
    ["housing 4.1 mm/s rms", /a fact of the machine/],
    ["shaft 60 um pp", /a fact of the machine/],
    ["ID fan 1, motor DE 4.1 mm/s rms", /where 1 is the reading of ID fan/],
    ["bearing 3, bearing 4 2.2 mm/s rms", /where 3 is the reading of bearing/],
    ["A at least: 4 mm/s rms", /a name of a point/],
  ])("%s is refused", async (written, says) => {
    const { err, code } = await veladis(["judge", written, ...pump]);
    expect([code, err]).toEqual([2, expect.stringMatching(says)]);
  });

  it.each(["DE-H 3, DE-V 2.2 mm/s rms", "fan: 3, motor: 2.2 mm/s rms", "bearing 3 H 3.1, bearing 4 H 2.2 mm/s rms"])(
    "%s is read",
    async (written) => {
      expect((await veladis(["judge", written, ...pump])).code).toBe(0);
    },
  );
});

/** People number bearings with # in front; # also begins remarks: a line that may be either is not passed over. */
describe("a line that begins with # and ends in a reading", () => {
  const both = [
    "#3 brg: 22 mm/s rms",
    "#3\t22 mm/s rms",
    "# 3 brg: 22 mm/s",
    "#3 brg: 22 mm/s rms at 25 Hz",
    "#3 brg: 22 mm/s rms to in/s pk",
    "#3 brg: 22 mm/s rms, speed 1485 r/min",
    "#3 brg: DE-H 3.1, DE-V 22 mm/s rms",
    "#3: 12 mA of 0 to 20 mm/s rms",
    "#3: 22,5 mm/s rms",
    "#22 mm/s rms",
  ];

  it.each(both)("%s is refused in routes and in lines", async (line) => {
    const { rows, err, code } = await route(`fan: 4 mm/s rms\n${line}\n`);
    expect([rows.length, code, err]).toEqual([
      2,
      2,
      expect.stringContaining("a reading or a remark: # begins a remark"),
    ]);
    for (const args of [
      ["--to", "in/s pk"],
      ["judge", ...pump],
    ]) {
      const piped = await veladis(args, `1 mm/s rms\n${line}\n`);
      expect([piped.code, piped.err]).toEqual([2, expect.stringContaining("a reading or a remark")]);
    }
  });

  it("a bare number is a reading where --from says what it is", async () => {
    const { err, code } = await route("fan: 4\n#3 brg: 22\n", "--from", "mm/s rms");
    expect([code, err]).toEqual([2, expect.stringContaining("a reading or a remark")]);
    expect((await route("# round of 3 March 2026\nfan: 4\n", "--from", "mm/s rms")).code).toBe(0);
  });

  it.each([
    "# pump A: 250 kW motor, 2980 r/min",
    "# gear drive, 1490 to 610 r/min, 22 teeth on the pinion",
    "# limit is 4.5 mm/s rms by the maker's list",
    "# round of 3 March 2026, hall 2",
    "#",
  ])("%s stays a remark", async (line) => {
    expect((await route(`${line}\nfan: 4 mm/s rms\n`)).code).toBe(0);
    expect((await veladis(["judge", ...pump], `${line}\n1 mm/s rms\n`)).code).toBe(0);
  });
});
