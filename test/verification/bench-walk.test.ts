import fc from "fast-check";
import { type BenchSettings, benchPlan, type Shaker, TripLogic } from "veladis/protection";
import { describe, expect, it } from "vitest";

type Walked = BenchSettings & ConstructorParameters<typeof TripLogic>[0];

const latching = {
  threshold: "9 mm/s rms",
  hysteresis: "8 %",
  onDelay: 8,
  timerResets: "below threshold",
  sensorFault: "alarm",
  latching: true,
  contact: "normally open",
  coil: "normally energised",
} as const satisfies Walked;

const handheld = { lowest: "159.2 Hz", highest: "159.2 Hz", level: "10 mm/s rms" } as const satisfies Shaker;

/**
 * Follows a plan with a device that reads without error, and holds what comes of each step that the shaker can do against
 * what the plan expects of it.
 */
function walk(settings: Walked, shaker: Shaker): void {
  const { steps, reset, threshold } = benchPlan(settings, shaker);
  const logic = new TripLogic(settings);
  const { onDelay, offDelay = 0 } = settings;
  const wait = Math.max(2 * onDelay, 2);
  const output = () => (logic.status.output === "healthy" ? "clear" : "set");
  for (const { what, level, possible, expect: text, number } of steps) {
    if (!possible || text.startsWith("if the output is set")) continue;
    const told = `${number} ${what}: ${text}`;
    const value = level?.value ?? 0;
    const before = output();
    const burst = /for ([\d.e+-]+) s, then/.exec(what)?.[1];
    const hold = (seconds: number) => logic.step(value, seconds);
    if (what.startsWith("disconnect")) {
      logic.step("fault", wait);
      if (/output sets/.test(text)) expect([before, output()], told).toEqual(["clear", "set"]);
      if (/stays as it was/.test(text)) expect(output(), told).toBe(before);
      logic.step(0, 0);
    } else if (what.startsWith("take the power")) {
      const status = logic.power(false);
      expect(before, told).toBe("clear");
      expect(text, told).toContain(`contact ${status.contact}`);
      logic.power(true);
      hold(0);
    } else if (/in small steps/.test(what)) {
      expect(before, told).toBe("set");
      for (let share = 1.2; share > 0.2 && output() === "set"; share -= 0.001) {
        logic.step(threshold.value * share, offDelay);
        logic.reset();
      }
      expect(output(), told).toBe("clear");
    } else if (/try to reset/.test(what)) {
      expect(before, told).toBe("set");
      hold(0);
      expect(logic.reset().accepted, told).toBe(false);
    } else if (/reset by hand/.test(what)) {
      hold(0);
      if (!/if the output is set/.test(what)) expect(logic.reset().accepted, told).toBe(true);
      else logic.reset();
      expect(output(), told).toBe("clear");
    } else if (burst !== undefined) {
      hold(Number(burst));
      expect([before, output()], told).toEqual(["clear", "clear"]);
      logic.step(reset.value * 0.9, 0);
    } else if (/take the time|it trips after/.test(what + text)) {
      expect(before, told).toBe("clear");
      hold(onDelay * 0.99);
      if (onDelay > 0) expect(output(), told).toBe("clear");
      hold(onDelay * 0.01 + 1e-6);
      expect(output(), told).toBe("set");
    } else if (/may trip or not/.test(text)) {
      expect(before, told).toBe("clear");
      hold(wait);
    } else if (/until the output is set|stays set|stays latched/.test(what + text)) {
      hold(wait);
      expect(output(), told).toBe("set");
    } else if (/the output clears|the output is clear/.test(text)) {
      if (/the output clears/.test(text)) expect(before, told).toBe("set");
      hold(offDelay);
      expect(output(), told).toBe("clear");
    } else {
      expect(text, told).toMatch(/no trip/);
      hold(wait);
      expect([before, output()], told).toEqual(["clear", "clear"]);
    }
    const contact = /, contact (open|closed)/.exec(text)?.[1];
    if (contact !== undefined && !what.startsWith("take the power")) {
      expect(logic.status.contact, told).toBe(contact);
    }
  }
}

