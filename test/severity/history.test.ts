import fc from "fast-check";
import { type Amplitude, type Assumption, convertAmplitude, parseAmplitude } from "veladis";
import { type ExplainedStep, explain } from "veladis/explain";
import { currentLoop, sensor } from "veladis/sensor";
import { changeFromBaseline, classify, limitsFor } from "veladis/severity";
import { overall } from "veladis/signal";
import { describe, expect, it } from "vitest";

/** Carries out what the steps say, by itself. */
function replay(steps: readonly ExplainedStep[]): number[] {
  const values: number[] = [];
  for (const { operation, of, by = Number.NaN, value } of steps) {
    const [x = Number.NaN, y = Number.NaN] = of.map((at) => values[at] as number);
    const results: Record<string, () => number> = {
      given: () => value,
      times: () => x * by,
      over: () => x / by,
      plus: () => x + by,
      difference: () => x - y,
      linear: () => by * Math.exp((x / 20) * Math.LN10),
      decibels: () => (20 * Math.log(x / by)) / Math.LN10,
      "limit over": () => by / x,
    };
    values.push((results[operation] as () => number)());
  }
  return values;
}

/** ISO 10816-3:2009 group 1 rigid: velocity 2.3, 4.5, 7.1 mm/s RMS (read), displacement 29, 57, 90 um RMS (memory). */
const table = { scheme: "iso-10816-3-2009", machine: "group 1 rigid" } as const;
const types = ["in/s pk", "mm/s rms", "um pp", "mil pk", "g pk", "m/s2 avg", "dB re 1 nm/s", "um rms"];
const someType = fc.constantFrom(...types);

const wave = Float64Array.from({ length: 2000 }, (_, i) => Math.sin((2 * Math.PI * 50 * i) / 1000));
const level = overall(wave, { rate: 1000, unit: "g", band: [10, 400], as: "mm/s rms" });

/** Readings to begin a chain with, in words, from a sensor, a loop and a record; all with a frequency. */
const someStart: fc.Arbitrary<Amplitude> = fc.oneof(
  fc
    .record({ value: fc.double({ min: 1e-3, max: 1e3, noNaN: true }), type: someType })
    .map(({ value, type }) => parseAmplitude(`${value} ${type} at 25 Hz`)),
  fc
    .record({ millivolts: fc.double({ min: 1, max: 900, noNaN: true }), type: someType })
    .map(({ millivolts, type }) => sensor("100 mV/g").reading(`${millivolts} mV pk`, type, { at: "80 Hz" })),
  fc
    .record({ current: fc.double({ min: 4, max: 20.99, noNaN: true }), type: someType })
    .map(({ current, type }) => currentLoop("0.5 to 25 mm/s rms at 50 Hz").reading(current, type, { at: "50 Hz" })),
  fc.constant({ ...level, hertz: 50 } as Amplitude),
);

/** What the steps of a history assumed, all together. */
const assumedIn = (history: Amplitude["history"]) =>
  new Set<Assumption>((history ?? []).flatMap(({ assumed }) => assumed ?? []));

/** What a conversion of a reading with no past assumes. */
const assumes = ({ value, unit, detector, quantity, hertz, crestFactor }: Amplitude, to: string) =>
  convertAmplitude({ value, unit, detector, quantity, hertz, ...(crestFactor !== undefined && { crestFactor }) }, to)
    .assumed;

