import fc from "fast-check";
import { convertAmplitude, detectors, parseAmplitude, units, VeladisError } from "veladis";
import { builtInSchemes, type Criterion, classifier, classify, type Machine, type Scheme } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { amplitudeIn, parsedType } from "../../src/reading/index";
import { zonesBetween } from "../../src/severity/kinds";
import { limitsOf } from "../../src/severity/limit";
import { machineFor } from "./machine-for";

interface Case {
  readonly scheme: Scheme;
  readonly machine: Machine;
  readonly criterion: Criterion;
  /** True where the table has peak and RMS columns of this quantity, so that the detector chooses between them. */
  readonly columns: boolean;
}

const criterial = (builtInSchemes as readonly Scheme[]).filter(({ informative }) => informative === undefined);
const cases: Case[] = criterial.flatMap((scheme) =>
  scheme.classes.flatMap((one) =>
    one.criteria.map((criterion) => {
      const { quantity } = parsedType(criterion.as);
      const machine = machineFor(scheme, one);
      const columns = one.criteria.filter(({ as }) => parsedType(as).quantity === quantity).length > 1;
      return { scheme, machine, criterion, columns };
    }),
  ),
);

/** A case as options. */
const told = ({ scheme, machine }: Case) => ({ scheme, machine });

const someCase = fc.constantFrom(...cases);
// a true peak has no ratio to the others
const someDetector = fc.constantFrom(
  ...(Object.keys(detectors) as (keyof typeof detectors)[]).filter((one) => !("ofWaveform" in detectors[one])),
);
const level = fc.double({ min: 1e-4, max: 1e4, noNaN: true });
const hz = fc.double({ min: 0.5, max: 2000, noNaN: true });

function unitsOf(quantity: string): string[] {
  return Object.entries(units)
    .filter(([, unit]) => unit.quantity === quantity)
    .map(([symbol]) => symbol);
}

function limitValues({ scheme, criterion, machine }: Case): number[] {
  const speed = machine.speed === undefined ? undefined : (machine.speed as { hertz: number }).hertz * 60;
  return limitsOf(scheme, criterion, { ...(speed !== undefined && { speed }) }).map(({ value }) => value);
}

