import { describe, expect, it } from "vitest";
import { pages } from "../../src/cli/commands/pages";
import { judge } from "../../src/severity/index";
import { veladis } from "./in-process";

interface Line {
  readonly operation: string;
  readonly of: readonly number[];
  readonly by?: number;
  readonly value: number;
}

/** The arithmetic of each operation, written here a second time. */
const reckon: Readonly<Record<string, (x: number, by: number, rest: readonly number[]) => number>> = {
  times: (x, by) => x * by,
  over: (x, by) => x / by,
  linear: (x, by) => by * 10 ** (x / 20),
  decibels: (x, by) => 20 * Math.log10(x / by),
  "limit over": (x, by) => by / x,
  difference: (x, _, rest) => rest.reduce((sum, one) => sum - one, x),
};

/** What the lines come to, carried out from the first to the last. */
function replayed(lines: readonly Line[]): number {
  const values: number[] = [];
  for (const { operation, of, by = 1, value } of lines) {
    const [x = Number.NaN, ...rest] = of.map((at) => values[at] as number);
    values.push(operation === "given" ? value : (reckon[operation]?.(x, by, rest) ?? Number.NaN));
  }
  return values.at(-1) as number;
}

const near = (actual: number, expected: number): void => expect(actual / expected).toBeCloseTo(1, 12);

const objects = async (...args: string[]) => {
  const { out, code } = await veladis([...args, "--explain", "--json"]);
  expect(code).toBe(0);
  return out
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line));
};

describe("--explain with --json gives steps that come to the answer", () => {
  it("of a conversion, linear and in decibels", async () => {
    const answers = await objects("0.25 in/s pk at 1500 r/min to mm/s rms, mil pp, dB re 1e-9 m/s");
    for (const { value, level, explained } of answers) near(replayed(explained), level?.decibels ?? value);
    expect(answers.map(({ explained }) => explained.length)).toEqual([3, 5, 4]);
  });

  it("of every cell of the table of equivalents", async () => {
    for (const { value, explained } of await objects("0.25 in/s pk at 1500 r/min")) near(replayed(explained), value);
  });

  it("of a column of CSV, where rows of text have no room for them", async () => {
    const file = ["--file", "docs/examples/pump-rig/normal-excerpt.csv", "--column", "accelerometer_1_g_rms"];
    const rows = await objects(...file, "--from", "g rms", "--to", "m/s2 pk");
    for (const { value, explained } of rows) near(replayed(explained), value);
  });

  it("of a judgement: the margin", async () => {
    const [answer] = await objects(
      "judge",
      "0.25 in/s pk",
      "--machine",
      "group 1 rigid",
      "--scheme",
      "iso-10816-3-2009",
    );
    near(replayed(answer.explained), answer.margin.ratio);
  });

  it("of the levels of a record and of their judgement", async () => {
    const fan = ["overall", "docs/examples/fan-bearing.csv", "--rate", "2560", "--unit", "g"];
    const [answer] = await objects(...fan, "--machine", "fan 132 kW 1485 r/min rigid BV-3");
    near(replayed(answer.levels[0].explained), answer.levels[0].value);
    near(replayed(answer.judgement.explained), answer.judgement.margin.ratio);
  });

  it("of what a device shows: its error in percent of the known level", async () => {
    const known = ["--known", "8 mm/s rms at 2400 r/min", "--tolerance", "5 %"];
    const [one] = await objects("check", ...known, "--indicated", "0.4 in/s pk");
    near(replayed(one.explained), one.errorPercent);
    expect(one.explained.map(({ operation }: Line) => operation)).toContain("difference");
    const [pair] = await objects("check", ...known, "--indicated", "0.4 in/s pk", "--as-left", "45 um pp");
    near(replayed(pair.explained["as left"]), pair.asLeft.errorPercent);
  });

  it("of the steps of a bench plan", async () => {
    const settings = ["--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--delay", "8", "--latching"];
    const steps = await objects("plan", ...settings, "--at", "2400 r/min", "--shaker", "8 Hz to 3 kHz");
    const moved = steps.filter(({ displacement }) => displacement !== null);
    for (const { displacement, explained } of moved) near(replayed(explained.displacement), displacement.value);
    expect(moved.length).toBeGreaterThan(3);
  });
});

const drive = ["table", "docs/examples/pump-rig/normal-excerpt.csv", "--column", "accelerometer_1_g_rms"];

