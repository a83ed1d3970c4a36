import { classify, defineScheme } from "veladis/severity";
import { parseUncertain, zonesWithin } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";
import { inPrint, siteRule } from "../severity/own-scheme";

const upTo = (acceptance: number) =>
  siteRule(`up to ${acceptance}`, {
    kind: "acceptance",
    classes: [{ criteria: [{ as: "mm/s rms", limits: { acceptance }, source: inPrint }] }],
  });

const within = (reading: string, scheme: ReturnType<typeof siteRule>) =>
  zonesWithin(classify(parseUncertain(reading), { scheme }));

/**
 * Worked examples of JCGM 106:2012, 7.3.2, 7.3.3 and 7.4, their figures from memory, with the amounts taken as mm/s: the
 * probability that a value is within its tolerance is asked of numbers alone.
 */
describe("worked examples of JCGM 106:2012", () => {
  it("7.3.2: 5.47 with u = 0.05 against 5.40: Phi(1.40) = 0.92 lies beyond the limit", () => {
    const { probabilities } = within("5.47 ± 0.05 mm/s rms (k=1)", upTo(5.4));
    expect(probabilities?.fail).toBeCloseTo(0.92, 2);
    expect(probabilities?.pass).toBeCloseTo(0.08, 2);
  });

  it("7.3.3: 509.7 with u = 8.6 against 490: Phi(2.3) = 0.99", () => {
    expect(within("509.7 ± 8.6 mm/s rms (k=1)", upTo(490)).probabilities?.fail).toBeCloseTo(0.99, 2);
  });

  it("7.4: 13.6 with u = 1.8 between 12.5 and 16.3: 0.93 - 0.27 = 0.66", () => {
    const scheme = defineScheme({
      ...{ id: "two-sided", kind: "operation", standard: "Site rule two-sided" },
      classes: [
        { criteria: [{ as: "mm/s rms", limits: { "start-up": 12.5, alarm: 16.3, shutdown: 40 }, source: inPrint }] },
      ],
    });
    const { probabilities, uncertainty } = within("13.6 ± 1.8 mm/s rms (k=1)", scheme);
    expect(uncertainty.method).toBe("Monte Carlo");
    expect(probabilities?.service).toBeCloseTo(0.66, 2);
    expect(probabilities?.["start-up"]).toBeCloseTo(0.27, 2);
  });

  it("8.2: simple acceptance at the limit is wrong half of the time", () => {
    const verdict = classify(parseUncertain("3 ± 0.1 mm/s rms (k=2)"), { scheme: upTo(3) });
    const { zone, probabilities } = zonesWithin(verdict, { rule: "simple acceptance" });
    expect(zone).toBe("pass");
    expect(probabilities?.fail).toBeCloseTo(0.5, 4);
  });

  // a guard band of U leaves at most 2.3 % of wrong passes: Phi(-2)
  it("8.3.2: the largest value that passes with a guard band of U is wrong in Phi(-2) of all cases", () => {
    const { zone, probabilities } = within("2.9 ± 0.1 mm/s rms (k=2)", upTo(3));
    expect(zone).toBe("pass");
    expect(probabilities?.fail).toBeCloseTo(0.02275, 4);
    expect(within("2.901 ± 0.1 mm/s rms (k=2)", upTo(3)).zone).toBe("fail");
  });
});

describe("probabilities by draws", () => {
  it("a bound is no bell: nothing lies beyond it", () => {
    const { probabilities, zone } = within("2.95 ± 0.1 mm/s rms", upTo(3));
    // common practice, no source: a quarter of 2.85 to 3.05 lies above 3
    expect(probabilities?.fail).toBeCloseTo(0.25, 2);
    expect(zone).toBe("fail");
  });

  it("the same seed gives the same, another seed nearly the same", () => {
    const verdict = classify(parseUncertain("2.8 ± 0.5 mm/s rms (k=2)"), { scheme: upTo(3) });
    const fails = (seed: number) => zonesWithin(verdict, { seed }).probabilities?.fail as number;
    expect(fails(7)).toBe(fails(7));
    expect(fails(8)).toBeCloseTo(fails(7), 2);
    // Phi(0.2 / 0.25) above
    expect(fails(1)).toBeCloseTo(0.2119, 2);
  });
});