describe("classification", () => {
  it("never falls to a better zone as the reading grows", () => {
    fc.assert(
      fc.property(someCase, level, level, fc.option(hz), (one, a, b, at) => {
        const [low, high] = a <= b ? [a, b] : [b, a];
        const suffix = at === null ? "" : ` at ${at} Hz`;
        const judge = (value: number) => classify(`${value} ${one.criterion.as}${suffix}`, told(one));
        const [before, after] = [judge(low), judge(high)];
        expect(after.zones.indexOf(after.zone)).toBeGreaterThanOrEqual(before.zones.indexOf(before.zone));
      }),
      { numRuns: 500 },
    );
  });

  it("is the same in any unit and detector, also at the limits", () => {
    fc.assert(
      fc.property(
        someCase,
        level,
        fc.nat(),
        fc.constantFrom(1, 1 - 1e-12, 1 + 1e-12, 1.001, 0.999),
        fc.nat(),
        someDetector,
        (one, free, pick, near, unitPick, detector) => {
          const limits = limitValues(one);
          const value = pick % 2 === 0 ? free : (limits[pick % limits.length] as number) * near;
          const { quantity, detector: own } = parsedType(one.criterion.as);
          const symbols = unitsOf(quantity);
          const to = `${symbols[unitPick % symbols.length]} ${one.columns ? own : detector}`;
          const reading = parseAmplitude(`${value} ${one.criterion.as}`);
          const other = convertAmplitude(reading, to);
          expect(classify(other, told(one)).zone).toBe(classify(reading, told(one)).zone);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("is the same written as a level in decibels", () => {
    fc.assert(
      fc.property(someCase, level, fc.nat(), (one, free, pick) => {
        fc.pre(!one.columns);
        const limits = limitValues(one);
        const value = pick % 2 === 0 ? free : (limits[pick % limits.length] as number);
        const { unit } = parsedType(one.criterion.as);
        const reading = parseAmplitude(`${value} ${one.criterion.as}`);
        const inDecibels = convertAmplitude(reading, `dB re 1e-6 ${unit}`);
        const judged = classify(`${inDecibels.level?.decibels} dB re 1e-6 ${unit}`, told(one));
        expect(judged.zone).toBe(classify(reading, told(one)).zone);
        const decibels = judged.limit.level?.decibels as number;
        expect(decibels - (inDecibels.level?.decibels as number)).toBeCloseTo(judged.margin.decibels, 8);
      }),
      { numRuns: 300 },
    );
  });

  it("is the same in another quantity at the same frequency, also at the limits", () => {
    fc.assert(
      fc.property(
        someCase,
        level,
        hz,
        fc.constantFrom("um rms", "mm/s rms", "m/s2 rms"),
        fc.nat(),
        (one, free, at, to, pick) => {
          fc.pre(!one.columns && one.scheme.id !== "iso-14694-2003");
          const limits = limitValues(one);
          const value = pick % 2 === 0 ? free : (limits[pick % limits.length] as number);
          const reading = parseAmplitude(`${value} ${one.criterion.as} at ${at} Hz`);
          expect(classify(convertAmplitude(reading, to), told(one)).zone).toBe(classify(reading, told(one)).zone);
        },
      ),
      { numRuns: 500 },
    );
  });

  it("the compiled classifier agrees with classify, at the limits too", () => {
    fc.assert(
      fc.property(someCase, level, fc.nat(), fc.option(hz), (one, free, pick, at) => {
        const limits = limitValues(one);
        const value = pick % 2 === 0 ? free : (limits[pick % limits.length] as number) * (pick % 3 === 0 ? 1.001 : 1);
        const options = at === null ? {} : { at: { hertz: at } };
        const judge = classifier(one.scheme, one.machine, one.criterion.as, options);
        const reading = parseAmplitude(`${value} ${one.criterion.as}${at === null ? "" : ` at ${at} Hz`}`);
        const expected = classify(reading, told(one));
        expect(judge(value)).toBe(expected.zone);
        expect(judge.zones).toEqual(expected.zones);
        expect(judge.zones[judge.index(value)]).toBe(expected.zone);
        expect([...judge.array(Float64Array.of(value, 0))]).toEqual([judge.index(value), 0]);
        expect(judge.verified).toBe(expected.verified);
        expect([...judge.assumed].sort()).toEqual([...expected.assumed].sort());
      }),
      { numRuns: 700 },
    );
  });

  it("never gives a zone for a refused reading", () => {
    const bad = fc.oneof(
      fc.constantFrom("", "nonsense", "4.1", "4.1 mm/s", "4,1 mm/s rms", "1e999 mm/s rms", "NaN mm/s rms"),
      fc.double({ max: -1e-300, noNaN: true }).map((value) => `${value} mm/s rms`),
      fc.string().filter((text) => !/^\s*[+-]?[\d.]/.test(text)),
    );
    fc.assert(
      fc.property(someCase, bad, (one, reading) => {
        expect(() => classify(reading, told(one))).toThrow(VeladisError);
      }),
      { numRuns: 500 },
    );
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1]) {
      const amplitude = amplitudeIn("mm/s rms", value);
      for (const one of cases) {
        expect(() =>
          classify(amplitude, { ...told(one), machine: { ...one.machine, place: one.scheme.place } }),
        ).toThrow(VeladisError);
        const judge = classifier(one.scheme, one.machine, one.criterion.as);
        expect(() => judge(value)).toThrow(VeladisError);
        expect(() => judge.array(Float64Array.of(1, value))).toThrow(/index 1/);
      }
    }
  });

  it("gives zones in the order the kind has them", () => {
    for (const { scheme, criterion, machine } of cases) {
      const { zones, limits } = classify(`1 ${criterion.as}`, { scheme, machine });
      expect(zones).toEqual(zonesBetween(scheme.kind, Object.keys(limits), scheme.grades ?? []));
      expect(zones.length).toBe(Object.keys(limits).length + 1);
    }
  });
});
