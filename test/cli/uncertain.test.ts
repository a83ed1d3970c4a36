import { writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fromJson } from "veladis/json";
import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const file = (name: string, text: string): string => {
  const path = join(tmpdir(), `veladis-${process.pid}-${name}`);
  writeFileSync(path, text);
  return path;
};

describe("a reading with its uncertainty", () => {
  it.each([
    ["4.9 ± 0.3 mm/s rms (k=2) to in/s rms", "4.9 ± 0.3 mm/s rms (k=2) = 0.193 ± 0.012 in/s rms (k=2)\n"],
    [
      "4.9 +/- 0.3 mm/s rms to in/s pk",
      "4.9 +/- 0.3 mm/s rms = 0.273 ± 0.019 in/s pk (k=2)  (sine) (± without k taken as a bound with equal chance within)\n",
    ],
    [
      "4.9 ± 2 mm/s rms (k=2) to in/s rms",
      "4.9 ± 2 mm/s rms (k=2) = 0.193 ± 0.079 in/s rms (k=2)  (Monte Carlo, 200000 draws, seed 1)\n",
    ],
    ["95 ± 0.5 dB re 1e-9 m/s (k=2) to mm/s rms", "95 ± 0.5 dB re 1e-9 m/s (k=2) = 0.0562 ± 0.0032 mm/s rms (k=2)\n"],
  ])("%s", async (text, printed) => {
    expect((await veladis([text])).out).toBe(printed);
  });

  it("stands in every cell of the table of equivalents", async () => {
    const { out } = await veladis(["4.9 ± 0.3 mm/s rms (k=2)"]);
    expect(out).toContain("0.193 ± 0.012");
    expect(out).toContain("± are expanded uncertainties, k = 2");
  });

  it("is data with --json, and steps with --explain", async () => {
    const { out } = await veladis(["4.9 ± 0.3 mm/s rms (k=2) at 25 ± 0.5 Hz (k=2) to um pp", "--json", "--explain"]);
    const { uncertaintyOf, text, explained } = JSON.parse(out);
    expect(text).toBe("88.2 ± 5.7 um pp (k=2)");
    expect(fromJson("conversion", out).value).toBeCloseTo(88.2, 1);
    expect(uncertaintyOf).toMatchObject({
      k: 2,
      method: "first order",
      assumed: ["one-frequency", "sine", "independent"],
    });
    expect(uncertaintyOf.parts.map(({ name }: { name: string }) => name)).toEqual(["4.9 mm/s rms", "25 Hz"]);
    expect(explained[0].because).toBe("± 0.3 mm/s rms (k=2); frequency ± 0.5 Hz (k=2)");
  });

  it("is read of a route and of bare numbers with --from", async () => {
    const route = file("uncertain.txt", "DE: 4.9 ± 0.3 mm/s rms (k=2)\nNDE: 4.1 mm/s rms\n");
    const { out } = await veladis(["--file", route, "--to", "in/s rms"]);
    expect(out).toContain("0.193 ± 0.012");
    expect(out).toContain("± are expanded uncertainties, k = 2");
    expect((await veladis(["4.9 ± 6 % (k=2)", "--from", "mm/s rms", "--to", "cm/s rms"])).out).toContain(
      "0.490 ± 0.029 cm/s rms (k=2)",
    );
  });

  it("is refused in a cell of a column, which stays empty", async () => {
    const levels = file("uncertain.csv", "time,level\n1,4.9\n2,4.9 ± 0.3\n");
    const { out, err } = await veladis([
      "--file",
      levels,
      "--column",
      "level",
      "--from",
      "mm/s rms",
      "--to",
      "in/s rms",
    ]);
    expect(out.trimEnd().split("\n").at(-1)).toBe("2,4.9 ± 0.3,");
    expect(err).toContain('"4.9 ± 0.3"');
  });

  it("is refused where none is carried", async () => {
    for (const line of [
      ["simulate", "--file", file("levels.csv", "0,1\n1,2\n"), "--from", "mm/s rms", "--threshold", "9 ± 0.5 mm/s rms"],
      ["plan", "--threshold", "9 ± 0.5 mm/s rms", "--hysteresis", "8 %", "--delay", "8", "--latching"],
    ]) {
      const { err, code } = await veladis([
        ...line,
        ...(line[0] === "simulate"
          ? ["--hysteresis", "8 %", "--delay", "8", "--latching", "--timer-resets", "threshold"]
          : []),
        ...(line[0] === "plan" ? ["--shaker", "8 Hz to 3 kHz"] : []),
      ]);
      expect(err, line[0]).toContain("a reading without ±, which parseUncertain");
      expect(code).not.toBe(0);
    }
  });
});

