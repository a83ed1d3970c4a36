import { describe, expect, it } from "vitest";
import { cautions } from "../../src/core/index";
import { root } from "../examples/fences";
import { veladis } from "./in-process";

const rig = (name: string) => `${root}/docs/examples/pump-rig/${name}.csv`;
const plain = (text: string) => text.replace(/\s+/g, " ");

const simulate = ["simulate", "--from", "g rms", "--hysteresis", "5 %", "--timer-resets", "threshold"];
const check = ["check", "--known", "8 mm/s rms at 2400 r/min", "--indicated", "7.3 mm/s rms", "--tolerance", "5 %"];
const plan = ["plan", "--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--delay", "8", "--latching"];
const shaker = ["--shaker", "8 Hz to 3 kHz", "--stroke", "5 mm pp", "--at", "2400 r/min"];
const setpoints = ["setpoints", "--baseline", "2 mm/s rms", "--limits", "4.5 mm/s rms, 7.1 mm/s rms"];

describe("a rule of setpoints", () => {
  it("is read in capital letters too", async () => {
    const machine = ["--machine", "compressor 3000 r/min shaft"];
    const asked = (rule: string) => veladis(["setpoints", "--baseline", "20 um pp", "--rule", rule, ...machine]);
    const [small, capital, none] = [await asked("api shaft"), await asked("API  Shaft"), await asked("API foo")];
    expect([capital.code, capital.out]).toEqual([0, small.out]);
    expect(none.code).not.toBe(0);
  });
});

describe("every answer", () => {
  const impulse = [
    ...simulate,
    "--file",
    rig("imbalance-impulse"),
    "--column",
    "2",
    "--threshold",
    "0.24 g rms",
    "--non-latching",
  ];
  const commands = [setpoints, check, [...plan, ...shaker], [...impulse, "--delay", "3"]];

  it.each(commands.map((args) => [args[0], args] as const))(
    "%s ends with the cautions, as text and as JSON",
    async (_, args) => {
      const { out, code } = await veladis(args);
      expect(code).toBe(0);
      for (const caution of cautions) expect(plain(out)).toContain(caution);
      const json = await veladis([...args, "--json"]);
      for (const line of json.out.trim().split("\n")) expect(JSON.parse(line).cautions).toEqual([...cautions]);
    },
  );

  it.each(["setpoints", "simulate", "check", "plan", "balance"])(
    "%s has a page of help with examples",
    async (name) => {
      const { out } = await veladis([name, "--help"]);
      expect(out).toMatch(new RegExp(`\\n {2}veladis ${name} `));
      expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(120);
    },
  );
});

