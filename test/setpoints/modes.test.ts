import { describe, expect, it } from "vitest";
import { baseline, proposeSetpoints } from "../../src/entries/protection";

const summer = [1.9, 1.85, 1.95, 1.9, 1.88, 1.92];
const winter = [2.6, 2.55, 2.65, 2.6, 2.58, 2.62];
const levels = [...summer, ...winter];
const season = [...summer.map(() => "summer"), ...winter.map(() => "winter")];
const as = { as: "mm/s rms" } as const;
const limits = { "B/C": "4 mm/s rms", "C/D": "8 mm/s rms", source: "maker of the drive" };
const propose = (known: ReturnType<typeof baseline>, more: object = {}) =>
  proposeSetpoints({ baseline: known, limits, ...more });

// that modes are to be told apart: common practice, no source; the standard error of a median, root(pi / 2) times that of
// the mean: from memory
describe("the operating modes of a baseline", () => {
  it("are told with their medians, lowest first", () => {
    const { modes = [], modesDiffer, warnings } = baseline(levels, { ...as, modes: { readings: season } });
    expect(modes.map(({ mode, count, median }) => [mode, count, median])).toEqual([
      ["summer", 6, 1.9],
      ["winter", 6, 2.6],
    ]);
    expect(modesDiffer).toBe(true);
    expect(warnings.join()).toContain('"winter" 2.60 (6 readings)');
  });

  it("that differ by no more than their scatter are one", () => {
    const mixed = levels.map((_, i) => (i % 2 === 0 ? "day" : "night"));
    expect(baseline(levels, { ...as, modes: { readings: mixed } }).modesDiffer).toBe(false);
  });

  it("of a load in numbers make bands", () => {
    const load = levels.map((_, i) => (i < 6 ? 40 + i : 80 + i));
    const { modes = [], modesDiffer } = baseline(levels, { ...as, modes: { readings: load } });
    expect([modes.length, modesDiffer]).toEqual([2, true]);
    const only = baseline(levels, { ...as, modes: { readings: load, only: "30 to 60" } });
    expect([only.count, only.excluded, only.median]).toEqual([6, 6, 1.9]);
  });

  // speeds near 900 and near 1480 r/min, 100 readings each
  const speeds = Array.from({ length: 200 }, (_, i) => (i < 100 ? 900 : 1480) + (i % 7) - 3);
  const atSpeeds = speeds.map((speed) => (speed < 1000 ? 1 : 3));
  it.each([
    ["none far off", []],
    ["one far off", [65535]],
    ["three far off", [65535, 65535, 65535]],
    ["one far off at either end", [-32768, 65535]],
    ["some far off here and there", [15000, 30000, 45000, 65535]],
  ])("of speeds in numbers are told apart with %s", (_, far) => {
    const readings = [...atSpeeds, ...far.map(() => 2)];
    const { modes = [], modesDiffer } = baseline(readings, { ...as, modes: { readings: [...speeds, ...far] } });
    expect([modesDiffer, modes[0]?.median, modes.at(-1)?.median]).toEqual([true, 1, 3]);
    expect(() => propose(baseline(readings, { ...as, modes: { readings: [...speeds, ...far] } }))).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });

  it("of few readings beside one far off are told apart", () => {
    const few = speeds.filter((_, i) => i >= 80);
    const levelsOfFew = [...few.map((speed) => (speed < 1000 ? 1 : 3)), 2];
    expect(baseline(levelsOfFew, { ...as, modes: { readings: [...few, 65535] } }).modesDiffer).toBe(true);
  });

  it("of a load without gaps are cut by rank, equal ones together", () => {
    const load = Array.from({ length: 60 }, (_, i) => Math.floor(i / 2));
    const { modes = [], modesDiffer } = baseline(
      load.map((one) => 1 + one / 20),
      { ...as, modes: { readings: load } },
    );
    expect(modes.map(({ mode, count }) => [mode, count])).toEqual([
      ["0 to 9.000", 20],
      ["10.00 to 19.00", 20],
      ["20.00 to 29.00", 20],
    ]);
    expect(modesDiffer).toBe(true);
  });

  it("take the lowest for the setpoints, without statistics of all", () => {
    const {
      alarm,
      baseline: level,
      statistical,
      warnings,
    } = propose(baseline(levels, { ...as, modes: { readings: season } }));
    expect([level, alarm?.asked.value, statistical]).toEqual([1.9, 2.9, null]);
    expect(warnings.filter(({ text }) => text.includes("operating modes"))).toHaveLength(1);
  });

  it("are refused where they differ by more than a quarter of B/C, or where there are no limits", () => {
    const far = baseline([...summer, ...winter.map((one) => one + 0.4)], { ...as, modes: { readings: season } });
    expect(() => propose(far)).toThrow(expect.objectContaining({ code: "out-of-range" }));
    const mixed = baseline(levels, { ...as, modes: { readings: season } });
    expect(() => propose(mixed, { limits: undefined, scheme: "none" })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });

  it("serve one by one", () => {
    const known = baseline(levels, { ...as, modes: { readings: season, only: " Winter" } });
    expect([known.count, known.modesDiffer]).toEqual([6, false]);
    expect(propose(known).alarm?.asked.value).toBeCloseTo(3.6, 12);
  });

  it("with fewer than three readings are not compared, and that is told", () => {
    const { modes = [], warnings } = baseline(levels, {
      ...as,
      modes: { readings: season.map((one, i) => (i === 0 ? "start" : one)) },
    });
    expect(modes.map(({ mode }) => mode)).not.toContain("start");
    expect(warnings.join()).toContain(
      "modes with fewer than 3 readings are not compared with the others (1 of 12 readings)",
    );
  });

  it("of readings without a difference are called different less than once in fifty times", () => {
    // the same numbers each time: a linear congruential generator, ISO C's example of rand()
    let state = 1;
    const chance = () => {
      state = (Math.imul(state, 1103515245) + 12345) >>> 0;
      return ((state >>> 16) & 0x7fff) / 0x8000;
    };
    const runs = 500;
    const differ = Array.from({ length: runs }, () => {
      // the sum of four is near enough to normal scatter
      const readings = Array.from({ length: 24 }, () => 2 + chance() + chance() + chance() + chance() - 2);
      const names = readings.map((_, i) => (i % 2 === 0 ? "a" : "b"));
      return baseline(readings, { ...as, modes: { readings: names } }).modesDiffer;
    }).filter(Boolean).length;
    expect(differ).toBeLessThan(runs / 50);
  });

  it("tell of readings that scatter widely", () => {
    expect(baseline([1, 2, 3, 1.2, 2.8, 2, 1.5, 2.6, 3.2, 0.9], as).warnings.join()).toContain("scatter widely");
    expect(baseline(levels, as).warnings.join()).not.toContain("scatter widely");
  });

  it.each([
    ["of another length", { readings: ["a"] }, "length-mismatch"],
    ["that are no mode", { readings: season, only: "spring" }, "unknown-option"],
    ["with an empty name", { readings: season.map((one, i) => (i === 3 ? " " : one)) }, "syntax"],
    ["with a number that is none", { readings: season.map((_, i) => (i === 3 ? Number.NaN : 5)) }, "not-a-number"],
    ["with a range that falls", { readings: season.map(() => 5), only: "9 to 2" }, "syntax"],
    ["with a key that is none", { readings: season, one: "winter" }, "unknown-option"],
  ])("are refused %s", (_, modes, code) => {
    expect(() => baseline(levels, { ...as, modes: modes as never })).toThrow(expect.objectContaining({ code }));
  });
});
