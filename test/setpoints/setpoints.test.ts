import fc from "fast-check";
import { convert } from "veladis";
import {
  baseline,
  cautions,
  delayAdvice,
  type ProposalRequest,
  proposeSetpoints,
  type setpointWarnings,
} from "veladis/protection";
import { describe, expect, it } from "vitest";
import { alarmRules, pumpCeilings } from "../references/alarms";
import { statistical, times } from "../references/protection-logic";

const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker" } as const;
const steady = Array.from({ length: 40 }, (_, i) => 2 + 0.05 * Math.sin(i));
const codes = (request: ProposalRequest) => proposeSetpoints(request).warnings.map(({ code }) => code);

describe("baseline", () => {
  it("agrees with numbers worked by hand", () => {
    // 1 2 3 4 100: median 3, distances 0 1 1 2 97 so median distance 1, mean 22, variance 7610/4
    const found = baseline([4, 2, 100, 1, 3], { as: "mm/s rms", enough: 3 });
    expect(found).toMatchObject({
      count: 5,
      excluded: 0,
      median: 3,
      mean: 22,
      spread: 1.4826,
      lowest: 1,
      highest: 100,
    });
    expect(found.standardDeviation).toBeCloseTo(Math.sqrt(7610 / 4), 12);
    expect(found.outliers).toMatchObject([{ index: 2, value: 100 }]);
    expect(found.withoutOutliers).toMatchObject({ count: 4, mean: 2.5 });
    expect(found.percentile.value).toBeCloseTo(4 + 0.8 * 96, 12);
  });

  it("states any percentile, from the lowest reading to the highest", () => {
    const at = (percentile: number) => baseline([4, 2, 100, 1, 3], { as: "mm/s rms", percentile }).percentile;
    expect([at(0), at(50), at(100)]).toEqual([
      { percent: 0, value: 1 },
      { percent: 50, value: 3 },
      { percent: 100, value: 100 },
    ]);
    for (const beyond of [-0.1, 100.1]) expect(() => at(beyond)).toThrow(/a percentile from 0 to 100/);
  });

  it("takes mixed units, across quantities with a frequency, and says what was assumed", () => {
    const found = baseline(["2 mm/s rms", "0.1114 in/s pk", "18 um rms at 1500 r/min", "6.366 um rms at 50 Hz"], {
      as: "mm/s rms",
    });
    expect(found.lowest).toBeCloseTo(2, 3);
    expect(found.assumed).toEqual(["sine", "one-frequency"]);
    expect(() => baseline(["2 mm/s rms", "3 um rms", "2 mm/s rms"], { as: "mm/s rms" })).toThrow(
      expect.objectContaining({ code: "missing-frequency" }),
    );
  });

  it("leaves start-up out by mask, speed and time", () => {
    const readings = [9, 8, 2, 2.1, 1.9];
    const speeds = { readings: [0, 800, 1490, 1491, 1489], atLeast: "1400 r/min" };
    for (const how of [
      { mask: [false, false, true, true, true] },
      { speed: speeds },
      { time: { readings: [0, 5, 30, 60, 90], start: 20 } },
    ]) {
      expect(baseline(readings, { as: "mm/s rms", ...how })).toMatchObject({ count: 3, excluded: 2, median: 2 });
    }
  });

  it("counts readings at the ends of the speeds and times that count, and leaves out all beyond", () => {
    const readings = [1, 2, 3, 4, 5, 6];
    const counted = (how: object) => baseline(readings, { as: "mm/s rms", ...how });
    const speeds = [1399, 1400, 1450, 1480, 1500, 1501];
    const both = { readings: speeds, atLeast: "1400 r/min", atMost: "1500 r/min" };
    expect(counted({ speed: both })).toMatchObject({ count: 4, lowest: 2, highest: 5 });
    expect(counted({ speed: { ...both, atLeast: undefined } })).toMatchObject({ lowest: 1, highest: 5 });
    expect(counted({ speed: { ...both, atMost: undefined } })).toMatchObject({ lowest: 2, highest: 6 });
    // the same speeds in hertz and in radians a second, whose rounding leaves nothing out
    for (const [unit, per] of [
      ["Hz", 1 / 60],
      ["rad/s", Math.PI / 30],
    ] as const) {
      const speed = { ...both, unit, readings: speeds.map((one) => one * per) };
      expect(counted({ speed })).toMatchObject({ count: 4, lowest: 2, highest: 5 });
    }
    const times = [-10, 0, 30, 60, 90, 90.5];
    expect(counted({ time: { readings: times, start: 0, end: 90 } })).toMatchObject({
      count: 4,
      lowest: 2,
      highest: 5,
    });
    expect(counted({ time: { readings: times, end: 90 } })).toMatchObject({ count: 5, lowest: 1, highest: 5 });
    expect(counted({ time: { readings: times, start: 0 } })).toMatchObject({ count: 5, lowest: 2, highest: 6 });
    // all that is asked must hold
    const mask = [true, true, true, true, false, true];
    expect(counted({ mask, speed: both, time: { readings: times, start: 0 } })).toMatchObject({
      lowest: 2,
      highest: 4,
    });
  });

  it("takes the frequency it is told for readings without their own, and refuses another", () => {
    const told = { as: "mm/s rms", at: "25 Hz" } as const;
    const found = baseline(["18 um rms", "18 um rms at 25 Hz", "2 mm/s rms"], told);
    expect(found.lowest).toBe(2);
    expect(found.median).toBeCloseTo(convert(18, "um rms", "mm/s rms", { at: "25 Hz" }), 12);
    expect(() => baseline(["18 um rms", "18 um rms at 50 Hz", "2 mm/s rms"], told)).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    const own = baseline(["18 um rms at 25 Hz", "18 um rms at 50 Hz", "2 mm/s rms"], { as: "mm/s rms" });
    expect(own.highest).toBeCloseTo(convert(18, "um rms", "mm/s rms", { at: "50 Hz" }), 12);
    expect(baseline(["2 mm/s rms", "2 mm/s rms at 25 Hz", "2 mm/s rms"], { as: "mm/s rms" }).median).toBe(2);
  });

  it("scores as the modified z-score of Iglewicz and Hoaglin (NIST e-Handbook 1.3.5.17, from memory)", () => {
    // 0.6745 times the distance from the median over the median distance: 97 over 1
    const [outlier] = baseline([1, 2, 3, 4, 100], { as: "mm/s rms" }).outliers;
    expect(outlier?.score).toBeCloseTo(0.6745 * 97, 2);
  });

  it("flags beyond 3.5 spreads, not at them, and warns with the numbers of the case", () => {
    // 2 2 2 3 3 3 3 4 4 4 and 8: median 3, spread 1.4826
    const readings = [2, 2, 2, 3, 3, 3, 3, 4, 4, 4];
    const at = (far: number) => baseline([...readings, far], { as: "mm/s rms" });
    expect(at(3 + 3.5 * 1.4826).outliers).toEqual([]);
    expect(at(3 + 3.5 * 1.4826 + 1e-6).outliers).toMatchObject([{ index: 10 }]);
    expect(at(9)).toMatchObject({
      warnings: [
        "1 of 11 readings lie more than 3.5 spreads from the median; look at each",
        "the readings scatter widely: their spread is 49 % of the median; are they of one steady state?",
      ],
      withoutOutliers: { count: 10, mean: 3 },
    });
    expect(at(3).warnings).toEqual([expect.stringContaining("scatter widely")]);
    const { withoutOutliers } = baseline([1, 2, 100], { as: "mm/s rms" });
    expect(withoutOutliers).toEqual({ count: 2, mean: 1.5, standardDeviation: expect.closeTo(Math.SQRT1_2, 12) });
    expect(baseline(readings, { as: "mm/s rms" }).warnings).toEqual([expect.stringContaining("scatter widely")]);
    expect(baseline(readings, { as: "mm/s rms", enough: 11 }).warnings).toEqual([
      "10 steady readings are few; take at least 11 over the usual range of load and temperature",
      expect.stringContaining("scatter widely"),
    ]);
  });

  it("refuses two readings and warns of few", () => {
    expect(() => baseline([2, 2], { as: "mm/s rms" })).toThrow(expect.objectContaining({ code: "out-of-range" }));
    expect(baseline([2, 2.1, 2.2], { as: "mm/s rms" }).warnings[0]).toMatch(/3 steady readings are few/);
    expect(baseline(Array(20).fill(2), { as: "mm/s rms" }).warnings[0]).toMatch(/no scatter/);
    expect(() => baseline([2, 2, -2], { as: "mm/s rms" })).toThrow(expect.objectContaining({ code: "negative" }));
    expect(() => baseline([2, 2, 2], { as: "dB re 1 nm/s" })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => baseline([2, 2, 2], { as: "mm/s rms", mask: [true] })).toThrow(
      expect.objectContaining({ code: "length-mismatch" }),
    );
  });

  it("scales with its readings and does not mind their order", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0.1, max: 50, noNaN: true }), { minLength: 3, maxLength: 50 }), (given) => {
        const plain = baseline(given, { as: "mm/s rms" });
        const turned = baseline([...given].reverse(), { as: "mm/s rms" });
        const inches = baseline(
          given.map((value) => convert(value, "mm/s rms", "in/s rms")),
          { as: "in/s rms" },
        );
        expect(turned.median).toBe(plain.median);
        expect(turned.mean).toBeCloseTo(plain.mean, 9);
        expect(inches.median * 25.4).toBeCloseTo(plain.median, 9);
        expect(inches.standardDeviation * 25.4).toBeCloseTo(plain.standardDeviation, 9);
      }),
    );
  });
});

