import fc from "fast-check";
import { convert } from "veladis";
import { mechanicalSwitch } from "veladis/protection";
import { describe, expect, it } from "vitest";

describe("an acceleration-operated switch", () => {
  it("stands for the velocity and displacement of a sine at each speed", () => {
    const { rows } = mechanicalSwitch("2 g pk", { speeds: ["900 r/min", "50 Hz"] });
    expect(rows.map(({ speed }) => speed)).toEqual([900, 3000]);
    for (const { hertz, velocity, displacement } of rows) {
      const at = { at: { hertz } };
      expect(velocity.value).toBeCloseTo(convert(2, "g pk", "mm/s rms", at), 9);
      expect(displacement.value).toBeCloseTo(convert(2, "g pk", "um pp", at), 6);
    }
  });

  it("cannot protect below the speed at which the limit makes just its setting", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.constantFrom("7.1 mm/s rms", "0.35 in/s pk", "100 um pp"),
        (g, limit) => {
          const setting = `${g.toFixed(6)} g pk`;
          const { blindBelow } = mechanicalSwitch(setting, { limit });
          const { hertz } = blindBelow as { hertz: number };
          const at = (share: number) =>
            mechanicalSwitch(setting, { limit, speeds: [{ hertz: hertz * share }] }).rows[0]?.protects;
          expect([at(0.99), at(1.01)]).toEqual([false, true]);
        },
      ),
    );
  });

  it("operates at a limit that makes just its setting, and says nothing of protection without a limit", () => {
    const { rows } = mechanicalSwitch("2 g pk", { speeds: ["1490 r/min"] });
    expect(rows[0]).toMatchObject({ timesLimit: null, protects: null });
    const limit = `${rows[0]?.velocity.value} mm/s rms`;
    const { rows: held, blindBelow } = mechanicalSwitch("2 g pk", { speeds: ["1490 r/min"], limit });
    expect(held[0]).toMatchObject({ protects: true });
    expect(held[0]?.timesLimit).toBeCloseTo(1, 12);
    expect(blindBelow?.speed).toBeCloseTo(1490, 6);
    expect(blindBelow?.hertz).toBeCloseTo(1490 / 60, 8);
  });

  it("refuses a setting that is no acceleration and a limit that is one", () => {
    expect(() => mechanicalSwitch("7 mm/s rms")).toThrow(expect.objectContaining({ code: "wrong-quantity" }));
    expect(() => mechanicalSwitch("2 g pk", { limit: "1 g pk" })).toThrow(
      expect.objectContaining({ code: "wrong-quantity" }),
    );
  });
});
