import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { classify } from "../../src/severity/index";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-rows-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = (content: string): string => {
  const path = join(mkdtempSync(join(folder, "one-")), "in.csv");
  writeFileSync(path, content);
  return path;
};
const judged = ["--machine", "group 2 rigid", "--scheme", "iso-10816-3-2009"];
const plain = (text: string): string => text.replace(/\s+/g, " ");

describe("--fail-from of a table", () => {
  // the limits of group 2 on a rigid support are 1.4, 2.8 and 4.5 mm/s: ISO 10816-3 (2009), table A.2
  const exit = async (rows: string, ...more: string[]) => {
    const asked = ["--machine", "group 2 rigid in service housing 25 Hz", "--at", "25 Hz"];
    const args = ["--column", "v", "--from", "mm/s rms", ...asked, "--scheme", "iso-10816-3-2009", ...more];
    const { code, err } = await veladis(["table", file(rows), ...args]);
    return [code, /^reached +(\d+) row/m.exec(err)?.[1]];
  };

  it.each([
    ["a row in the zone itself", "v\n1\n2.9\n", "C", 1, "1"],
    ["rows in a worse one", "v\n5\n6\n1\n", "C", 1, "2"],
    ["better rows alone", "v\n1\n2\n", "C", 0, "0"],
    ["a refused row outranks it", "v\n5\nx\n", "C", 2, "1"],
  ])("%s", async (_, rows, zone, code, reached) => {
    expect(await exit(rows, "--fail-from", zone)).toEqual([code, reached]);
  });

  it("a refused row does not count with --keep-going, the others do", async () => {
    expect(await exit("v\n5\nx\n", "--fail-from", "C", "--keep-going")).toEqual([1, "1"]);
    expect(await exit("v\n1\nx\n", "--fail-from", "C", "--keep-going")).toEqual([0, "0"]);
  });

  it.each([
    ["above its range", "20.8"],
    ["below its range", "3.9"],
    ["failed", "22"],
  ])("a row whose loop is %s is refused and may be in any zone, with --keep-going too", async (_, current) => {
    const asked = ["--machine", "pump 90 kW 2980 r/min category II", "--fail-from", "D", "--keep-going"];
    const args = ["--column", "v", "--from", "mA", "--loop", "0 to 5 mm/s rms", ...asked];
    const { code, err } = await veladis(["table", file(`v\n12\n${current}\n20.1\n`), ...args]);
    expect([code, plain(err)]).toEqual([1, expect.stringContaining("reached 1 row by --fail-from D")]);
    expect(plain(err)).toContain("1 of them refused, beyond the range or of a failed loop");
    const within = await veladis(["table", file("v\n12\n20.1\n"), ...args]);
    expect([within.code, within.err.includes("of them refused")]).toEqual([0, false]);
    const judgeArgs = ["judge", "--loop", "0 to 5 mm/s rms", ...asked];
    expect((await veladis(judgeArgs, `${current} mA\n`)).code).toBe(1);
  });

  // what is said of a reading beyond its range is that it may be worse: common practice, no source
  it.each([
    ["above its range, as a text", "2.1 mm/s rms (above range)"],
    ["below its range, as a text", "2.1 mm/s rms (below range)"],
    ["OL", "OL"],
    ["OL with a unit", "OL mm/s rms"],
    ["more than", "> 20 mm/s rms"],
    ["over range", "over range"],
  ])("a cell that says %s is refused and reaches every zone, with --keep-going too", async (_, cell) => {
    const asked = ["--machine", "pump 250 kW 2980 r/min category I", "--fail-from", "D", "--keep-going"];
    const { code, err, out } = await veladis(["table", file(`v\n1 mm/s rms\n${cell}\n`), "--column", "v", ...asked]);
    expect([code, plain(err)]).toEqual([1, expect.stringContaining("reached 1 row by --fail-from D")]);
    expect([out.split("\n").length, err]).toEqual([3, expect.stringContaining("sensor-fault")]);
  });

  it.each(["OL", ">20", "inf", "1e999", "over range"])("a bare cell %s in a column is counted alike", async (cell) => {
    expect(await exit(`v\n1\n${cell}\n`, "--fail-from", "D", "--keep-going")).toEqual([1, "1"]);
  });

  it.each([
    ["OL", 1],
    ["DE: OL", 1],
    ["> 20 mm/s rms", 1],
    ["Pump 3, DE-H: over range", 1],
    ["DE-H 3.1, DE-V OL mm/s rms", 1],
    ["Overflow pump: n/a", 0],
    ["OL 3: n/a", 0],
  ])("a line %s beside --fail-from and --keep-going exits %i", async (line, code) => {
    const asked = ["--machine", "pump 250 kW 2980 r/min category I", "--fail-from", "D", "--keep-going"];
    expect((await veladis(["judge", ...asked], `1 mm/s rms\n${line}\n`)).code).toBe(code);
  });

  it("no row that was judged is no gate passed", async () => {
    expect(await exit("v\nx\n", "--fail-from", "C", "--keep-going")).toEqual([2, "0"]);
  });

  it("a row that may not be judged may be in any zone", async () => {
    expect(await exit("v\n1\n2\n", "--fail-from", "D", "--background", "0.5 mm/s rms")).toEqual([1, "1"]);
  });

  it("what was not judged may be worse", async () => {
    const args = ["--column", "v", "--from", "mm/s rms", "--machine", "group 2 rigid", "--scheme", "iso-10816-3-2009"];
    expect((await veladis(["table", file("v\n1\n"), ...args, "--fail-from", "D"])).code).toBe(1);
  });

  it("an acceptance that fails counts as D", async () => {
    const args = ["--column", "v", "--from", "mm/s rms", "--machine", "fan rigid BV-3", "--fail-from", "D"];
    const codes = ["1", "9"].map(
      async (v) => (await veladis(["table", file(`v\n${v}\n`), ...args, "--scheme", "iso-14694-2003-acceptance"])).code,
    );
    expect(await Promise.all(codes)).toEqual([0, 1]);
  });
});

