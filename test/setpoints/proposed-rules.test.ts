import { baseline, type ProposalRequest, proposeSetpoints, setpointRules } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { pumpCeilings } from "../references/alarms";

const limits = { "B/C": "4 mm/s rms", "C/D": "8 mm/s rms", source: "maker" } as const;
const fan = { scheme: "iso-14694-2003", machine: "fan 90 kW 1480 r/min rigid BV-3" } as const;
const texts = (reasons: readonly { readonly text: string }[] | undefined) => reasons?.map(({ text }) => text);
const rule = (name: keyof typeof setpointRules) => setpointRules[name].text;
const proposed = (request: ProposalRequest) => proposeSetpoints(request);

// the rules themselves are those of ISO 10816-1/-3/-7 and ISO 14694 as setpointRules names them, each with its source
describe("the rules that a proposal names", () => {
  it("the baseline and a quarter of B/C, below zone C", () => {
    const { alarm, trip } = proposed({ baseline: "2 mm/s rms", limits });
    expect([alarm?.asked.value, alarm?.range]).toEqual([3, [2, 5]]);
    expect(texts(alarm?.reasons)).toEqual([
      rule("alarm from baseline"),
      expect.stringContaining("B/C"),
      rule("alarm cap"),
      rule("alarm below zone C"),
    ]);
    expect([trip?.asked.value, trip?.range]).toEqual([8, [4, 10]]);
    expect(texts(trip?.reasons)).toEqual([
      rule("trip nature"),
      expect.stringContaining("C/D"),
      rule("trip proposed"),
      rule("trip cap"),
    ]);
  });

  it("at and above zone C the alarm is not said to lie below it", () => {
    for (const level of ["3 mm/s rms", "3.5 mm/s rms"] as const) {
      const { alarm } = proposed({ baseline: level, limits });
      expect(texts(alarm?.reasons)).toEqual([
        rule("alarm from baseline"),
        expect.stringContaining("B/C"),
        rule("alarm cap"),
      ]);
    }
    expect(proposed({ baseline: "3 mm/s rms", limits }).alarm?.asked.value).toBe(4);
    expect(proposed({ baseline: "4.5 mm/s rms", limits }).alarm?.asked.value).toBe(5);
  });

  it("no baseline: the lower limit, from similar machines", () => {
    const { alarm, trip } = proposed({ baseline: "none", limits });
    expect([alarm?.asked.value, alarm?.range]).toEqual([4, [0, 5]]);
    expect(texts(alarm?.reasons)).toEqual([rule("no baseline"), expect.stringContaining("B/C"), rule("alarm cap")]);
    expect(trip?.asked.value).toBe(8);
  });

  it("a fan: the limits that its standard prints, whatever the baseline", () => {
    const known = proposed({ ...fan, baseline: "2 mm/s rms" });
    expect([known.alarm?.range, known.trip?.range]).toEqual([
      [2, 7.1],
      [7.1, 9],
    ]);
    const unknown = proposed({ ...fan, baseline: "none" });
    expect([unknown.alarm?.asked.value, unknown.alarm?.range]).toEqual([7.1, [0, 7.1]]);
    for (const { alarm, trip } of [known, unknown]) {
      expect(texts(alarm?.reasons)).toEqual([rule("fan limits"), expect.any(String)]);
      expect(texts(trip?.reasons)).toEqual([rule("fan limits"), expect.any(String)]);
    }
  });

  it("a pump: no higher than the highest settings that its standard prints, with their source", () => {
    const { alarm, trip } = proposed({
      baseline: "4 mm/s rms",
      machine: pumpCeilings.machine,
      scheme: "iso-10816-7-2009",
    });
    const ceiling = rule("printed ceiling");
    expect(texts(alarm?.reasons)).toContain(ceiling);
    expect(texts(alarm?.reasons)).not.toContain(rule("alarm cap"));
    const source = alarm?.reasons.find(({ text }) => text === ceiling)?.source;
    expect(source?.title).toMatch(/10816-7/);
    expect(alarm?.range[1]).toBeCloseTo(pumpCeilings.alarm, 9);
    // 1.25 times the stored C/D of 6.5 lies below the printed 8.3, and holds
    expect(trip?.range[1]).toBeCloseTo(8.125, 9);
    expect(trip?.range[1]).toBeLessThan(pumpCeilings.trip);
    expect(texts(trip?.reasons)).not.toContain(ceiling);
  });
});

// two spreads of the baseline, at least 5 %, at most 20 %: common practice, no source
describe("the hysteresis that is proposed", () => {
  const wobbling = (spread: number) =>
    baseline(
      Array.from({ length: 40 }, (_, i) => 2 + spread * (i % 2 === 0 ? 1 : -1)),
      { as: "mm/s rms" },
    );
  const hysteresis = (request: ProposalRequest) => proposed(request).hysteresis;
  const percentOf = (request: ProposalRequest) =>
    Number(/^[\d.]+(?= %)/.exec(hysteresis(request)?.reasons[0]?.text ?? ""));

  it("is 5 % without a baseline, and for one that hardly scatters", () => {
    expect(percentOf({ baseline: "none", limits })).toBe(5);
    expect(percentOf({ limits, baseline: "2 mm/s rms" })).toBe(5);
    expect(percentOf({ limits, baseline: wobbling(0.001) })).toBe(5);
    expect(hysteresis({ baseline: "none", limits })?.reasons[0]?.text).toMatch(
      /more than two spreads of the baseline where it is known/,
    );
  });

  it("is two spreads of one that scatters, in whole percent of the alarm, and never above 20 %", () => {
    const found = wobbling(0.1);
    // the alarm is the median and a quarter of 4
    const wanted = Math.ceil((200 * found.spread) / (found.median + 1));
    expect(wanted).toBeGreaterThan(5);
    expect(wanted).toBeLessThan(20);
    expect(percentOf({ limits, baseline: found })).toBe(wanted);
    expect(hysteresis({ limits, baseline: found })?.reasons[0]?.text).toMatch(/two spreads of the baseline, so that/);
    expect(percentOf({ limits, baseline: wobbling(0.9) })).toBe(20);
  });
});
