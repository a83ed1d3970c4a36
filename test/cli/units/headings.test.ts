import { describe, expect, it } from "vitest";
import { veladis } from "../in-process";

const table = ["table", "--column", "2", "--to", "um pp", "--at", "25 Hz", "--from"];
const convert = ["--column", "2", "--to", "mm/s pk", "--at", "25 Hz", "--from"];
const simulate = ["simulate", "--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--delay", "1", "--latching"];
const history = [...simulate, "--timer-resets", "threshold", "--from", "mm/s rms"];
const overall = ["overall", "--unit", "g", "--rate", "100", "--band", "20-40"];

const lines = (...rows: readonly string[]): string => `${rows.join("\n")}\n`;

/** What stopped a run, on one line; nothing for one that was not stopped. */
async function refusal(args: readonly string[], input: string): Promise<string> {
  const { code, err } = await veladis(args, input);
  return code === 0 ? "" : err.replace(/\n\s*/g, " ");
}

describe("a heading that contradicts the type told", () => {
  const commands = { table, convert, simulate: [...history.slice(0, -1)] } as const;

  // biome-ignore format: a row of a table is a line
  it.each([
    ["level in/s pk", "mm/s rms"], ["reading (in/s pk)", "in/s rms"], ["a [m/s2]", "g rms"], ["Vibration | mm/s", "in/s pk"],
    ["Peak velocity (in/s)", "in/s rms"], ["level dB", "mm/s rms"], ["mm/s", "dB re 1e-9 m/s"], ["vel_in_s", "mm/s rms"],
    ["speed [r/min]", "mm/s rms"], ["t [s]", "mm/s rms"], ["level (dB re 1e-6 m/s)", "dB re 1e-9 m/s"],
  ])("%s, told %s: refused by every command, both named", async (heading, type) => {
    for (const [name, args] of Object.entries(commands)) {
      const told = await refusal([...args, type, "--separator", "semicolon"], lines(`seconds;${heading}`, "0;4.1", "1;4.2"));
      expect(told, name).toContain(`veladis: unknown-option expected: what is told as the heading`);
      expect(told, name).toContain(`--from "${type}", and the heading "${heading}" of column 2`);
    }
  });

  // biome-ignore format: a row of a table is a line
  it.each([
    ["mm/s", "mm/s rms"], ["mm/s", "mm/s pk"], ["level in/s pk", "in/s pk"], ["level (dB)", "dB re 1e-9 m/s"], ["level dB re 1 nm/s", "dB re 1e-9 m/s"],
    ["Vibration average mm/s", "mm/s rms"], ["RMS mm/s 10-1000 Hz", "mm/s rms"], ["DE (h)", "mm/s rms"],
  ])("%s, told %s: agrees", async (heading, type) => {
    for (const [name, args] of Object.entries({ table, convert })) {
      expect(await refusal([...args, type], lines(`seconds;${heading}`, "0;4.1", "1;4.2")), name).toBe("");
    }
  });

  it("--file-units none says that the heading is wrong", async () => {
    const csv = lines("seconds,level in/s pk", "0,4.1");
    for (const args of [table, convert, history.slice(0, -1)])
      expect(await refusal([...args, "mm/s rms", "--file-units", "none"], csv)).toBe("");
  });

  it("a column is held to its heading by number and by name alike", async () => {
    const csv = lines("t,level in/s pk", "0,4.1");
    for (const column of ["2", "level in/s pk"]) {
      expect(await refusal(["table", "--column", column, "--from", "mm/s rms", "--to", "mm/s pk"], csv)).toContain(
        "which says",
      );
    }
  });

  it("samples for overall are held to --unit", async () => {
    const csv = lines("t,a [m/s2]", ...Array.from({ length: 200 }, (_, i) => `${i / 100},${Math.sin(i)}`));
    expect(await refusal([...overall, "--column", "2"], csv)).toContain(
      '--unit g, and the heading "a [m/s2]" of column 2',
    );
    expect(await refusal([...overall.with(2, "m/s2"), "--column", "2"], csv)).toBe("");
  });

  // biome-ignore format: a row of a table is a line
  it.each([
    ["acc [G]", "m/s2"], ["acc [ G ]", "m/s2"], ["ACC G", "m/s2"], ["acc <g>", "m/s2"], ["acc [g-force]", "m/s2"], ["acc mV", "g"], ["acc [m/s/s]", "g"], ["acc [ms-2]", "g"],
    ["acc [m.s-2]", "g"], ["v mmps", "in/s"], ["x micrometer", "mm"], ["acc (1 g = 100 mV)", "g"], ["acc (100 mV/g)", "g"], ["velocity", "mm/s2"], ["displacement", "mm/s"], ["acceleration", "mm/s"],
  ])("%s, with --unit %s: refused, both named, and the way out", async (heading, unit) => {
    const csv = lines(`t,${heading}`, ...Array.from({ length: 200 }, (_, i) => `${i / 100},${Math.sin(i)}`));
    const args = [...overall.with(2, unit), "--column", "2"];
    const told = await refusal(args, csv);
    expect(told).toContain(`--unit ${unit}, and the heading "${heading}" of column 2`);
    expect(told).toContain("--file-units none where the heading is wrong");
    expect(await refusal([...args, "--file-units", "none"], csv)).toBe("");
  });

  // biome-ignore format: a row of a table is a line
  it.each([
    ["velocity", "mm/s"], ["velocity from acceleration", "mm/s"], ["acc [G]", "g"], ["ACC [m/s/s]", "m/s2"], ["x micrometer", "um"], ["DE V", "g"],
  ])("%s, with --unit %s: agrees", async (heading, unit) => {
    const csv = lines(`t,${heading}`, ...Array.from({ length: 200 }, (_, i) => `${i / 100},${Math.sin(i)}`));
    expect(await refusal([...overall.with(2, unit), "--column", "2"], csv)).toBe("");
  });

  it("a quantity by its word, told in table and convert; levels in decibels have one too", async () => {
    for (const args of [table, convert]) {
      expect(await refusal([...args, "mm/s rms"], lines("t,displacement", "0,4.1"))).toContain(
        '--from "mm/s rms", and the heading "displacement" of column 2',
      );
      expect(await refusal([...args, "dB re 1e-9 m/s"], lines("t,acceleration dB", "0,4.1"))).toContain(
        'which says "acceleration"',
      );
    }
  });

  it("each row's own type of table is held to the heading", async () => {
    const csv = lines("unit,level [mm/s]", "mm/s,4.1", "in/s,0.2");
    const args = ["table", "--column", "2", "--from-column", "unit", "--detector", "rms", "--to", "mm/s pk"];
    const told = await refusal(args, csv);
    expect(told).toContain("line 3: unknown-option");
    expect(told).toContain('a row in "in/s rms", and the heading "level [mm/s]"');
    expect(await refusal([...args, "--file-units", "none"], csv)).toBe("");
  });

  it("frequencies and speeds of table are held to their units", async () => {
    const csv = lines("speed [r/min],level,f (Hz)", "1485,66,25");
    const args = ["table", "--column", "level", "--from", "um pp", "--to", "mm/s rms"];
    const speed = [...args, "--at", "1x", "--speed-column", "1", "--speed-unit"];
    expect(await refusal([...speed, "Hz"], csv)).toContain('--speed-unit "Hz", and the heading "speed [r/min]"');
    expect(await refusal([...speed, "rpm"], csv)).toBe("");
    expect(await refusal([...args, "--at-column", "3", "--at-unit", "r/min"], csv)).toContain('which says "Hz"');
  });
});

