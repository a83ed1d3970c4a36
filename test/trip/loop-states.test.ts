import { TripLogic, type TripSettings, VotedTrip } from "veladis/protection";
import { currentLoop } from "veladis/sensor";
import { describe, expect, it } from "vitest";
import { settings as booster } from "./trip-settings";

const settings = { ...booster, threshold: "8.5 mm/s rms", hysteresis: "8 %" } as const satisfies TripSettings;
const loop = currentLoop("0 to 8 mm/s rms");
const logicOf = (more: Partial<TripSettings> = {}) => new TripLogic({ ...settings, ...more });

describe("a signal above the range of its loop", () => {
  const above = loop.reading(20.9);

  it("counts as above every threshold, though what the loop shows is below it", () => {
    expect([above.state, above.value < 8.5]).toEqual(["above range", true]);
    const logic = logicOf();
    expect(logic.step(above, 1)).toMatchObject({ state: "timing", signal: "above range", output: "healthy" });
    const tripped = logic.step(above, 1);
    expect(tripped).toMatchObject({ state: "tripped", signal: "above range", output: "trip" });
    expect(logic.firstOut).toMatchObject({ time: 2, cause: "above range", level: above.value });
  });

  it("is named where it begins and where it ends, with the least that the level is", () => {
    const logic = logicOf();
    expect(logic.step(above, 0).events).toEqual([
      { time: 0, event: "above range", level: above.value },
      { time: 0, event: "timing", level: above.value },
    ]);
    expect(logic.step(loop.reading(12), 1).events.map(({ event }) => event)).toEqual(["in range", "rode out"]);
    logic.step(above, 0);
    expect(logic.step("fault", 0).events.map(({ event }) => event)).toEqual(["fault"]);
    expect(logic.step(above, 0).events.map(({ event }) => event)).toEqual(["fault over", "above range"]);
  });

  it("beats a multiplied setpoint, and holds a latched output", () => {
    const logic = logicOf({ onDelay: 0, multiplier: { factor: 3, seconds: 1000 } });
    expect(logic.step(above, 1).output).toBe("trip");
    expect(logic.reset()).toEqual({ accepted: false, reason: "the level is above the range of its loop" });
    expect(logic.step(above, 1e6).state).toBe("tripped");
    expect(logic.step(loop.reading(12), 1).state).toBe("latched");
  });

  it("stands until the first time of a history", () => {
    const logic = logicOf({ latching: false });
    logic.step(above, 1);
    const events = logic.run([1, 1], [10, 11]);
    expect(events.map(({ time, event }) => `${time} ${event}`)).toEqual(["2 trip", "10 in range", "10 clear"]);
  });

  it("goes along when the reading is converted or kept, and with a stored state", () => {
    const logic = logicOf();
    logic.step(loop.reading(20.9, "in/s pk"), 1);
    const other = new TripLogic(settings, JSON.parse(JSON.stringify(logic.snapshot())));
    expect(other.status).toMatchObject({ state: "timing", signal: "above range" });
  });

  it("is refused as a threshold, which would be lower than meant", () => {
    expect(() => logicOf({ threshold: above })).toThrow(expect.objectContaining({ code: "out-of-range" }));
  });
});

describe("a signal below the range of its loop", () => {
  const below = loop.reading(3.9);

  it("is a sensor fault, by what that is set to do, and says why", () => {
    expect([below.state, below.value]).toEqual(["below range", 0]);
    const states = (["alarm", "hold", "bad"] as const).map((sensorFault) => {
      const logic = logicOf({ sensorFault });
      const [event] = logic.step(below, 2).events;
      expect(event).toEqual({
        time: 0,
        event: "fault",
        level: null,
        reason: "the signal is below the range of its loop",
      });
      return [logic.status.state, logic.status.signal, logic.status.protecting];
    });
    expect(states).toEqual([
      ["tripped", "fault", true],
      ["sensor fault", "fault", false],
      ["sensor fault", "fault", false],
    ]);
  });
});

describe("a vote among channels on loops", () => {
  const channel = { ...settings, sensorFault: "bad" } as const;
  const { latching, contact, coil } = settings;
  const pair = () =>
    new VotedTrip({
      vote: "2oo2",
      badChannel: "votes to trip",
      channels: { a: channel, b: channel },
      latching,
      contact,
      coil,
    });

  it("takes a channel above its range for one that calls, and one below it for a bad one", () => {
    const logic = pair();
    const first = logic.step({ a: loop.reading(20.9), b: loop.reading(12) }, 3);
    expect([first.output, first.channels]).toEqual(["healthy", { a: "trip", b: "healthy" }]);
    const second = logic.step({ a: loop.reading(20.9), b: loop.reading(3.9) }, 1);
    expect([second.output, second.channels, second.firstOut]).toEqual(["trip", { a: "trip", b: "bad" }, "a"]);
  });
});

// a 32-bit float has 24 bits: IEEE 754; half a step of it is 2^-24 of the value
describe("a threshold and levels from a recorder of single precision", () => {
  it.each([7.1, 3.3, 8.28, 0.35, 11.2])("%s trips at itself", (limit) => {
    const logic = logicOf({ threshold: `${limit} mm/s rms`, onDelay: 0 });
    expect(logic.step(Math.fround(limit), 1).output).toBe("trip");
    const run = logicOf({ threshold: `${limit} mm/s rms`, onDelay: 0 }).run(Float32Array.of(limit), 1);
    expect(run.map(({ event }) => event)).toEqual(["trip"]);
    expect(logicOf({ threshold: `${limit} mm/s rms`, onDelay: 0 }).step(limit * (1 - 2e-7), 1).output).toBe("healthy");
  });
});