describe("--explain with --json gives steps that come to what a table adds to a row", () => {
  const rows = [...drive, "--from", "g rms", "--at", "25 Hz", "--to", "m/s2 pk, mm/s rms"];

  it("each cell of its own, and the margin of the zone", async () => {
    const found = await objects(...rows, "--machine", "pump 90 kW category II");
    expect(found.length).toBeGreaterThan(50);
    for (const { explained, zone, ...row } of found) {
      for (const to of ["m/s2 pk", "mm/s rms"]) near(replayed(explained[to]), row[to]);
      // the judge of single readings says the same zone as the compiled one of the row
      const verdict = judge(`${row.cells.accelerometer_1_g_rms} g rms at 25 Hz`, "pump 90 kW category II");
      expect(zone).toBe(verdict.zone);
      near(replayed(explained.zone), verdict.margin.ratio);
    }
  });

  it("of rows that name type, frequency and machine themselves, by a scheme", async () => {
    const csv = "value,unit,hz,what\n4,mm/s,25,group 1 rigid\n0.3,in/s,50,group 2 flexible\n";
    const columns = ["--from-column", "unit", "--detector", "rms", "--at-column", "hz", "--at-unit", "Hz"];
    const judged = ["--machine-column", "what", "--scheme", "iso-10816-3-2009"];
    const args = ["table", "--column", "value", ...columns, ...judged, "--to", "um rms", "--explain", "--json"];
    const { out } = await veladis(args, csv);
    const found = out
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(found.map(({ zone }) => zone)).toEqual(["B", "D"]);
    for (const { explained, ...row } of found) near(replayed(explained["um rms"]), row["um rms"]);
  });

  it("and is refused where rows are text, which have no room for them", async () => {
    const { err, code } = await veladis([...rows, "--explain"]);
    expect(code).not.toBe(0);
    expect(err).toMatch(/--explain with --json, since a row of CSV has no room for steps/);
  });
});

describe("--explain with --json gives steps that come to what was set", () => {
  const rig = ["--file", "docs/examples/pump-rig/imbalance-impulse.csv", "--column", "2", "--from", "g rms"];
  const settings = ["--threshold", "0.3 g pk", "--hysteresis", "5 %", "--latching", "--timer-resets", "threshold"];

  it("threshold, reset level and the level of each event", async () => {
    const lines = await objects("simulate", ...rig, ...settings, "--delay", "0,3");
    expect(lines).toHaveLength(2);
    for (const { explained, threshold, reset, events } of lines) {
      near(replayed(explained.threshold), threshold.value);
      near(replayed(explained["reset level"]), reset.value);
      expect(events.length).toBeGreaterThan(0);
      for (const { time, event, level } of events) near(replayed(explained[`${event} at ${time} s`]), level);
    }
  });

  it("as text, each on-delay by its name and what they share once", async () => {
    const { out } = await veladis(["simulate", ...rig, ...settings, "--delay", "0,3", "--explain"]);
    const told = out.slice(out.indexOf("\nexplained\n"));
    expect(told.match(/^ {2}threshold$/gm)).toHaveLength(1);
    expect(told).toMatch(/^ {2}on-delay 0 s, trip at \S+ s$/m);
    expect(told).toMatch(/^ {2}on-delay 3 s, trip at 3 s\n {4}\S+ g rms\n {4}.* = \S+ g pk {2}\(one sine\)$/m);
  });

  it("the force that a balance grade permits, and grade and force of an unbalance", async () => {
    const rotor = ["--mass", "400 kg", "--speed", "1480 r/min"];
    const [permitted] = await objects("balance", "G 6.3", ...rotor);
    near(replayed(permitted.explained), permitted.force);
    const [measured] = await objects("balance", "--unbalance", "20 oz·in", ...rotor);
    near(replayed(measured.explained.grade), measured.grade);
    near(replayed(measured.explained.force), measured.force);
    expect((await veladis(["balance", "G 6.3", ...rotor, "--explain"])).out).toMatch(
      /\nexplained\n {2}6\.3 mm\/s {2}\(balance grade\)\n/,
    );
  });
});

/**
 * Commands whose answers are no readings and nothing made of them: tables of limits, text for a database, what a shell
 * reads, settings of an analyser, and a gap, which is one quotient of numbers that stand beside it. Nor those of a whole
 * plant: `judge`, `setpoints` and `check` explain one of its rows.
 */
