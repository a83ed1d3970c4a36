import fc from "fast-check";
import { parseAmplitude } from "veladis";
import { baseline, proposeSetpoints, setpointSheet, sheetHtml, sheetMarkdown, TripLogic } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { newSession, respond } from "../../src/repl/index";
import { veladis } from "../cli/in-process";

const machine = "pump 1490 r/min";
const limits = { "B/C": "4 mm/s rms", "C/D": "6 mm/s rms", source: "maker of the pump" } as const;
const at = (level: number) => proposeSetpoints({ baseline: `${level} mm/s rms`, machine, limits });

// what the rules allow is ISO 10816-3 as a motor maker's manual reproduces it: see test/references/alarms.ts
describe("a baseline above the limits", () => {
  it.each([
    // level, alarm = min(level + 1, 5), range of the alarm, alarm at once, trip at once
    [3, 4, [3, 5], false, false],
    [4.5, 5, [4.5, 5], false, false],
    [5, 5, [5, 5], true, false],
    [5.5, 5, [5, 5], true, false],
    [6, 5, [5, 5], true, true],
    [9, 5, [5, 5], true, true],
  ])("%s mm/s: alarm %s, range %j, alarm at once %s, trip at once %s", (level, value, range, alarmNow, tripNow) => {
    const { alarm, trip, warnings } = at(level);
    expect([alarm?.stored.value, alarm?.range, alarm?.atOnce]).toEqual([value, range, alarmNow]);
    // never raised: the trip is the upper limit of zone C, whatever the machine does
    expect([trip?.stored.value, trip?.range, trip?.atOnce]).toEqual([
      6,
      // neither at once nor before its alarm: above both
      [Math.min(Math.max(value, level), 7.5), 7.5],
      tripNow,
    ]);
    const codes = warnings.map(({ code }) => code);
    expect([codes.includes("alarm at once"), codes.includes("trip at once")]).toEqual([alarmNow, tripNow]);
    if (tripNow) expect(codes[0]).toBe("trip at once");
  });

  it("a setpoint that the device rounds down below the running level acts at once", () => {
    const proposal = proposeSetpoints({ baseline: "4.8 mm/s rms", machine, limits, device: { step: "2 mm/s rms" } });
    expect([proposal.alarm?.stored.value, proposal.alarm?.atOnce]).toEqual([4, true]);
    expect(proposal.warnings[0]?.code).toBe("alarm at once");
  });

  it("a baseline at the setpoint but for float noise acts at once, as the trip logic does", () => {
    expect(at(6 * (1 - 1e-8)).trip?.atOnce).toBe(true);
    expect(at(6 * (1 - 1e-6)).trip?.atOnce).toBe(false);
  });

  it("no trip below the baseline or the alarm is among what the rules allow", async () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 20, noNaN: true }), (level) => {
        const { alarm, trip, baseline: base } = at(level);
        const [lowest = 0, highest = 0] = trip?.range ?? [];
        expect(lowest).toBeLessThanOrEqual(highest);
        const least = Math.max(4, base as number, alarm?.stored.value as number);
        expect(lowest).toBe(Math.min(least, highest));
      }),
      { numRuns: 200 },
    );
  });

  it("a setpoint asked for below the running level is warned of, first of all", async () => {
    const args = [
      "setpoints",
      "--baseline",
      "4.2 mm/s rms",
      "--limits",
      "4 mm/s rms, 6 mm/s rms",
      "--machine",
      machine,
    ];
    const run = async (asked: string, ...more: string[]) =>
      (await veladis([...args, "--asked", asked, ...more])).out.replace(/\s+/g, " ");
    const told =
      "the setpoint asked for, 3.50 mm/s rms, would act at once, as an alarm or as a trip: the machine already runs at 4.20 mm/s rms";
    expect(await run("3.5 mm/s rms")).toContain(`warnings - ${told}`);
    expect(JSON.parse(await run("3.5 mm/s rms", "--json")).warnings[0]).toEqual({ code: "asked at once", text: told });
    expect(await run("3.5 mm/s rms", "--sheet", "markdown")).toContain(told.slice(0, 60));
    expect(await run("0.2 in/s pk")).toContain("would act at once");
    expect(await run("4.3 mm/s rms")).toContain("would not clear at the running level of 4.20 mm/s rms");
    expect(await run("9 mm/s rms")).toContain("is above all that the rules allow (7.500 mm/s rms)");
    expect(await run("5.5 mm/s rms")).not.toContain("the setpoint asked for");
  });

  it("is told in text, JSON, sheet and calculator", async () => {
    const told = "the machine would trip at once: the machine is already above it";
    const args = ["--baseline", "9 mm/s rms", "--limits", "4 mm/s rms, 6 mm/s rms", "--machine", machine];
    const flat = (text: string): string => text.replace(/\s+/g, " ");
    const { out } = await veladis(["setpoints", ...args]);
    expect(flat(out)).toContain(told);
    expect(flat(out)).toContain("the alarm would stand at once");
    expect(out).toMatch(/ALARM +5\.000 +5\.000 +4\.750 +at most 5\.000\n/);
    const data = JSON.parse((await veladis(["setpoints", ...args, "--json"])).out);
    expect([data.alarm.atOnce, data.trip.atOnce, data.warnings[0].code]).toEqual([true, true, "trip at once"]);
    for (const form of ["markdown", "html"]) {
      const sheet = flat((await veladis(["setpoints", ...args, "--sheet", form])).out);
      expect(sheet).toContain(told);
      expect(sheet).toContain("at most 5.000");
    }
    const said = await respond('setpoints(12 mm/s rms, "pump 90 kW 1480 r/min rigid category II")', newSession());
    expect(said === "exit" ? "" : said.text).toContain(told);
  });

  it("a sheet written from a proposal as data says it too", () => {
    const proposal = at(9);
    const sheet = setpointSheet({ machine, proposal });
    expect(sheetMarkdown(sheet)).toContain("at most 5.000");
    expect(sheetHtml(sheet)).toContain("the machine would trip at once");
  });

  it("no range falls, none is silently raised, and what acts at once is told, over many baselines", () => {
    const level = fc.double({ min: 0, max: 20, noNaN: true });
    const step = fc.constantFrom(undefined, "0.1 mm/s rms", "1 mm/s rms");
    fc.assert(
      fc.property(
        level,
        level.filter((one) => one > 2),
        fc.double({ min: 1.01, max: 3, noNaN: true }),
        step,
        (base, lower, ratio, by) => {
          const proposal = proposeSetpoints({
            baseline: parseAmplitude(`${base} mm/s rms`),
            machine,
            limits: { "B/C": `${lower} mm/s rms`, "C/D": `${lower * ratio} mm/s rms`, source: "site" },
            ...(by !== undefined && { device: { step: by } }),
          });
          for (const [name, setpoint] of [
            ["alarm", proposal.alarm],
            ["trip", proposal.trip],
          ] as const) {
            if (setpoint === null) continue;
            expect(setpoint.range[0]).toBeLessThanOrEqual(setpoint.range[1]);
            expect(setpoint.stored.value).toBeLessThanOrEqual(setpoint.range[1] * (1 + 1e-9));
            expect(setpoint.atOnce).toBe(base >= setpoint.stored.value * (1 - 2 ** -23));
            expect(proposal.warnings.some(({ code }) => code === `${name} at once`)).toBe(setpoint.atOnce);
          }
        },
      ),
      { numRuns: 500 },
    );
  });

  it("the statistical alarm has no range that falls, even with a small k on skewed readings", () => {
    const readings = baseline([3, 3, 3, 3, 3, 1, 1, 1, 2.9], { as: "mm/s rms" });
    const { alarm } = proposeSetpoints({ baseline: readings, scheme: "none", k: 0.01 });
    expect(alarm?.range[0]).toBeLessThanOrEqual(alarm?.range[1] as number);
    expect(alarm?.atOnce).toBe(true);
  });

  it("a trip that is not above the alarm is said to come without a warning before it", () => {
    const warned = (baseline: string, limit: string) =>
      proposeSetpoints({ baseline, machine, limits: { ...limits, "C/D": limit } }).warnings;
    const [first] = warned("4 mm/s rms", "4.3 mm/s rms");
    expect(first).toEqual({
      code: "alarm not below trip",
      text: "the trip is not above the alarm (0.860 times it): the machine trips before it is warned of",
    });
    const codes = (baseline: string, limit: string) => warned(baseline, limit).map(({ code }) => code);
    expect(codes("4 mm/s rms", "4.3 mm/s rms")).not.toContain("little margin");
    // beside what acts at once, and before all else
    expect(codes("9 mm/s rms", "4.3 mm/s rms").slice(0, 3)).toEqual([
      "trip at once",
      "alarm at once",
      "alarm not below trip",
    ]);
    // an alarm at the trip, and one just below it
    expect(codes("3.5 mm/s rms", "4.5 mm/s rms")[0]).toBe("alarm not below trip");
    expect(codes("3.5 mm/s rms", "4.6 mm/s rms")).toContain("little margin");
    expect(codes("3.5 mm/s rms", "4.6 mm/s rms")).not.toContain("alarm not below trip");
  });

  it("a setpoint that would not clear at the running level is told, from its reset level on", () => {
    const told = (level: number) => {
      const staying = at(level).warnings.filter(({ code }) => code.endsWith("stays set"));
      return staying.map(({ code }) => code);
    };
    // alarm 5 and trip 6, cleared below 4.75 and 5.7
    expect(at(4.8).warnings[0]).toEqual({
      code: "alarm stays set",
      text: "once set, the alarm would not clear at the running level: it clears below 4.75 mm/s rms, and the baseline is 4.80 mm/s rms; a latching one cannot be reset there",
    });
    expect([4.7, 4.75, 4.99, 5].map(told)).toEqual([[], ["alarm stays set"], ["alarm stays set"], []]);
    expect([5.6, 5.7, 5.99, 6].map(told)).toEqual([[], ["trip stays set"], ["trip stays set"], []]);
    expect(
      at(5.8)
        .warnings.map(({ code }) => code)
        .slice(0, 2),
    ).toEqual(["alarm at once", "trip stays set"]);
    // the logic does so: at 4.8 mm/s the alarm that was set neither clears nor can be reset
    const alarm = { threshold: "5 mm/s rms", hysteresis: "5 %", onDelay: 0, timerResets: "below threshold" } as const;
    const relay = { contact: "normally open", coil: "normally energised", sensorFault: "alarm" } as const;
    for (const latching of [true, false]) {
      const logic = new TripLogic({ ...alarm, ...relay, latching });
      logic.step(5, 1);
      expect([logic.step(4.8, 60).output, logic.reset().accepted]).toEqual(["trip", false]);
    }
  });
});