describe("a heading of times", () => {
  /** Trips at 9 after a delay of 1: the time of the trip tells how times were read. */
  const file = (heading: string): string => lines(`${heading},level`, "0,3", "2,10", "5,10");
  const trip = async (heading: string, ...more: readonly string[]): Promise<unknown> => {
    const { out, err, code } = await veladis([...history, "--json", ...more], file(heading));
    if (code !== 0) return err;
    return JSON.parse(out).events.find((event: { event: string }) => event.event === "trip")?.time;
  };

  it.each([
    ["t", 3],
    ["t [s]", 3],
    ["t [min]", 121],
    ["time_min", 121],
    ["hours", 7201],
    ["time (ms)", undefined],
    ["time (millis)", undefined],
  ])("%s: read in its unit", async (heading, at) => expect(await trip(heading)).toBe(at));

  it("the unit is told where it is not the second", async () => {
    const { err } = await veladis(history, file("t [min]"));
    expect(err).toContain('times: in min, as the heading "t [min]" says; in s from here on\n');
  });

  it("milliseconds keep their digits", async () => {
    const { out } = await veladis([...history, "--json"], lines("time (ms),level", "0,3", "3,10", "2000,10"));
    expect(JSON.parse(out).events.at(-1).time).toBe(1.003);
  });

  it("--times seconds contradicts minutes; --file-units none has them in seconds", async () => {
    expect(await trip("t [min]", "--times", "seconds")).toContain("--times seconds, and the heading");
    expect(await trip("t [min]", "--file-units", "none")).toBe(3);
    expect(await trip("t [s]", "--times", "seconds")).toBe(3);
  });

  it("a heading of levels over times is refused", async () => {
    expect(await trip("mm/s")).toContain("a column of times, and the heading");
    expect(await trip("t (m)")).toContain('which says \\"m\\"');
  });

  it("serial dates and ISO dates stay what they are", async () => {
    const dates = lines(
      "Time [min],level",
      "2026-01-12T06:00:00,3",
      "2026-01-12T06:00:02,10",
      "2026-01-12T06:00:05,10",
    );
    expect(await refusal(history, dates)).toBe("");
  });
});

