import { describe, expect, it } from "vitest";
import { spectrumChart, trendChart, tripTimeline } from "../../src/entries/chart";
import { convert } from "../../src/index";
import { all, parsed, words } from "./svg";

const descOf = (svg: string): string => /<desc>(.*?)<\/desc>/.exec(svg)?.[1] ?? "";
const strokesOf = (svg: string): number =>
  (all(parsed(svg), "path", "data")[0]?.attributes.d ?? "").split("M").length - 1;

/** Gaps: after the rule of `levelGaps`, five times the median time between readings; common practice, no source. */
describe("a trend with gaps", () => {
  const weekly = (...days: number[]) => days.map((time) => ({ time, reading: 2 + time / 100 }));

  it("is broken where readings lie far apart, and says how often and where", () => {
    const svg = trendChart({ as: "mm/s rms", readings: weekly(0, 7, 14, 21, 63, 70, 112, 119) });
    expect(strokesOf(svg)).toBe(3);
    // 42 days are more than five times the median of 7
    expect(descOf(svg)).toContain("2 gaps longer than 35 days, the longest from 21 days to 63 days.");
    expect(words(svg).join(" ")).toContain("broken where readings lie more than 35 days apart, five times the median");
  });

  it("is whole without one, and where a longer time is told as none", () => {
    for (const more of [{ readings: weekly(0, 7, 14, 21) }, { readings: weekly(0, 7, 14, 21, 63), longestGap: 42 }]) {
      const svg = trendChart({ as: "mm/s rms", ...more });
      expect([strokesOf(svg), descOf(svg).includes("gap")]).toEqual([1, false]);
    }
  });

  it("a longest gap of dates is in days", () => {
    const dated = weekly(0, 7, 14, 21).map(({ time, reading }) => ({ time: new Date(time * 86_400_000), reading }));
    expect(descOf(trendChart({ as: "mm/s rms", readings: dated, longestGap: 6 }))).toContain(
      "3 gaps longer than 6 days",
    );
  });

  it("counts times without a reading, which are no reading", () => {
    const svg = trendChart({ as: "mm/s rms", readings: [...weekly(0, 7, 14), { time: 21 }, ...weekly(28, 35)] });
    expect(strokesOf(svg)).toBe(2);
    expect(descOf(svg)).toMatch(/^5 readings .* 1 time without a reading\./);
    expect(all(parsed(svg), "circle", "point")).toHaveLength(5);
  });

  it("no reading is lost over 120 of them", () => {
    const readings = Array.from({ length: 400 }, (_, i) => ({
      time: i + (i >= 200 ? 100 : 0),
      reading: i === 199 ? 9 : 2,
    }));
    const svg = trendChart({ as: "mm/s rms", readings });
    expect(strokesOf(svg)).toBe(2);
    expect(descOf(svg)).toContain("the highest 9.00. 1 gap longer than 5 days, the longest from 199 days to 300 days.");
    expect(all(parsed(svg), "circle", "point")).toHaveLength(0);
  });

  const daily = (from: number, count: number) =>
    Array.from({ length: count }, (_, i) => ({ time: from + i, reading: 2 }));
  const dotsOf = (svg: string): number[] =>
    all(parsed(svg), "circle", "point").map(({ attributes }) => Number(attributes.cy));

  it("a reading that stands alone between two gaps is a dot beyond 120 of them too", () => {
    const lone = { time: 1000, reading: 9 };
    const svg = trendChart({
      as: "mm/s rms",
      trip: "8 mm/s rms",
      readings: [...daily(0, 200), lone, ...daily(3000, 50)],
    });
    const trip = Number(all(parsed(svg), "line", "trip")[0]?.attributes.y1);
    expect(dotsOf(svg)).toHaveLength(1);
    // a place further down has the larger number
    expect(dotsOf(svg)[0]).toBeLessThan(trip);
  });

  it("so is the last alone after a gap, and two within a dot, by the higher", () => {
    const after = trendChart({ as: "mm/s rms", readings: [...daily(0, 200), { time: 1000, reading: 9 }] });
    const two = [
      { time: 1000, reading: 8.9 },
      { time: 1001, reading: 9 },
    ];
    const both = trendChart({ as: "mm/s rms", readings: [...daily(0, 200), ...two, ...daily(3000, 50)] });
    expect(dotsOf(both)).toEqual(dotsOf(after));
  });

  it("every second one missing leaves every other a dot", () => {
    const readings = daily(0, 240).map((one, i) => (i % 2 === 0 ? one : { time: one.time }));
    expect(dotsOf(trendChart({ as: "mm/s rms", readings }))).toHaveLength(120);
  });
});