describe("a judgement keeps the history of its reading", () => {
  it("so that what was assumed before stays with the answer", () => {
    const reading = convertAmplitude("0.25 in/s pk", "mm/s rms");
    expect(classify(reading, table)).toMatchObject({ assumed: ["sine"], zone: "B" });
    expect(classify("4.49 mm/s rms", table)).toMatchObject({ assumed: [] });
    expect(classify(sensor("100 mV/g").reading("40 mV pk", "mm/s rms", { at: "80 Hz" }), table).assumed).toEqual([
      "one-frequency",
      "sine",
    ]);
  });

  it("whatever the chain that led to it: nothing is lost and nothing added", () => {
    fc.assert(
      fc.property(someStart, fc.array(someType, { maxLength: 30 }), (start, chain) => {
        const all = new Set<string>(start.assumed ?? []);
        let reading = start;
        for (const to of chain) {
          for (const one of assumes(reading, to)) all.add(one);
          reading = convertAmplitude(reading, to);
        }
        const judgement = classify(reading, table);
        const own = judgement.criteria.map(
          (one) => new Set([...all, ...assumes(reading, one.limit.printed.unit === "um" ? "um rms" : "mm/s rms")]),
        );
        for (const [i, one] of judgement.criteria.entries()) {
          expect(new Set(one.assumed)).toEqual(own[i]);
          expect(assumedIn(one.history)).toEqual(own[i]);
        }
        expect(new Set(judgement.assumed)).toEqual(new Set(own.flatMap((set) => [...set])));
        expect(new Set(judgement.assumed).size).toBe(judgement.assumed.length);
        expect(judgement.judged.state).toBe(start.state);
        expect(judgement.judged.crestFactor).toBe(reading.crestFactor);
      }),
      { numRuns: 300 },
    );
  });

  it("and tells the arithmetic down to the ratio to the limit", () => {
    const { text } = explain(classify("0.25 in/s pk", table));
    expect(text.split("\n")).toEqual([
      "0.25 in/s pk",
      "0.25 in/s pk x 25.4 = 6.35 mm/s pk",
      "6.35 mm/s pk / 1.414 = 4.49 mm/s rms  (one sine)",
      "4.5 mm/s rms / 4.49 mm/s rms = 1.002  (limit B/C 4.5 mm/s rms, ISO 10816-3 (2009), read on a page whose making is unknown)",
    ]);
    expect(explain(classify("58 um rms", table)).text).toContain(
      "(limit C/D 90 um rms, ISO 10816-3 (2009), read on a page whose making is unknown)",
    );
    const fan = { scheme: "iso-14694-2003", machine: "fan 90 kW rigid BV-3" } as const;
    expect(explain(classify("1 mm/s rms", fan)).text).toContain("(start-up limit 4.5 mm/s rms, ISO 14694 (2003)");
  });

  it("which replayed comes to the margin, whatever the chain", () => {
    fc.assert(
      fc.property(someStart, fc.array(someType, { maxLength: 8 }), (start, chain) => {
        const reading = chain.reduce<Amplitude>((one, to) => convertAmplitude(one, to), start);
        const judgement = classify(reading, table);
        for (const one of [judgement, ...judgement.criteria]) {
          const { steps } = explain(one);
          expect(Math.abs((replay(steps).at(-1) as number) / one.margin.ratio - 1)).toBeLessThan(1e-12);
          expect(steps.at(-1)?.by).toBe(one.limit.printed.value);
        }
      }),
      { numRuns: 300 },
    );
  });

  it("of the criterion that governs, where several judge", () => {
    const judgement = classify(["3 mm/s rms", convertAmplitude("140 um pp", "um rms")], table);
    expect(judgement.quantity).toBe("displacement");
    expect(judgement.history).toEqual(judgement.criteria[1]?.history);
    expect(judgement.criteria.map(({ assumed }) => assumed)).toEqual([[], ["sine"]]);
    expect(judgement.assumed).toEqual(["sine"]);
    // what another criterion assumed counts too: it might have governed
    expect(classify(["9 mm/s rms", "40 um pp"], table)).toMatchObject({ quantity: "velocity", assumed: ["sine"] });
  });

  it("also of a reading of zero, which no limit can be divided by", () => {
    const { margin, history } = classify("0 mm/s rms", table);
    expect(margin.ratio).toBe(Number.POSITIVE_INFINITY);
    expect(explain({ history }).text).toContain("2.3 mm/s rms / 0 mm/s rms = infinite");
  });

  it("and goes through JSON and back", () => {
    const judgement = classify(convertAmplitude("0.25 in/s pk", "mm/s rms"), table);
    const back = JSON.parse(JSON.stringify(judgement)) as typeof judgement;
    expect(explain(back)).toEqual(explain(judgement));
    expect(classify(back.judged, table).assumed).toEqual(["sine"]);
  });
});

