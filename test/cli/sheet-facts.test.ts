import { describe, expect, it } from "vitest";
import { sheetFacts } from "../../src/cli/options/sheet-facts";
import { codeAndExpectedOf } from "../refusals/refusal-of";
import { veladis } from "./in-process";

describe("facts on a sheet", () => {
  it("are told by name, and the usual ones that are not are left to be filled in", () => {
    const { facts, toFill } = sheetFacts(["device: serial 0417", "place: bay 3: east"], "reference shaker", "html");
    expect(facts).toEqual({ device: "serial 0417", place: "bay 3: east" });
    expect(toFill).toEqual([
      "nameplate of the machine",
      "sensor: maker, type, serial number",
      "settings as found",
      "reference shaker: maker, type, serial number",
      "certificate of it, valid until",
    ]);
  });

  it.each([
    [["serial 0417"], "markdown", /^syntax/],
    [["device: "], "markdown", /^syntax/],
    [["device: a", "device: b"], "markdown", /^out-of-range: each fact of a sheet once/],
    [["device: a"], undefined, /^missing-option: --sheet beside --fact/],
  ])("%j with the sheet %j is refused", (given, sheet, refusal) => {
    expect(codeAndExpectedOf(() => sheetFacts(given, "reference shaker", sheet))).toMatch(refusal);
  });

  it("stand on the sheets of check and plan, with frequency and speed beside", async () => {
    const check = ["check", "--known", "8 mm/s rms at 2400 r/min", "--indicated", "7.9 mm/s rms", "--tolerance", "5 %"];
    const { out } = await veladis([...check, "--sheet", "markdown", "--fact", "device: serial 0417"]);
    expect(out).toContain("| device | serial 0417 |");
    expect(out).toContain("reference shaker: maker, type, serial number");
    expect(out).toContain("40.0 Hz, 2400 r/min");
    expect(out).toContain("Proven by (name, signature, date)");
    const plan = ["plan", "--threshold", "7.6 mm/s rms", "--hysteresis", "5 %", "--delay", "4", "--latching"];
    const injected = ["--inject", "mA", "--loop", "0 to 20 mm/s rms", "--sheet", "markdown"];
    const sheet = (await veladis([...plan, ...injected])).out;
    expect(sheet).toContain("signal source: maker, type, serial number");
    expect(sheet).toMatch(/trips a running machine/);
  });
});
