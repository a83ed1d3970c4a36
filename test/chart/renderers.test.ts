/** Charts drawn by a second renderer that knows no variables of CSS: resvg (general-purpose, after SVG 1.1 and 2). */
import { Resvg } from "@resvg/resvg-js";
import { describe, expect, it } from "vitest";
import { charts } from "../../docs/site/charts";
import { chartColours, severityBar } from "../../src/entries/chart";
import { classify } from "../../src/entries/severity";

/** The colours of a picture, as `#rrggbb`, with the share of its pixels that have them. Texts are left out: no fonts. */
function coloursOf(svg: string): Map<string, number> {
  const image = new Resvg(svg, { font: { loadSystemFonts: false } }).render();
  const counts = new Map<string, number>();
  const { pixels } = image;
  for (let i = 0; i < pixels.length; i += 4) {
    const colour = `#${[...pixels.subarray(i, i + 3)].map((byte) => byte.toString(16).padStart(2, "0")).join("")}`;
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  return new Map([...counts].map(([colour, count]) => [colour, count / (image.width * image.height)]));
}

describe("a chart drawn by a renderer without variables", () => {
  it.each(Object.entries(charts))("%s is on paper, and nothing of it is a black block", (_, draw) => {
    const colours = coloursOf(draw(640));
    expect(colours.get(chartColours.light.paper) ?? 0).toBeGreaterThan(0.1);
    expect(colours.get("#000000") ?? 0).toBe(0);
    // grid, zones or lines: more than one colour besides the paper
    expect(colours.size).toBeGreaterThan(3);
  });

  it.each(["light", "dark"] as const)("has the colours of its theme: %s", (theme) => {
    const judgement = classify("3.9 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 2 rigid" });
    const colours = coloursOf(severityBar({ judgement, theme }));
    const { paper, data, zone } = chartColours[theme];
    for (const colour of [paper, data, zone]) expect(colours.get(colour) ?? 0).toBeGreaterThan(0);
  });
});
