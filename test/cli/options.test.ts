import { describe, expect, it } from "vitest";
import { bandOfText } from "../../src/frequency/index";
import { detectors, units } from "../../src/index";
import { veladis } from "./in-process";

describe("a band is written alike for every command", () => {
  it.each([
    ["10-1000", [10, 1000]],
    ["10 - 1000 Hz", [10, 1000]],
    ["10 to 1000", [10, 1000]],
    ["10 Hz to 1 kHz", [10, 1000]],
    ["600 to 60000 r/min", [10, 1000]],
    ["10..1000", [10, 1000]],
    ["1e1-1e+3", [10, 1000]],
    ["1e-1 to 10 Hz", [0.1, 10]],
  ])("%s", (written, band) => {
    expect(bandOfText(written)).toEqual(band);
  });

  it.each([
    ["10", "syntax"],
    ["10-100-1000", "syntax"],
    ["low-1000", "not-a-number"],
    ["10-1000 kg", "unknown-frequency-unit"],
  ])("%s is refused as %s", (written, code) => {
    expect(() => bandOfText(written)).toThrow(expect.objectContaining({ code }));
  });

  it("serves setpoints, plan and overall", async () => {
    const own = ["--band", "20 Hz to 1 kHz"];
    const limits = ["--limits", "4.5 mm/s rms, 7.1 mm/s rms", "--machine", "pump 1300 r/min"];
    const setpoints = await veladis(["setpoints", "--baseline", "2 mm/s rms", ...limits, ...own, "--json"]);
    expect(JSON.parse(setpoints.out).warnings.map(({ code }: { code: string }) => code)).toContain("outside band");
    const settings = ["--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--delay", "8", "--latching"];
    const plan = await veladis(["plan", ...settings, "--at", "20 Hz", "--shaker", "8 Hz to 3 kHz", ...own]);
    expect(plan.out).toContain("nominally reads 0.707 of the level");
    const overall = await veladis([
      "overall",
      "docs/examples/fan-bearing.csv",
      "--rate",
      "2560",
      "--unit",
      "g",
      ...own,
    ]);
    expect(overall.out).toContain("overall from 20 to 1000 Hz");
  });
});

describe("a text where a command takes options alone", () => {
  it.each([
    ["check", ["--known", "1 g pk", "--indicated", "1 g pk", "--tolerance", "5", "%"]],
    ["plan", ["--threshold", "9", "mm/s", "rms"]],
    ["setpoints", ["--baseline", "2", "mm/s", "rms"]],
    ["simulate", ["--delay", "5", "8"]],
  ])("is refused by %s, not passed over", async (command, args) => {
    const { code, err } = await veladis([command, ...args, "--json"]);
    expect(code).toBe(2);
    expect(JSON.parse(err).error).toMatchObject({ code: "unknown-option" });
    expect(JSON.parse(err).error.received).toContain(`"${args.at(-1)}"`);
  });
});

describe("a text beside an option that says the same", () => {
  it.each([
    [["1 g pk", "--file", "docs/examples/route.txt", "--to", "m/s2 rms"], "--file"],
    [["1 g pk", "--column", "2", "--from", "g rms", "--to", "m/s2 rms"], "--column"],
    [["schemes", "iso-10816-4", "--machine", "pump 90 kW"], "--machine"],
    [["balance", "G 6.3", "--unbalance", "20 oz·in", "--mass", "400 kg", "--speed", "1480 r/min"], "--unbalance"],
  ])("%j is refused", async (args, option) => {
    const { code, err } = await veladis([...args, "--json"]);
    expect([code, JSON.parse(err).error.code]).toEqual([2, "unknown-option"]);
    expect(JSON.parse(err).error.expected).toContain(option);
  });
});

describe("the help of the command", () => {
  it("lists every unit and detector of the catalogues", async () => {
    const { out } = await veladis(["--help"]);
    const words = [...out.split(/[\s,]+/), ...(out.includes("true pk") ? ["true pk"] : [])];
    for (const symbol of [...Object.keys(units), ...Object.keys(detectors)]) expect(words).toContain(symbol);
  });
});
