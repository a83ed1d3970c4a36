import fc from "fast-check";
import { parseAmplitude } from "veladis";
import { type BenchSettings, injectionPlan } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { codeAndExpectedOf, refusalOf } from "../refusals/refusal-of";

const settings = {
  threshold: "7.6 mm/s rms",
  hysteresis: "5 %",
  onDelay: 4,
  latching: true,
} as const satisfies BenchSettings;

const byLoop = { ...settings, loop: "0 to 20 mm/s rms" } as const;
const TRIP = "raise to above the threshold and take the time";

/** The signals of the steps that have one. */
const signalsOf = (plan: ReturnType<typeof injectionPlan>) =>
  plan.steps.flatMap(({ signals }) => signals.map(({ value }) => value));

describe("a plan by a current", () => {
  it("asks for the currents of a linear loop of 4 to 20 mA", () => {
    // a worked example of 4-20 mA, instrumentationtools.com: pH 3 to 11, 9.32 is 79 % and 16.64 mA; here as a trip
    const plan = injectionPlan({ ...settings, threshold: "9.32 mm/s rms", loop: "3 to 11 mm/s rms" }, { inject: "mA" });
    const above = plan.steps.find(({ what }) => what === TRIP);
    // 5 % of tolerance above: 9.32 / 0.95 = 9.8105, which is 17.6211 mA, and up to a step of 0.01 mA
    expect(above?.signals).toEqual([{ value: expect.closeTo(17.63, 9), type: "mA", by: "3 to 11 mm/s rms" }]);
    // the same page: 40 % of the signal is 10.4 mA
    const shares = injectionPlan({ ...settings, threshold: "16 mm/s rms", loop: "0 to 20 mm/s rms" }, { inject: "mA" });
    expect(shares.steps[1]?.what).toBe("reading at 50 % of the threshold");
    expect(signalsOf(shares)[1]).toBeCloseTo(10.4, 9);
  });

  it("ends at the final element, with the machine stopped", () => {
    const { steps } = injectionPlan(byLoop, { inject: "mA", finalElement: "circuit breaker of the pump" });
    const last = steps.at(-1);
    expect(last?.what).toMatch(
      /^with the machine stopped .* circuit breaker of the pump: raise to above the threshold/,
    );
    expect(last?.expect).toContain("circuit breaker of the pump moves to its safe state");
    expect(last?.signals[0]?.value).toBe(steps.find(({ what }) => what === TRIP)?.signals[0]?.value);
  });

  it("says first what it does not prove and what can hurt, and last what is put back", () => {
    const { before, notes } = injectionPlan(byLoop, { inject: "mA" });
    expect(before[0]).toMatch(/sensor, its mounting and cable, and the transmitter stay unproven/);
    const said = before.join("\n");
    for (const one of [/trips a running machine/, /permit/, /live/, /licensed/, /maker's instructions/]) {
      expect(said).toMatch(one);
    }
    expect(notes.at(-1)).toMatch(/lift every bypass, see that the trip of the machine is armed, .* second person/);
    expect(notes.join("\n")).toContain("how well the source is known is not told, and is taken as exact");
  });

  it("has no frequency, and says so where one is told", () => {
    expect(injectionPlan(byLoop, { inject: "mA" }).steps.map(({ hertz, speed }) => [hertz, speed])).toEqual(
      injectionPlan(byLoop, { inject: "mA" }).steps.map(() => [null, null]),
    );
    expect(codeAndExpectedOf(() => injectionPlan({ ...byLoop, frequencies: ["80 Hz"] }, { inject: "mA" }))).toMatch(
      /^unknown-option: neither frequencies nor a band/,
    );
  });

  it("takes the per cent of a source of the current, and milliamperes as they are", () => {
    const tripBy = (uncertainty: string) => {
      const plan = injectionPlan(
        { ...byLoop, tolerance: "1 %" },
        { inject: "mA", uncertainty, resolution: "0.0001 mA" },
      );
      return plan.steps.find(({ what }) => what === TRIP)?.signals[0]?.value;
    };
    const { value } = parseAmplitude(byLoop.threshold as string);
    // 4 mA + 16 mA x level / 20, then what the source may be off on top
    const current = 4 + (16 * value) / 0.99 / 20;
    expect(tripBy("0.5 % (k=2)")).toBeCloseTo(current / 0.995, 3);
    expect(tripBy("0.02 mA (k=2)")).toBeCloseTo(current + 0.02, 3);
    expect(tripBy("0.02 mA (k=1)")).toBeCloseTo(current + 0.04, 3);
    expect(tripBy("0.1 mm/s rms (k=2)")).toBeCloseTo(current + 0.08, 3);
    expect(tripBy("0 % (k=2)")).toBeCloseTo(current, 3);
    expect(refusalOf(() => tripBy("0.1 dB (k=2)"))).toMatchObject({ code: "unknown-unit", option: "uncertainty" });
    expect(refusalOf(() => tripBy("90 % (k=2)"))).toMatchObject({ code: "out-of-range", option: "uncertainty" });
  });

  it("beyond what the loop carries says so, and expects nothing of it", () => {
    // a live zero of 4 to 20 mA measures up to 20.5 mA (NAMUR NE 43, from memory): 19.9 / 0.95 of 20 mm/s is 20.76 mA
    const { steps, possible, before } = injectionPlan({ ...byLoop, threshold: "19.9 mm/s rms" }, { inject: "mA" });
    expect(possible).toBe(false);
    const cannot = steps.filter((step) => !step.possible);
    expect(cannot.map(({ limitedBy }) => limitedBy)).toEqual(cannot.map(() => ["loop"]));
    expect(cannot.map(({ what }) => what)).toContain(TRIP);
    expect(before.join("\n")).toMatch(/the source cannot do steps? \d.*: what they prove stays unproven/);
    const unset = steps.find(({ expect: text }) => text.startsWith("if the output is set"));
    expect(unset?.expect).toContain("which this source does not do");
  });

  it("whatever settings and source may be off, the trip is surely passed and the hold surely is not", () => {
    fc.assert(
      fc.property(
        fc.record({
          threshold: fc.double({ min: 2, max: 12, noNaN: true }),
          tolerance: fc.double({ min: 0.5, max: 10, noNaN: true }),
          uncertainty: fc.double({ min: 0.05, max: 2, noNaN: true }),
          end: fc.double({ min: 16, max: 50, noNaN: true }),
          step: fc.constantFrom(undefined, 0.001, 0.01, 0.05),
        }),
        ({ threshold, tolerance, uncertainty, end, step }) => {
          const plan = injectionPlan(
            {
              ...settings,
              threshold: `${threshold} mm/s rms`,
              tolerance: `${tolerance} %`,
              loop: `0 to ${end} mm/s rms`,
            },
            {
              inject: "mA",
              uncertainty: `${uncertainty} % (k=2)`,
              ...(step !== undefined && { resolution: `${step} mA` }),
            },
          );
          const levelOf = (words: string): number => {
            const current = plan.steps.find(({ what }) => what.startsWith(words))?.signals[0]?.value as number;
            const steps = current / (step ?? 0.01);
            expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
            return ((current - 4) / 16) * end;
          };
          // per cent of the current, whose live zero is off with it
          const off = (4 + (16 * levelOf(TRIP)) / end) * (1 - uncertainty / 100);
          const least = ((off - 4) / 16) * end * (1 - tolerance / 100);
          expect(least).toBeGreaterThanOrEqual(threshold * (1 - 1e-9));
          expect(levelOf("hold just below")).toBeLessThanOrEqual(threshold * (1 + 1e-9));
        },
      ),
      { numRuns: 100 },
    );
  });
});

describe("a plan by a voltage", () => {
  const bySensor = {
    ...settings,
    threshold: "10 mm/s pk",
    sensor: "100 mV/g",
    frequencies: ["159.154943 Hz"],
  } as const;

  it("asks for the voltage of the sensor at the frequency", () => {
    // at 1000 rad/s 10 mm/s is 10 m/s2 (practice of calibration, from memory; the relation of a sine); 100 mV/g by g of
    // 9.80665 m/s2 is 10.2 mV per m/s2 (API 670, from memory)
    const { steps } = injectionPlan(bySensor, { inject: "mV" });
    const half = steps.find(({ what }) => what.startsWith("reading at 50 %"));
    expect(half?.hertz).toBeCloseTo(1000 / (2 * Math.PI), 6);
    expect(half?.signals[0]).toMatchObject({ type: "mV pk", by: "100 mV/g" });
    // 5 m/s2 by 10.197 mV, in three digits
    expect(half?.signals[0]?.value).toBeCloseTo(51, 6);
  });

  it("is told by the detector of the threshold", () => {
    // a sine of 1 g pk through 100 mV/g is 70.71 mV on an r.m.s. voltmeter (identity)
    const one = injectionPlan({ ...settings, threshold: "1 g rms", sensor: "100 mV/g" }, { inject: "mV" });
    expect(one.steps[1]?.signals[0]).toMatchObject({ value: expect.closeTo(50, 6), type: "mV rms" });
    expect(one.notes.join()).toContain("whose voltage is told by the detector of the threshold");
  });

  it("takes one frequency, within the band of the device", () => {
    const two = { ...bySensor, frequencies: ["80 Hz", "40 Hz"] } as const;
    expect(codeAndExpectedOf(() => injectionPlan(two, { inject: "mV" }))).toMatch(/^out-of-range: one frequency/);
    const outside = { ...bySensor, band: { lowest: "10 Hz", highest: "40 Hz" } } as const;
    expect(codeAndExpectedOf(() => injectionPlan(outside, { inject: "mV" }))).toMatch(
      /^out-of-range: a frequency within the band/,
    );
  });
});

describe("a source that is not known well enough", () => {
  it.each([
    ["no loop", () => injectionPlan(settings, { inject: "mA" }), "missing-option", "loop"],
    ["no sensor", () => injectionPlan(settings, { inject: "mV" }), "missing-option", "sensor"],
    [
      "a resolution in volts",
      () => injectionPlan(byLoop, { inject: "mA", resolution: "0.01 V" }),
      "syntax",
      "resolution",
    ],
    [
      "a source as far off as its threshold",
      () => injectionPlan(byLoop, { inject: "mA", uncertainty: "120 % (k=2)" }),
      "out-of-range",
      undefined,
    ],
  ])("%s is refused", (_, made, code, option) => {
    const refused = refusalOf(made);
    expect([refused.code, ...(option === undefined ? [] : [refused.option])]).toEqual([
      code,
      ...(option === undefined ? [] : [option]),
    ]);
  });
});