describe("a history with gaps", () => {
  const settings = {
    threshold: "7.1 mm/s rms",
    hysteresis: "5 %",
    onDelay: 3,
    timerResets: "below threshold",
    sensorFault: "alarm",
    latching: true,
    contact: "normally open",
    coil: "normally energised",
  } as const;

  it("is broken over a long time and where the signal fails, and says what the logic takes", () => {
    const svg = tripTimeline({
      settings,
      levels: [4, 4, 9, 4, 4, 8, Number.NaN, 8, 8, 4],
      dt: [0, 1, 2, 3, 4, 30, 31, 32, 33, 34],
      nan: "sensor fault",
    });
    expect(strokesOf(svg)).toBe(3);
    expect(descOf(svg)).toContain("1 gap longer than 5 s, the longest from 4 s to 30 s. 1 time without a good signal.");
    expect(words(svg).join(" ")).toContain("takes the level before a gap to stand until the next");
  });

  it("a level that stands alone between two gaps is a dot, and so is the last alone", () => {
    const dots = (levels: number[], dt: number[]) =>
      all(parsed(tripTimeline({ settings, levels, dt })), "circle", "point");
    expect(dots([4, 4, 4, 9, 4, 4, 4], [0, 1, 2, 100, 200, 201, 202])).toHaveLength(1);
    expect(dots([4, 4, 4, 9], [0, 1, 2, 100])).toHaveLength(1);
  });

  it("evenly spaced levels have none", () => {
    expect(descOf(tripTimeline({ settings, levels: [4, 4, 9, 4], dt: 1 }))).not.toContain("gap");
  });
});

describe("a second axis", () => {
  const ticks = (svg: string): readonly [number, number][] =>
    all(parsed(svg), "text").flatMap((one) => {
      const [x, y, value] = [one.attributes.x, one.attributes.y, one.text].map(Number) as [number, number, number];
      return Number.isFinite(value) && x > 300 && one.attributes["text-anchor"] === undefined
        ? [[value, y] as const]
        : [];
    });

  it("of a trend stands at the places of its own numbers", () => {
    const svg = trendChart({
      as: "mm/s rms",
      beside: "in/s pk",
      readings: [
        { time: 0, reading: 10 },
        { time: 1, reading: 9 },
      ],
    });
    expect(descOf(svg)).toContain("A second axis is in in/s pk.");
    const right = ticks(svg);
    expect(right.length).toBeGreaterThan(3);
    const [[, foot] = [0, 0]] = right;
    const top = all(parsed(svg), "circle", "point")[0]?.attributes.cy;
    // labels stand 4 pixels below their tick: the first point is 10 mm/s
    for (const [value, y] of right) {
      const metric = convert(value, "in/s pk", "mm/s rms");
      expect((foot - y) / (foot - 4 - Number(top))).toBeCloseTo(metric / 10, 2);
    }
    expect(words(svg).join(" ")).toContain("as for one sine wave");
  });

  it("of a logarithmic spectrum has decades of its own", () => {
    const values = Float64Array.from({ length: 101 }, (_, k) => (k === 25 ? 2.5 : 0.05));
    const spectrum = { unit: "mm/s", detector: "rms", resolution: 1, values } as const;
    const svg = spectrumChart({ spectrum, beside: "in/s pk", scale: "log" });
    expect(ticks(svg).map(([value]) => value)).toEqual(expect.arrayContaining([0.001, 0.01, 0.1]));
  });
});
