import fc from "fast-check";
import { type Amplitude, type Assumption, convertAmplitude, parseAmplitude } from "veladis";
import { explain } from "veladis/explain";
import { baseline, checkAgainstKnown, proposeSetpoints, TripLogic, tripPointTest } from "veladis/protection";
import { currentLoop, sensor } from "veladis/sensor";
import { overall } from "veladis/signal";
import { describe, expect, it } from "vitest";
import { replay } from "../amplitude/replay";
import { settings as tripSettings } from "../trip/trip-settings";

const HERTZ = 50;
const AT = { at: `${HERTZ} Hz` } as const;

/** Quantity by unit and detector, written apart from the library: what an independent reader of the types needs. */
const orders: Readonly<Record<string, number>> = { um: 0, mil: 0, "mm/s": 1, "in/s": 1, "m/s2": 2, g: 2 };
const types = ["mm/s rms", "mm/s pk", "in/s pk", "um pp", "mil pk", "m/s2 rms", "g pk"] as const;
type Type = (typeof types)[number];

/** What one conversion assumes at a frequency, by the rules of the trade: another quantity, and RMS against a peak. */
function assumedBetween(from: Type, to: Type): Assumption[] {
  const [[unit, detector], [otherUnit, otherDetector]] = [from.split(" "), to.split(" ")] as [
    [string, string],
    [string, string],
  ];
  return [
    ...(orders[unit] === orders[otherUnit] ? [] : (["one-frequency"] as const)),
    ...((detector === "rms") === (otherDetector === "rms") ? [] : (["sine"] as const)),
  ];
}

/** A reading that came in some way, the type it has and what was assumed for it. */
interface Sourced {
  readonly reading: Amplitude;
  readonly type: Type;
  readonly assumed: readonly Assumption[];
}

const accelerometer = sensor("100 mV/g");
const loop = currentLoop("0 to 25 mm/s rms");
const type = fc.constantFrom(...types);
const level = fc.double({ min: 0.5, max: 3, noNaN: true });

const given = fc.tuple(level, type).map(([value, of]): Sourced => {
  return { reading: parseAmplitude(`${value} ${of} at ${HERTZ} Hz`), type: of, assumed: [] };
});
const byLoop = fc.tuple(fc.double({ min: 4.5, max: 6, noNaN: true }), type).map(([milliamperes, to]): Sourced => {
  return { reading: loop.reading(milliamperes, to, AT), type: to, assumed: assumedBetween("mm/s rms", to) };
});
const bySensor = fc.tuple(level, type).map(([volts, to]): Sourced => {
  return {
    reading: accelerometer.reading(`${volts * 10} mV pk`, to, AT),
    type: to,
    assumed: assumedBetween("g pk", to),
  };
});
const wave = Float64Array.from({ length: 4096 }, (_, i) => 3 * Math.sin((2 * Math.PI * 80 * i) / 4096));
const byOverall = type.map((to): Sourced => {
  const computed = overall(wave, { rate: 4096, unit: "mm/s", band: [10, 1000], as: "mm/s rms" }) as Amplitude;
  const reading = convertAmplitude(computed, to, AT);
  return { reading, type: to, assumed: [...(computed.assumed ?? []), ...assumedBetween("mm/s rms", to)] };
});

/** A reading after some more conversions. */
const sourced = fc
  .tuple(fc.oneof(given, byLoop, bySensor, byOverall), fc.array(type, { maxLength: 3 }))
  .map(([start, chain]) =>
    chain.reduce<Sourced>(
      ({ reading, type: from, assumed }, to) => ({
        reading: convertAmplitude(reading, to, AT),
        type: to,
        assumed: [...assumed, ...assumedBetween(from, to)],
      }),
      start,
    ),
  );

const settings = { machine: "pump 3000 r/min", limits: (one: Type, other: Type) => [one, other] } as const;
const set = (assumed: Iterable<string>): string[] => [...new Set(assumed)].sort();

