import fc from "fast-check";
import { type Amplitude, VeladisError } from "veladis";
import { judge, type Verdict } from "veladis/severity";
import { parseUncertain, zonesWithin } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";

const machines = [
  "pump 90 kW 2980 r/min category II",
  "pump 250 kW 2980 r/min rigid category I",
  "fan 132 kW 1485 r/min rigid BV-3",
  "motor 1485 r/min rigid",
  "gear drive 200 kW 1490 r/min",
  "steam turbine 12 MW 5400 r/min",
  "motor 315 kW 1490 r/min rigid new",
];
const types = ["mm/s rms", "in/s pk", "um pp", "mil pp"];

const draws = { draws: 2000 };
const size = fc.integer({ min: 20, max: 1500 }).map((one) => one / 100);
const share = fc.integer({ min: 1, max: 90 });
const coverage = fc.constantFrom("", " (k=2)", " (k=3)");
const cases = fc.record({
  machine: fc.constantFrom(...machines),
  type: fc.constantFrom(...types),
  size,
  share,
  coverage,
});
type Case = typeof cases extends fc.Arbitrary<infer One> ? One : never;

const amount = ({ type, size }: Case) => (type === "um pp" ? size * 10 : type === "in/s pk" ? size / 20 : size);
const judged = (text: string | Amplitude, machine: string): Verdict => {
  try {
    return judge(text, machine);
  } catch (error) {
    // a displacement whose place has to be stated is no case
    fc.pre(!(error instanceof VeladisError && error.code === "missing-fact"));
    throw error;
  }
};
const withShare = (one: Case, percent: number) =>
  judged(parseUncertain(`${amount(one)} ${one.type} ± ${percent} %${one.coverage}`), one.machine);
const runs = { numRuns: 150 };

describe("zones within, of random readings and machines", () => {
  it("hold the zones of the best value, and the rule's zone", () => {
    fc.assert(
      fc.property(cases, (one) => {
        const verdict = withShare(one, one.share);
        const { zones, zone, worst, bestValue } = zonesWithin(verdict, draws);
        expect(zones).toEqual(expect.arrayContaining([...verdict.possible, bestValue.zone, zone]));
        expect(worst).toBe(zones.at(-1));
      }),
      runs,
    );
  });

  it("a guard band is never milder than simple acceptance, which is the verdict without an uncertainty", () => {
    fc.assert(
      fc.property(cases, (one) => {
        const verdict = withShare(one, one.share);
        const guard = zonesWithin(verdict, draws);
        const simple = zonesWithin(verdict, { ...draws, rule: "simple acceptance" });
        const plain = judged(`${amount(one)} ${one.type}`, one.machine);
        expect([simple.zone, simple.headline, simple.word]).toEqual([plain.zone, plain.headline, plain.word]);
        expect(guard.zones.indexOf(guard.zone)).toBeGreaterThanOrEqual(guard.zones.indexOf(simple.zone));
      }),
      runs,
    );
  });

  it("a larger uncertainty is never milder, also where Monte Carlo takes over", () => {
    fc.assert(
      fc.property(cases, fc.integer({ min: 1, max: 90 }), (one, other) => {
        const [less, more] = [Math.min(one.share, other), Math.max(one.share, other)];
        const [small, large] = [less, more].map((percent) => zonesWithin(withShare(one, percent), draws));
        expect(large?.interval.high).toBeGreaterThanOrEqual((small?.interval.high as number) * (1 - 1e-12));
        const all = large?.zones ?? [];
        expect(all).toContain(small?.zone);
        expect(all.indexOf(large?.zone as string)).toBeGreaterThanOrEqual(all.indexOf(small?.zone as string));
      }),
      runs,
    );
  });

  it("probabilities sum to 1, and the worst that is likely is no milder than the guard band", () => {
    let given = 0;
    fc.assert(
      fc.property(cases, (one) => {
        const { probabilities, why, zones, zone } = zonesWithin(withShare(one, one.share), draws);
        expect(probabilities === null).toBe(why !== null);
        if (probabilities === null) return;
        given++;
        const shares = Object.entries(probabilities);
        expect(shares.reduce((sum, [, one]) => sum + one, 0)).toBeCloseTo(1, 12);
        expect(shares.every(([, one]) => one >= 0 && one <= 1)).toBe(true);
        // at most 2.5 % lies beyond the zone of the guard band (JCGM 106:2012, 8.3.2), but for the noise of the draws
        const worse = shares.filter(([name]) => !zones.includes(name as never)).map(([, one]) => one);
        expect(worse.reduce((sum, one) => sum + one, 0)).toBeLessThan(0.07);
        expect(zones).toContain(zone);
      }),
      runs,
    );
    expect(given).toBeGreaterThan(10);
  });

  it("an uncertainty next to nothing leaves the verdict as it is", () => {
    fc.assert(
      fc.property(cases, (one) => {
        const verdict = withShare(one, 1e-9);
        const { zone, headline, word, zones } = zonesWithin(verdict, draws);
        expect([zone, headline, word, zones]).toEqual([verdict.zone, verdict.headline, verdict.word, verdict.possible]);
      }),
      runs,
    );
  });
});
