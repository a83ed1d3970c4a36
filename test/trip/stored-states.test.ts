import { type TripEvent, TripLogic, type TripSettings, type TripState, type VotedState } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { codeOf, refusalOf } from "../refusals/refusal-of";
import { atOne } from "./trip-settings";
import { quick, votedOf } from "./voted-settings";

const loose = { ...atOne, offDelay: 4, startInhibit: 10 } as const satisfies TripSettings;
const doubled = { ...atOne, offDelay: 4, multiplier: { factor: 2, seconds: 10 } } as const satisfies TripSettings;
const latched = { ...loose, latching: true } as const satisfies TripSettings;

/** The state after levels that last 1 s each. */
function after(settings: TripSettings, ...levels: number[]): TripState {
  const logic = new TripLogic(settings);
  for (const level of levels) logic.step(level, 1);
  return logic.snapshot();
}

const many = (count: number, level: number): number[] => Array.from({ length: count }, () => level);

/** States that runs have left, by the phase in which they are. */
const timing = after(loose, ...many(12, 2));
const set = after(loose, ...many(17, 2));
const clearing = after(loose, ...many(17, 2), 0.1);
const held = after(latched, ...many(17, 2), 0.1);
const trip = set.firstOut as TripEvent;

const resume = (settings: TripSettings, state: object) => () => new TripLogic(settings, state as TripState);

