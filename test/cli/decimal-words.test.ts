import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import { pointedWords } from "../../src/core/index";
import { parseMachine } from "../../src/severity/index";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-words-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = (content: string): string => {
  const path = join(mkdtempSync(join(folder, "one-")), "in.csv");
  writeFileSync(path, content);
  return path;
};
const plain = (text: string): string => text.replace(/\s+/g, " ");

describe("--decimal-comma reaches the words on a machine", () => {
  it("judge: of the reading and of the machine", async () => {
    const comma = await veladis(["judge", "4,5 mm/s rms", "--machine", "motor, 7,5 kW", "--decimal-comma"]);
    const point = await veladis(["judge", "4.5 mm/s rms", "--machine", "motor, 7.5 kW"]);
    expect(comma).toEqual(point);
    expect(comma.out).toContain("motor, 7.5 kW");
  });

  it("judge: of points, of lines and of what stands in its options", async () => {
    const machine = ["--machine", "pump 7,5 kW category I, 1480 r/min", "--decimal-comma"];
    const points = await veladis(["judge", "DE-H 3,1; DE-V 2,2 mm/s rms", ...machine]);
    expect(points.out).toContain("DE-H governs, 3.10 mm/s rms");
    const more = ["--since", "1,8 mm/s rms", "--background", "0,2 mm/s rms"];
    const since = await veladis(["judge", "3,1 mm/s rms", ...machine, ...more]);
    expect([since.code, since.err]).toEqual([0, ""]);
    expect(since.out).toContain("a rise of 1.30 mm/s rms");
    const within = await veladis(["judge", "3,1 mm/s rms", ...machine, "--uncertainty", "0,2 mm/s rms (k=2)"]);
    expect(within.out).toContain("2.90 to 3.30 mm/s rms");
    const lines = await veladis(["judge", ...machine], "3,1 mm/s rms\n0,2 in/s pk\n");
    expect(lines.out.split("\n").length).toBe(3);
    const crest = ["judge", "1,5 g true pk", ...machine, "--crest-factor", "3,5"];
    expect((await veladis(crest)).err).not.toContain("not-a-number");
  });

  it("table: the words of a row, and of the option beside it", async () => {
    const rows = file("value;machine\n4,5;motor, 7,5 kW\n4,5;motor 1,480 r/min\n");
    const ofRow = ["--column", "value", "--from", "mm/s rms", "--machine-column", "machine", "--decimal-comma"];
    const { out, err, code } = await veladis(["table", rows, ...ofRow]);
    expect(code).toBe(2);
    const [, first, second] = out.split("\n");
    expect(first?.split(";").slice(0, 4)).toEqual(["4,5", "motor, 7,5 kW", "C", "C"]);
    expect(second).toBe("");
    expect(plain(err)).toContain("a number that is read one way: 1480, or 1,48");
    const one = ["--column", "value", "--from", "mm/s rms", "--decimal-comma", "--machine"];
    const told = await veladis(["table", file("value\n4,5\n"), ...one, "motor, 7,5 kW"]);
    expect(told.out.split("\n")[1]?.split(/[;,](?=[A-D])/)[1]).toBe("C");
    // words in an option may have a point all the same
    expect((await veladis(["table", file("value\n4,5\n"), ...one, "motor 7.5 kW"])).out).toBe(told.out);
  });

  it("sql: the words of a list; a row that may mean two machines is refused alone", async () => {
    const list = file("machine;words\nM-1;motor, 7,5 kW 1485 r/min rigid\nM-2;motor 1,480 kW rigid\n");
    const asked = ["--table", "readings", "--column", "v", "--from", "mm/s rms", "--decimal-comma", "--json"];
    const { out, err } = await veladis(["sql", "--machines", list, ...asked]);
    expect(out).toContain("M-1");
    // it has no limit, and says why
    expect(out).toMatch(/"machine":"M-2",[^\n]*"limit":null,[^\n]*"refused":"expected a number that is read one way/);
    expect(plain(err)).toContain("1480, or 1,48");
    const alone = await veladis(["sql", "--column", "v", "--from", "mm/s rms", "--machine", "motor 7,5 kW rigid"]);
    expect(alone.err).toContain("not-a-number");
    const given = ["sql", "--column", "v", "--from", "mm/s rms", "--decimal-comma", "--machine", "motor 7,5 kW rigid"];
    expect((await veladis(given)).code).toBe(0);
  });

  it("setpoints and overall: the machine", async () => {
    const levels = file("level\n2,1\n2,2\n2,0\n2,1\n");
    const from = ["setpoints", "--file", levels, "--from", "mm/s rms", "--decimal-comma", "--machine"];
    const { out, err, code } = await veladis([...from, "motor 7,5 kW 1485 r/min rigid"]);
    expect([code, err.includes("not-a-number")]).toEqual([0, false]);
    expect(out).toContain("ALARM");
    const samples = file(
      `a\n${Array.from({ length: 4096 }, (_, i) =>
        Math.sin(i / 5)
          .toFixed(4)
          .replace(".", ","),
      ).join("\n")}\n`,
    );
    const record = ["overall", samples, "--rate", "2048", "--unit", "mm/s", "--decimal-comma", "--machine"];
    expect((await veladis([...record, "motor 7,5 kW 1485 r/min rigid"])).err).toMatch(/^rows: 4096 in = 4096 answered/);
  });
});

describe("numbers in words", () => {
  it.each([
    ["motor, 7,5 kW", "motor, 7.5 kW"],
    ["motor,7,5 kW, 1480 r/min", "motor,7.5 kW, 1480 r/min"],
    ["pump 0,750 kW", "pump 0.750 kW"],
    ["pump 90 kW, 24,75 Hz, category II", "pump 90 kW, 24.75 Hz, category II"],
    ["fan 7.5 kW", "fan 7.5 kW"],
    ["fan BV-3, 132 kW", "fan BV-3, 132 kW"],
    ["fan 1000,5 to 1800,5 r/min", "fan 1000.5 to 1800.5 r/min"],
  ])("%s is %s", (words, expected) => {
    expect(pointedWords(words, true)).toBe(expected);
    expect(pointedWords(words, false)).toBe(words);
  });

  it.each(["motor 1,480 r/min", "motor 1.480 r/min", "motor 1.100,5 kW", "motor 1,100,5 kW", "motor 1.2.3 kW"])(
    "%s is refused",
    (words) => {
      expect(() => pointedWords(words, true)).toThrow(expect.objectContaining({ code: "not-a-number" }));
    },
  );

  it("both readings are shown of what may be thousands", () => {
    expect(() => pointedWords("motor 1,480 r/min", true)).toThrow("1480, or 1,48");
    expect(() => pointedWords("motor 12.000 kW", true)).toThrow("12000, or 12,0");
  });

  it("are never two facts: a machine has the power that was written, or is refused", () => {
    const decimals = fc.integer({ min: 0, max: 99_999 }).map(String);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), decimals, fc.constantFrom(" ", ", ", ","), (whole, part, gap) => {
        const written = `motor${gap}${whole},${part} kW`;
        if (part.length === 3) {
          // 1,480 may be thousands
          expect(() => pointedWords(written, true)).toThrow(`${whole}${part}, or ${whole},`);
          return;
        }
        const words = pointedWords(written, true);
        const { power, notUnderstood } = parseMachine(words);
        expect([power, notUnderstood]).toEqual([`${whole}.${part} kW`, undefined]);
      }),
    );
  });
});