describe("alarm and trip against the rules of the standards", () => {
  it.each(alarmRules)("$id ($provenance)", ({ case: { baseline: level, BC, CD }, expected }) => {
    const { alarm, trip } = proposeSetpoints({
      baseline: `${level} mm/s rms`,
      limits: { "B/C": `${BC} mm/s rms`, "C/D": `${CD} mm/s rms`, source: "table" },
    });
    if ("alarm" in expected) expect(alarm?.asked.value).toBeCloseTo(expected.alarm, 9);
    else {
      expect(trip?.range[0]).toBeCloseTo(expected.tripLowest, 9);
      expect(trip?.range[1]).toBeCloseTo(expected.tripHighest, 9);
    }
  });

  it("trip does not follow the baseline", () => {
    const trips = ["0.5 mm/s rms", "2 mm/s rms", "4 mm/s rms"].map(
      (level) => proposeSetpoints({ baseline: level, limits }).trip?.asked.value,
    );
    expect(trips).toEqual([7.1, 7.1, 7.1]);
  });

  it("takes limits from a table, and the highest settings that one prints", () => {
    const motor = { baseline: "1 mm/s rms", machine: "motor 90 kW 1490 r/min rigid group 2" } as const;
    expect(proposeSetpoints({ ...motor, scheme: "iso-10816-3-2009" }).alarm?.asked.value).toBeCloseTo(1.7, 12);
    const { machine } = pumpCeilings;
    const pump = proposeSetpoints({ baseline: "4 mm/s rms", machine, scheme: "iso-10816-7-2009" });
    expect(pump.alarm?.asked.value).toBeCloseTo(pumpCeilings.alarm, 9);
    expect(pump.trip?.range[1]).toBeLessThanOrEqual(pumpCeilings.trip);
    const fan = proposeSetpoints({
      baseline: "2 mm/s rms",
      scheme: "iso-14694-2003",
      machine: "fan 90 kW 1480 r/min rigid BV-3",
    });
    expect([fan.alarm?.asked.value, fan.trip?.asked.value]).toEqual([7.1, 9]);
    const small = proposeSetpoints({
      baseline: "2 mm/s rms",
      scheme: "iso-14694-2003",
      machine: "fan 3 kW 1480 r/min rigid BV-2",
    });
    expect(small.trip).toBeNull();
    expect(small.warnings.map(({ code }) => code)).toContain("no shutdown");
  });

  it("has the statistical alternative beside it", () => {
    const { mean, standardDeviation, limits: wanted } = statistical;
    const spread = standardDeviation * Math.sqrt(2 / 3);
    const readings = [mean - spread * 1.5, mean, mean, mean + spread * 1.5];
    const found = baseline(readings, { as: "mm/s rms" });
    for (const [k] of wanted) {
      const { statistical: beside } = proposeSetpoints({ baseline: found, limits, k });
      expect(beside?.value).toBeCloseTo(found.mean + k * found.standardDeviation, 12);
    }
    const three = { ...found, mean, standardDeviation };
    for (const [k, limit] of wanted) {
      expect(proposeSetpoints({ baseline: three, limits, k }).statistical?.value).toBeCloseTo(limit, 9);
    }
  });

  it("gives every number a reason with a source, and the cautions", () => {
    const {
      alarm,
      trip,
      delay,
      hysteresis,
      cautions: said,
      verified,
    } = proposeSetpoints({
      baseline: baseline(steady, { as: "mm/s rms" }),
      limits,
      device: { step: "0.2 mm/s rms" },
    });
    for (const { reasons } of [alarm, trip, delay, hysteresis].filter((one) => one !== null)) {
      expect(reasons.length).toBeGreaterThan(0);
      for (const { text, source } of reasons) expect([text, source.title, source.provenance]).not.toContain("");
    }
    expect(said).toBe(cautions);
    expect(verified).toBe(false);
  });

  it("says that RMS limits in a peak device take the vibration for a sine", () => {
    const device = { step: "0.01 in/s pk" };
    expect(proposeSetpoints({ baseline: "0.1 in/s pk", limits, device }).assumed).toEqual(["sine"]);
    expect(proposeSetpoints({ baseline: "2 mm/s rms", limits }).assumed).toEqual([]);
  });

  it("never proposes above the caps, and never stores above what was asked", () => {
    const amount = fc.double({ min: 0.1, max: 20, noNaN: true });
    fc.assert(
      fc.property(amount, amount, amount, fc.double({ min: 0.01, max: 0.5, noNaN: true }), (level, a, b, step) => {
        fc.pre(Math.abs(a - b) > 0.01);
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const { alarm, trip } = proposeSetpoints({
          baseline: `${level.toFixed(6)} mm/s rms`,
          limits: { "B/C": `${low.toFixed(6)} mm/s rms`, "C/D": `${high.toFixed(6)} mm/s rms`, source: "x" },
          device: { step: `${step.toFixed(6)} mm/s rms` },
        });
        for (const [one, cap] of [
          [alarm, 1.25 * low],
          [trip, 1.25 * high],
        ] as const) {
          if (one === null) continue;
          expect(one.stored.value).toBeLessThanOrEqual(cap * (1 + 1e-6));
          expect(one.stored.value).toBeLessThanOrEqual(one.asked.value * (1 + 1e-9));
        }
      }),
    );
  });
});

