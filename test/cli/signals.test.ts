import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const pump = ["--machine", "pump 90 kW 2980 r/min category II"];

describe("readings as signals", () => {
  // biome-ignore format: a row of a table is a line
  it.each<[args: string[], prints: string]>([
    // 0.98 g x 9.80665 / (2 pi 80) / 0.0254
    [["98 mV pk by 100 mV/g at 80 Hz to in/s pk"], "98 mV pk by 100 mV/g at 80 Hz = 0.753 in/s pk  (one frequency)\n"],
    [["98 mV pk to in/s pk", "--sensor", "100 mV/g", "--at", "80 Hz"], "98 mV pk at 80 Hz = 0.753 in/s pk  (one frequency)\n"],
    // half of the range; over root 2 and times 25.4
    [["12 mA of 0 to 1 in/s pk to mm/s rms"], "12 mA of 0 to 1 in/s pk = 8.98 mm/s rms  (sine)\n"],
    [["12 mA of 0 to 1 in/s pk to mil pp", "--at", "25 Hz"], "12 mA of 0 to 1 in/s pk at 25 Hz = 6.37 mil pp  (one frequency)\n"],
    [["50 % of 0 to 20 mm/s rms to in/s pk"], "50 % of 0 to 20 mm/s rms = 0.557 in/s pk  (sine)\n"],
  ])("%j", async (args, prints) => {
    expect(await veladis(args)).toMatchObject({ out: prints, err: "", code: 0 });
  });

  it("stand in lines and routes, one way for all, and fail each by itself", async () => {
    const lines = await veladis(["--from", "mA", "--loop", "0 to 20 mm/s rms", "--to", "mm/s rms"], "8\n3\n9.6\n");
    expect(lines.out).toBe("8 mA = 5.00 mm/s rms\n9.6 mA = 7.00 mm/s rms\n");
    expect(lines.err).toMatch(/^veladis: line 2: sensor-fault/);
    expect(lines.code).toBe(2);
  });

  it("are judged, with the state of the loop and the steps", async () => {
    const { out } = await veladis(["judge", "20.7 mA", "--loop", "0 to 20 mm/s rms", ...pump, "--explain"]);
    expect(out).toMatch(/^judged +20\.6 mm\/s rms \(above range\)$/m);
    expect(out).toContain("above the range of its loop");
    expect(out).toMatch(/20\.7 mA/);
    const since = await veladis(["judge", "8 mA", "--since", "5.6 mA", "--loop", "0 to 20 mm/s rms", ...pump]);
    expect(since.out).toMatch(/a rise of 3\.00 mm\/s rms/);
  });

  it("are what a device shows in a check", async () => {
    const check = ["check", "--known", "9.8 m/s2 pk at 80 Hz", "--tolerance", "5 %"];
    const { out } = await veladis([...check, "--indicated", "97 mV pk", "--sensor", "100 mV/g"]);
    expect(out).toMatch(/9\.80 m\/s2 pk +0\.999 g pk +0\.970 g pk .*pass/);
    const left = await veladis([
      ...check,
      "--indicated",
      "90 mV pk by 100 mV/g",
      "--as-left",
      "99.5 mV pk by 100 mV/g",
    ]);
    expect(left.out).toMatch(/as found .* fail\n[\s\S]*as left .* pass$/m);
  });

  it("are a baseline, and what setpoints are set by", async () => {
    const args = [
      "setpoints",
      "--baseline",
      "5.6 mA",
      ...pump,
      "--loop",
      "0 to 20 mm/s rms",
      "--sensor",
      "20 mV/(mm/s)",
    ];
    const { out } = await veladis(args);
    // 8.5 mm/s of 20 on 16 mA above 4; and times 20 mV
    expect(out).toContain("TRIP 10.80 mA, 42.50 % of 0 to 20 mm/s rms; 170.0 mV rms by 20 mV/(mm/s)");
    expect(JSON.parse((await veladis([...args, "--json"])).out).signals).toContain("TRIP 10.80 mA");
    expect((await veladis([...args, "--sheet", "markdown"])).out).toContain("TRIP 10.80 mA");
  });

  it.each(["±", "+/-", "+-", "+/\u2212", "+\u2212"])(
    "are no per cent behind %s, which say an uncertainty",
    async (sign) => {
      const { out, err } = await veladis(["judge", `DE-H 3.1 ${sign} 5 %, DE-V 2.2 mm/s rms`, ...pump]);
      expect(err).toBe("");
      expect(out).toMatch(/^DE-H governs, 3\.10 ± 0\.18 mm\/s rms \(k=2\)/);
    },
  );

  // biome-ignore format: a row of a table is a line
  it.each<[args: string[], says: RegExp]>([
    [["98 mV pk"], /missing-option[\s\S]*sensitivity of the sensor/],
    [["12 mA"], /missing-option[\s\S]*range of the loop/],
    [["4.9 mm/s rms", "--loop", "0 to 20 mm/s rms"], /a reading in mA or per cent for --loop/],
    [["judge", "4.9 mm/s rms", "--sensor", "100 mV/g", ...pump], /a reading in volts for --sensor/],
    [["judge", "12 mA", "--loop", "0 to 20 mm/s rms", "--uncertainty", "5 %", ...pump], /--uncertainty beside a vibration/],
    [["judge", "3 mA", "--loop", "0 to 20 mm/s rms", ...pump], /sensor-fault/],
    [["12 mA of 0 to 20 mm/s rms", "--loop", "0 to 25 mm/s rms"], /one loop/],
    [["--column", "2", "--from", "g rms", "--loop", "0 to 20 mm/s rms", "--to", "mm/s rms"], /a column in mA or per cent/],
    [["judge", "DE-H 2, DE-V 2.2 mm/s rms", "--sensor", "100 mV/g", ...pump], /a reading in volts for --sensor/],
    [["judge", "DE-H 3.2 mA, DE-V 12 mA", "--loop", "0 to 20 mm/s rms", ...pump], /sensor-fault[\s\S]*3\.2 mA, of DE-H/],
    [["judge", "DE-H 12 mA", ...pump], /range of the loop/],
    [["check", "--tolerance", "5 %", "--file", "points.csv", "--threshold", "9 mm/s rms"], /one level beside --threshold/],
    [["check", "--tolerance", "5 %", "--from", "mm/s rms", "--loop", "0 to 20 mm/s rms"], /--from and --loop/],
    [["check", "--tolerance", "5 %", "--known", "8 mm/s rms", "--indicated", "8 mm/s rms", "--threshold", "9 mm/s rms"], /--loop or --sensor beside --threshold/],
    [["judge", "DE-H 0.1 ± 0.01 V pk, DE-V 2 mm/s rms", "--sensor", "100 mV/g", ...pump], /signals of points without ±/],
  ])("%j is refused", async (args, says) => {
    const { out, err, code } = await veladis(args);
    expect([out, code]).toEqual(["", 2]);
    expect(err).toMatch(says);
  });
});