describe("what differs from row to row counts for its row", () => {
  it("the frequency: the same acceleration is in another zone", async () => {
    const rows = file("v,hz\n0.5,1000\n0.5,20\n0.5,20\n0.5,1000\n");
    const args = ["--column", "v", "--from", "g pk", "--at-column", "hz", "--at-unit", "Hz", ...judged];
    const { out } = await veladis(["table", rows, ...args]);
    const zones = out
      .trim()
      .split("\n")
      .slice(1)
      .map((row) => row.split(",")[2]);
    const zoneAt = (hertz: number) =>
      classify(`0.5 g pk at ${hertz} Hz`, { scheme: "iso-10816-3-2009", machine: "group 2 rigid" }).zone;
    expect(zones).toEqual([1000, 20, 20, 1000].map(zoneAt));
    expect(new Set(zones).size).toBe(2);
  });

  it("blanks about a reading, and in the words on a machine, say nothing", async () => {
    const rows = file("v;m\n 4.1 mm/s rms ;pump  250 kW   category I\n4.1 mm/s rms;pump 250 kW category I\n");
    const { out, code } = await veladis(["table", rows, "--column", "v", "--machine-column", "m"]);
    const [, first, second] = out.split("\n").map((row) => row.split(";").slice(2).join(";"));
    expect([code, first]).toEqual([0, second]);
  });

  it("a reading of zero is remarked in its row and counted, where rows are judged", async () => {
    const rows = file("v\n0\n4.1\n0.0\n");
    const args = ["table", rows, "--column", "v", "--from", "mm/s rms"];
    const { out, err } = await veladis([...args, ...judged]);
    expect(out.split("\n").map((row) => row.includes("a reading of zero"))).toEqual([false, true, false, true, false]);
    expect(plain(err)).toContain("the sensor measures (2 rows)");
    expect((await veladis([...args, "--to", "in/s rms"])).out).not.toContain("a reading of zero");
  });

  it("a speed in its column beside a range in words is refused", async () => {
    const rows = file("v,m,n\n4.1,motor 900 to 1800 r/min,1500\n4.1,motor 1500 r/min,1500\n");
    const args = ["--from", "mm/s rms", "--machine-column", "m", "--speed-column", "n", "--speed-unit", "r/min"];
    const { err } = await veladis(["table", rows, "--column", "v", ...args]);
    expect(plain(err)).toContain("syntax expected: one running speed in the words on the machine and in its column");
    expect(err).toContain("1 refused");
  });

  it("an order of the speed is above zero", async () => {
    const rows = file("v,n\n4.1,1500\n");
    const args = [
      "--column",
      "v",
      "--from",
      "mm/s rms",
      "--to",
      "um pp",
      "--speed-column",
      "n",
      "--speed-unit",
      "r/min",
    ];
    const { err, code } = await veladis(["table", rows, ...args, "--at", "0x"]);
    expect([code, plain(err)]).toEqual([2, expect.stringContaining("an order of the running speed above zero")]);
  });

  it("a crest factor is told in the steps of a row", async () => {
    const args = [
      "--column",
      "v",
      "--from",
      "g rms",
      "--to",
      "g true pk",
      "--crest-factor",
      "4",
      "--json",
      "--explain",
    ];
    const { out } = await veladis(["table", file("v\n2\n"), ...args]);
    expect(out).toContain('"because":"crest factor 4"');
  });
});

