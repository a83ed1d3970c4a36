import { describe, expect, it } from "vitest";
import { contains, type Interval } from "../../src/severity/interval";

/** A share of float noise that counts as nothing, and one that counts. */
const NOISE = 0.99 * 2 ** -23;
const STEP = 1.01 * 2 ** -23;

// biome-ignore format: a row of a table is a line
const ranges: [interval: Interval, inside: number[], outside: number[]][] = [
  [{ from: 600 }, [600, 600 * (1 - NOISE), 601, 1e9], [600 * (1 - STEP), 599, 0]],
  [{ above: 15 }, [15 * (1 + STEP), 16, 1e9], [15, 15 * (1 + NOISE), 14, 0]],
  [{ to: 300 }, [300, 300 * (1 + NOISE), 299, 0], [300 * (1 + STEP), 301]],
  [{ below: 315 }, [315 * (1 - STEP), 314, 0], [315, 315 * (1 - NOISE), 316]],
  [{ above: 15, to: 300 }, [16, 300], [15, 301]],
  [{ from: 160, below: 315 }, [160, 314], [159, 315]],
  [{ oneOf: [1500, 1800] }, [1500, 1800, 1500 * (1 + NOISE)], [1499, 1650, 1801]],
  [{}, [0, 1e9], []],
];

describe("a range", () => {
  it.each(ranges)("%j holds %j and not %j", (interval, inside, outside) => {
    for (const value of inside) expect(contains(interval, value), `${value}`).toBe(true);
    for (const value of outside) expect(contains(interval, value), `${value}`).toBe(false);
  });
});