describe("what was assumed, from a reading to the last answer", () => {
  it("is the union over all steps: readings, baseline, proposal, trip, check", () => {
    fc.assert(
      fc.property(
        fc.array(sourced, { minLength: 3, maxLength: 5 }),
        fc.tuple(type, type, type, type, type),
        ([...readings], [as, limitType, deviceType, thresholdType, knownType]) => {
          const atAll = (to: Type) =>
            readings.flatMap(({ type: from, assumed }) => [...assumed, ...assumedBetween(from, to)]);
          const steady = baseline(
            readings.map(({ reading }) => reading),
            { as, ...AT },
          );
          const byBaseline = set(atAll(as));
          expect(set(steady.assumed)).toEqual(byBaseline);
          expect(set(steady.level.assumed)).toEqual(byBaseline);

          const big = (of: Type, value: number) => convertAmplitude(`${value} mm/s rms`, of, AT).value;
          const step = `${big(deviceType, 0.001)} ${deviceType}`;
          const limits = {
            "B/C": `${big(limitType, 400)} ${limitType}`,
            "C/D": `${big(limitType, 800)} ${limitType}`,
            source: "maker",
          };
          const proposal = proposeSetpoints({ baseline: steady, limits, machine: settings.machine, device: { step } });
          const byProposal = set([
            ...byBaseline,
            ...assumedBetween(as, deviceType),
            ...assumedBetween(limitType, deviceType),
          ]);
          expect(set(proposal.assumed)).toEqual(byProposal);
          const alarm = proposal.alarm as NonNullable<typeof proposal.alarm>;
          expect(set(alarm.assumed)).toEqual(byProposal);
          expect(set(alarm.reset.assumed ?? [])).toEqual(byProposal);

          const known = `${big(knownType, 400)} ${knownType} at ${HERTZ} Hz`;
          const check = checkAgainstKnown({ known, indicated: alarm.stored, tolerance: "5 %" });
          const byCheck = set([...byProposal, ...assumedBetween(deviceType, knownType)]);
          expect(set(check.assumed)).toEqual(byCheck);

          const logic = new TripLogic({ ...tripSettings, threshold: alarm.stored, hysteresis: "5 %" });
          expect(set(logic.rules.assumed)).toEqual(byProposal);
          const [first] = logic.run([1e9, 1e9], 60, { as: thresholdType, ...AT });
          const byTrip = set([...byProposal, ...assumedBetween(thresholdType, deviceType)]);
          expect(set(logic.status.assumed)).toEqual(byTrip);
          expect(set(first?.assumed ?? [])).toEqual(byTrip);

          // every way can be told, its numbers come out when carried out, and it survives JSON
          for (const answer of [steady, alarm.asked, alarm, alarm.reset, check]) {
            const { steps } = explain(JSON.parse(JSON.stringify(answer)));
            // half-way between two steps, and right on one where it is rounded down or up, the last bit of either
            // reckoning decides
            const isTie = steps.some(({ operation, of, by = 1 }) => {
              const share = (steps[of[0] ?? -1]?.value ?? 0) / by;
              const tie = operation === "nearest step" ? 0.5 : 0;
              return /step$|^steps/.test(operation) && Math.abs(share - tie - Math.round(share - tie)) < 1e-9;
            });
            if (isTie) continue;
            replay(steps).forEach((value, i) => {
              const told = steps[i]?.value as number;
              expect(Math.abs(value - told)).toBeLessThanOrEqual(Math.abs(told) * 1e-12 + 1e-300);
            });
          }
          const { steps } = explain(alarm.asked);
          expect(Math.abs((replay(steps).at(-1) as number) / alarm.asked.value - 1)).toBeLessThan(1e-12);
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe("an explanation of", () => {
  const readings = [2, 2.1, 1.9, 2, 2.2, 2, 2.1, 1.9, 2, 2.05].map((value) => `${value} mm/s rms`);

  it("an alarm: its baseline, its limit, the rule, the device", () => {
    const { alarm } = proposeSetpoints({
      baseline: baseline(readings, { as: "mm/s rms" }),
      limits: { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker" },
      device: { step: "0.2 mm/s rms" },
    });
    expect(explain(alarm as NonNullable<typeof alarm>).text.split("\n")).toEqual([
      "2 mm/s rms  (median of 10 readings)",
      "4.5 mm/s rms  (B/C of maker)",
      "4.5 mm/s rms x 0.25 = 1.125 mm/s rms  (a quarter of the limit)",
      "2 mm/s rms + 1.125 mm/s rms = 3.125 mm/s rms  (alarm)",
      "3.125 mm/s rms down to a whole number of steps of 0.2 = 3 mm/s rms  (steps of the device)",
    ]);
  });

  it("a capped alarm: what was wanted, and what the rule allows", () => {
    const { alarm, assumed } = proposeSetpoints({
      baseline: convertAmplitude("9 mm/s pk", "mm/s rms"),
      limits: { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker" },
    });
    expect(alarm?.asked.value).toBe(5.625);
    expect(assumed).toEqual(["sine"]);
    expect(
      explain(alarm as NonNullable<typeof alarm>)
        .text.split("\n")
        .at(-1),
    ).toBe("smallest of (7.489 mm/s rms, 5.625 mm/s rms) = 5.625 mm/s rms  (no more than the rule allows)");
  });

  it("a statistical alarm: mean and standard deviation of the readings", () => {
    const steady = baseline(readings, { as: "mm/s rms" });
    const { alarm } = proposeSetpoints({ baseline: steady });
    const { steps, text } = explain(alarm as NonNullable<typeof alarm>);
    expect(replay(steps).at(-1)).toBeCloseTo(steady.mean + 3 * steady.standardDeviation, 12);
    expect(text).toContain("(mean of 10 readings)");
    expect(text).toContain("(3 standard deviations)");
  });

  it("a check: the error, and its share of the known level", () => {
    const check = checkAgainstKnown({ known: "8 mm/s rms at 2400 r/min", indicated: "0.41 in/s pk", tolerance: "5 %" });
    expect(check.assumed).toEqual(["sine"]);
    expect(explain(check).text.split("\n").slice(-2)).toEqual([
      "7.364 mm/s rms - 8 mm/s rms = -0.6362 mm/s rms  (error)",
      "-0.6362 mm/s rms / 0.08 = -7.952 %  (a percent of the known level)",
    ]);
  });

  it("a trip point: midway between two levels of the shaker", () => {
    const steps = [
      { level: "12.4 mm/s pk", set: false },
      { level: "12.9 mm/s pk", set: true },
    ];
    const point = tripPointTest("9 mm/s rms", steps, { tolerance: "5 %" });
    expect(point.assumed).toEqual(["sine"]);
    expect(explain(point.indicated).text).toContain("(midway)");
    expect(replay(explain(point.indicated).steps).at(-1)).toBeCloseTo(12.65 / Math.SQRT2, 12);
  });
});

describe("a baseline of readings by a loop", () => {
  it("keeps the state of the loop, and warns of readings outside its range", () => {
    const reading = (milliamperes: number) => loop.reading(milliamperes, "in/s pk");
    const inside = baseline([5, 5.1, 5.2].map(reading), { as: "in/s pk" });
    expect([inside.level.state, inside.assumed]).toEqual(["in range", ["sine"]]);
    expect(inside.warnings.join()).not.toContain("loop");
    const clipped = baseline([20, 20.8, 20.9, 3.9].map(reading), { as: "in/s pk" });
    expect(clipped.level.state).toBe("above range");
    expect(clipped.warnings.slice(-2)).toEqual([
      "2 of 4 readings came with the loop signal above range: the true level is not known",
      "1 of 4 readings came with the loop signal below range: the true level is not known",
    ]);
    const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker" };
    const { assumed, warnings } = proposeSetpoints({ baseline: reading(20.8), limits });
    expect(assumed).toEqual(["sine"]);
    expect(warnings.map(({ text }) => text)).toContain(
      "the reading came with the loop signal above range: the true level is not known",
    );
  });

  it("keeps a crest factor and a frequency that all readings have", () => {
    const peak = (value: number) => convertAmplitude(`${value} g rms at 80 Hz`, "g pk", { crestFactor: 4 });
    const same = baseline([1, 1.1, 1.2].map(peak), { as: "g pk" });
    expect(same.level).toMatchObject({ crestFactor: 4, hertz: 80, assumed: ["crest-factor"] });
    expect(convertAmplitude(same.level, "g rms").value).toBeCloseTo(1.1, 12);
    const mixed = baseline([peak(1), peak(1.1), "4 g pk"], { as: "g pk" });
    expect(mixed.level.crestFactor).toBeUndefined();
    expect(mixed.level.hertz).toBeUndefined();
  });
});
