import { parseAmplitude } from "veladis";
import { type RunOptions, TripLogic, type TripSettings } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { codeOf, refusalOf } from "../refusals/refusal-of";
import { atOne as settings } from "./trip-settings";

const logicOf = (more: Partial<TripSettings> = {}) => new TripLogic({ ...settings, ...more });
const told = (events: readonly { time: number; event: string }[]) =>
  events.map(({ time, event }) => `${time} ${event}`);

// the allowance of 2^-23 towards the trip is the library's own, as the docstring of TripLogic states it; a float has 24
// bits by IEEE 754, so that half a step of it is 2^-24
describe("the allowance for float noise", () => {
  const { setAt, resetAt } = logicOf().rules;

  it("ends at the levels that the rules name: there a level still counts as at the threshold or the reset level", () => {
    const state = (...levels: number[]) => {
      const logic = logicOf({ onDelay: 0, offDelay: 5 });
      for (const level of levels) logic.step(level, 1);
      return logic.status.state;
    };
    expect(state(setAt)).toBe("tripped");
    expect(state(setAt * (1 - 1e-15))).toBe("normal");
    expect(state(2, resetAt)).toBe("tripped");
    expect(state(2, resetAt * (1 - 1e-15))).toBe("clearing");
    expect(state(2, 0.1, resetAt)).toBe("tripped");
  });

  it("holds for the start of the on-delay over, and for a reset by hand", () => {
    const logic = logicOf({ onDelay: 3 });
    logic.step(2, 1);
    logic.step(setAt, 1);
    expect(logic.step(setAt, 1).state).toBe("tripped");
    const held = logicOf({ onDelay: 0, latching: true });
    held.step(2, 1);
    held.step(resetAt, 1);
    expect(held.reset().accepted).toBe(false);
    held.step(resetAt * (1 - 1e-15), 1);
    expect(held.reset().accepted).toBe(true);
  });

  it("holds wherever in a history the level stands", () => {
    for (let place = 1; place < 20; place++) {
      for (const [level, trips] of [
        [setAt, true],
        [setAt * (1 - 1e-15), false],
        [3, true],
      ] as const) {
        const levels = new Float64Array(20);
        levels[place] = level;
        const events = logicOf({ onDelay: 0 }).run(levels, 1);
        const clear = place < 19 ? [`${place + 1} clear`] : [];
        expect(told(events)).toEqual(trips ? [`${place} trip`, ...clear] : []);
      }
      // a run that is just long enough, all at the very edge
      const levels = new Float64Array(40).fill(0.9);
      levels.fill(setAt, place, place + 6);
      expect(told(logicOf().run(levels, 1))).toEqual([`${place + 6} trip`]);
      levels[place + 3] = setAt * (1 - 1e-15);
      expect(told(logicOf().run(levels, 1))).toEqual([]);
    }
  });

  it("leaves the moment behind a start-up window to the next step, though sums of the steps fall short", () => {
    // 0.3 - (0.1 + 0.1) is 0.09999999999999998; the same with steps of a day
    for (const [step, startInhibit] of [
      [0.1, 0.3],
      [100000.1, 300000.3],
    ] as const) {
      const logic = logicOf({ onDelay: 0, startInhibit });
      const events = [1, 2, 3].flatMap(() => logic.step(2, step).events);
      expect(events).toEqual([]);
      expect(told(logic.step(2, 0).events).map((one) => one.split(" ")[1])).toEqual(["timing", "trip"]);
    }
  });
});

describe("an off-delay in a history", () => {
  const clearing = { onDelay: 0, offDelay: 3 } as const;

  it("starts over at the reset level, wherever it stands", () => {
    const { resetAt } = logicOf().rules;
    expect(told(logicOf(clearing).run([2, 0.1, resetAt, 0.1, 0.1, 0.1, 0.1], 1))).toEqual(["0 trip", "6 clear"]);
    expect(told(logicOf(clearing).run([2, 0.1, 0.1, 0.1, 0.1], 1))).toEqual(["0 trip", "4 clear"]);
  });

  it("stands still while a failed sensor holds the channel, and starts over where a fault is a level", () => {
    const levels = [2, 0.1, 0.1, Number.NaN, 0.1, 0.1, 0.1, 0.1];
    const run = (sensorFault: TripSettings["sensorFault"]) =>
      told(logicOf({ ...clearing, sensorFault }).run(levels, 1, { nan: "sensor fault" })).filter((one) =>
        one.endsWith("clear"),
      );
    expect(run("hold")).toEqual(["5 clear"]);
    expect(run("alarm")).toEqual(["7 clear"]);
  });
});

