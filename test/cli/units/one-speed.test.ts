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

  it("the band of the scheme and the same speed are judged as before", async () => {
    const { code } = await veladis([...judged, machine, "--speed", "2958 r/min", "--fail-from", "C"]);
    expect(code).toBe(0);
  });
});
