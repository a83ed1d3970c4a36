import fc from "fast-check";
import { relayStatus, TripLogic, type TripSettings } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { practiceTrip } from "../references/common-practice";
import { deadband, failSafe, multipliers, relativeSetpoints } from "../references/protection-logic";
import { settings as latched } from "./trip-settings";

/** 0.35 in/s peak, 10 % so a reset below 0.315, after 2 s; clears by itself. */
const settings = { ...latched, latching: false } as const satisfies TripSettings;

const names = (events: readonly { event: string }[]) => events.map(({ event }) => event);

describe("a trip of common practice, no source", () => {
  const { threshold, level, hysteresis, resetsBelow, delay } = practiceTrip;
  const practice = { ...settings, threshold, hysteresis, onDelay: delay };

  it("resets below the threshold less the hysteresis", () => {
    expect(new TripLogic(practice).rules.reset.value).toBeCloseTo(resetsBelow, 12);
    const logic = new TripLogic(practice);
    logic.step(level + 0.01, delay);
    expect(logic.step(resetsBelow, 10).state).toBe("tripped");
    expect(logic.step(resetsBelow - 0.00001, 0).state).toBe("normal");
  });

  it("does not trip before its delay and trips after it", () => {
    expect(new TripLogic(practice).step(level, delay - 0.1).output).toBe("healthy");
    expect(new TripLogic(practice).step(level, delay).output).toBe("trip");
    const tenths = new Float64Array(10 * delay).fill(level);
    expect(new TripLogic(practice).run(tenths, 0.1)).toMatchObject([{ event: "trip" }]);
    expect(new TripLogic(practice).run(tenths.slice(1), 0.1)).toEqual([]);
  });
});

describe("print", () => {
  it(`${deadband.id}: sets at the limit, clears strictly below limit less dead band`, () => {
    const logic = new TripLogic({
      ...settings,
      threshold: `${deadband.limit} mm/s rms`,
      hysteresis: `${deadband.deadband} mm/s rms`,
      onDelay: 0,
    });
    const set = deadband.samples.map((sample) => logic.step(sample, 1).output === "trip");
    expect(set).toEqual([...deadband.set]);
  });

  it(`${relativeSetpoints.id}: 5 as a value and 5 as a percentage are two settings, and a bare 5 is refused`, () => {
    const { limit, value, percent } = relativeSetpoints;
    const resetWith = (hysteresis: string) =>
      new TripLogic({ ...settings, threshold: `${limit} um pp`, hysteresis }).rules.reset.value;
    expect(resetWith(`${value.of} um pp`)).toBe(value.dropout);
    expect(resetWith(`${percent.of} %`)).toBe(percent.dropout);
    expect(() => resetWith("5")).toThrow(expect.objectContaining({ code: "missing-unit" }));
  });

  it("H06: a fail-safe relay trips on loss of power, the other does not", () => {
    const wanted = failSafe.expected;
    for (const contact of ["normally open", "normally closed"] as const) {
      const relay = { latching: false, contact, coil: "normally energised" } as const;
      expect(relayStatus(relay, false, false).output).toBe(wanted);
      expect(relayStatus(relay, false, false).contact).toBe(relayStatus(relay, true, true).contact);
      expect(relayStatus({ ...relay, coil: "normally de-energised" }, true, false).output).toBe("healthy");
    }
  });

  it("H23 (memory): the multiplier of 2 or 3 holds during its window and no longer", () => {
    for (const factor of multipliers.expected) {
      const logic = new TripLogic({ ...settings, onDelay: 1, multiplier: { factor, seconds: 10 } });
      expect(logic.step(0.35 * factor * 0.99, 10).state).toBe("normal");
      expect(logic.step(0.35 * factor * 0.99, 1).state).toBe("tripped");
      logic.start();
      expect(logic.step(0.35 * factor, 5).state).toBe("tripped");
    }
  });
});

describe("the relay", () => {
  it.each([
    ["normally open", "normally energised", "closed", "open", "open"],
    ["normally closed", "normally energised", "open", "closed", "closed"],
    ["normally open", "normally de-energised", "open", "closed", "open"],
    ["normally closed", "normally de-energised", "closed", "open", "closed"],
  ] as const)(
    "contact %s, coil %s: healthy %s, tripped %s, without power %s",
    (contact, coil, healthy, tripped, dead) => {
      const logic = new TripLogic({ ...settings, contact, coil, onDelay: 0 });
      expect(logic.step(0.1, 1).contact).toBe(healthy);
      expect(logic.step(0.6, 1).contact).toBe(tripped);
      expect(logic.power(false).contact).toBe(dead);
    },
  );
});

