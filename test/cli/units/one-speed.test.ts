import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { oneSpeed } from "../../../src/cli/options/one-speed";
import { veladis } from "../in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-speed-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the speed of a machine", () => {
  it("is that of its words, or the one that is told beside them, rounded as it is", () => {
    expect(oneSpeed(undefined, "")).toBeUndefined();
    expect(oneSpeed(25, "")).toEqual([25, 25]);
    expect(oneSpeed(undefined, "pump 90 kW 1500 r/min")).toEqual([25, 25]);
    expect(oneSpeed(25.01, "pump 90 kW 1500 r/min")).toEqual([25.01, 25.01]);
    expect(oneSpeed(20, "fan 75 kW 900 to 1500 r/min")).toEqual([20, 20]);
  });

  it("two that differ are refused", () => {
    expect(() => oneSpeed(8, "pump 90 kW 1500 r/min")).toThrow("expected one speed for the machine");
    expect(() => oneSpeed(26, "fan 75 kW 900 to 1500 r/min")).toThrow("900 to 1500 r/min");
  });
});

describe("a record of which the running speed is known", () => {
  const rate = 5120;
  const path = join(folder, "pump.csv");
  // a sine of 4 mm/s RMS at 49.3 Hz
  const samples = Array.from(
    { length: 2 * rate },
    (_, i) => 4 * Math.SQRT2 * Math.sin((2 * Math.PI * 49.3 * i) / rate),
  );
  writeFileSync(path, `mm/s\n${samples.map((one) => one.toFixed(6)).join("\n")}\n`);
  const judged = ["overall", path, "--rate", `${rate}`, "--unit", "mm/s", "--machine"];
  const machine = "pump 90 kW 2958 r/min category II";

  it("a band that does not hold it says so at the verdict, and is refused beside --fail-from", async () => {
    const { out, code } = await veladis([...judged, machine, "--band", "100-500"]);
    expect(code).toBe(0);
    expect(out.replace(/\s+/g, " ")).toContain("the running speed, 49.3 Hz, lies outside the band");
    const refused = await veladis([...judged, machine, "--band", "100-500", "--fail-from", "B"]);
    expect([refused.out, refused.code]).toEqual(["", 2]);
    expect(refused.err).toContain("a band that holds the 10 to 1000 Hz");
  });

  it("another speed beside the machine is refused, for records and for lines", async () => {
    const { err, code } = await veladis([...judged, machine, "--speed", "1500 r/min"]);
    expect(code).toBe(2);
    expect(err).toContain("one speed for the machine, which its words say is 2958 r/min");
  });

  // what turns slowly is judged by other limits and in another band (ISO 10816-7:2009 and others, from memory): the two ways agree
  it.each([
    ["pump 90 kW category II", "150 r/min"],
    ["pump 90 kW category II", "2980 r/min"],
    ["pump 90 kW category II", "25 Hz"],
    ["motor 250 kW rigid", "990 r/min"],
    ["fan 132 kW rigid BV-3", "1485 r/min"],
    ["steam turbine 60 MW housing", "3000 r/min"],
    ["pump 90 kW category II, driven by a motor", "590 r/min"],
    ["motor 250 kW rigid 4 poles 50 Hz", "1485 r/min"],
    ["hydro turbine 20 MW housing", "150 r/min"],
  ])("%s judges %s by --speed as in its words", async (words, speed) => {
    const perMinute = speed === "25 Hz" ? "1500 r/min" : speed;
    const inWords = await veladis([...judged, words.replace(/,|$/, ` ${perMinute}$&`), "--json"]);
    const byOption = await veladis([...judged, words, "--speed", speed, "--json"]);
    const verdict = ({ out, err, code }: typeof inWords) => {
      if (out === "") return [code, err.replace(/received.*/s, "")];
      const { judgement, levels, cautions } = JSON.parse(out);
      return [
        code,
        judgement.headline,
        judgement.scheme,
        judgement.possible,
        judgement.band,
        levels[0].value,
        cautions,
      ];
    };
    expect(verdict(byOption)).toEqual(verdict(inWords));
  });

  it("the speed by --speed decides the band that the table asks for", async () => {
    const { out } = await veladis([...judged, "pump 90 kW category II", "--speed", "150 r/min", "--json"]);
    const without = await veladis([...judged, "pump 90 kW category II", "--json"]);
    expect([out, without.out].map((text) => JSON.parse(text).judgement.band)).toEqual([
      [2, 1000],
      [10, 1000],
    ]);
  });

  it("a speed that the poles in the words do not explain is refused with the synchronous ones", async () => {
    const { err, code } = await veladis([...judged, "motor 250 kW rigid 4 poles 50 Hz", "--speed", "990 r/min"]);
    expect([code, err]).toEqual([2, expect.stringContaining("a speed that 4 poles explain: 1350 to 1500 r/min")]);
  });

  it("the band of the scheme and the same speed are judged as before", async () => {
    const { code } = await veladis([...judged, machine, "--speed", "2958 r/min", "--fail-from", "C"]);
    expect(code).toBe(0);
  });
});
