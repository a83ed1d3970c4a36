import { relayStatus, TripLogic, type TripSettings } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { atOne as settings } from "./trip-settings";

const stepped = (
  steps: readonly (readonly [level: number | "fault", seconds: number])[],
  more: Partial<TripSettings> = {},
) => {
  const logic = new TripLogic({ ...settings, ...more });
  const events: string[] = [];
  let state = "";
  for (const [level, seconds] of steps) {
    const done = logic.step(level, seconds);
    state = done.state;
    events.push(...done.events.map(({ event }) => event));
  }
  return { state, events };
};

// at or above sets, strictly below resets: common practice, no source
describe("a level exactly at an edge", () => {
  it("keeps the timer of the on-delay running", () => {
    expect(
      stepped([
        [1, 3],
        [1, 3],
      ]).events,
    ).toEqual(["timing", "trip"]);
    expect(
      stepped([
        [1, 3],
        [0.999, 0],
        [1, 5],
      ]).events,
    ).toEqual(["timing", "rode out", "timing"]);
  });

  it("at the reset level does not clear, a little below does", () => {
    expect(
      stepped([
        [1, 6],
        [0.5, 10],
      ]).state,
    ).toBe("tripped");
    expect(
      stepped([
        [1, 6],
        [0.499, 0],
      ]).state,
    ).toBe("normal");
  });

  it("at the reset level starts the off-delay over", () => {
    const begun = [
      [1, 6],
      [0.4, 3],
      [0.5, 0],
    ] as const;
    expect(stepped([...begun, [0.4, 3]], { offDelay: 4 }).state).toBe("clearing");
    expect(stepped([...begun, [0.4, 4]], { offDelay: 4 }).state).toBe("normal");
    expect(
      stepped(
        [
          [1, 6],
          [0.4, 3],
          [0.49, 1],
        ],
        { offDelay: 4 },
      ).state,
    ).toBe("normal");
  });
});

describe("while the setpoint is multiplied by 2", () => {
  const more = { multiplier: { factor: 2, seconds: 1000 } };

  it("the timer starts over below twice the threshold", () => {
    expect(
      stepped(
        [
          [2, 3],
          [2, 3],
        ],
        more,
      ).events,
    ).toEqual(["timing", "trip"]);
    expect(
      stepped(
        [
          [2, 3],
          [1.9, 3],
        ],
        more,
      ).events,
    ).toEqual(["timing", "rode out"]);
  });

  it("the output clears below twice the reset level", () => {
    expect(
      stepped(
        [
          [2, 6],
          [1, 10],
        ],
        more,
      ).state,
    ).toBe("tripped");
    expect(
      stepped(
        [
          [2, 6],
          [0.9, 0],
        ],
        more,
      ).state,
    ).toBe("normal");
  });

  it("the off-delay starts over at twice the reset level", () => {
    const slow = { ...more, offDelay: 4 };
    expect(
      stepped(
        [
          [2, 6],
          [0.9, 3],
          [1, 0],
          [0.9, 3],
        ],
        slow,
      ).state,
    ).toBe("clearing");
    expect(
      stepped(
        [
          [2, 6],
          [0.9, 3],
          [0.95, 1],
        ],
        slow,
      ).state,
    ).toBe("normal");
  });
});

describe("a sensor fault while the on-delay runs", () => {
  it("ends the excursion where a fault only marks the signal as bad", () => {
    expect(
      stepped(
        [
          [1, 3],
          ["fault", 0],
        ],
        { sensorFault: "bad" },
      ).events,
    ).toContain("rode out");
    expect(
      stepped([
        [1, 3],
        ["fault", 0],
      ]).events,
    ).not.toContain("rode out");
  });
});

describe("the status of a relay", () => {
  it.each([
    ["normally energised", "healthy", "energised"],
    ["normally energised", "trip", "de-energised"],
    ["normally de-energised", "healthy", "de-energised"],
    ["normally de-energised", "trip", "energised"],
  ] as const)("a coil %s, output %s: %s", (coil, output, wanted) => {
    expect(relayStatus({ latching: false, contact: "normally open", coil }, output === "trip", true).coil).toBe(wanted);
  });
});

describe("a reset by hand", () => {
  const refused = (logic: TripLogic) => logic.reset().reason;

  it("is refused where the output does not latch", () => {
    const logic = new TripLogic(settings);
    logic.step(1, 6);
    expect(refused(logic)).toBe("the output does not latch; it clears by itself");
  });

  it("is refused at the reset level, and accepted a little below", () => {
    const logic = new TripLogic({ ...settings, latching: true });
    logic.step(1, 6);
    logic.step(0.5, 1);
    expect(refused(logic)).toBe("the level is not below the reset level");
    logic.step(0.499, 1);
    expect(logic.reset()).toEqual({ accepted: true });
  });

  it("is held against the multiplied reset level while that stands", () => {
    const logic = new TripLogic({ ...settings, latching: true, multiplier: { factor: 2, seconds: 1000 } });
    logic.step(2, 6);
    logic.step(1, 1);
    expect(refused(logic)).toBe("the level is not below the reset level");
    logic.step(0.9, 1);
    expect(logic.reset()).toEqual({ accepted: true });
  });
});

describe("a command", () => {
  it("is told as an event of its own, once", () => {
    const logic = new TripLogic(settings);
    logic.step(0.2, 1);
    expect(logic.power(false).events.map(({ event }) => event)).toEqual(["power lost"]);
    expect(logic.power(true).events.map(({ event }) => event)).toEqual(["power back"]);
    expect(logic.bypass(true).events.map(({ event }) => event)).toEqual(["bypass on"]);
    expect(logic.bypass(false).events.map(({ event }) => event)).toEqual(["bypass off"]);
  });
});

describe("the state of a channel in a word", () => {
  const told = (logic: TripLogic) => [logic.status.state, logic.status.protecting];

  it("is that of its power, start and bypass before that of its level", () => {
    const logic = new TripLogic({ ...settings, startInhibit: 10 });
    expect(told(logic)).toEqual(["inhibited", false]);
    logic.step(2, 10);
    expect(told(logic)).toEqual(["normal", true]);
    logic.step(2, 0);
    expect(told(logic)).toEqual(["timing", true]);
    logic.bypass(true);
    expect(told(logic)).toEqual(["bypassed", false]);
    logic.power(false);
    expect(told(logic)).toEqual(["no power", false]);
    logic.power(true);
    logic.bypass(false);
    expect(told(logic)).toEqual(["inhibited", false]);
  });

  it("is latched below the reset level that stands, at it tripped still", () => {
    const logic = new TripLogic({
      ...settings,
      onDelay: 0,
      latching: true,
      multiplier: { factor: 2, seconds: 10 },
    });
    const { resetAt } = logic.rules;
    logic.step(2, 1);
    logic.step(2 * resetAt, 1);
    expect(told(logic)[0]).toBe("tripped");
    logic.step(1.9 * resetAt, 1);
    expect(told(logic)[0]).toBe("latched");
    logic.step(1.9 * resetAt, 8);
    expect(told(logic)[0]).toBe("tripped");
    logic.step(resetAt, 1);
    expect(told(logic)[0]).toBe("tripped");
    logic.step("fault", 1);
    expect(told(logic)[0]).toBe("tripped");
    logic.step(0.4, 1);
    expect(told(logic)[0]).toBe("latched");
  });

  it("is that of the signal where a fault holds the channel as it was", () => {
    const logic = new TripLogic({ ...settings, sensorFault: "hold" });
    logic.step("fault", 1);
    expect(told(logic)).toEqual(["sensor fault", false]);
  });
});