const withoutReadings = ["schemes", "sql", "completion", "resolution", "gap"];
const ofPlants = ["audit", "template", "judge", "setpoints", "checks", "change", "report"].map((one) => `plant ${one}`);

describe("every command that answers with readings or what is made of them explains them", () => {
  it.each(Object.entries(pages).filter(([name]) => ![...withoutReadings, ...ofPlants].includes(name)))(
    "%s",
    async (_, page) => {
      expect(Object.keys((await page()).options)).toContain("explain");
    },
  );
});

describe("--explain prints the steps below the answer", () => {
  it("of one target, and of each of several by its name", async () => {
    expect((await veladis(["0.25 in/s pk to mm/s rms", "--explain"])).out).toBe(
      [
        "0.25 in/s pk = 4.49 mm/s rms  (sine)",
        "",
        "explained",
        "  0.25 in/s pk",
        "  0.25 in/s pk x 25.4 = 6.35 mm/s pk",
        "  6.35 mm/s pk / 1.414 = 4.49 mm/s rms  (one sine)",
        "",
      ].join("\n"),
    );
    const { out } = await veladis(["0.25 in/s pk", "--to", "mm/s rms, in/s rms", "--explain"]);
    expect(out).toMatch(/\nexplained\n {2}mm\/s rms\n {4}0\.25 in\/s pk\n[\s\S]*\n {2}in\/s rms\n {4}0\.25/);
  });

  it("of a route, a line of it by its number", async () => {
    const { out } = await veladis(["--file", "docs/examples/route.txt", "--to", "mm/s rms", "--explain"]);
    expect(out).toMatch(/refused\n\nexplained\n {2}line \d+, mm\/s rms\n {4}/);
  });

  it("of judgements, also of piped lines, which say all that was assumed", async () => {
    const { out } = await veladis(["judge", "--machine", "pump 90 kW", "--explain"], "0.2 in/s pk\n");
    expect(out).toMatch(
      /; assumed: sine; condition in service: not given, assumed; place housing: not given, assumed; category I: not given/,
    );
    expect(out).toMatch(/\n\nexplained\n {2}0\.2 in\/s pk\n[\s\S]*\(limit A\/B|\(limit B\/C/);
  });

  it("of proposed setpoints", async () => {
    const limits = ["--limits", "4.5 mm/s rms, 7.1 mm/s rms", "--asked", "3.3 mm/s rms", "--step", "0.2 mm/s rms"];
    const { out } = await veladis(["setpoints", "--baseline", "2 mm/s rms", ...limits, "--explain"]);
    expect(out).toMatch(/\nexplained\n {2}alarm\n {4}[\s\S]*\n {2}trip\n {4}[\s\S]*\n {2}asked\n {4}/);
  });
});

describe("what was assumed stands in the answer of", () => {
  const rig = ["--file", "docs/examples/pump-rig/imbalance-impulse.csv", "--column", "2", "--from", "g rms"];
  const settings = ["--hysteresis", "5 %", "--delay", "3", "--latching"];

  it.each([
    ["a check", ["check", "--known", "8 mm/s rms at 2400 r/min", "--indicated", "0.4 in/s pk", "--tolerance", "5 %"]],
    ["a proposal", ["setpoints", "--baseline", "0.12 in/s pk", "--limits", "5 mm/s rms, 7 mm/s rms"]],
    ["a simulation", ["simulate", ...rig, "--threshold", "0.3 g pk", ...settings, "--timer-resets", "threshold"]],
    ["a plan", ["plan", "--threshold", "9 mm/s rms", ...settings, "--shaker", "8 Hz to 3 kHz"]],
  ])("%s, as text and as JSON", async (_, args) => {
    expect((await veladis(args)).out).toMatch(/^assumed +(all of the|peak, RMS and average)/m);
    for (const line of (await veladis([...args, "--json"])).out.trim().split("\n"))
      expect(JSON.parse(line).assumed).toContain("sine");
  });
});

describe("what was judged stands in the answer", () => {
  it("of each place that was not given, by all of its schemes", async () => {
    const { out } = await veladis(["judge", "100 um pp", "--machine", "gas turbine 20 MW"]);
    expect(out).toMatch(/^100 um pp: shaft B to D, housing B or worse: state the place$/m);
    for (const id of ["iso-20816-4-2018-shaft", "iso-10816-4", "iso-3945-1985"]) expect(out).toContain(id);
  });
});
