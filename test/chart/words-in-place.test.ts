import { describe, expect, it } from "vitest";
import { nomograph, setpointChart, trendChart, tripTimeline } from "../../src/entries/chart";
import { proposeSetpoints } from "../../src/entries/protection";
import { settings } from "../trip/trip-settings";

const texts = (svg: string): string[] =>
  [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text as string);

// how charts are laid out: common practice, no source
describe("a trip timeline", () => {
  const svg = (width: number) =>
    tripTimeline({
      settings,
      width,
      levels: [0.2, 0.6, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2],
      dt: 1,
    });

  it("numbers spans whose words have no room, and tells them by their numbers", () => {
    const found = texts(svg(350));
    expect(found).toEqual(expect.arrayContaining(["1", "2"]));
    expect(found.join(" ")).toMatch(/State: \(1\) normal until 1 s, \(2\) timing until 2 s/);
  });

  it("has no numbers where all words have room", () => {
    expect(texts(svg(2000)).join(" ")).not.toContain("(1)");
  });
});

describe("a trend of dates", () => {
  const trend = (days: readonly string[], more: object = {}) =>
    texts(
      trendChart({
        readings: days.map((day, i) => ({ time: new Date(day), reading: 2 + (i % 3) / 10 })),
        as: "mm/s rms",
        ...more,
      }),
    );
  const months = Array.from({ length: 24 }, (_, i) => new Date(Date.UTC(2025, i, 1)).toISOString());

  it("counts months where each date is the first of one", () => {
    expect(trend(months)).toContain("month");
    expect(trend(months)).not.toContain("UTC");
  });

  it("counts dates where none has a time of day", () => {
    expect(trend(["2026-01-05", "2026-02-03", "2026-03-09"])).toContain("date");
  });

  it("names UTC where one has a time of day", () => {
    expect(trend(["2026-01-05T06:00Z", "2026-02-03", "2026-03-09"])).toContain("UTC");
  });

  it("tells the limits between the zones", () => {
    const severity = { scheme: "iso-10816-7-2009", machine: "pump 132 kW category II 2975 r/min" } as const;
    expect(trend(months, { severity })).toEqual(expect.arrayContaining(["3.20", "5.10", "8.50"]));
    // where a curve stands at both ends of a limit, the small print tells it
    const readings = months.map((day) => ({ time: new Date(day), reading: 3.3 }));
    expect(texts(trendChart({ readings, as: "mm/s rms", severity })).join(" ")).toContain(
      "Limits between the zones: 3.20, 5.10, 8.50.",
    );
  });
});

describe("a narrow nomograph", () => {
  it("sets words above or below a point that has no room at either side", () => {
    const svg = nomograph({
      width: 350,
      velocity: [0.5, 50],
      frequency: [5, 500],
      readings: [{ reading: "2 mm/s rms at 2980 r/min", label: "feed pump A, 5.6 mA" }],
    });
    const x = Number(/<text[^>]* x="([\d.]+)"[^>]*text-anchor="middle"[^>]*>feed pump A/.exec(svg)?.[1]);
    expect(x).toBeGreaterThan(60);
    expect(x).toBeLessThan(350 - 60);
  });
});

describe("a chart of setpoints", () => {
  it("is drawn at any width, its words within it", () => {
    const proposal = proposeSetpoints({
      baseline: "40 um pp",
      limits: { "B/C": "100 um pp", "C/D": "160 um pp", source: "maker" },
      machine: "steam turbine 5400 r/min shaft",
      raised: "2 times from 1900 to 2600 r/min for 30 s",
    });
    for (const width of [280, 350, 640, 2000]) {
      const svg = setpointChart({ proposal, width });
      expect(texts(svg)).toEqual(expect.arrayContaining(["ALARM", "TRIP", "raised TRIP", "320.0"]));
      const places = [...svg.matchAll(/<text[^>]* x="(-?[\d.]+)"/g)].map(([, x]) => Number(x));
      expect(Math.max(...places)).toBeLessThan(width);
    }
  });

  it("names alarm and shutdown of a table for fans", () => {
    const machine = "fan 132 kW 1485 r/min rigid BV-3 in service";
    const proposal = proposeSetpoints({ baseline: "2.6 mm/s rms", scheme: "iso-14694-2003", machine });
    expect(texts(setpointChart({ proposal }))).toEqual(expect.arrayContaining(["alarm limit 7.1", "shutdown limit 9"]));
  });
});
