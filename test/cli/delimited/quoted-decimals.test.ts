import { describe, expect, it } from "vitest";
import { veladis } from "../in-process";

const args = [
  "table",
  "--column",
  "Value",
  "--from",
  "mm/s rms",
  "--to",
  "mm/s pk",
  "--digits",
  "3",
  "--decimal-comma",
];
const both = [...args, "--separator", "comma"];

async function refusal(args: readonly string[], input: string): Promise<string> {
  const { code, err } = await veladis(args, input);
  return code === 0 ? "" : err.replace(/\n\s*/g, " ");
}

describe("decimal commas in a file whose cells commas part", () => {
  it("numbers in quotes are read, and so are whole ones without; added numbers are quoted", async () => {
    const { out, code } = await veladis(both, 'Place,Value\nID fan 1,"4,1"\nID fan 2,5\n');
    expect([out, code]).toEqual([
      'Place,Value,mm/s pk,assumed\nID fan 1,"4,1","5,80",sine\nID fan 2,5,"7,07",sine\n',
      0,
    ]);
  });

  it("a row without the quotes is ragged, and refused", async () => {
    const { out, err, code } = await veladis(both, 'Place,Value\nID fan 1,"4,1"\nID fan 2,5,2\n');
    expect([out.split("\n").length, code]).toEqual([3, 2]);
    expect(err).toContain("line 3: length-mismatch");
  });

  it("by a line that says sep=, too", async () => {
    expect(await refusal(args, 'sep=,\nPlace,Value\nID fan 1,"4,1"\n')).toBe("");
  });

  it.each([
    ["no number in quotes", "Vibration, mm/s\n4,9\n", ["--column", "1"]],
    ["a text in quotes alone", 'Place,Value\n"ID fan, 1",4\n', []],
    ["numbers with points in quotes", 'Place,Value\nID fan 1,"4.1"\n', []],
    ["--quotes none", 'Place,Value\nID fan 1,"4,1"\n', ["--quotes", "none"]],
  ])("%s: refused", async (_, csv, more) => {
    const told = both.filter((one) => !more.includes("--column") || (one !== "--column" && one !== "Value"));
    expect(await refusal([...told, ...more], csv)).toContain("both only where such numbers stand in quotes");
  });

  it("without --separator comma the refusal names it", async () => {
    const told = await refusal(args, 'Place,Value\nID fan 1,"4,1"\n');
    expect(told).toContain("--separator comma beside --decimal-comma");
    expect(told).toContain("at line 2 of standard input");
    expect(await refusal(args.with(2, "1"), '"Value, mm/s"\n"4,1"\n')).toBe("");
  });

  it("simulate, setpoints and convert likewise", async () => {
    const csv = 'time,level\n"0","3"\n"1,5","9,5"\n"2,5",9\n';
    const simulate =
      "simulate|--threshold|9 mm/s rms|--hysteresis|8 %|--delay|0|--latching|--timer-resets|threshold|--json";
    const more = ["--from", "mm/s rms", "--decimal-comma", "--separator", "comma"];
    const { out } = await veladis([...simulate.split("|"), ...more], csv);
    expect(JSON.parse(out).events[0]).toMatchObject({ event: "trip", time: 1.5, level: 9.5 });
    expect((await veladis(["--column", "level", "--to", "mm/s pk", ...more], csv)).code).toBe(0);
  });

  it("a row of as many cells that may have a number without its quotes is refused", async () => {
    const told = await refusal(both, 'Place,Value,Remark\nID fan 1,"4,1",ok\nID fan 2,4,1\n');
    expect(told).toContain('expected: a number in quotes, as in "4,1" or "4"');
    expect(told).toContain("1 answered + 1 refused");
    // another number of the row in quotes says that such numbers are
    const { code, out } = await veladis(both, 'Place,Value,Points,Remark\nID fan 1,"4,1",3,2\n');
    expect([code, out]).toEqual([0, 'Place,Value,Points,Remark,mm/s pk,assumed\nID fan 1,"4,1",3,2,"5,80",sine\n']);
  });
});

describe("refusals of cells by --decimal-comma show the cell as it is, and never ask for a point", () => {
  const cases = [
    ["4,1,2", "4,1,2"],
    ["many", "many"],
    ["4.1", "4.1"],
    ["1.204,5", "1.204,5"],
  ] as const;

  it.each(cases)("%s", async (cell, shown) => {
    for (const command of [args, ["--column", "Value", "--from", "mm/s rms", "--to", "mm/s pk", "--decimal-comma"]]) {
      const told = await refusal(command, `Place;Value\nID fan 1;${cell}\n`);
      expect(told).toContain(`received: "${shown}"`);
      expect(told).toContain("with a comma for decimals");
      expect(told).not.toContain("--decimal-comma where");
    }
  });

  it("frequencies and whole readings", async () => {
    const csv = "Place;Value;f\nID fan 1;4,1 mm/s;24,5 Hzz\n";
    expect(await refusal(["table", "--column", "2", "--to", "mm/s pk", "--decimal-comma"], csv)).not.toContain("4.1");
    const at = [...args.with(2, "Place"), "--at-column", "f"];
    expect(await refusal(at, "Place;Value;f\n4,1;3;24,5 Hzz\n")).not.toContain("24.5");
  });

  it("overall names columns alone", async () => {
    const told = await refusal(["overall", "--rate", "100", "--unit", "g", "--decimal-comma"], "0,1;0,2\n0,2;0,3\n");
    expect(told).toContain("--column 2 received");
  });
});