describe("veladis setpoints", () => {
  it("proposes by the rules, with reasons and sources", async () => {
    const { out } = await veladis([
      ...setpoints,
      "--machine",
      "pump 1490 r/min",
      "--asked",
      "3.14 mm/s rms",
      "--step",
      "0.05 mm/s rms",
    ]);
    expect(out).toMatch(/ALARM +3\.125 +3\.100 +2\.945 +2\.000 to 5\.625/);
    expect(out).toMatch(/TRIP +7\.100 +7\.100/);
    expect(plain(out)).toContain(
      "the device stores 3.15 mm/s rms for 3.14 mm/s rms: levels up to 0.3 % above what was asked do not act",
    );
    expect(out).toMatch(/\n\[1\] ISO 10816-3, operational limits/);
  });

  it("says what was assumed on the way, only where something was", async () => {
    const limits = ["setpoints", "--limits", "3 mm/s rms, 6 mm/s rms", "--machine", "fan 1490 r/min", "--baseline"];
    const { out } = await veladis([...limits, "0.1 in/s pk"]);
    expect(plain(out)).toContain("assumed peak, RMS and average are related as for one sine wave");
    expect((await veladis([...limits, "2 mm/s rms"])).out).not.toMatch(/^assumed/m);
  });

  it("takes a baseline from a file, and writes a sheet", async () => {
    const file = ["setpoints", "--file", rig("normal-every-15th"), "--column", "2", "--from", "g rms"];
    const json = JSON.parse((await veladis([...file, "--json"])).out);
    expect(json.statistics.count).toBe(627);
    expect(json.trip).toBeNull();
    const later = JSON.parse((await veladis([...file, "--start-up", "60", "--json"])).out);
    expect(later.statistics.excluded).toBeGreaterThan(0);
    expect((await veladis([...file, "--sheet", "html", "--name", "Rig"])).out).toMatch(/^<!doctype html>/);
    expect(JSON.parse((await veladis([...file, "--sheet", "json"])).out).data.baseline.count).toBe(627);
    expect((await veladis([...file, "--sheet", "markdown"])).out).toMatch(/^# Setpoints and verification/);
  });
});

describe("veladis simulate", () => {
  const impulse = [...simulate, "--file", rig("imbalance-impulse"), "--column", "2", "--threshold", "0.24 g rms"];

  it("compares delays, and lists what happens with one", async () => {
    const { out } = await veladis([...impulse, "--non-latching", "--delay", "0,3"]);
    expect(out).toMatch(/\n +0 +1 +825 +17:20:56 +827 +0 +- +- +normal\n +3 +0 +- +- +- +1 +2 +1 +normal\n/);
    const one = await veladis([
      ...impulse,
      "--latching",
      "--delay",
      "0",
      "--relay",
      "normally open, normally energised",
    ]);
    expect(one.out).toMatch(/825 {2}17:20:56 {2}trip +0\.590/);
    expect(one.out).toMatch(/at the end: latched, output trip, contact open/);
  });

  it("takes piped CSV, even spacing, faults and commands", async () => {
    const args = ["simulate", "--from", "mm/s rms", "--threshold", "7 mm/s rms", "--hysteresis", "5 %", "--delay", "1"];
    const more = ["--timer-resets", "reset-level", "--latching", "--column", "level", "--every", "1", "--json"];
    const csv = "level\n4\n8\n8\nfault\n4\n4\n";
    const told = [...args, ...more, "--sensor-fault", "hold", "--commands", "reset at 5"];
    const { events, end } = JSON.parse((await veladis(told, csv)).out);
    expect(events.map((one: { event: string }) => one.event)).toEqual(["trip", "fault", "fault over", "reset"]);
    expect(end.state).toBe("normal");
    const refused = await veladis([...args, ...more], csv);
    expect([refused.code, JSON.parse(refused.err).error.received]).toEqual([2, expect.stringContaining("line 5")]);
  });

  it.each([
    [[...impulse, "--delay", "3"], "missing-option"],
    [[...impulse, "--delay", "3", "--latching", "--non-latching"], "missing-option"],
    [[...impulse, "--latching"], "missing-option"],
    [[...impulse, "--delay", "soon", "--latching"], "not-a-number"],
    [[...impulse, "--delay", "3", "--latching", "--commands", "reset"], "syntax"],
    [[...impulse, "--delay", "3", "--latching", "--commands", "kick at 5"], "unknown-option"],
    [
      [...impulse.map((one, i) => (impulse[i - 1] === "--column" ? "9" : one)), "--delay", "3", "--latching"],
      "unknown-option",
    ],
    [[...impulse, "--delay", "3", "--latching", "--multiplier", "2"], "syntax"],
    [[...impulse, "--delay", "3", "--latching", "--relay", "open"], "syntax"],
    [["simulate", "--json"], "missing-option"],
  ])("refuses %j", async (args, error) => {
    const { code, err, out } = await veladis([...args, "--json"]);
    expect([code, out, JSON.parse(err).error.code]).toEqual([2, "", error]);
  });

  it("refuses times that fall, with the line", async () => {
    const csv = "t,x\n2020-02-08 17:07:11,1\n2020-02-08 17:07:10,1\n";
    const { err } = await veladis([...simulate, "--threshold", "2 g rms", "--delay", "1", "--latching"], csv);
    expect(err).toMatch(/times that never fall[\s\S]*1 row before the row above: line 3/);
  });
});

describe("veladis check", () => {
  it("gives error, percent, decibels, verdict and rule", async () => {
    const { out } = await veladis(check);
    expect(out).toMatch(/-0\.70 mm\/s rms +-8\.8 % +-0\.80 dB +fail/);
    expect(out).toMatch(/simple acceptance/);
  });

  it("says what was assumed, only where something was", async () => {
    const at = ["check", "--known", "9 mm/s rms at 1500 r/min", "--tolerance", "5 %", "--indicated"];
    const inches = plain((await veladis([...at, "0.5 in/s pk"])).out);
    expect(inches).toContain("assumed peak, RMS and average are related as for one sine wave");
    expect(inches).not.toContain("at the stated frequency");
    const microns = plain((await veladis([...at, "80 um pk"])).out);
    expect(microns).toContain("one sine wave");
    expect(microns).toContain("all of the vibration is one sine at the stated frequency");
    expect((await veladis([...at, "9 mm/s rms"])).out).not.toMatch(/^assumed/m);
  });

  it("says that a device which reads low acts late, and what a failed check puts in doubt", async () => {
    const at = ["check", "--known", "9 mm/s rms", "--tolerance", "5 %", "--indicated"];
    const told = async (...args: string[]) => plain((await veladis([...at, ...args])).out);
    const low = /the device reads low: it acts only at 1\.125 times its setting/;
    const doubt = /readings and trips since the last check are in doubt/;
    const unfit = /as left it does not pass: do not rely on it for protection/;
    // 9 / 8 = 1.125
    const failed = await told("8 mm/s rms");
    expect(failed).toMatch(low);
    expect(failed).toMatch(doubt);
    const high = await told("10 mm/s rms");
    expect(high).not.toMatch(/reads low/);
    expect(high).toMatch(doubt);
    const passed = await told("8.9 mm/s rms");
    expect(passed).not.toMatch(/reads low|in doubt/);
    const unsure = await told("8.5 mm/s rms", "--uncertainty", "2 % (k=2)");
    expect(unsure).toMatch(/undecided.*reads low: it acts only at 1\.059 times/);
    expect(await told("0 mm/s rms")).toMatch(/the device shows nothing, as a dead one does: it does not act/);
    expect(await told("8.9 mm/s rms", "--as-left", "8 mm/s rms")).toMatch(unfit);
    expect(await told("8 mm/s rms", "--as-left", "8.9 mm/s rms")).not.toMatch(unfit);
    expect(plain((await veladis([...at, "8 mm/s rms", "--sheet", "markdown"])).out)).toMatch(low);
  });

  it("holds each of several levels against its own tolerance", async () => {
    const csv = "known,indicated\n2,2.1\n8,7.2\n";
    const told = async (...args: string[]) => (await veladis(["check", "--from", "mm/s rms", ...args], csv)).out;
    const out = await told("--tolerance", "5 %");
    expect(out).toMatch(/^1 .* within 0\.100 +pass\n.* U not stated\n.* passes 0\.100$/m);
    expect(out).toMatch(/^2 .* within 0\.400 +fail\n.* U not stated\n.* passes 0\.400$/m);
    expect(out).not.toMatch(/^tolerance \d/m);
    expect(out).toMatch(/at 8\.00 mm\/s rms: the device reads low/);
    expect(await told("--tolerance", "5 %", "--uncertainty", "2 % (k=2)")).toMatch(
      / within 0\.400 +fail\n.* U 0\.160\n.* passes 0\.240$/m,
    );
    // 6 dB is a ratio of 1.995 up and down: 8 x 0.995 above, 8 x 0.499 below
    expect(await told("--tolerance", "6 dB")).toMatch(
      / within \+7\.96, -3\.99 +pass\n.* U not stated\n.* -3\.99 to \+7\.96$/m,
    );
  });

  it("compares as found and as left, and takes several levels", async () => {
    const pair = await veladis([...check, "--as-left", "7.9 mm/s rms"]);
    expect(pair.out).toMatch(/as found .* fail$/m);
    expect(pair.out).toMatch(/as left .* pass$/m);
    expect(pair.out).toMatch(/in doubt/);
    const csv = "known,indicated\n2,2.1\n5,5.1\n10,10.1\n";
    const line = await veladis(["check", "--from", "mm/s rms", "--tolerance", "5 %"], csv);
    expect(line.out).toMatch(/slope 1\.000, offset \+0\.10 mm\/s rms, off the line by up to 0\.00 %/);
    expect((await veladis([...check, "--sheet", "markdown"])).out).toMatch(/\| -8\.8 \|/);
    expect((await veladis([...check, "--sheet", "pdf"])).code).toBe(2);
    expect((await veladis(["check", "--tolerance", "5 %"])).err).toMatch(/--known/);
  });
});

describe("veladis plan", () => {
  it("a shaker of one frequency: the steps are at its frequency", async () => {
    const { out, code } = await veladis([...plan, "--shaker", "159.2 Hz", "--json"]);
    expect(code).toBe(0);
    const steps = out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(new Set(steps.map(({ hertz }) => hertz))).toEqual(new Set([159.2]));
    expect(steps.every(({ possible }) => possible)).toBe(true);
  });

  it("a shaker of one level: what it can prove, and what it cannot", async () => {
    const { out, code } = await veladis([...plan, "--shaker", "10 mm/s rms at 159.2 Hz"]);
    expect(code).toBe(0);
    expect(out).toMatch(/10\.0 mm\/s rms +reading at the one level of the +the device shows 10\.0 mm\/s rms/);
    expect(out).toMatch(/hold just below the threshold for +NOT POSSIBLE \(level\)/);
    expect(out).toMatch(/raise to above the threshold and +trip after 8 s\n.* take the time/);
    expect(out).toMatch(/switch the shaker off, which is .*\n.* below the reset level/);
    expect(out).toMatch(/^- this shaker can do steps 1, 4 to 6; it cannot do steps 3, 7$/m);
    expect(out.replace(/\n */g, " ")).toContain("proves a threshold at or below it, and not where it is set");
    const low = (await veladis([...plan, "--shaker", "5 mm/s rms at 159.2 Hz"])).out.replace(/\n */g, " ");
    expect(low).toContain("it proves the reading there, and no trip");
    expect(low).toMatch(/raise to above the threshold and +NOT POSSIBLE \(level\)/);
    const other = await veladis([...plan, "--shaker", "10 mm/s rms at 159.2 Hz", "--at", "80 Hz"]);
    expect([other.code, other.out]).toEqual([2, expect.stringContaining("NOT POSSIBLE (frequency")]);
    const alone = await veladis([...plan, "--shaker", "10 mm/s rms"]);
    expect([alone.code, alone.err]).toEqual([2, expect.stringContaining("missing-frequency")]);
  });

  it("check takes level and frequency from the shaker, and refuses a level that it cannot give", async () => {
    const rest = ["--indicated", "9.8 mm/s rms", "--tolerance", "5 %", "--json"];
    const whole = await veladis(["check", "--known", "10 mm/s rms at 159.2 Hz", ...rest]);
    for (const told of [
      ["--shaker", "10 mm/s rms at 159.2 Hz"],
      ["--shaker", "159.2 Hz", "--known", "10 mm/s rms"],
    ]) {
      expect((await veladis(["check", ...told, ...rest])).out).toBe(whole.out);
    }
    // biome-ignore format: a row of a table is a line
    const refused = [
      [["--shaker", "10 mm/s rms at 159.2 Hz", "--known", "8 mm/s rms"], "not its level"],
      [["--shaker", "159.2 Hz", "--known", "8 mm/s rms at 80 Hz"], "not its frequency"],
      [["--shaker", "159.2 Hz"], "the level that the shaker gave"],
      [["--shaker", "159.2 Hz", "--from", "mm/s rms"], "one level beside --shaker"],
    ] as const;
    for (const [told, words] of refused) {
      const { code, err } = await veladis(["check", ...told, ...rest]);
      expect([code, err.replace(/\n\s*/g, " ")]).toEqual([2, expect.stringContaining(words)]);
    }
  });

  it("lists the steps and what the shaker cannot do", async () => {
    const { out } = await veladis([...plan, ...shaker, "--relay", "normally open, normally energised"]);
    expect(out).toMatch(/clears below 8\.280 mm\/s rms/);
    expect(out).toMatch(/^ 6 .* raise to above the +trip after 8 s, contact open$/m);
    expect(plain(out)).toMatch(
      /^- before: .* disconnect .* has no vibration trip .* threshold 9.* reconnect .* prove the whole path/,
    );
    const slow = await veladis([...plan, "--shaker", "8 Hz to 3 kHz", "--at", "5 Hz"]);
    expect(slow.out).toMatch(/NOT POSSIBLE \(frequency/);
    expect((await veladis([...plan, ...shaker, "--sheet", "html"])).out).toMatch(/^<!doctype html>/);
    expect((await veladis(plan)).code).toBe(2);
  });
});

describe("veladis balance", () => {
  const rotor = ["--mass", "400 kg", "--speed", "1480 r/min"];

  it("goes from grade to unbalance and back", async () => {
    const { out } = await veladis(["balance", "G 6.3", ...rotor, "--planes", "300 mm, 700 mm"]);
    expect(out).toMatch(/residual unbalance {2}16260 g·mm, 11380 left and 4878 right/);
    expect(out).toMatch(/no reading on a housing/);
    const back = JSON.parse((await veladis(["balance", "--unbalance", "16260 g·mm", ...rotor, "--json"])).out);
    expect(back.grade).toBeCloseTo(6.3, 3);
    expect(back.cautions).toEqual([...cautions]);
    expect((await veladis(["balance", "--unbalance", "20 oz-in", ...rotor])).out).toMatch(
      /20 oz-in is 14400 g·mm, G 5\.58/,
    );
  });

  it.each([
    [["balance", ...rotor], "missing-option"],
    [["balance", "G 6.3"], "missing-option"],
    [["balance", "G 6.3", ...rotor, "--planes", "300 mm"], "syntax"],
    [["balance", "G 6.3", "--mass", "400", "--speed", "1480 r/min"], "missing-unit"],
  ])("refuses %j", async (args, error) => {
    const { code, err } = await veladis([...args, "--json"]);
    expect([code, JSON.parse(err).error.code]).toEqual([2, error]);
  });
});
