import { classify, type ReadingRef } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { siteRule, zonesIn } from "./own-scheme";

/** Limits of the invented site rules, high enough for every reading here to lie in zone A. */
const column = (as: string) => zonesIn(as, { "A/B": 500, "B/C": 1000 });

/** The columns and readings that judged: what the limits are printed in, and the value in it. */
function judged(columns: readonly string[], reading: ReadingRef): [as: string, value: number][] {
  const scheme = siteRule("12", { classes: [{ criteria: columns.map(column) }] });
  return classify(reading, { scheme, machine: {} }).criteria.map(({ limit: { printed }, judged: { value } }) => [
    `${printed.unit} ${printed.detector}`,
    Number(value.toPrecision(6)),
  ]);
}

describe("of two columns of one quantity", () => {
  // biome-ignore format: a row of a table is a line
  const columns: [columns: [string, string], reading: string, judging: string, value: number][] = [
    // the detector's own
    [["um pp", "um pk"], "8 um pk", "um pk", 8],
    [["um pk", "um pp"], "8 um pp", "um pp", 8],
    [["um avg", "um rms"], "8 um rms", "um rms", 8],
    [["um rms", "um avg"], "8 um avg", "um avg", 8],
    // else one of its family: peak values, or means
    [["um rms", "um pk"], "8 um pp", "um pk", 4],
    [["um rms", "um pp"], "8 um pk", "um pp", 16],
    [["um avg", "um pp"], "8 um pk", "um pp", 16],
    [["um pk", "um rms"], "8 um avg", "um rms", 8.88577], // 8 pi / (2 root 2), of a sine
    [["um pp", "um avg"], "8 um rms", "um avg", 7.20253], // 8 (2 root 2) / pi, of a sine
    // else the first
    [["um pk", "um pp"], "8 um rms", "um pk", 11.3137],
    [["um pp", "um pk"], "8 um rms", "um pp", 22.6274],
    [["um rms", "um avg"], "8 um pk", "um rms", 5.65685],
  ];

  it.each(columns)("%j, a reading of %s: %s", (both, reading, judging, value) => {
    expect(judged(both, reading)).toEqual([[judging, value]]);
  });
});

describe("of several readings", () => {
  it("the one of the column's detector", () => {
    expect(judged(["mm/s rms"], ["9 mm/s pk", "6 mm/s rms"])).toEqual([["mm/s rms", 6]]);
    expect(judged(["mm/s pk"], ["6 mm/s rms", "9 mm/s pk"])).toEqual([["mm/s pk", 9]]);
  });

  it("that suit alike the first", () => {
    expect(judged(["um rms"], ["8 um pk", "16 um pp"])).toEqual([["um rms", 5.65685]]);
    expect(judged(["um rms"], ["16.1 um pp", "8 um pk"])).toEqual([["um rms", 5.69221]]);
  });

  it("none, where two are of one quantity and detector: a larger one must not go unread", () => {
    expect(() => judged(["mm/s rms"], ["2 mm/s rms", "9 mm/s rms"])).toThrow("two of velocity rms");
    expect(() => judged(["um pp"], ["2 mm/s rms", "60 um pp", "0.5 in/s rms at 25 Hz"])).toThrow(
      "of several directions",
    );
    expect(judged(["um pp"], ["2 mm/s rms", "60 um pp", "2 mm/s pk"])).toEqual([["um pp", 60]]);
  });

  it("the one of the column's quantity before one whose frequency is known", () => {
    expect(judged(["mm/s rms"], ["100 um rms at 25 Hz", "9 mm/s pk"])).toEqual([["mm/s rms", 6.36396]]);
    expect(judged(["mm/s rms", "um pp"], ["100 um pp at 25 Hz", "9 mm/s rms"])).toEqual([
      ["mm/s rms", 9],
      ["um pp", 100],
    ]);
  });

  it("one whose frequency is known, where none is of the column's quantity", () => {
    // 100 um peak-to-peak at 25 Hz: 100 / (2 root 2) um RMS times 2 pi 25 Hz; common practice, no source
    expect(judged(["mm/s rms"], ["0.1 g rms", "100 um pp at 25 Hz"])).toEqual([["mm/s rms", 5.5536]]);
    expect(judged(["mm/s rms"], ["100 um pp at 25 Hz", "0.1 g rms"])).toEqual([["mm/s rms", 5.5536]]);
  });
});