describe("latch and reset", () => {
  const latching = { ...settings, latching: true, onDelay: 0 };

  it("keeps a trip until a reset by hand, which is refused while the level is up, on a fault and without power", () => {
    const logic = new TripLogic(latching);
    expect(logic.reset()).toEqual({ accepted: false, reason: "there is nothing to reset" });
    logic.step(0.6, 1);
    expect(logic.reset().accepted).toBe(false);
    logic.step(0.32, 1);
    expect(logic.status.state).toBe("tripped");
    expect(logic.reset().reason).toMatch(/not below the reset level/);
    expect(logic.step(0.3, 1e6).state).toBe("latched");
    logic.step("fault", 1);
    expect(logic.reset().reason).toMatch(/no good signal/);
    logic.step(0.3, 1);
    logic.power(false);
    expect(logic.reset().reason).toMatch(/no power/);
    expect(logic.power(true).output).toBe("trip");
    expect(logic.reset()).toEqual({ accepted: true });
    expect(logic.step(0.3, 1).output).toBe("healthy");
  });

  it("tells which trip was first and forgets it with the reset", () => {
    const logic = new TripLogic({ ...latching, onDelay: 2 });
    logic.step(0.1, 10);
    logic.step(0.6, 5);
    expect(logic.firstOut).toEqual({ time: 12, event: "trip", level: 0.6, cause: "level" });
    logic.step(0.1, 1);
    logic.reset();
    expect(logic.firstOut).toBeNull();
  });

  it("does not release a trip by a bypass, and blocks new ones meanwhile", () => {
    const logic = new TripLogic(latching);
    logic.step(0.6, 1);
    expect(logic.bypass(true).output).toBe("trip");
    logic.step(0.1, 1);
    logic.reset();
    const status = logic.step(0.9, 100);
    expect([status.state, status.protecting, status.output]).toEqual(["bypassed", false, "healthy"]);
    logic.bypass(false);
    expect(logic.step(0.9, 0).output).toBe("trip");
  });
});

describe("the on-delay", () => {
  const history = [0.36, 0.33, 0.36] as const;

  it("starts over below the threshold, or only below the reset level, as is set", () => {
    const strict = new TripLogic(settings);
    const lenient = new TripLogic({ ...settings, timerResets: "below reset level" });
    for (const level of history) {
      strict.step(level, 0.7);
      lenient.step(level, 0.7);
    }
    expect(strict.status.state).toBe("timing");
    expect(lenient.status.state).toBe("tripped");
  });

  it("runs for a sensor fault set to alarm, stands still on hold, starts over on bad", () => {
    const statesWith = (sensorFault: TripSettings["sensorFault"]) => {
      const logic = new TripLogic({ ...settings, sensorFault });
      logic.step(0.36, 1.5);
      const during = logic.step("fault", 100).state;
      return [during, logic.step(0.36, 0.5).state, logic.step(0.36, 1.5).state];
    };
    expect(statesWith("alarm")).toEqual(["tripped", "tripped", "tripped"]);
    expect(statesWith("hold")).toEqual(["sensor fault", "tripped", "tripped"]);
    expect(statesWith("bad")).toEqual(["sensor fault", "timing", "tripped"]);
  });

  it("is inhibited after power-up and after a start, at the very second", () => {
    const logic = new TripLogic({ ...settings, onDelay: 1, startInhibit: 10 });
    expect(logic.step(0.6, 10).state).toBe("normal");
    expect(logic.step(0.6, 1).events).toMatchObject([
      { event: "timing", time: 10 },
      { event: "trip", time: 11 },
    ]);
  });
});