describe("the last good level", () => {
  it("is kept through a fault, stepped or run", () => {
    const logic = logicOf();
    logic.step(0.3, 1);
    logic.step("fault", 1);
    expect(logic.snapshot()).toMatchObject({ signal: "fault", level: 0.3 });
    logic.step(0.4, 1);
    logic.run([Number.NaN], 1, { nan: "sensor fault" });
    expect(logic.snapshot()).toMatchObject({ signal: "fault", level: 0.4 });
    logic.run([0.2, Number.NaN], 1, { nan: "sensor fault" });
    expect(logic.snapshot()).toMatchObject({ signal: "fault", level: 0.2 });
  });
});

describe("an event", () => {
  it("says of itself what there is to say, and no more", () => {
    const logic = logicOf({ onDelay: 1, latching: true });
    const [timing, trip] = logic.step(2, 1).events;
    expect(timing).toStrictEqual({ time: 0, event: "timing", level: 2 });
    expect(trip).toStrictEqual({ time: 1, event: "trip", level: 2, cause: "level" });
    const commands = [
      { time: 1, do: "reset" },
      { time: 2, do: "reset" },
    ] as const;
    expect(logic.run([2, 0.1], 1, { commands })).toStrictEqual([
      { time: 1, event: "reset refused", level: 2, reason: "the level is not below the reset level" },
      { time: 2, event: "reset refused", level: 2, reason: "the level is not below the reset level" },
    ]);
    expect(logic.run([0.1], 1, { commands: [{ time: 3, do: "reset" }] })).toStrictEqual([
      { time: 3, event: "reset", level: 0.1 },
    ]);
  });

  it("is none where a command changes nothing", () => {
    const logic = logicOf();
    for (const [act, name] of [
      [() => logic.bypass(true), "bypass on"],
      [() => logic.bypass(false), "bypass off"],
      [() => logic.power(false), "power lost"],
      [() => logic.power(true), "power back"],
    ] as const) {
      expect(act().events.map(({ event }) => event)).toEqual([name]);
      expect(act().events).toEqual([]);
    }
  });
});

describe("a history of evenly spaced levels", () => {
  const start = (at: number) => [{ time: at, do: "start" as const }];

  it("takes commands from its first moment to its last, and none beyond", () => {
    const run = (at: number) => {
      const logic = logicOf();
      logic.step(0.1, 10);
      const events = logic.run([0.1, 0.1, 0.1, 0.1], 0.5, { commands: start(at) });
      expect([logic.time, logic.snapshot().level]).toEqual([12, 0.1]);
      return told(events);
    };
    for (const at of [10, 10.5, 11.25, 12]) expect(run(at)).toEqual([`${at} start`]);
    for (const at of [0, 9.9, 12.1, 18]) expect(codeOf(() => run(at))).toBe("out-of-range");
    expect(told(logicOf().run([0.1], 2, { commands: start(1) }))).toEqual(["1 start"]);
    expect(told(logicOf().run([0.1], 2, { commands: start(2) }))).toEqual(["2 start"]);
  });

  it("takes commands at its moment when it is empty", () => {
    const logic = logicOf();
    logic.step(0.1, 3);
    expect(told(logic.run([], 1, { commands: start(3) }))).toEqual(["3 start"]);
    expect(codeOf(() => logic.run([], 1, { commands: start(4) }))).toBe("out-of-range");
    expect(told(logic.run([], [], { commands: start(3) }))).toEqual(["3 start"]);
    expect(codeOf(() => logic.run([], [], { commands: start(4) }))).toBe("out-of-range");
    expect(logic.time).toBe(3);
  });

  it("trips on just as many levels as the delay is long, however long each stands", () => {
    for (const dt of [0.001, 0.5, 1, 1.5, 2, 3, 6, 7]) {
      const just = Math.ceil(6 / dt - 1e-9);
      const levels = (above: number) => [...Array(9).fill(0.9), ...Array(above).fill(2), 0.9];
      const [trip, ...rest] = logicOf().run(levels(just), dt);
      expect(trip?.event).toBe("trip");
      expect(trip?.time).toBeCloseTo(9 * dt + 6, 9);
      expect(rest).toEqual([]);
      expect(logicOf().run(levels(just - 1), dt)).toEqual([]);
    }
  });

  it("carries a command out before the level that begins with it", () => {
    const logic = logicOf({ onDelay: 0, latching: true });
    const commands = [{ time: 2, do: "reset" as const }];
    expect(told(logic.run([2, 2, 0.1], 1, { commands }))).toEqual(["0 trip", "2 reset refused"]);
  });
});

