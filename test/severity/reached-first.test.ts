import { describe, expect, it } from "vitest";
import { judge } from "../../src/severity/index";

/** The distance to the nearest limit with a worse zone above it, of a displacement at a frequency, by hand. */
function byHand(um: number, hertz: number, limits: { readonly velocity: number; readonly shaft: number }): number[] {
  // v rms = x pp / 2 / sqrt 2 x 2 pi f
  const velocity = (um / 1000 / 2 / Math.SQRT2) * 2 * Math.PI * hertz;
  return [limits.velocity / velocity, limits.shaft / um];
}

describe("the margin of a reading that two places are judged for", () => {
  // the C/D limits are those of the tables, from memory: 11.2 mm/s rms of ISO 10816-1:1995, class III; 13 200 over the root
  // of 30 000 r/min, 76.2 um pp, of ISO 7919-3:2009. The way from a displacement to a velocity is worked out by hand.
  it("is that of the limit reached first, though the reading is in a better zone by that scheme", () => {
    const verdict = judge("51 um pp at 50 Hz", "gear drive 900 kW");
    const [housing, shaft] = ["iso-10816-1-1995-annexB", "iso-7919-3-2009"].map((id) =>
      verdict.judgements.find(({ scheme }) => scheme === id),
    );
    expect([verdict.zone, housing?.zone, shaft?.zone]).toEqual(["C", "C", "B"]);
    const [ofHousing, ofShaft] = byHand(51, 50, {
      velocity: 11.2,
      shaft: 13200 / Math.sqrt(30000),
    });
    expect(ofHousing).toBeGreaterThan(ofShaft as number);
    expect(housing?.margin.ratio).toBeCloseTo(ofHousing as number, 9);
    expect(verdict.margin.ratio).toBeCloseTo(ofShaft as number, 9);
    expect([verdict.limit.name, verdict.limit.standard]).toEqual(["C/D", "ISO 7919-3"]);
    expect(verdict.history.at(-1)?.note).toContain("limit C/D 76.2");
    expect(verdict.history.at(-1)?.value).toBe(verdict.margin.ratio);
  });

  it("is that of the nearest of two schemes in the same zone, though the other leaves worse zones open", () => {
    const { margin, judgements } = judge("51 um pp", "gear drive");
    const worst = judgements.filter(({ zone }) => zone === judgements[0]?.zone);
    expect(margin.ratio).toBe(Math.min(...worst.map((one) => one.margin.ratio)));
  });

  it("is never above that to any limit that ends the zone in front", () => {
    for (const kind of ["motor", "gear drive", "steam turbine", "generator", "vertical pump", "screw compressor"]) {
      for (const rest of ["", " 900 kW", " 45 kW 1480 r/min"]) {
        for (const um of [10, 20, 33, 45, 51, 60, 80]) {
          for (const at of ["", " at 25 Hz", " at 50 Hz"]) {
            const { zone, margin, judgements, kind: ofFirst } = judge(`${um} um pp${at}`, `${kind}${rest}`);
            if (zone === "D" || ofFirst !== "zones") continue;
            const all = judgements.flatMap(({ criteria }) => criteria).filter(({ bound }) => bound !== "most");
            const next = all.flatMap(({ limits, zones }) => {
              const limit = Object.values(limits)[zones.indexOf(zone)];
              return limit === undefined || !zones.includes(zone) ? [] : [limit.value / um];
            });
            expect(margin.ratio, `${um} um pp${at}, ${kind}${rest}`).toBeCloseTo(Math.min(...next), 9);
          }
        }
      }
    }
  });
});
