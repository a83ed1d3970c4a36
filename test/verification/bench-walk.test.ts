import fc from "fast-check";
import { type BenchSettings, benchPlan, type Shaker, shakerReach, TripLogic } from "veladis/protection";
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
      const [, seconds] = /sets (?:at once|([\d.e+-]+) s after)/.exec(text) ?? [];
      const sets = Number(seconds ?? 0);
      const contact = () => expect(text, told).toContain(`contact ${logic.status.contact}`);
      expect(Number(/disconnect the sensor for ([\d.e+-]+) s/.exec(what)?.[1]), told).toBe(wait);
      if (/output sets/.test(text)) {
        expect(sets, told).toBe(onDelay);
        logic.step("fault", sets * 0.99);
        if (sets > 0) expect(output(), told).toBe("clear");
        logic.step("fault", wait - sets * 0.99);
        expect([before, output()], told).toEqual(["clear", "set"]);
        contact();
        // and once the sensor is back
        logic.step(0, offDelay);
        expect(output(), told).toBe(/stays set/.test(text) ? "set" : "clear");
        continue;
      }
      logic.step("fault", wait);
      if (/stays as it was/.test(text)) {
        expect(output(), told).toBe(before);
        contact();
      }
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
      [
        "hold just below the threshold for 16 s",
        "no trip, contact closed: the device reads about 8.55 mm/s rms, 5 % below the threshold of 9.00 mm/s rms, as far as device and shaker may be off",
      ],
    ]);
    const loose = benchPlan({ ...latching, latching: false, offDelay: 3 }, handheld).steps[1];
    expect([loose?.what, loose?.expect]).toEqual(["shaker off for 3 s", "the output clears after 3 s, contact closed"]);
  });

  it("the output that a sensor fault has set is reset before a reading at another frequency", () => {
    const any = { lowest: "8 Hz", highest: "3 kHz", level: "10 mm/s rms" } as const;
    const { steps } = benchPlan({ ...latching, frequencies: ["50 Hz", "40 Hz", "30 Hz"] }, any);
    expect(steps.slice(-7).map(({ what }) => what)).toEqual([
      "disconnect the sensor for 16 s and take the time, then connect it again",
      "shaker off, reset by hand",
      "take the power away, then give it back",
      "shaker off, reset by hand if the output is set",
      "reading at the one level of the shaker",
      "shaker off, reset by hand",
      "reading at the one level of the shaker",
    ]);
  });

  it("what a shaker does not prove stands on top, and no step is expected of it", () => {
    const { before, steps, notes } = benchPlan({ ...latching, threshold: "12 mm/s rms" }, handheld);
    expect(before[0]).toMatch(/^this shaker can do steps? .*; it cannot do steps? /);
    expect(before[1]).toContain("it proves the reading there, and no trip");
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
          resolution: fc.constantFrom(undefined, "0.1 mm/s rms", "0.02 g pk"),
        }),
        ({ threshold, hysteresis, tolerance, frequencies, ...rest }, { level, isOne, velocity, resolution }) => {
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
            ...(resolution && { resolution }),
          });
        },
      ),
      { numRuns: 400 },
    );
  });
});

/** A switch that is not as it was set. */
type Broken = Partial<Walked>;

/** Follows a plan with another device than it was made for, and tells the steps at which it does not do what is expected. */
function failures(settings: Walked, shaker: Shaker, broken: Broken): string[] {
  const { steps } = benchPlan(settings, shaker);
  const failed: string[] = [];
  const logic = new TripLogic({ ...settings, ...broken });
  const { onDelay, offDelay = 0, tolerance = "5 %" } = settings;
  const factor = Number.parseFloat(tolerance) / 100;
  const set = () => logic.status.output !== "healthy";
  for (const { number, what, level, possible, expect: text } of steps) {
    const value = level?.value ?? 0;
    const expected = (should: boolean): void => {
      if (set() !== should) failed.push(`${number} ${what}`);
    };
    if (!possible) continue;
    if (what.startsWith("disconnect")) {
      logic.step("fault", 2 * onDelay);
      expected(settings.sensorFault === "alarm");
      logic.step(0, offDelay);
    } else if (what.startsWith("take the power")) {
      if (!text.includes(`contact ${logic.power(false).contact}`)) failed.push(`${number} ${what}`);
      logic.power(true);
    } else if (what.startsWith("try to reset")) {
      logic.step(value, 0);
      if (logic.reset().accepted) failed.push(`${number} ${what}`);
    } else if (what.startsWith("reset by hand") || what.startsWith("shaker off")) {
      logic.step(value, offDelay);
      logic.reset();
      expected(false);
    } else if (/for [\d.]+ s, then/.test(what)) {
      logic.step(value, onDelay * 0.9);
      expected(false);
      logic.step(0, 0);
    } else if (/take the time/.test(what)) {
      // a measured delay is held against the tolerance too
      logic.step(value, onDelay * (1 - factor));
      expected(false);
      logic.step(value, 2 * factor * onDelay);
      expected(true);
    } else {
      logic.step(value, 2 * onDelay);
      if (/try to reset/.test(what) && logic.reset().accepted) failed.push(`${number} ${what}`);
      expected(/stays|it trips/.test(text));
    }
    const contact = /, contact (open|closed)/.exec(text)?.[1];
    const isOther = contact !== undefined && contact !== logic.status.contact;
    if (isOther && !/power|disconnect/.test(what)) failed.push(`${number} ${what}`);
  }
  return [...new Set(failed)];
}

