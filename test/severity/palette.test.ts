import { severityColour, severityPalette } from "veladis/severity";
import { describe, expect, it } from "vitest";

describe("the colour of a zone", () => {
  const colours = (count: number) => Array.from({ length: count }, (_, at) => severityColour(at, count));
  const [lightest, light, dark, darkest] = severityPalette;

  it("goes from the lightest to the darkest, whatever the number of zones", () => {
    expect(colours(1)).toEqual([lightest]);
    expect(colours(2)).toEqual([lightest, darkest]);
    expect(colours(3)).toEqual([lightest, dark, darkest]);
    expect(colours(4)).toEqual([lightest, light, dark, darkest]);
    expect(colours(7)).toEqual([lightest, light, light, dark, dark, darkest, darkest]);
  });

  it("of a place beyond the zones is that of the zone nearest to it", () => {
    expect(severityColour(-1, 4)).toBe(lightest);
    expect(severityColour(9, 4)).toBe(darkest);
  });
});
