import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const row = (out: string, n: number): string[] => (out.split("\n")[n] ?? "").split(",");
const loop = ["--from", "mA", "--loop", "0 to 20 mm/s rms"];
const pump = ["--machine", "pump 90 kW 2980 r/min category II"];

/** The signals: volts by mV/g, 4 mA and 20 mA the ends of a range (IEC 60381-1, from memory); the arithmetic is one's own. */
describe("columns of signals", () => {
  it("in volts are divided by their sensor, exactly", async () => {
    const cells = "level (mV)\n98\n57\n";
    const { out, code } = await veladis(
      ["table", "--column", "1", "--from", "mV pk", "--sensor", "100 mV/g", "--to", "g pk"],
      cells,
    );
    expect([code, row(out, 1)[1], row(out, 2)[1]]).toEqual([0, "0.98", "0.57"]);
    const micro = await veladis(
      ["table", "--column", "1", "--from", "uV pk", "--sensor", "0.1 V/g", "--to", "g pk"],
      "level\n57000\n",
    );
    expect(row(micro.out, 1)[1]).toBe("0.57");
  });

  it("in mA are judged, and refused beyond their loop, row by row", async () => {
    // (i - 4) / 16 x 20
    const { out, err, code } = await veladis(
      ["table", "--column", "1", ...loop, "--to", "mm/s rms", ...pump],
      "mA\n4.8\n12\n3.2\n20.8\n3.9\n",
    );
    expect(code).toBe(2);
    expect(Number(row(out, 1)[1])).toBeCloseTo(1, 12);
    expect(row(out, 2).slice(1, 3)).toEqual(["10", "D"]);
    expect(err.match(/line \d: sensor-fault/g)).toHaveLength(3);
  });

  it("a background is in the same signal", async () => {
    const { out } = await veladis(
      ["table", "--column", "v", "--background-column", "b", ...loop, ...pump],
      "v,b\n12,4.8\n12,8\n",
    );
    expect(out).toMatch(/^12,4\.8,.*so that it may be judged/m);
    expect(out).toMatch(/^12,8,.*NOT RELIABLE/m);
  });

  it.each([
    ["one for all", "mA\n12\n", ["--background", "3.9 mA"]],
    ["one of a row", "mA,b\n12,3.9 mA of 0 to 20 mm/s rms\n", ["--background-column", "b"]],
    ["a bare one of a row", "mA,b\n12,3.9\n", ["--background-column", "b"]],
  ])("a background beyond its loop is none: %s", async (_, cells, more) => {
    const { err, code } = await veladis(["table", "--column", "mA", ...loop, ...more, ...pump], cells);
    expect([code, err]).toEqual([
      2,
      expect.stringMatching(/sensor-fault.* within the range of its loop.*below range/s),
    ]);
  });

  it("whole cells may each be another", async () => {
    const cells = "r\n98 mV pk\n12 mA\n2 mm/s rms\n";
    const ways = ["--sensor", "100 mV/g", "--loop", "0 to 20 mm/s rms", "--at", "80 Hz"];
    const { out } = await veladis(["table", "--column", "r", "--to", "mm/s rms", "--digits", "4", ...ways], cells);
    // 0.98 g: 0.98 x 9806.65 / (2 pi 80) / root 2
    expect([1, 2, 3].map((n) => row(out, n)[1])).toEqual(["13.52", "10.00", "2.000"]);
  });

  it.each([
    ["another unit in the heading", "level (mV)\n98\n", ["--from", "V pk", "--sensor", "100 mV/g"]],
    ["a vibration told of a heading in mV", "level (mV)\n98\n", ["--from", "g pk"]],
    ["a signal told of a heading in mm/s", "level (mm/s)\n12\n", loop],
  ])("%s is refused", async (_, cells, more) => {
    const { err, code } = await veladis(
      ["table", "--column", "1", ...more, "--to", "m/s2 rms", "--at", "50 Hz"],
      cells,
    );
    expect([code, err]).toEqual([2, expect.stringContaining("the heading")]);
  });

  it("the steps begin with the signal", async () => {
    const args = ["--column", "1", "--from", "mV pk", "--sensor", "100 mV/g", "--to", "g rms", "--json", "--explain"];
    const [first] = (await veladis(["table", ...args], "v\n98\n")).out.split("\n");
    expect(JSON.parse(first as string).explained["g rms"][0]).toMatchObject({ value: 98, type: "mV pk" });
  });

  it("are converted in a column, and played as a history", async () => {
    const column = await veladis(["--column", "1", ...loop, "--to", "mm/s rms"], "mA\n12\n");
    expect(row(column.out, 1)).toEqual(["12", "10"]);
    const settings = [
      "--threshold",
      "9 mm/s rms",
      "--hysteresis",
      "8 %",
      "--delay",
      "5",
      "--timer-resets",
      "threshold",
      "--latching",
    ];
    const history = "time,mA\n0,4\n10,12\n20,3.9\n";
    const { out, err } = await veladis(["simulate", ...loop, ...settings], history);
    expect(out).toMatch(/highest 10\.0 mm\/s rms/);
    expect(out).toMatch(/^ +15 +trip +10\.0$/m);
    expect(out).toContain("in mA of 0 to 20 mm/s rms");
    expect(err).toContain("below range: 1 row below 4 mA taken as the start of the range (line 4)");
    const failed = await veladis(["simulate", ...loop, ...settings], "time,mA\n0,4\n10,3.2\n");
    expect([failed.code, failed.err]).toEqual([2, expect.stringContaining("3.2 mA")]);
    const fault = await veladis(
      ["simulate", ...loop, ...settings, "--sensor-fault", "alarm"],
      "time,mA\n0,4\n10,3.2\n20,4\n",
    );
    expect(fault.out).toMatch(/^ +10 +fault/m);
  });

  it("are a baseline", async () => {
    // the middle of the range
    const { out } = await veladis(
      ["setpoints", "--file", "-", ...loop, "--machine", "pump 250 kW 2980 r/min category I"],
      "mA\n6\n5.6\n6.4\n",
    );
    expect(out).toContain("median 2.500 mm/s rms");
  });
});

describe("signals of points", () => {
  it("each by its own way, or by one for all", async () => {
    const each = await veladis([
      "judge",
      "DE-H 98 mV pk by 100 mV/g at 80 Hz, DE-V 12 mA of 0 to 20 mm/s rms, DE-A 2.2 mm/s rms",
      ...pump,
    ]);
    expect(each.out).toMatch(/^> +DE-H +0\.980 g pk +zone D$/m);
    expect(each.out).toMatch(/^ +DE-V +10\.0 mm\/s rms +zone D$/m);
    const one = await veladis(["judge", "DE-H 98, DE-V 76 mV pk at 80 Hz", "--sensor", "100 mV/g", ...pump]);
    expect(one.out).toMatch(/^ +DE-V +0\.760 g pk +zone D$/m);
  });
});