describe("delays", () => {
  it("H02: lie within what is met in practice for a pump and a fan", () => {
    const [low, high] = times.practice.expected;
    for (const type of ["pump", "fan"] as const) {
      expect(delayAdvice(type, 25).trip).toBeGreaterThanOrEqual(low);
      expect(delayAdvice(type, 25).trip).toBeLessThanOrEqual(high);
      expect(delayAdvice(type, 25).trip).toBeGreaterThan(times.processing.expected);
    }
  });

  it("are short for fast machines and long enough for slow ones", () => {
    expect(delayAdvice("pump", 80)).toMatchObject({ trip: 1, longest: 3 });
    expect(delayAdvice("steam turbine", 50)).toMatchObject({ trip: 1, longest: 3 });
    expect(delayAdvice("fan", 1)).toMatchObject({ trip: 10 });
    expect(delayAdvice(undefined, undefined).trip).toBe(3);
  });
});

describe("warnings", () => {
  const good = { baseline: baseline(steady, { as: "mm/s rms" }), limits, machine: "pump 1490 r/min" } as const;

  it.each([
    ["alarm in noise", { ...good, sensor: { noiseFloor: "3.5 mm/s rms" } }],
    ["alarm in scatter", { ...good, baseline: baseline([1, 2, 3, 4, 5, 1, 2, 3, 4, 5], { as: "mm/s rms" }) }],
    ["trip beyond full scale", { ...good, sensor: { loop: "0 to 5 mm/s rms" } }],
    ["trip beyond full scale", { ...good, sensor: { fullScale: "0.1 g pk" } }],
    ["little margin", { ...good, baseline: "4.5 mm/s rms", limits: { ...limits, "C/D": "5.8 mm/s rms" } }],
    ["outside band", { ...good, machine: "pump 540 r/min", device: { band: { lowest: "10 Hz", highest: "1 kHz" } } }],
    ["outside band", { ...good, machine: "pump 600 r/min", device: { band: { lowest: "10 Hz", highest: "1 kHz" } } }],
    ["unknown frequency", { ...good, machine: "pump", device: { band: { lowest: "10 Hz", highest: "1 kHz" } } }],
    ["long delay", { ...good, onDelay: 12 }],
    ["single baseline", { ...good, baseline: "2 mm/s rms" }],
    ["no baseline", { ...good, baseline: "none" }],
    ["poor baseline", { ...good, baseline: baseline([2, 2.1, 2.2], { as: "mm/s rms" }) }],
    ["baseline in zone C", { ...good, baseline: "5 mm/s rms" }],
    ["baseline of zero", { ...good, baseline: "0 mm/s rms" }],
    ["baseline in zone D", { ...good, baseline: "9 mm/s rms" }],
    ["alarm not below trip", { ...good, baseline: "4.5 mm/s rms", limits: { ...limits, "C/D": "4.6 mm/s rms" } }],
    ["alarm stays set", { ...good, baseline: "5.5 mm/s rms" }],
    ["trip stays set", { ...good, baseline: "7 mm/s rms" }],
    ["alarm at once", { ...good, baseline: "6 mm/s rms" }],
    ["trip at once", { ...good, baseline: "8 mm/s rms" }],
    ["unknown place", { baseline: "60 um pp", machine: "steam turbine 12 MW 5400 r/min rigid" }],
    ["no limits", { baseline: good.baseline }],
    ["unverified limits or rules", good],
    ["shaft rule", { baseline: "20 um pp", rule: "api shaft", machine: "compressor 3000 r/min shaft" }],
    ["coarse steps", { ...good, device: { step: "2 mm/s rms" } }],
    ["beyond device", { ...good, device: { lowest: "5 mm/s rms" } }],
    [
      "other quantities",
      { baseline: "20 um pp", scheme: "iso-10816-3-2009", machine: "motor 90 kW 1490 r/min rigid group 2" },
    ],
  ] as const satisfies readonly (readonly [keyof typeof setpointWarnings, ProposalRequest])[])(
    "%s",
    (code, request) => {
      expect(codes(request)).toContain(code);
    },
  );

  it("none but the one about memory for a sound case", () => {
    const device = { step: "0.1 mm/s rms", band: { lowest: "10 Hz", highest: "1 kHz" } } as const;
    const sensor = { noiseFloor: "0.1 mm/s rms", loop: "0 to 20 mm/s rms", fullScale: "50 g pk" };
    expect(codes({ ...good, device, sensor, onDelay: 3 })).toEqual(["unverified limits or rules"]);
  });

  it("refuses a request without a baseline", () => {
    expect(() => proposeSetpoints({ limits } as never)).toThrow(expect.objectContaining({ code: "missing-option" }));
    expect(() => proposeSetpoints({ baseline: "2 mm/s rms", limits: { ...limits, "B/C": "9 mm/s rms" } })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    const machine = "motor 90 kW shaft height 280 mm grade A mounting rigid new";
    const acceptance = { baseline: "1 mm/s rms", scheme: "iec-60034-14-2003", machine } as const;
    expect(() => proposeSetpoints(acceptance)).toThrow(expect.objectContaining({ code: "wrong-type" }));
  });
});