describe("the crest factor that a reading brings along", () => {
  it("carries it back, and the limits into its type", () => {
    const peak = convertAmplitude("2 mm/s rms", "mm/s pk", { crestFactor: 4 });
    const judgement = classify(peak, table);
    expect(judgement.judged).toMatchObject({ value: 2, crestFactor: 4 });
    expect(judgement.assumed).toEqual(["crest-factor"]);
    // 2.3 mm/s RMS times 4, not 1.414: the margin is the same in either type
    expect(judgement.limit.value).toBeCloseTo(9.2, 12);
    expect(judgement.limit.value / peak.value).toBeCloseTo(judgement.margin.ratio, 12);
    expect(classify(convertAmplitude("2 mm/s rms", "mm/s pk"), table).limit.value).toBeCloseTo(2.3 * Math.SQRT2, 12);
  });
});

describe("a reading outside the range of its loop", () => {
  const loop = currentLoop("0 to 8 mm/s rms");

  it("above it is judged as at least that, and below it not at all", () => {
    // NAMUR NE 43: a measured value ends at 20.5 mA; a current below 3.8 mA is none
    const clipped = classify(loop.reading(20.9), table);
    expect(clipped.cautions[0]).toMatch(/above the range of its loop/);
    expect(clipped.worst).toBe("D");
    const small = classify(currentLoop("0 to 4 mm/s rms at 25 Hz").reading(20.9), table);
    expect(small).toMatchObject({ zone: "B", possible: ["B", "C", "D"], worst: "D", headline: "zone B or worse" });
    expect(() => classify(loop.reading(3.7), table)).toThrow(/below it/);
    expect(() => changeFromBaseline(loop.reading(3.7), "2 mm/s rms", table)).toThrow(/below it/);
    expect(classify(loop.reading(12), table).cautions).toEqual(classify("4 mm/s rms", table).cautions);
    expect(changeFromBaseline(loop.reading(20.9), "2 mm/s rms", table).cautions[0]).toMatch(/above the range/);
  });
});

describe("a change since the baseline keeps both histories", () => {
  it("and what was assumed of either, and of the limit", () => {
    const assumed = (now: string | Amplitude, before: string | Amplitude) =>
      changeFromBaseline(now, before, table).assumed;
    expect(assumed("3 mm/s rms", "2 mm/s rms")).toEqual([]);
    expect(assumed(convertAmplitude("0.2 in/s pk", "mm/s rms"), "2 mm/s rms")).toEqual(["sine"]);
    expect(assumed("3 mm/s rms", convertAmplitude("0.1 in/s pk", "mm/s rms"))).toEqual(["sine"]);
    expect(assumed("3 mm/s rms", "20 um rms at 25 Hz")).toEqual(["one-frequency"]);
    expect(assumed("4 mm/s pk", "3 mm/s pk")).toEqual(["sine"]);
  });

  it("whose steps replayed come to the ratio, with the sign of the change", () => {
    fc.assert(
      fc.property(someStart, someStart, fc.constantFrom("mm/s rms", "in/s pk", "um pp"), (now, before, as) => {
        const reading = convertAmplitude(now, as);
        const change = changeFromBaseline(reading, before, table);
        const { steps } = explain(change);
        const replayed = replay(steps).at(-1) as number;
        // a difference of two alike numbers has their rounding
        const size = (reading.value + (reading.value - change.change)) / change.allowed;
        expect(Math.abs(replayed - Math.sign(change.change) * change.ratio)).toBeLessThanOrEqual(size * 1e-12);
        expect(new Set(change.assumed)).toEqual(assumedIn(change.history));
      }),
      { numRuns: 200 },
    );
  });
});

describe("limits in another type", () => {
  it("say what that assumed", () => {
    const assumed = (as?: string) => limitsFor({ ...table, at: "25 Hz", ...(as && { as }) }).map((one) => one.assumed);
    expect(assumed()).toEqual([[], []]);
    expect(assumed("in/s rms")).toEqual([[], ["one-frequency"]]);
    expect(assumed("in/s pk")).toEqual([["sine"], ["one-frequency", "sine"]]);
  });
});