describe("the state of a loop", () => {
  it("stands beside every number that came by it", async () => {
    expect((await veladis(["3.7 mA of 0 to 20 mm/s rms"])).out).toMatch(
      /^3\.7 mA of 0 to 20 mm\/s rms .*\(below range\)$/m,
    );
    const lines = "a: 3.7 mA\nb: 12 mA\nc: 20.9 mA\n";
    const path = join(mkdtempSync(join(tmpdir(), "veladis-")), "route.txt");
    writeFileSync(path, lines);
    const { out } = await veladis(["--file", path, "--loop", "0 to 20 mm/s rms", "--to", "mm/s rms"]);
    expect(out).toMatch(/3\.7 mA +0 +\(below range\)\n.*12 mA +10\.0 *\n.*20\.9 mA +20\.6 +\(above range\)/);
  });

  it("gives no current for a setpoint that the loop cannot carry", async () => {
    const loop = ["--loop", "0 to 4 mm/s rms", "--machine", "pump 90 kW 2980 r/min category II"];
    const { out } = await veladis(["setpoints", "--baseline", "2 mm/s rms", ...loop]);
    expect(out).toMatch(/TRIP beyond 0 to 4 mm\/s rms: no current$/m);
  });

  it("of a baseline is not that of the setpoints", async () => {
    const loop = ["--loop", "0 to 16 mm/s rms", "--machine", "pump 250 kW 2980 r/min category I"];
    const { out } = await veladis(["setpoints", "--baseline", "3.9 mA", ...loop]);
    // 1.25 of 16 mm/s on 16 mA above 4
    expect(out).toMatch(/ALARM 5\.250 mA, 7\.813 % of 0 to 16 mm\/s rms$/m);
  });

  it("a way that is none is refused also where no line asks for it", async () => {
    expect((await veladis(["--loop", "junk", "--to", "mm/s rms"], "0.2 in/s pk\n")).err).toMatch(/a range such as/);
    const share = await veladis(["50 % to mm/s rms", "--loop", "0 to 20 mm/s rms"]);
    expect(share.out).toBe("50 % = 10.0 mm/s rms\n");
  });

  it("a way of the other kind is refused, and one that is none", async () => {
    const judged = ["judge", "98 mV pk by 100 mV/g at 50 Hz", ...pump];
    expect((await veladis([...judged, "--loop", "0 to 20 mm/s rms"])).err).toMatch(/for --loop/);
    expect(
      (await veladis(["--sensor", "junk", "--loop", "0 to 20 mm/s rms", "--to", "mm/s rms"], "12 mA\n")).err,
    ).toMatch(/sensitivity/);
  });

  it("of a machine at rest are held against the reading by the same loop", async () => {
    const loop = ["judge", "12 mA", "--loop", "0 to 20 mm/s rms", ...pump];
    // 10 mm/s over 0.8 / 16 x 20 = 1 mm/s
    expect((await veladis([...loop, "--background", "4.8 mA"])).out).toMatch(/10\.0 times that at rest/);
    expect((await veladis([...loop, "--background", "9 mA"])).out).toMatch(/NOT RELIABLE: background too high/);
    const alone = ["judge", "5 mm/s rms", ...pump, "--background", "4.8 mA"];
    expect((await veladis([...alone, "--loop", "0 to 20 mm/s rms"])).out).toMatch(/5\.00 times that at rest/);
    expect((await veladis(alone)).err).toMatch(/the range of the loop/);
  });

  it.each([
    ["3.9 mA", "below range"],
    ["20.8 mA", "above range"],
  ])("of a machine at rest beyond the range, %s, are refused", async (background, state) => {
    const { err, code } = await veladis([
      "judge",
      "12 mA",
      "--loop",
      "0 to 20 mm/s rms",
      ...pump,
      "--background",
      background,
    ]);
    expect(err).toMatch(new RegExp(`within the range of its loop\\n.*"${background}", ${state}`));
    expect(code).toBe(2);
  });
});