describe("a stored state that no run could have left is refused", () => {
  it("and those that runs have left are not", () => {
    expect([timing.phase, set.phase, clearing.phase, held.phase]).toEqual(["timing", "set", "clearing", "set"]);
    for (const [settings, state] of [
      [loose, timing],
      [loose, set],
      [loose, clearing],
      [latched, held],
    ] as const) {
      expect(new TripLogic(settings, state).snapshot()).toEqual(state);
      expect(new TripLogic(settings, JSON.parse(JSON.stringify(state))).snapshot()).toEqual(state);
    }
  });

  it.each<[what: string, settings: TripSettings, state: () => TripState]>([
    [
      "an on-delay right after a start",
      loose,
      () => {
        const logic = new TripLogic(loose, timing);
        logic.start();
        return logic.snapshot();
      },
    ],
    [
      "an on-delay that a fault holds, and a start inhibit",
      { ...loose, sensorFault: "hold" },
      () => {
        const logic = new TripLogic({ ...loose, sensorFault: "hold" }, timing);
        logic.start();
        logic.step("fault", 4);
        return logic.snapshot();
      },
    ],
    [
      "an on-delay right after a start that multiplies the threshold",
      doubled,
      () => {
        const logic = new TripLogic(doubled, { ...timing, level: 1.5 });
        logic.start();
        return logic.snapshot();
      },
    ],
  ])("but not %s", (_, settings, state) => {
    const left = state();
    expect(left.phase).toBe("timing");
    expect(new TripLogic(settings, left).snapshot()).toEqual(left);
  });

  it.each<[what: string, settings: TripSettings, state: object]>([
    ["timer: -1e9", loose, { ...timing, timer: -1e9 }],
    ["a timer below zero in clearing", loose, { ...clearing, timer: -1 }],
    ["an on-delay that has run to its end", loose, { ...timing, timer: 6 }],
    ["an on-delay that has run beyond its end", loose, { ...timing, timer: 1e9 }],
    ["an off-delay that has run to its end", loose, { ...clearing, timer: 4 }],
    ["a timer while no delay runs", loose, { ...set, timer: 1 }],
    ["an on-delay that these settings do not have", { ...loose, onDelay: 0 }, timing],
    ["an off-delay that these settings do not have", { ...loose, offDelay: 0 }, clearing],
    ["an output that latches and clears by itself", latched, clearing],
    ["an output that does not latch, set on a low level", loose, held],
    ["an on-delay on a low level", loose, { ...timing, level: 0.1 }],
    ["an on-delay during a start inhibit", loose, { ...timing, sinceStart: 4 }],
    ["an on-delay above range during a start inhibit", loose, { ...timing, sinceStart: 4, signal: "above range" }],
    [
      "an on-delay with a fault that alarms, during a start inhibit",
      loose,
      { ...timing, sinceStart: 4, signal: "fault" },
    ],
    ["an on-delay on a level below its multiple", doubled, { ...timing, level: 1.5, sinceStart: 4 }],
    [
      "an output that does not latch, set on a level below its multiple",
      doubled,
      { ...set, level: 0.8, sinceStart: 4 },
    ],
    ["an on-delay with a bad signal", { ...loose, sensorFault: "bad" }, { ...timing, signal: "fault" }],
    ["an off-delay on a high level", loose, { ...clearing, level: 2 }],
    ["an off-delay with a fault that alarms", loose, { ...clearing, signal: "fault" }],
    ["windows that have run for less than nothing", loose, { ...timing, sinceStart: -1 }],
    ["windows that have run beyond their end", loose, { ...timing, sinceStart: 11 }],
    ["windows that these settings do not have", { ...loose, startInhibit: 0 }, timing],
    ["a level below zero", loose, { ...timing, level: -1 }],
    ["half a step", loose, { ...timing, count: 0.5 }],
    ["fewer steps than none", loose, { ...timing, count: -1 }],
    ["steps of a time below zero", loose, { ...timing, dt: -1 }],
    ["a clock that no number holds", loose, { ...timing, base: 1.7e308, dt: 1.7e308, count: 2 }],
    ["time that has passed without a level", loose, { ...timing, signal: "none" }],
    ["a delay without power", loose, { ...timing, powered: false }],
    ["an output without power that does not latch", loose, { ...set, powered: false }],
    ["a first-out of an output that is not set", loose, { ...timing, firstOut: trip }],
    ["a set output without a first-out", loose, { ...set, firstOut: null }],
    ["a first-out in times to come", loose, { ...set, firstOut: { ...trip, time: 99 } }],
    ["a first-out on a level too low to trip", loose, { ...set, firstOut: { ...trip, level: 0.1 } }],
    ["a first-out on no level", loose, { ...set, firstOut: { ...trip, level: null } }],
    ["a fault as first-out with a level", loose, { ...set, firstOut: { ...trip, cause: "sensor fault" } }],
    [
      "a fault as first-out that does not trip",
      { ...loose, sensorFault: "hold" },
      { ...set, firstOut: { ...trip, cause: "sensor fault", level: null } },
    ],
  ])("%s", (_, settings, state) => {
    expect(codeOf(resume(settings, state))).toBe("out-of-range");
  });

  it.each<[what: string, code: string, state: object]>([
    ["a part that no state has", "unknown-option", { ...timing, timers: 1 }],
    ["a part of the first-out that none has", "unknown-option", { ...set, firstOut: { ...trip, channel: "a" } }],
    ["NaN for a timer", "wrong-type", { ...timing, timer: Number.NaN }],
    ["an infinite clock", "wrong-type", { ...timing, base: Number.POSITIVE_INFINITY }],
    ["a number in a text", "wrong-type", { ...timing, timer: "1" }],
    ["another event as first-out", "wrong-type", { ...set, firstOut: { ...trip, event: "clear" } }],
    ["a first-out at no time", "wrong-type", { ...set, firstOut: { ...trip, time: "17" } }],
    ["a first-out for no known cause", "unknown-option", { ...set, firstOut: { ...trip, cause: "noise" } }],
    [
      "a first-out that assumed nothing known",
      "unknown-option",
      { ...set, firstOut: { ...trip, assumed: ["cosine"] } },
    ],
  ])("%s is %s", (_, code, state) => {
    expect(codeOf(resume(loose, state))).toBe(code);
  });

  it("says which part, what it has to be, and what stood there; nothing has changed then", () => {
    const logic = new TripLogic(loose, timing);
    expect(refusalOf(() => logic.resume({ ...timing, timer: -1e9 })).message).toBe(
      "expected a snapshot of a trip logic, with timer: a time that the on-delay has run, less than the whole of it, received -1000000000",
    );
    expect(logic.snapshot()).toEqual(timing);
  });
});