describe("levels", () => {
  it("have a threshold that may be a level in decibels", () => {
    const logic = new TripLogic({ ...settings, threshold: "95 dB re 1 nm/s", onDelay: 0 });
    expect(logic.rules.threshold).toMatchObject({ unit: "nm/s", detector: "rms", value: 10 ** 4.75 });
    expect(logic.step("0.0562 mm/s rms", 1).output).toBe("healthy");
    expect(logic.step("0.0563 mm/s rms", 1).output).toBe("trip");
  });

  it("come in any unit, across quantities with a frequency", () => {
    const logic = new TripLogic({ ...settings, threshold: "0.35 in/s pk at 1180 r/min", onDelay: 0 });
    // 0.35 * 25.4 / sqrt(2) is 6.2862 mm/s RMS; 2 * 8.89 mm/s / (2 pi 1180 / 60) is 143.89 um peak-to-peak
    expect(logic.step("6.286 mm/s rms", 1).state).toBe("normal");
    expect(logic.step("6.287 mm/s rms", 1).state).toBe("tripped");
    logic.step(0, 1);
    expect(logic.step("143.8 um pp", 1).state).toBe("normal");
    expect(logic.step("143.9 um pp", 1).state).toBe("tripped");
    expect(() => new TripLogic(settings).step("143.9 um pp", 1)).toThrow(
      expect.objectContaining({ code: "missing-frequency" }),
    );
    const inMetric = new TripLogic({ ...settings, onDelay: 1 });
    expect(names(inMetric.run([5, 6.3, 6.3, 5], 1, { as: "mm/s rms" }))).toEqual(["trip", "clear"]);
  });

  it.each([
    [Number.NaN, "not-a-number"],
    [-1, "negative"],
    [Number.POSITIVE_INFINITY, "not-finite"],
    [undefined, "missing-option"],
    ["0.3", "missing-unit"],
  ])("refuses %s, and stands as it stood", (level, code) => {
    const logic = new TripLogic(settings);
    logic.step(0.6, 1);
    const before = logic.snapshot();
    expect(() => logic.step(level as number, 1)).toThrow(expect.objectContaining({ code }));
    expect(logic.snapshot()).toEqual(before);
    if (typeof level !== "number") return;
    const run = () => logic.run(Float64Array.of(0.6, 0.6, level, 0.6), 1);
    expect(run).toThrow(expect.objectContaining({ code, expected: expect.stringContaining("index 2") }));
    expect(logic.snapshot()).toEqual(before);
  });

  it("takes NaN for a sensor fault only when told so", () => {
    const levels = [0.1, Number.NaN, Number.NaN, 0.1];
    const events = new TripLogic({ ...settings, onDelay: 2 }).run(levels, 1, { nan: "sensor fault" });
    expect(names(events)).toEqual(["fault", "trip", "fault over", "clear"]);
    expect(events[1]).toMatchObject({ time: 3, cause: "sensor fault", level: null });
  });
});

describe("times", () => {
  it("may be irregular and repeat, but not fall", () => {
    const logic = new TripLogic({ ...settings, onDelay: 3 });
    const events = logic.run([0.1, 0.6, 0.6, 0.6, 0.1], [100, 101, 101, 103, 107]);
    expect(events.map(({ time, event }) => [time, event])).toEqual([
      [104, "trip"],
      [107, "clear"],
    ]);
    expect(() => new TripLogic(settings).run([1, 1], [5, 4])).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => new TripLogic(settings).run([1, 1], [5])).toThrow(
      expect.objectContaining({ code: "length-mismatch" }),
    );
    expect(() => new TripLogic(settings).run([1, 1], 0)).toThrow(expect.objectContaining({ code: "not-positive" }));
  });

  it("go on from one run to the next", () => {
    const levels = [0.1, 0.6, 0.6, 0.6, 0.6, 0.1, 0.1];
    const times = [0, 1, 3, 4, 8, 9, 10];
    const slow = { ...settings, onDelay: 5 };
    const whole = new TripLogic(slow).run(levels, times);
    expect(names(whole)).toEqual(["trip", "clear"]);
    const parts = new TripLogic(slow);
    const events = [
      parts.run(levels.slice(0, 3), times.slice(0, 3)),
      parts.run(levels.slice(3), times.slice(3)),
    ].flat();
    expect(events).toEqual(whole);
    const resumed = new TripLogic(slow);
    resumed.run(levels.slice(0, 3), times.slice(0, 3));
    const other = new TripLogic(slow, JSON.parse(JSON.stringify(resumed.snapshot())));
    expect(other.run(levels.slice(3), times.slice(3))).toEqual(whole.filter(({ time }) => time > 3));
  });

  it("refuse a stored state that is none", () => {
    const { phase: _, ...rest } = new TripLogic(settings).snapshot();
    const refused = (code: string) => expect.objectContaining({ code, expected: expect.stringContaining("phase") });
    expect(() => new TripLogic(settings, rest as never)).toThrow(refused("missing-option"));
    expect(() => new TripLogic(settings, { ...rest, phase: "off" } as never)).toThrow(refused("wrong-type"));
    expect(() => new TripLogic(settings, { ...rest, phase: "set", timer: Number.NaN } as never)).toThrow(/timer/);
    const whole = { ...rest, phase: "normal" } as const;
    for (const [field, value] of [
      ["signal", "lost"],
      ["signal", 1],
      ["firstOut", "trip"],
      ["firstOut", undefined],
      ["powered", "yes"],
      ["level", undefined],
    ] as const) {
      expect(() => new TripLogic(settings, { ...whole, [field]: value } as never)).toThrow(
        expect.objectContaining({
          code: value === undefined ? "missing-option" : "wrong-type",
          expected: `a snapshot of a trip logic, with ${field}`,
        }),
      );
    }
    for (const signal of ["none", "good", "fault", "above range"] as const) {
      expect(new TripLogic(settings, { ...whole, signal }).snapshot()).toEqual({ ...whole, signal });
    }
    expect(() => new TripLogic(latched, { ...whole, phase: "set", signal: "good" })).toThrow(/firstOut/);
  });

  it("place commands between levels", () => {
    const logic = new TripLogic({ ...settings, latching: true, onDelay: 0 });
    const events = logic.run([0.1, 0.6, 0.1, 0.1], 1, {
      commands: [
        { time: 2.5, do: "reset" },
        { time: 1.5, do: "reset" },
      ],
    });
    expect(events.map(({ time, event }) => `${time} ${event}`)).toEqual(["1 trip", "1.5 reset refused", "2.5 reset"]);
    expect(() => logic.run([0.1], 1, { commands: [{ time: 99, do: "reset" }] })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });
});

