import fc from "fast-check";
import { VeladisError } from "veladis";
import { type ImmunitySettings, shockImmunity, velocityOf } from "veladis/protection";
import { butterworth, responseAt } from "veladis/signal";
import { describe, expect, it } from "vitest";

const refusalOf = (act: () => unknown): VeladisError | undefined => {
  try {
    act();
    return undefined;
  } catch (error) {
    if (VeladisError.is(error)) return error;
    throw error;
  }
};

const rates = fc.double({ min: 1, max: 1e6, noNaN: true });

describe("the corner of a high-pass and the sampling rate", () => {
  it("velocityOf refuses a corner at half the rate or above, whatever the rate", () => {
    fc.assert(
      fc.property(rates, fc.double({ min: 0.5, max: 1e3, noNaN: true }), (rate, share) => {
        const refused = refusalOf(() => velocityOf([0, 1, 0], rate, share * rate));
        expect([refused?.code, refused?.parameter]).toEqual(["out-of-range", "highPass"]);
      }),
    );
  });

  it("velocityOf dies away behind a pulse with every corner below half the rate", () => {
    fc.assert(
      fc.property(rates, fc.double({ min: 0.01, max: 0.499, noNaN: true }), (rate, share) => {
        const pulse = new Float64Array(4000);
        pulse[0] = rate;
        const velocity = velocityOf(pulse, rate, share * rate);
        expect(Math.abs(velocity.at(-1) as number)).toBeLessThan(1e-3 * Math.max(...velocity.map(Math.abs)));
      }),
    );
  });

  it("responseAt tells of no frequency that such samples cannot show", () => {
    const filter = butterworth({ kind: "high-pass", order: 2, edges: [10], rate: 1000 });
    expect(responseAt(filter, 500, 1000).gain).toBeCloseTo(1, 12);
    fc.assert(
      fc.property(fc.double({ min: 500.001, max: 1e6, noNaN: true }), (hertz) => {
        const refused = refusalOf(() => responseAt(filter, hertz, 1000));
        expect([refused?.code, refused?.parameter]).toEqual(["out-of-range", "hertz"]);
      }),
    );
  });
});

describe("the corner of a device that forms velocity", () => {
  const settings = {
    ...{ threshold: "0.35 in/s pk", hysteresis: "10 %", onDelay: 0, timerResets: "below threshold" },
    detector: { kind: "rms", averaging: 1 },
  } as const satisfies ImmunitySettings;
  const refused = (highPass: number) =>
    refusalOf(() => shockImmunity({ ...settings, highPass }, "0.12 in/s pk at 1180 r/min", { milliseconds: [5] }));

  it.each([40_001, 1e5, 2e6, 1e9, 1e300])("is refused at %s Hz, as a setting", (highPass) => {
    const { code, parameter, option } = refused(highPass) ?? {};
    expect([code, parameter, option]).toEqual(["out-of-range", "settings", "highPass"]);
  });

  it("is refused where no record holds what rings on behind a shock, and not the shock", () => {
    const { code, parameter, option } = refused(0.001) ?? {};
    expect([code, parameter, option]).toEqual(["out-of-range", "settings", "highPass"]);
  });

  it("is taken up to 40 kHz", () => {
    expect(refused(40_000)).toBeUndefined();
  });
});