describe("a check of levels with their uncertainty", () => {
  const known = ["check", "--known", "8 ± 0.16 mm/s rms (k=2) at 2400 r/min", "--tolerance", "5 %"];

  it("prints the uncertainty, what it is made of, and the verdict", async () => {
    const { out } = await veladis([...known, "--indicated", "7.7 ± 0.05 mm/s rms"]);
    expect(out.replace(/\s+/g, " ")).toContain("uncertainty 0.170 mm/s rms (k = 2); passes up to 0.230 mm/s rms");
    expect(out.replace(/\s+/g, " ")).toContain(
      "made of: 8 mm/s rms ± 0.16 mm/s rms (k=2) (88 %); 7.7 mm/s rms ± 0.05 mm/s rms (12 %), taken as independent, first order",
    );
    expect(out).toContain("undecided");
  });

  it("gives as found and as left their own line where they are known otherwise", async () => {
    const { out } = await veladis([...known, "--indicated", "7.3 mm/s rms", "--as-left", "7.9 ± 0.1 mm/s rms (k=2)"]);
    expect(out).toMatch(/as found .*\n.* U 0\.160\n.*\nas left .*\n.* U 0\.189\n/);
  });

  it("carries them as data", async () => {
    const { out } = await veladis([...known, "--indicated", "7.7 ± 0.05 mm/s rms", "--json"]);
    expect(JSON.parse(out)).toMatchObject({ rule: "guard band", method: "first order", parts: [{}, {}] });
  });

  it("carries them from the cells of a file to the verdict on each level", async () => {
    const options = ["--from", "mm/s rms", "--tolerance", "5 %"];
    const rows = "known,indicated\n2,2.1\n5 ± 0.1,5.1 ± 2 % (k=2)\n10,10.1\n";
    const { out } = await veladis(["check", ...options], rows);
    // JCGM 100:2008, 4.3.7 and 5.1.2: 2 times the root of (0.1 / root 3)^2 + 0.051^2
    expect(out).toMatch(/^2 +5\.00 mm\/s rms .* undecided\n.* U 0\.154\n/m);
    expect(out).toContain("slope, offset and the line are those of the best values");
    expect(out.replace(/\s+/g, " ")).toContain("5.1 mm/s rms ± 2 % (k=2) (44 %)");
    const comma = rows.replaceAll(",", ";").replaceAll(".", ",");
    const { out: same } = await veladis(["check", ...options, "--decimal-comma"], comma);
    expect(same).toBe(out);
  });

  it("refuses cells with ± that are no levels, also with --skip-bad: such a row is not a bad one", async () => {
    const points = file("points.csv", "known,indicated\n2,2.1\n5 ± 5.1,5.1\n10,10.1 ± 0.1 mm/s rms\n");
    for (const more of [[], ["--skip-bad"]]) {
      const { err, code } = await veladis([
        "check",
        "--file",
        points,
        "--from",
        "mm/s rms",
        "--tolerance",
        "5 %",
        ...more,
      ]);
      expect(err).toContain("levels with ± written 5 ± 0.1 or 5 ± 2 % (k=2)");
      expect(code).not.toBe(0);
    }
  });
});

describe("--uncertainty", () => {
  const args = ["check", "--known", "8 mm/s rms", "--indicated", "7.7 mm/s rms", "--tolerance", "5 %", "--uncertainty"];

  it.each([
    ["± 2 %", "0.185"],
    ["2 %", "0.185"],
    ["2 % (k=1)", "0.320"],
    ["+/- 0.1 mm/s rms (k=2)", "0.100"],
  ])("of a check is read: %s", async (text, expanded) => {
    const { out, code } = await veladis([...args, text]);
    expect(out).toContain(`uncertainty ${expanded} mm/s rms (k = 2)`);
    expect(out.includes("taken as a bound")).toBe(!text.includes("k="));
    expect(code).toBe(0);
  });

  it("of a reading means what the same words behind it mean, and tells a bound", async () => {
    const judge = ["--machine", "pump 90 kW 2980 r/min category II"];
    const { out } = await veladis(["judge", "4.9 mm/s rms", ...judge, "--uncertainty", "5 %"]);
    const behind = await veladis(["judge", "4.9 ± 5 % mm/s rms", ...judge]);
    expect(out.split("\n").slice(1)).toEqual(behind.out.split("\n").slice(1));
    expect(out).toContain("± without k taken as a bound with equal chance within");
  });
});