describe("a plan tells a good switch from a broken one", () => {
  const energisedToTrip = {
    ...latching,
    threshold: "6.5 mm/s rms",
    onDelay: 5,
    coil: "normally de-energised",
  } as const;
  const settings: Walked = { ...energisedToTrip, tolerance: "3 %", frequencies: ["40 Hz", "80 Hz"] };
  const coarse = { lowest: "8 Hz", highest: "3 kHz", resolution: "0.1 mm/s rms", uncertainty: "2 % (k=2)" } as const;

  it.each<[string, Broken]>([
    ["as it is set", {}],
    ["at the lower end of its tolerance", { threshold: "6.35 mm/s rms" }],
    ["at the upper end of its tolerance", { threshold: "6.65 mm/s rms" }],
  ])("passes one %s", (_, device) => {
    expect(failures(settings, coarse, device)).toEqual([]);
  });

  it.each<[string, Broken, RegExp]>([
    ["trips too low", { threshold: "5.6 mm/s rms" }, /hold just below the threshold/],
    ["trips too high", { threshold: "7.6 mm/s rms" }, /take the time/],
    ["has a shorter delay", { onDelay: 4 }, /take the time/],
    ["does not latch", { latching: false }, /below the reset level/],
    ["has a larger hysteresis", { hysteresis: "40 %" }, /reset by hand/],
    ["has the other contact", { contact: "normally closed" }, /hold just below the threshold/],
    ["has the other coil", { coil: "normally energised" }, /hold just below the threshold/],
    ["holds on a sensor fault", { sensorFault: "hold" }, /disconnect the sensor/],
  ])("fails one that %s", (_, broken, step) => {
    expect(failures(settings, coarse, broken).join("\n")).toMatch(step);
  });

  it("sets levels in whole steps of the shaker, away from what they prove", () => {
    const { steps, notes } = benchPlan(settings, coarse);
    const levels = steps.flatMap(({ level }) => (level === null ? [] : [level.value]));
    for (const level of levels) expect(Math.abs(level * 10 - Math.round(level * 10))).toBeLessThan(1e-9);
    const [hold, , trip] = steps.slice(3);
    // 6.5 x 0.97 x 0.98 = 6.18, and 6.5 / 0.97 / 0.98 = 6.84
    expect([hold?.level?.value, trip?.level?.value]).toEqual([6.1, 6.9]);
    expect(hold?.expect).toBe(
      "no trip, contact open: the device reads about 6.10 mm/s rms, 6.2 % below the threshold of 6.50 mm/s rms, as far as device and shaker may be off",
    );
    expect(notes[0]).toContain("rounded further away, to whole steps of 0.1 mm/s rms");
  });

  it("in three digits where no step of the shaker is told: none is written on the other side of what it proves", () => {
    const plan = benchPlan({ ...settings, tolerance: "0.01 %" }, { lowest: "8 Hz", highest: "3 kHz" });
    const [hold, , trip] = plan.steps.slice(3);
    expect([hold?.level?.value, trip?.level?.value]).toEqual([6.49, 6.51]);
    expect(plan.notes[0]).toContain("to three digits");
  });

  it("refuses a step too coarse to set a level below the threshold, and tells a level between two steps", () => {
    expect(() => benchPlan(settings, { ...coarse, resolution: "20 mm/s rms" })).toThrow(
      /a resolution of the shaker that sets/,
    );
    expect(shakerReach("6.55 mm/s rms at 40 Hz", coarse, "0 kg").limitedBy).toEqual(["resolution"]);
    expect(shakerReach("6.5 mm/s rms at 40 Hz", coarse, "0 kg").limitedBy).toEqual([]);
  });

  it("tells when the relay acts on a sensor fault, and refuses a word that is none of its ways", () => {
    const told = (sensorFault: BenchSettings["sensorFault"], more: Partial<BenchSettings> = {}) =>
      benchPlan({ ...settings, ...more, ...(sensorFault && { sensorFault }) }, coarse).steps.find(({ what }) =>
        what.startsWith("disconnect"),
      );
    expect(told("alarm")?.expect).toBe(
      "the fault counts as a level above the threshold: the output sets 5 s after the sensor is disconnected, contact closed; it stays set once the sensor is back",
    );
    expect(told("alarm", { onDelay: 0, latching: false, offDelay: 2 })?.expect).toBe(
      "the fault counts as a level above the threshold: the output sets at once, contact closed; once the sensor is back the output clears after 2 s",
    );
    expect(told("hold")?.expect).toMatch(/^the relay does not act: the output stays as it was, contact open/);
    expect(() => told("explode" as "alarm")).toThrow(/what a sensor fault does.*"explode"/s);
  });
});
