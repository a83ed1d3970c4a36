import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { SaxesParser } from "saxes";
import { afterAll, describe, expect, it } from "vitest";
import { proposalPlot } from "../../src/cli/print/proposal-text";
import { scaleText } from "../../src/cli/print/scale-text";
import { zonesPlot } from "../../src/cli/print/zones-plot";
import { proposeSetpoints } from "../../src/entries/protection";
import { judge } from "../../src/entries/severity";
import { root } from "../examples/fences";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-scales-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const machine = ["--machine", "pump 250 kW 2980 r/min category I"];
const proposed = ["setpoints", "--baseline", "2 mm/s rms", ...machine];

/** The size of a column as the plot tells it. */
const columnOf = (text: string): number => Number(/a column is (\S+)/.exec(text)?.[1]);

describe("levels on one scale in the terminal", () => {
  it("are read back within one cell at any width", () => {
    const value = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(value, value, fc.integer({ min: 20, max: 200 }), (one, two, width) => {
        const most = 1.1 * Math.max(one, two);
        const lines = [one, two].map((level) => ({ name: "level", text: "", value: level }));
        const text = scaleText({ unit: "mm/s rms", most, key: "", lines, marks: [] }, width);
        const bars = text.split("\n").filter((line) => line.includes("┤"));
        const cells = (text.split("\n").find((line) => line.includes("└")) as string).replace(/[^─]/g, "").length;
        bars.forEach((bar, i) => {
          const at = (bar.split("┤")[1] as string).indexOf("█");
          const read = (at / cells) * most;
          expect(lines[i]?.value).toBeGreaterThanOrEqual(read * (1 - 1e-12));
          expect(lines[i]?.value).toBeLessThanOrEqual(read + (most / cells) * (1 + 1e-12));
        });
      }),
    );
  });

  it("are as wide as the window, and plain", () => {
    const proposal = proposeSetpoints({ baseline: "2 mm/s rms", machine: "pump 250 kW 2980 r/min category I" });
    for (const width of [40, 80, 160]) {
      const plot = proposalPlot(proposal, {}, width);
      expect(Math.max(...plot.split("\n").map((line) => line.length))).toBeLessThanOrEqual(width);
      expect(plot).not.toContain("\u001b");
    }
  });

  it("show a setpoint that is asked for, by its signal", async () => {
    const { out } = await veladis([...proposed, "--plot", "--loop", "0 to 20 mm/s rms", "--asked", "9.6 mA"]);
    expect(out).toMatch(/7\.000\nas asked ┤/);
    expect(out).toContain("ASKED 9.600 mA, 35.00 % of 0 to 20 mm/s rms");
  });
});

describe("the zones of judge in the terminal", () => {
  it("are read back within one cell at any width", () => {
    const level = fc.double({ min: 0.1, max: 40, noNaN: true });
    fc.assert(
      fc.property(level, fc.integer({ min: 20, max: 200 }), (value, width) => {
        const verdict = judge(`${value} mm/s rms`, "pump 90 kW 2980 r/min category II");
        const text = zonesPlot(verdict, false, width);
        const at = (text.split("\n")[0] as string).indexOf("▼");
        const column = columnOf(text);
        expect(Math.abs(value - (at + 0.5) * column)).toBeLessThanOrEqual(0.51 * column + 0.005 * value);
      }),
    );
  });

  it("say that an uncertainty is not drawn", async () => {
    const args = ["judge", "4.9 ± 0.3 mm/s rms (k=2)", ...machine, "--plot"];
    expect((await veladis(args)).out.replace(/\s+/g, " ")).toContain("its uncertainty is not drawn");
  });
});

describe("the chart of setpoints", () => {
  it("draws baseline, alarm, trip and limits", async () => {
    const path = join(folder, "setpoints.svg");
    expect(await veladis([...proposed, "--chart", path])).toMatchObject({ code: 0 });
    const svg = readFileSync(path, "utf8");
    new SaxesParser().write(svg).close();
    expect(/<desc>(.*?)<\/desc>/s.exec(svg)?.[1]).toBe(
      "In mm/s rms: baseline 2.000; ALARM 3.250, clears below 3.087 (the rules allow 2 to 6.25); TRIP 7.600, clears below 7.220 (the rules allow 5 to 9.5). Limits: B/C 5, C/D 7.6.",
    );
  });

  it("draws a raised setpoint and statistics", async () => {
    const path = join(folder, "turbine.svg");
    const file = `${root}/docs/examples/pump-rig/normal-excerpt.csv`;
    const args = ["setpoints", "--file", file, "--from", "g rms", "--column", "2", "--limits", "0.3 g rms, 0.5 g rms"];
    const raised = ["--machine", "pump 1490 r/min", "--raised", "1.5 times from 600 to 900 r/min for 30 s"];
    expect(await veladis([...args, ...raised, "--chart", path])).toMatchObject({ code: 0 });
    expect(readFileSync(path, "utf8")).toMatch(/600 readings.*raised TRIP 0\.7500/s);
  });

  it("is written whole or not at all", async () => {
    const path = join(folder, "none.svg");
    expect((await veladis(["setpoints", "--baseline", "none", "--scheme", "none", "--chart", path])).code).toBe(2);
    expect(existsSync(path)).toBe(false);
  });
});

describe("an argument that begins with a minus", () => {
  it("is a value where a digit follows", async () => {
    const gap = ["gap", "-9.8 V", "--sensor", "200 mV/mil", "--range", "-2 to -18 V", "--cold", "-10.4 V"];
    expect((await veladis(gap)).out).toContain("76.20 um (3.000 mil) towards the probe");
    const { out } = await veladis([...gap, "--json"]);
    expect(JSON.parse(out)).toMatchObject({ volts: -9.8, movement: { cold: -10.4, direction: "towards the probe" } });
  });

  it.each([
    ["reached", ["--limit", "3 mil", "--fail-from", "limit"], 1, "REACHES the limit"],
    ["reached, without the option", ["--limit", "3 mil"], 0, "REACHES the limit"],
    ["not reached", ["--limit", "4 mil", "--fail-from", "limit"], 0, "below the limit"],
    [
      "beyond the linear range",
      ["--limit", "100 mil", "--fail-from", "limit"],
      0,
      "the probe leaves its range before the limit",
    ],
  ])("a limit of a gap is told by the exit code: %s", async (_, more, code, told) => {
    const gap = ["gap", "-9.8 V", "--sensor", "200 mV/mil", "--range", "-2 to -18 V", "--cold", "-10.4 V"];
    const printed = await veladis([...gap, ...more]);
    expect([printed.code, printed.out.replace(/\s+/g, " ").includes(told)]).toEqual([code, true]);
  });

  it("is an option where none does", async () => {
    expect((await veladis(["gap", "-x"])).err).toContain("begins with a dash");
  });
});
