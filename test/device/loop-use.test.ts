import { describe, expect, it } from "vitest";
import { loopUse } from "../../src/device/index";

// a third of the span as the least for a trip: common practice, no source; shares by hand
describe("a trip in the range of its loop", () => {
  // biome-ignore format: a row of a table is a line
  it.each<[trip: string, range: string, share: number, remark: RegExp | null]>([
    ["7.6 mm/s rms", "0 to 20 mm/s rms", 0.38, null],
    ["0.35 in/s pk", "0 to 0.8 in/s pk", 0.4375, null],
    ["7 mm/s rms", "0 to 21 mm/s rms", 1 / 3, null],
    ["5 mm/s rms", "0 to 20 mm/s rms", 0.25, /at 25 % .* under a third.*1 % of the span is 4\.0 % of the trip.*ends near 10 mm\/s rms/],
    ["6 mm/s rms", "2 to 18 mm/s rms", 0.25, /ends near 10 mm\/s rms/],
    ["0.5 in/s pk", "0 to 50 mm/s pk", 0.254, /at 25 %/],
    ["22 mm/s rms", "0 to 20 mm/s rms", 1.1, /above the end .* does not carry it/],
    ["2 mm/s rms", "2 to 18 mm/s rms", 0, /at or below the start/],
  ])("%s of %s", (trip, range, share, remark) => {
    const use = loopUse(trip, range);
    expect(use.share).toBeCloseTo(share, 12);
    if (remark === null) expect(use.remark).toBeNull();
    else expect(use.remark).toMatch(remark);
  });

  it("is found across quantities by a frequency", () => {
    // 40 um pp at 100 Hz: pi x 100 x 40e-3 = 12.566 mm/s pk
    expect(loopUse("40 um pp", "0 to 25 mm/s pk", { at: { hertz: 100 } }).share).toBeCloseTo((Math.PI * 4) / 25, 12);
    expect(() => loopUse("40 um pp", "0 to 25 mm/s pk")).toThrow(/missing-frequency|frequency/);
  });
});