describe("a plan as a good switch follows it", () => {
  it("a latching output that the one level of a shaker trips is reset before the next step", () => {
    walk(latching, handheld);
    const { steps } = benchPlan(latching, handheld);
    expect(steps.slice(0, 3).map(({ what, expect: text }) => [what, text])).toEqual([
      ["reading at the one level of the shaker", "the device shows 10.0 mm/s rms within 5 %; it trips after the delay"],
      ["shaker off, reset by hand", "the output clears, contact closed"],
      ["hold just below the threshold for 16 s", "no trip below 9.00 mm/s rms, contact closed"],
    ]);
    const loose = benchPlan({ ...latching, latching: false, offDelay: 3 }, handheld).steps[1];
    expect([loose?.what, loose?.expect]).toEqual(["shaker off for 3 s", "the output clears after 3 s, contact closed"]);
  });

  it("the output that a sensor fault has set is reset before a reading at another frequency", () => {
    const any = { lowest: "8 Hz", highest: "3 kHz", level: "10 mm/s rms" } as const;
    const { steps } = benchPlan({ ...latching, frequencies: ["50 Hz", "40 Hz", "30 Hz"] }, any);
    expect(steps.slice(-6).map(({ what }) => what)).toEqual([
      "disconnect the sensor, then connect it again",
      "shaker off, reset by hand",
      "take the power away, then give it back",
      "reading at the one level of the shaker",
      "shaker off, reset by hand",
      "reading at the one level of the shaker",
    ]);
  });

  it("what a shaker does not prove stands on top, and no step is expected of it", () => {
    const { before, steps, notes } = benchPlan({ ...latching, threshold: "12 mm/s rms" }, handheld);
    expect(before[0]).toContain("it proves the reading there, and no trip");
    expect(notes.join()).not.toContain("no trip");
    expect(steps.filter(({ expect: text }) => /^the output (stays|clears)/.test(text)).map(({ what }) => what)).toEqual(
      // set by the sensor fault
      ["shaker off, reset by hand"],
    );
    walk({ ...latching, threshold: "12 mm/s rms" }, handheld);
  });

  it("comes true step by step, for every output, threshold and shaker", () => {
    fc.assert(
      fc.property(
        fc.record({
          threshold: fc.double({ min: 2, max: 40, noNaN: true }),
          hysteresis: fc.double({ min: 1, max: 40, noNaN: true }),
          tolerance: fc.double({ min: 0.5, max: 40, noNaN: true }),
          onDelay: fc.constantFrom(0, 0.5, 3, 8),
          offDelay: fc.constantFrom(0, 2),
          latching: fc.boolean(),
          contact: fc.constantFrom("normally open" as const, "normally closed" as const),
          coil: fc.constantFrom("normally energised" as const, "normally de-energised" as const),
          sensorFault: fc.constantFrom("alarm" as const, "hold" as const, "bad" as const),
          timerResets: fc.constantFrom("below threshold" as const, "below reset level" as const),
          frequencies: fc.constantFrom(undefined, ["50 Hz"] as const, ["159.2 Hz", "80 Hz", "40 Hz"] as const),
        }),
        fc.record({
          level: fc.constantFrom(undefined, "10 mm/s rms", "10 m/s2 rms", "50 um pp"),
          isOne: fc.boolean(),
          velocity: fc.constantFrom(undefined, "12 mm/s rms"),
        }),
        ({ threshold, hysteresis, tolerance, frequencies, ...rest }, { level, isOne, velocity }) => {
          const settings = {
            ...rest,
            threshold: `${threshold.toFixed(3)} mm/s rms`,
            hysteresis: `${hysteresis.toFixed(1)} %`,
            tolerance: `${tolerance.toFixed(1)} %`,
            ...(frequencies && { frequencies }),
          } as Walked;
          walk(settings, {
            lowest: isOne ? "159.2 Hz" : "8 Hz",
            highest: isOne ? "159.2 Hz" : "3 kHz",
            ...(level && { level }),
            ...(velocity && { velocity }),
          });
        },
      ),
      { numRuns: 400 },
    );
  });
});