describe("a column of units that nobody asked for", () => {
  const csv = lines("time,value,unit", "0,4.1,mm/s", "1,0.2,in/s", "2,71,degC", "3,4.2,");
  const args = ["--column", "value", "--to", "mm/s pk", "--from", "mm/s rms"];

  it("table --from: rows of another unit are refused", async () => {
    const { out, err, code } = await veladis(["table", ...args, "--digits", "3"], csv);
    expect([out, code]).toEqual(["time,value,unit,mm/s pk,assumed\n0,4.1,mm/s,5.80,sine\n3,4.2,,5.94,sine\n", 2]);
    expect(err).toContain("--from-column reads each row by its own, --file-units none passes over column 3");
    expect(err).toContain('received: "in/s" in column 3 "unit"');
    expect(err).toContain('received: "degC" in column 3 "unit"');
  });

  it("convert, simulate and setpoints likewise", async () => {
    expect(await refusal(args, csv)).toContain("line 3: unknown-option");
    expect(await refusal([...history, "--column", "2", "--skip-bad"], csv)).toContain(
      '2 of 4 rows without: line 3 "in/s" in column 3 "unit"',
    );
    expect(await refusal([...history, "--column", "2", "--file-units", "none"], csv)).toBe("");
  });

  it("check: a detector in a column", async () => {
    const points = lines("known,indicated,detector", "2,2.1,rms", "5,5.1,pk");
    const check = ["check", "--from", "mm/s rms", "--tolerance", "5 %"];
    expect(await refusal(check, points)).toContain('"pk" in column 3 "detector"');
  });

  it("by any heading, where the first row has a rate", async () => {
    expect(await refusal(["table", ...args], lines("value,Einheit", "4.1,mm/s", "0.2,in/s"))).toContain(
      '"in/s" in column 2 "Einheit"',
    );
  });

  it("columns that are asked for are read, not refused", async () => {
    const rows = lines("value,unit,detector", "4.1,mm/s,rms", "0.2,in/s,pk");
    const told = ["table", "--column", "value", "--to", "mm/s rms"];
    expect(await refusal([...told, "--from-column", "unit", "--detector-column", "detector"], rows)).toBe("");
    expect(await refusal([...told, "--from", "mm/s", "--detector-column", "detector"], rows)).toContain(
      '"in/s" in column 2',
    );
  });
});

describe("times beside rows that are evenly spaced", () => {
  const record = (heading: string, step: (i: number) => string): string =>
    lines(heading, ...Array.from({ length: 200 }, (_, i) => `${step(i)},${Math.sin(i)}`));
  const read = (csv: string, ...more: string[]): Promise<string> =>
    refusal([...overall, "--column", "2", ...more], csv);

  it("overall --rate that they contradict is refused, both named", async () => {
    const told = await read(record("t,a", (i) => `${i / 200}`));
    expect(told).toContain('--rate 100, and column 1 "t" with 0.005 s from row to row, 200 a second');
    expect(
      await read(
        record("t,a", (i) => `${i / 200}`),
        "--file-units",
        "none",
      ),
    ).toBe("");
  });

  it("agree within 1 %", async () => {
    expect(await read(record("t,a", (i) => `${i / 100.9}`))).toBe("");
    expect(await read(record("t,a", (i) => `${i / 101.2}`))).toContain("101.2 a second");
    expect(await read(record("t,a", (i) => `${i / 98.8}`))).toContain("98.8 a second");
  });

  it("agree in the unit of their heading, and without one in s, ms or us", async () => {
    expect(await read(record("t [ms],a", (i) => `${i * 10}`))).toBe("");
    expect(await read(record("t [s],a", (i) => `${i * 10}`))).toContain("10 s from row to row");
    expect(await read(record("x,a", (i) => `${i * 10}`))).toBe("");
    expect(await read(record("x,a", (i) => `${i * 20}`))).toContain("--file-units none");
  });

  it("time (millis) is in ms, and contradicts --rate where it counts seconds", async () => {
    expect(await read(record("time (millis),a", (i) => `${i * 10}`))).toBe("");
    expect(await read(record("time (millis),a", (i) => `${i / 100}`))).toContain("--rate 100, and column 1");
  });

  it("without a header too; sample numbers are none", async () => {
    expect(await read(record("0,0", (i) => `${(i + 1) / 200}`))).toContain("column 1 with 0.005 s");
    expect(await read(record("n,a", (i) => `${i}`))).toBe("");
  });

  it("times rounded to more than a step", async () => {
    expect(await read(record("t,a", (i) => `${Math.floor(i / 100)}`))).toBe("");
    expect(await read(record("t,a", (i) => `${Math.floor(i / 20)}`))).toContain("a second");
  });

  it("dates", async () => {
    const at = (i: number, step: number): string => new Date(1.77e12 + i * step).toISOString();
    expect(await read(record("when,a", (i) => at(i, 10)))).toBe("");
    expect(await read(record("when,a", (i) => at(i, 20)))).toContain("50 a second");
  });

  it("simulate --every", async () => {
    const csv = lines("t,level", ...Array.from({ length: 20 }, (_, i) => `${i * 2},3`));
    const every = (seconds: string): Promise<string> => refusal([...history, "--column", "2", "--every", seconds], csv);
    expect(await every("2")).toBe("");
    expect(await every("1")).toContain('--every 1, and column 1 "t" with 2 s');
  });
});
