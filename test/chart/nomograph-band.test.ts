import { expect, it } from "vitest";
import { nomograph } from "../../src/entries/chart";
import { words } from "./svg";

const severity = { scheme: "iso-10816-3-2009", machine: "group 2 rigid" } as const;

/** The ends along of all areas and limits of zones. */
function ends(svg: string): number[] {
  const paths = [...svg.matchAll(/<path class="veladis-(?:zone|bound)"[^>]* d="([^"]*)"/g)].map(([, d]) => d as string);
  return paths.flatMap((d) => [...d.matchAll(/[ML]([\d.]+),/g)].map(([, x]) => Number(x)));
}

it("shades the zones of a nomograph within the band of the standard alone, and names it", () => {
  const svg = nomograph({ severity, frequency: [1, 10_000], width: 640 });
  const across = 640 - 46 - 52;
  // 10 to 1000 Hz of four decades (ISO 10816-3:2009; 2 Hz for slow machines)
  const [low, high] = [Math.min(...ends(svg)) / across, Math.max(...ends(svg)) / across];
  expect(high).toBeCloseTo(3 / 4, 2);
  expect([Math.log10(2) / 4, 1 / 4].some((one) => Math.abs(one - low) < 0.005)).toBe(true);
  expect(words(svg).join(" ")).toMatch(/Zones from (2|10) to 1000 Hz, which the table judges; none beyond\./);
});

it("draws no zone where the frame lies outside the band", () => {
  const svg = nomograph({ severity, frequency: [1500, 9000] });
  expect(ends(svg)).toEqual([]);
  expect(words(svg).join(" ")).toContain("none beyond");
});
