import { describe, expect, it } from "vitest";
import { trendChart } from "../../src/entries/chart";
import { currentLoop } from "../../src/entries/sensor";
import { all, parsed, words } from "./svg";

const descOf = (svg: string): string => /<desc>(.*?)<\/desc>/.exec(svg)?.[1] ?? "";
const loop = currentLoop("0 to 5 mm/s rms");
const trend = (...currents: number[]): string =>
  trendChart({
    as: "mm/s rms",
    trip: "6 mm/s rms",
    readings: currents.map((current, time) => ({ time, reading: loop.reading(current) })),
  });
const triangles = (svg: string): number => all(parsed(svg), "path", "point").length;

/** Currents out of the range of a loop: common practice, no source. */
describe("a trend of readings out of the range of their loop", () => {
  it("above it: marked, and told as one that may be larger", () => {
    const svg = trend(12, 20.8, 12, 20.8);
    expect(descOf(svg)).toContain("the last 5.16 (above range), the highest 5.16 (above range).");
    expect(words(svg).join(" ")).toContain("2 readings above range of the loop");
    expect(descOf(svg)).toContain("the vibration may be larger than is drawn");
    expect(triangles(svg)).toBe(2);
  });

  it("below it: marked, and told as one that may measure nothing", () => {
    const svg = trend(12, 3.9);
    expect(descOf(svg)).toMatch(/the last 0\S* \(below range\), the highest 2\.50\./);
    expect(words(svg).join(" ")).toContain("1 reading below range of the loop");
    expect(triangles(svg)).toBe(1);
  });

  it("as a text, and beyond 120 readings too", () => {
    const readings = Array.from({ length: 200 }, (_, time) => ({
      time,
      reading: time === 100 ? "5.16 mm/s rms (above range)" : "2 mm/s rms",
    }));
    const svg = trendChart({ as: "mm/s rms", readings });
    expect([triangles(svg), descOf(svg).includes("the highest 5.16 (above range)")]).toEqual([1, true]);
  });

  it("within it: nothing is said", () => {
    const svg = trend(12, 20);
    expect([triangles(svg), /range|loop/.test(descOf(svg))]).toEqual([0, false]);
  });
});