describe("rows that are refused", () => {
  const bad = file(`v\n1\n${"x\n".repeat(25)}`);
  const fixed = ["--column", "v", "--from", "mm/s rms", "--to", "in/s pk"];

  it("many of them are told up to a number, then counted", async () => {
    const { err } = await veladis(["table", bad, ...fixed]);
    const told = err.match(/not-a-number/g)?.length ?? 0;
    expect(told).toBeGreaterThan(0);
    expect(err).toContain(`veladis: ${25 - told} more refused; --refused <file> lists them all\n`);
    expect((await veladis(["table", bad, ...fixed, "--json"])).err).not.toContain("more refused; ");
  });

  it("in a file of their own there are no more to tell of", async () => {
    const path = join(mkdtempSync(join(folder, "one-")), "out.csv");
    const { err } = await veladis(["table", bad, ...fixed, "--out", path]);
    expect(err).not.toContain("more refused; ");
    expect(err).toContain("25 refused");
  });

  it("are told with the name of their file, and without one where they are piped", async () => {
    expect((await veladis(["table", bad, ...fixed])).err).toContain("in.csv");
    const piped = await veladis(["table", ...fixed], "v\nx\n");
    expect(piped.err).not.toContain("undefined");
  });
});

describe("the summary of rows that were judged", () => {
  it("counts zones and grades, and ends with the cautions", async () => {
    const { err } = await veladis(["table", file("v\n1\n3\n9\nx\n"), "--column", "v", "--from", "mm/s rms", ...judged]);
    const { err: whole } = await veladis([
      ...["table", file("v\n1\n3\n9\n"), "--column", "v", "--from", "mm/s rms", ...judged],
    ]);
    const page = [err.slice(err.indexOf("rows: ")), whole].join("\n");
    await expect(page).toMatchFileSnapshot("pages/summary.txt");
  });

  it("words of blanks alone are no machine: nothing is asked", async () => {
    const { err, code } = await veladis([
      "table",
      file("v\n1\n"),
      "--column",
      "v",
      "--from",
      "mm/s rms",
      "--machine",
      " ",
    ]);
    expect([code, plain(err)]).toEqual([2, expect.stringContaining("what to add")]);
  });
});