describe("a history with times", () => {
  it("begins with its first time on a fresh logic, and nowhere before the clock of one that has run", () => {
    const fresh = logicOf();
    expect(told(fresh.run([2, 2], [100, 107]))).toEqual(["106 trip"]);
    expect(fresh.time).toBe(107);
    expect(codeOf(() => fresh.run([2, 2], [106.9, 120]))).toBe("out-of-range");
    expect(fresh.run([2, 2], [107, 120])).toEqual([]);
    const looked = logicOf();
    looked.step(2, 0);
    expect(looked.run([0.1], [100])).toMatchObject([
      { time: 6, event: "trip" },
      { time: 100, event: "clear" },
    ]);
    const later = logicOf();
    later.run([0.1, 0.1], [99, 100]);
    const stored = new TripLogic(settings, later.snapshot());
    expect(codeOf(() => stored.run([2, 2], [99, 120]))).toBe("out-of-range");
    expect(told(stored.run([2, 2], [100, 120]))).toEqual(["106 trip"]);
    const before = logicOf();
    expect(told(before.run([2, 2], [-10, -3]))).toEqual(["-4 trip"]);
  });

  it("lets the last level stand until it begins, a failed sensor also", () => {
    const logic = logicOf();
    logic.step(2, 1);
    expect(told(logic.run([0.1, 0.1], [20, 21]))).toEqual(["6 trip", "20 clear"]);
    const held = logicOf();
    held.step("fault", 1);
    expect(held.run([0.1, 0.1], [20, 21])).toMatchObject([
      { time: 6, event: "trip", cause: "sensor fault" },
      { time: 20, event: "fault over" },
      { time: 20, event: "clear" },
    ]);
  });

  it("takes commands while the last level stands, and at a time of a level before it", () => {
    const logic = logicOf({ onDelay: 0, latching: true });
    logic.step(2, 1);
    const commands = [
      { time: 5, do: "reset" },
      { time: 20, do: "reset" },
      { time: 21, do: "reset" },
    ] as const;
    expect(told(logic.run([0.1, 0.1], [20, 21], { commands }))).toEqual([
      "5 reset refused",
      "20 reset refused",
      "21 reset",
    ]);
  });

  it("refuses a time that is none", () => {
    const run =
      (...times: unknown[]) =>
      () =>
        logicOf().run([0.1, 0.1], times as number[]);
    expect(codeOf(run(0, Number.POSITIVE_INFINITY))).toBe("out-of-range");
    expect(codeOf(run("0", "1"))).toBe("out-of-range");
    expect(codeOf(run(0, Number.NaN))).toBe("out-of-range");
    expect(refusalOf(run(0, -1)).expected).toBe("a time of 0 s or more at index 1, since times never fall");
  });
});

describe("levels in a unit of their own", () => {
  const trips = (as: string, level: number, at?: RunOptions["at"], threshold?: string) => {
    const logic = logicOf({ onDelay: 0, ...(threshold !== undefined && { threshold: threshold as never }) });
    return logic.run([level], 1, { as, ...(at !== undefined && { at }) }).length > 0;
  };

  it("are of another quantity at the frequency that is told, else at that of the threshold", () => {
    // 1 mm/s rms at 25 Hz is sqrt(2) 1000 / (50 pi) um pk, twice that peak to peak
    const microns = (hertz: number) => (2 * Math.SQRT2 * 1000) / (2 * Math.PI * hertz);
    expect([0.999, 1.001].map((share) => trips("um pp", share * microns(25), "25 Hz"))).toEqual([false, true]);
    const at50 = "1 mm/s rms at 50 Hz";
    expect([0.999, 1.001].map((share) => trips("um pp", share * microns(50), undefined, at50))).toEqual([false, true]);
    expect(codeOf(() => trips("um pp", microns(25), "25 Hz", at50))).toBe("out-of-range");
    expect(codeOf(() => trips("um pp", 1))).toBe("missing-frequency");
    expect([0.999, 1.001].map((share) => trips("in/s rms", share / 25.4))).toEqual([false, true]);
  });
});

describe("a threshold", () => {
  it("may be a reading that was taken apart", () => {
    const threshold = parseAmplitude("1 mm/s rms at 25 Hz");
    expect(logicOf({ threshold }).rules).toEqual(logicOf({ threshold: "1 mm/s rms at 25 Hz" }).rules);
  });
});