describe("a stored state of a voted trip that no run could have left is refused", () => {
  const channels = [
    { ...quick, onDelay: 3 },
    { ...quick, onDelay: 3 },
  ];
  const make = (latching = true) => votedOf("2oo2", channels, { latching });
  const stateOf = (...rows: readonly (readonly [number, number])[]): VotedState => {
    const logic = make();
    for (const [a, b] of rows) logic.step({ a, b }, 3);
    return logic.snapshot();
  };
  const one = stateOf([9, 2]);
  const both = stateOf([9, 2], [9, 9]);
  const channel = (state: VotedState, name: string, more: object): object => ({
    ...state,
    channels: { ...state.channels, [name]: { ...state.channels[name], ...more } },
  });
  const resumed = (state: object, latching = true) => {
    const logic = make(latching);
    logic.resume(state as VotedState);
    return logic.snapshot();
  };

  it("and those that runs have left are not", () => {
    for (const state of [one, both, make().snapshot()]) {
      expect(resumed(state)).toEqual(state);
      expect(resumed(JSON.parse(JSON.stringify(state)))).toEqual(state);
    }
  });

  it.each<[what: string, code: string, state: object]>([
    ["nothing", "missing-option", null as never],
    ["no channels", "missing-option", { ...one, channels: undefined }],
    ["a word for channels", "wrong-type", { ...one, channels: "a, b" }],
    ["a channel missing", "missing-option", { ...one, channels: { a: one.channels.a } }],
    ["a channel too many", "unknown-option", { ...one, channels: { ...one.channels, c: one.channels.a } }],
    ["a part that no state has", "unknown-option", { ...one, votes: 1 }],
    ["timer: -1e9 in a channel", "out-of-range", channel(one, "b", { timer: -1e9 })],
    ["two clocks", "out-of-range", channel(one, "b", { base: 1 })],
    ["power on one channel alone", "out-of-range", channel(one, "b", { powered: false })],
    ["a level on one channel alone", "out-of-range", channel(make().snapshot(), "b", { signal: "good" })],
    ["a word for set", "wrong-type", { ...one, set: "no" }],
    ["a word for unable", "wrong-type", { ...one, unable: "no" }],
    ["a number for first", "wrong-type", { ...one, first: 1 }],
    ["no list of calls", "wrong-type", { ...one, calls: "a" }],
    ["calls of a channel whose output is not set", "out-of-range", { ...one, calls: ["a", "b"] }],
    ["a channel that calls twice", "out-of-range", { ...one, calls: ["a", "a"] }],
    ["no call of a channel whose output is set", "out-of-range", { ...one, calls: [] }],
    [
      "calls against the times at which the channels tripped",
      "out-of-range",
      { ...both, calls: ["b", "a"], first: "b" },
    ],
    ["no list of those that are inhibited", "missing-option", { ...one, inhibited: undefined }],
    ["a channel inhibited that has no inhibit", "out-of-range", { ...one, inhibited: ["a"] }],
    ["a first that has not called longest", "out-of-range", { ...one, first: "b" }],
    ["a first that is no channel", "out-of-range", { ...both, first: "c" }],
    ["an output that is not set while the vote calls", "out-of-range", { ...both, set: false }],
    ["no trip possible with all channels good", "out-of-range", { ...one, unable: true }],
  ])("%s", (_, code, state) => {
    expect(codeOf(() => resumed(state))).toBe(code);
  });

  it("channels that tripped at one time may call in either order", () => {
    const together = stateOf([9, 9]);
    expect(together.calls).toEqual(["a", "b"]);
    expect(resumed({ ...together, calls: ["b", "a"], first: "b" }).first).toBe("b");
  });

  it("an inhibit counts to the end of the step that it ends with, and no longer", () => {
    const inhibited = [{ ...quick, startInhibit: 7 }, quick];
    const make = () => votedOf("2oo2", inhibited);
    const logic = make();
    logic.step({ a: "fault", b: 1 }, 6);
    const during = logic.snapshot();
    logic.step({ a: "fault", b: 1 }, 1);
    const end = logic.snapshot();
    logic.step({ a: "fault", b: 1 }, 0);
    const behind = logic.snapshot();
    expect([during, end, behind].map(({ inhibited, unable }) => [inhibited, unable])).toEqual([
      [["a"], true],
      [["a"], true],
      [[], false],
    ]);
    for (const state of [during, end, behind]) {
      const other = make();
      other.resume(JSON.parse(JSON.stringify(state)));
      expect(other.snapshot()).toEqual(state);
    }
    for (const state of [
      { ...during, inhibited: [], unable: false },
      { ...during, inhibited: ["a", "a"] },
      { ...during, inhibited: ["a", "c"] },
      { ...end, inhibited: [] },
    ]) {
      expect(codeOf(() => make().resume(state))).toBe("out-of-range");
    }
  });

  it("an output set without a vote, unless it latches", () => {
    expect(resumed({ ...one, set: true, first: "a" }).set).toBe(true);
    expect(codeOf(() => resumed({ ...one, set: true, first: "a" }, false))).toBe("out-of-range");
  });
});
