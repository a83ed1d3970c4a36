import { levelGaps, type RunOptions, type TripSettings, tripMasks, unmaskedTrips } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { settings as booster } from "./trip-settings";

const settings = { ...booster, threshold: "9 mm/s rms", hysteresis: "8 %", onDelay: 8 } as const;
/** A rise of 15 s from 60 s on, in a history of ten minutes with a level a second. */
const history = Float64Array.from({ length: 600 }, (_, i) => (i >= 60 && i < 75 ? 12 : 3));
const told = (more: Partial<TripSettings>, options?: RunOptions) => {
  const { asSet, without, ...rest } = unmaskedTrips({ ...settings, ...more }, history, 1, options);
  const time = (first: { time: number } | null) => first?.time ?? null;
  return {
    asSet: time(asSet.first),
    ...Object.fromEntries(without.map(({ mask, first }) => [mask, time(first)])),
    alone: time(rest.onDelayAlone.first),
    any: time(rest.withoutAny.first),
  };
};

describe("what a mask hid", () => {
  it.each([
    [{}, undefined, { asSet: 68, "on-delay": 60, alone: 68, any: 60 }],
    [{ onDelay: 0 }, undefined, { asSet: 60, alone: 60, any: 60 }],
    [{ onDelay: 20 }, undefined, { asSet: null, "on-delay": 60, alone: null, any: 60 }],
    [
      { multiplier: { factor: 2, seconds: 300 } },
      undefined,
      { asSet: null, "on-delay": null, multiplier: 68, alone: 68, any: 60 },
    ],
    [{ startInhibit: 500 }, undefined, { asSet: null, "on-delay": null, "start inhibit": 68, alone: 68, any: 60 }],
    [
      { startInhibit: 500, multiplier: { factor: 2, seconds: 300 } },
      undefined,
      { asSet: null, "on-delay": null, "start inhibit": null, multiplier: null, alone: 68, any: 60 },
    ],
    [
      {},
      { commands: [{ time: 50, do: "bypass on" }] },
      { asSet: null, "on-delay": null, bypass: 68, alone: 68, any: 60 },
    ],
    [
      { coil: "normally de-energised" },
      {
        commands: [
          { time: 50, do: "power lost" },
          { time: 90, do: "power back" },
        ],
      },
      { asSet: null, "on-delay": null, "power loss": 68, alone: 68, any: 60 },
    ],
  ] as const)("%j, %j", (more, options, wanted) => {
    expect(told(more, options)).toEqual(wanted);
  });

  it("is a sensor fault that is held, where there is one", () => {
    const faults = [3, Number.NaN, Number.NaN, Number.NaN, 3];
    const held = { ...settings, onDelay: 2, sensorFault: "hold" } as const;
    const { asSet, without } = unmaskedTrips(held, faults, 1, { nan: "sensor fault" });
    expect(asSet).toEqual({ first: null, trips: 0, end: "normal" });
    expect(without.map(({ mask, first }) => [mask, first?.time])).toEqual([
      ["on-delay", undefined],
      ["sensor fault", 3],
    ]);
    expect(unmaskedTrips(held, [3, 3], 1, { nan: "sensor fault" }).without.map(({ mask }) => mask)).toEqual([
      "on-delay",
    ]);
  });

  it("is told of the latch with the state at the end", () => {
    const latched = unmaskedTrips(settings, history, 1);
    expect([latched.asSet.end, latched.otherLatch]).toMatchObject(["latched", { latching: false, end: "normal" }]);
    const loose = unmaskedTrips({ ...settings, latching: false }, history, 1);
    expect([loose.asSet.end, loose.otherLatch]).toMatchObject(["normal", { latching: true, end: "latched" }]);
  });

  it("says what was assumed, in the whole and in each trip", () => {
    const { assumed, asSet } = unmaskedTrips(settings, [20, 20, 20], 8, { as: "mm/s pk" });
    expect([assumed, asSet.first?.assumed]).toEqual([["sine"], ["sine"]]);
  });

  it("has a word for each mask", () => {
    expect(Object.keys(tripMasks)).toEqual([
      "on-delay",
      "start inhibit",
      "multiplier",
      "bypass",
      "power loss",
      "sensor fault",
    ]);
  });
});

describe("gaps of a history", () => {
  const gapsOf = (levels: number[], times: number[], longest?: number) =>
    levelGaps(settings, levels, times, { nan: "sensor fault", ...(longest !== undefined && { longest }) });

  it("are longer than five medians, or than what is stated, and never as long", () => {
    const times = [0, 1, 2, 3, 8, 14];
    const levels = times.map(() => 3);
    expect(gapsOf(levels, times)).toEqual({
      longest: 5,
      median: 1,
      gaps: [{ start: 8, end: 14, seconds: 6, level: 3, high: false }],
    });
    expect(gapsOf(levels, times, 4).gaps.map(({ start: from }) => from)).toEqual([3, 8]);
    expect(gapsOf(levels, times, 6).gaps).toEqual([]);
  });

  it("are warned of after a level that is not below the reset level, and after a fault", () => {
    const high = [8.27, 8.28, 9, Number.NaN].map((level) => gapsOf([level, 3], [0, 100], 5).gaps[0]?.high);
    expect(high).toEqual([false, true, true, true]);
    expect(gapsOf([Number.NaN, 3], [0, 100], 5).gaps[0]?.level).toBeNull();
  });

  it("hold levels of another unit against the threshold in its own", () => {
    const [gap] = levelGaps(settings, [0.4, 0.1], [0, 100], { as: "in/s rms", longest: 5 }).gaps;
    expect([gap?.level?.toFixed(2), gap?.high]).toEqual(["10.16", true]);
  });

  it("are none among levels at one moment, and of one level", () => {
    expect(gapsOf([3, 3, 3], [5, 5, 5])).toEqual({ longest: 0, median: 0, gaps: [] });
    expect(gapsOf([3], [5])).toEqual({ longest: 0, median: 0, gaps: [] });
    expect(gapsOf([3, 3, 3, 3], [0, 0, 2, 4]).median).toBe(2);
  });
});