describe("settings without a default", () => {
  it.each(["threshold", "hysteresis", "onDelay", "timerResets", "sensorFault", "latching", "contact", "coil"] as const)(
    "%s must be stated",
    (name) => {
      const { [name]: _, ...rest } = settings;
      expect(() => new TripLogic(rest as TripSettings)).toThrow(expect.objectContaining({ code: "missing-option" }));
    },
  );

  it("are refused when they make no sense", () => {
    const refused = (more: object) => () => new TripLogic({ ...settings, ...more });
    expect(refused({ threshold: 0.35 })).toThrow(expect.objectContaining({ code: "missing-unit" }));
    expect(refused({ threshold: "0 in/s pk" })).toThrow(expect.objectContaining({ code: "not-positive" }));
    expect(refused({ hysteresis: "100 %" })).toThrow(expect.objectContaining({ code: "out-of-range" }));
    expect(refused({ onDelay: -1 })).toThrow(expect.objectContaining({ code: "negative" }));
    expect(refused({ multiplier: { factor: 1, seconds: 5 } })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(refused({ coil: "energised" })).toThrow(
      expect.objectContaining({ code: "unknown-option", allowed: ["normally energised", "normally de-energised"] }),
    );
  });

  it("are named by the types", () => {
    // @ts-expect-error the relay must be stated
    const incomplete: TripSettings = { ...settings, coil: undefined };
    // @ts-expect-error no such fault handling
    const wrong: TripSettings = { ...settings, sensorFault: "ignore" };
    expect([incomplete, wrong].length).toBe(2);
  });
});

describe("invariants over random histories", () => {
  const levels = fc.array(fc.constantFrom(0.1, 0.31, 0.316, 0.34, 0.35, 0.6), { minLength: 1, maxLength: 200 });
  const delay = fc.integer({ min: 1, max: 60 });

  it("never trips before the delay since the first level at the threshold, nor for a shorter burst", () => {
    fc.assert(
      fc.property(levels, delay, (history, ticks) => {
        const logic = new TripLogic({ ...settings, onDelay: ticks * 0.1 });
        const first = history.findIndex((level) => level >= 0.35);
        let run = 0;
        let longest = 0;
        for (const level of history) {
          run = level >= 0.35 ? run + 1 : 0;
          longest = Math.max(longest, run);
        }
        const trips = logic.run(history, 0.1).filter(({ event }) => event === "trip");
        for (const { time } of trips) expect(time).toBeGreaterThanOrEqual(first * 0.1 + ticks * 0.1 - 1e-9);
        expect(trips.length > 0).toBe(longest >= ticks);
      }),
      { numRuns: 2000 },
    );
  });

  it("a latched output never clears without a reset, and a fail-safe relay drops whenever power is lost", () => {
    fc.assert(
      fc.property(levels, fc.constantFrom("normally open", "normally closed"), (history, contact) => {
        const logic = new TripLogic({ ...settings, onDelay: 0.3, latching: true, contact });
        let tripped = false;
        for (const [i, level] of history.entries()) {
          if (i % 50 === 49) {
            const lost = logic.power(false);
            expect([lost.coil, lost.output]).toEqual(["de-energised", "trip"]);
            logic.power(true);
          }
          const { output } = logic.step(level, 0.1);
          if (tripped) expect(output).toBe("trip");
          tripped = output === "trip";
        }
      }),
      { numRuns: 2000 },
    );
  });
});
