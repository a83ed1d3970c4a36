import { describe, expect, it } from "vitest";
import { trendChart, tripTimeline } from "../../src/entries/chart";
import { all, parsed } from "./svg";

const settings = {
  threshold: "9 mm/s rms",
  hysteresis: "8 %",
  onDelay: 8,
  timerResets: "below threshold",
  sensorFault: "alarm",
  latching: true,
  contact: "normally open",
  coil: "normally energised",
} as const;

const gust = [
  2.6, 2.7, 2.5, 9.4, 10.1, 4.8, 3.0, 2.9, 6.4, 9.2, 9.8, 10.4, 10.9, 11.2, 11.3, 11.1, 10.8, 10.1, 8.9, 6.7, 4.9, 3.6,
  3.0, 2.6,
];

/** The corners of a path of straight pieces, each with the one before it. */
function pieces(path: string): [number, number, number, number][] {
  let [x, y] = [0, 0];
  const made: [number, number, number, number][] = [];
  for (const [, letter, numbers = ""] of path.matchAll(/([MLHV])([^MLHV]*)/g)) {
    const [a = 0, b = 0] = numbers.split(",").map(Number);
    const next: [number, number] = letter === "H" ? [a, y] : letter === "V" ? [x, a] : [a, b];
    if (letter !== "M") made.push([x, y, ...next]);
    [x, y] = next;
  }
  return made;
}

/** The words of levels that a piece of the curve runs through. */
function crossed(svg: string): string[] {
  const root = parsed(svg);
  const [data] = all(root, "path", "data");
  const curve = pieces(data?.attributes.d ?? "");
  return all(root, "text", "halo")
    .filter(({ attributes, text }) => {
      const [left, base] = [Number(attributes.x), Number(attributes.y)];
      const right = left + text.length * 5.5;
      return curve.some(
        ([x1, y1, x2, y2]) =>
          Math.min(x1, x2) <= right &&
          Math.max(x1, x2) >= left &&
          Math.min(y1, y2) <= base &&
          Math.max(y1, y2) >= base - 9,
      );
    })
    .map(({ text }) => text);
}

describe("the words of levels", () => {
  it.each([280, 318, 390, 574, 760])("a trip timeline %d px wide has them on nothing of the curve", (width) => {
    const svg = tripTimeline({ width, settings, levels: gust, dt: 1, commands: [{ time: 22, do: "reset" }] });
    expect(svg).toContain("threshold 9.00");
    expect(svg).toContain("reset level 8.28");
    expect(crossed(svg)).toEqual([]);
  });

  it.each([320, 640])("a trend %d px wide has them on nothing of the curve", (width) => {
    const readings = gust.map((value, i) => ({ time: i, reading: `${value} mm/s rms` }));
    const svg = trendChart({ width, readings, as: "mm/s rms", baseline: "2.8 mm/s rms", alarm: "9 mm/s rms" });
    expect(svg).toContain("alarm 9.00");
    expect(svg).toContain("baseline 2.80");
    expect(crossed(svg)).toEqual([]);
  });

  it("are told whole, in a note where a lane has no room", () => {
    const svg = tripTimeline({ width: 318, settings, levels: gust, dt: 1, commands: [{ time: 22, do: "reset" }] });
    const texts = all(parsed(svg), "text").map(({ text }) => text);
    expect(texts.filter((text) => text.includes("…"))).toEqual([]);
    const said = texts.join(" ");
    expect(said.replace(/\(\d\) /g, "")).toContain(
      "State: normal until 3 s, timing until 5 s, normal until 9 s, timing until 17 s, tripped",
    );
    expect(said).toContain("Coil: normally energised.");
  });

  it("stand in the lanes alone where all have room", () => {
    const svg = tripTimeline({ width: 760, settings, levels: gust.slice(8), dt: 1 });
    expect(svg).toContain("coil normally energised)");
    expect(svg).not.toContain("Coil:");
  });
});
