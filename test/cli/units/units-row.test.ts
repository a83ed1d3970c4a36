import { describe, expect, it } from "vitest";
import { readText } from "../delimited/read";
import { veladis } from "../in-process";

const csv = "time;level\ns;mm/s rms\n0;3.1\n10;3.2\n20;3.3\n";
const table = ["table", "--column", "level", "--to", "in/s pk"];
const switched = ["--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--delay", "8", "--latching"];

async function refusal(args: readonly string[], input: string): Promise<string> {
  const { code, err } = await veladis(args, input);
  return code === 0 ? "" : err.replace(/\n\s*/g, " ");
}

describe("a row of units below the header", () => {
  // biome-ignore format: a row of a table is a line
  it.each([
    ["table", [...table, "--from", "mm/s rms"]],
    ["convert", ["--column", "level", "--from", "mm/s rms", "--to", "in/s pk"]],
    ["simulate", ["simulate", "--from", "mm/s rms", "--timer-resets", "threshold", ...switched]],
    ["setpoints", ["setpoints", "--file", "-", "--from", "mm/s rms", "--time", "time", "--machine", "pump 90 kW category II"]],
  ] as const)("is told by %s, and is no row", async (_, args) => {
    const { code, err } = await veladis(args, csv);
    expect([code, err]).toEqual([0, expect.stringContaining('rows: 4 in = 3 answered + 0 refused + 1 skipped (1 row of units: "s", "mm/s rms")')]);
    const other = await refusal(args.map((arg) => (arg === "mm/s rms" ? "in/s rms" : arg)), csv);
    expect(other).toContain('--from "in/s rms", and the heading "level [mm/s rms]" of column 2');
  });

  it("of check and of overall, too", async () => {
    const points = "known,indicated\nmm/s rms,mm/s rms\n2,2.1\n5,5.1\n10,10.1\n";
    expect(await refusal(["check", "--from", "mm/s rms", "--tolerance", "5 %"], points)).toBe("");
    expect(await refusal(["check", "--from", "in/s rms", "--tolerance", "5 %"], points)).toContain(
      '"known [mm/s rms]"',
    );
    const wave = Array.from({ length: 400 }, (_, i) => `${i};${Math.sin(i * 0.9).toFixed(5)}\n`).join("");
    const samples = (units: string) => `t;a\n${units}\n${wave}`;
    const overall = ["overall", "--column", "a", "--rate", "1000", "--unit", "m/s2", "--band", "20-400"];
    expect(await refusal(overall, samples("ms;m/s2"))).toBe("");
    expect(await refusal(overall, samples("ms;g"))).toContain('which says "g"');
    expect(await refusal(overall, samples("ms;m/s2 rms"))).toContain("levels are for veladis table");
    expect(await refusal(overall, samples("s;m/s2"))).toContain("1 s from row to row");
  });

  it("serves table in the place of --from, and stays in its output", async () => {
    const { out } = await veladis([...table, "--digits", "3"], csv);
    expect(out.split("\n").slice(0, 3)).toEqual(["time;level;in/s pk;assumed", "s;mm/s rms;;", "0;3.1;0.173;sine"]);
    expect((await veladis([...table, "--digits", "3"], "time;level\n;[ mm/s rms ]\n0;3.1\n")).out).toContain("0.173");
  });

  it("of times is their unit", async () => {
    const minutes = csv.replace("\ns;", "\nmin;");
    const { out } = await veladis(
      ["simulate", "--from", "mm/s rms", "--timer-resets", "threshold", ...switched],
      minutes,
    );
    expect(out).toContain("3 levels over 1200 s");
  });

  // biome-ignore format: a row of a table is a line
  it.each([
    ["level in/s", "mm/s rms"], ["velocity pk", "mm/s rms"], ["acceleration", "mm/s rms"], ["level rms", "pk"], ["speed [r/min]", "mm/s"], ["level", "s"],
  ])("that contradicts its heading is refused: %s over %s", async (heading, unit) => {
    const told = await refusal(["table", "--column", "2", "--from", "mm/s rms", "--to", "in/s pk"], `n;${heading}\n;${unit}\n1;3.1\n`);
    expect(told).toContain(`of column 2`);
    const none = ["table", "--column", "2", "--from", "mm/s rms", "--to", "in/s pk", "--file-units", "none"];
    expect(await refusal(none, `n;${heading}\n;${unit}\n1;3.1\n`)).toBe("");
  });

  it("times in ms over s are refused", async () => {
    expect(await refusal(table, csv.replace("time", "time [ms]"))).toContain('"s" in the row of units, line 2');
  });

  // biome-ignore format: a row of a table is a line
  it.each([
    ["a word that is no unit", "time;level\nzero;mm/s rms\n0;3.1\n"], ["a second row of words", "time;level\ns;mm/s\ns;rms\n0;3.1\n"],
    ["no numbers below", "time;level\ns;mm/s rms\n;\n"], ["nothing below", "time;level\ns;mm/s rms\n"],
  ])("is none with %s: a row, refused with its line", async (_, text) => {
    const { code, err } = await veladis([...table, "--from", "mm/s rms"], text);
    expect([code, err]).toEqual([2, expect.stringContaining("line 2: not-a-number")]);
  });

  it("is none where each row says its unit: the rows are read", async () => {
    const rows = "value,unit,detector\n,mm/s,rms\n4.1,mm/s,rms\n";
    const { out, err } = await veladis(
      ["table", "--column", "value", "--from-column", "unit", "--detector-column", "detector", "--to", "in/s pk"],
      rows,
    );
    expect(out).toContain("4.1,mm/s,rms,0.228");
    expect(err).toContain("line 2: not-a-number");
  });

  it("is found however the file comes in pieces", async () => {
    for (let cut = 1; cut < csv.length; cut++) {
      const { rows, account } = await readText(csv, {}, [cut]);
      expect([rows.length, account.units?.line]).toEqual([3, 2]);
    }
  });
});
