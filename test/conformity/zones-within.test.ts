import { convertAmplitude } from "veladis";
import { explain } from "veladis/explain";
import { classify, judge, judgePoints, parsePoints } from "veladis/severity";
import { parseUncertain, withUncertainty, zoneRules, zonesWithin } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";
import { decisionRules } from "../../src/verification/index";
import { bySupport, siteRule, zonesIn } from "../severity/own-scheme";

const pump = "pump 90 kW 2980 r/min category II";
const reading = parseUncertain("4.9 ± 0.3 mm/s rms (k=2)");
const verdict = judge(reading, pump);

describe("zones within an interval", () => {
  it("rules are named as those of a check", () => {
    expect(Object.keys(zoneRules).sort()).toEqual(Object.keys(decisionRules).sort());
  });

  it("a verdict alone says that it leaves the uncertainty out", () => {
    expect(verdict.cautions[0]).toContain("zonesWithin of veladis/uncertainty");
    expect(classify(reading, { scheme: "iso-10816-7-2009", machine: pump }).cautions[0]).toBe(verdict.cautions[0]);
    expect(judge("4.9 mm/s rms", pump).cautions.join()).not.toContain("zonesWithin");
    expect(zonesWithin(verdict).cautions.join()).not.toContain("zonesWithin");
  });

  it("the history of a verdict ends with the limit, and the judged reading has its own", () => {
    expect(verdict.history.at(-1)?.does).toBe("compare");
    expect(verdict.judged.history?.[0]?.uncertainty?.stated).toBe("± 0.3 mm/s rms (k=2)");
    expect(zonesWithin(verdict).history.at(-1)?.does).toBe("uncertainty");
    expect(explain(zonesWithin(verdict)).text).toContain("± 0.3 mm/s rms (k=2)");
  });

  it("is the same for a verdict that went through JSON, and for what classify says", () => {
    const revived = JSON.parse(JSON.stringify(verdict));
    expect(JSON.stringify(zonesWithin(revived))).toBe(JSON.stringify(zonesWithin(verdict)));
    const one = zonesWithin(classify(reading, { scheme: "iso-10816-7-2009", machine: pump }));
    expect([one.headline, one.zones, one.probabilities]).toEqual(
      [zonesWithin(verdict)].flatMap(({ headline, zones, probabilities }) => [headline, zones, probabilities]),
    );
  });

  it("tells the interval in the reader's type, in dB too", () => {
    const inches = zonesWithin(judge(convertAmplitude(reading, "in/s rms"), pump)).interval;
    expect(inches.type).toBe("in/s rms");
    expect(inches.high).toBeCloseTo(5.2 / 25.4, 12);
    const level = zonesWithin(judge(parseUncertain("134 ± 0.5 dB re 1 nm/s (k=2)"), pump));
    // to first order: the level bends by 0.014 dB
    expect(level.interval.value).toBe(134);
    expect(level.interval.expanded).toBeCloseTo(0.5, 12);
    expect(Math.abs(level.interval.high - 134.5)).toBeLessThan(0.015);
    expect(Math.abs(level.interval.low - 133.5)).toBeLessThan(0.015);
    expect(level.zones).toEqual(["B", "C"]);
  });

  it("a background that is too high stays in the headline", () => {
    const within = zonesWithin(judge(reading, pump, { background: "2 mm/s rms" }));
    expect(within.headline).toBe("zone C, NOT RELIABLE: background too high");
    expect(within.why).toContain("background");
  });

  it("or worse stays or worse", () => {
    const scheme = siteRule("two", {
      classes: [
        {
          criteria: [
            zonesIn("mm/s rms", { "A/B": 2, "B/C": 4, "C/D": 8 }),
            zonesIn("g rms", { "A/B": 1, "B/C": 2, "C/D": 4 }),
          ],
        },
      ],
    });
    const within = zonesWithin(classify(parseUncertain("1.9 ± 0.3 mm/s rms (k=2)"), { scheme }));
    expect(within.bestValue.headline).toBe("zone A or worse");
    expect([within.headline, within.zone, within.zones]).toEqual(["zone B or worse", "B", ["A", "B", "C", "D"]]);
    expect([within.probabilities, within.why]).toEqual([
      null,
      "a probability would be false precision: not all that may be worse was judged",
    ]);
  });

  it("a place that nobody said is still to be stated", () => {
    const open = judge(parseUncertain("60 ± 30 um pp"), "steam turbine 12 MW 5400 r/min");
    expect(zonesWithin(open).headline).toMatch(/^zone . to D: state the place$/);
    expect(zonesWithin(open).zone).toBe("D");
  });

  it("facts that decide between schemes are asked for", () => {
    const within = zonesWithin(judge(parseUncertain("2.0 ± 0.3 mm/s rms"), "motor 1485 r/min rigid"));
    expect([within.headline, within.word]).toEqual(["zone B to C", "state the power"]);
    expect(within.criteria.map(({ scheme }) => scheme)).toContain("iso-20816-3-2022");
  });

  it("a reading of two without an uncertainty is named", () => {
    const scheme = siteRule("two of", {
      classes: [
        {
          criteria: [
            zonesIn("mm/s rms", { "A/B": 2, "B/C": 4, "C/D": 8 }),
            zonesIn("um pp", { "A/B": 50, "B/C": 80, "C/D": 120 }),
          ],
        },
      ],
    });
    const within = zonesWithin(classify([parseUncertain("3.9 ± 0.3 mm/s rms (k=2)"), "40 um pp"], { scheme }));
    expect(within.cautions[0]).toBe("no uncertainty of the displacement is given: it is taken as exact");
    expect(within.zone).toBe("C");
  });

  it.each([
    ["0.27 ± 0.02 in/s pk (k=2)", /\(sine\)/],
    ["30 um pp ± 5 % (k=2) at 25 ± 0.5 Hz", /one frequency/],
  ])("%s: no probability, since something else was assumed", (text, why) => {
    const scheme = siteRule("one", {
      classes: bySupport(
        [zonesIn("mm/s rms", { "A/B": 2, "B/C": 4, "C/D": 8 })],
        [zonesIn("mm/s rms", { "A/B": 3, "B/C": 5, "C/D": 9 })],
      ),
    });
    const within = zonesWithin(classify(parseUncertain(text), { scheme, machine: "rigid" }));
    expect(within.probabilities).toBeNull();
    expect(within.why).toMatch(why);
    expect(within.assumed).toContain("independent");
  });

  it("a crest factor that was stated is no probability either", () => {
    const scheme = siteRule("crest");
    const within = zonesWithin(classify(parseUncertain("6 ± 0.3 mm/s pk (k=2)"), { scheme, crestFactor: 3 }));
    expect(within.why).toContain("crest factor");
  });

  it("an uncertainty of the frequency alone does not reach a velocity judged as it is", () => {
    const within = zonesWithin(judge(parseUncertain("4.9 mm/s rms at 25 ± 0.5 Hz"), pump));
    expect([within.zones, within.probabilities]).toEqual([["B"], null]);
    expect(within.why).toContain("is not one of the value that was judged");
  });

  it("an influence counts as well", () => {
    const known = withUncertainty("4.9 mm/s rms", "± 6 % (k=2)", "sensitivity of the sensor");
    expect(zonesWithin(judge(known, pump)).zone).toBe("C");
  });
});

describe("readings with ± where none are read", () => {
  it("are refused with the place where they are, never read as something else", () => {
    for (const act of [
      () => judge("4.9 ± 0.3 mm/s rms", pump),
      () => judge("4.9 +/- 0.3 mm/s rms", pump),
      () => parsePoints("DE-H 4.9 ± 0.3 mm/s rms"),
      () => judgePoints("DE-H 4.9, DE-V 3 +- 0.3 mm/s rms", pump),
    ]) {
      expect(act).toThrow(/parseUncertain of veladis\/uncertainty/);
    }
  });
});
