/** Readings with an uncertainty on charts: the interval drawn, or said to be missing; never lost in silence. */
import { describe, expect, it } from "vitest";
import { nomograph, severityBar, trendChart } from "../../src/entries/chart";
import { judge } from "../../src/entries/severity";
import { parseUncertain, zonesWithin } from "../../src/entries/uncertainty";
import { codeOf, refusalOf } from "../refusals/refusal-of";
import { parsed, words } from "./svg";

const machine = "pump 90 kW 2980 r/min category II";
const judged = (text: string) => judge(parseUncertain(text), machine);
const title = (svg: string): string => parsed(svg).children[0]?.text ?? "";
const said = (svg: string): string => words(svg).join(" ");

/** Ends of the interval as drawn, as shares of the place of the reading on a scale that begins at zero. */
function drawnShares(svg: string): [number, number] {
  const [, from, to] = /d="M([\d.]+),[\d.]+H([\d.]+)M/.exec(svg) as RegExpExecArray;
  const [, at] = /<line class="veladis-data"[^>]*? x1="([\d.]+)"/.exec(svg) as RegExpExecArray;
  return [Number(from) / Number(at), Number(to) / Number(at)];
}

describe("severityBar of a reading with ±", () => {
  it("draws the interval from low to high, and names the zones touched and the rule", () => {
    const judgement = judged("4.9 ± 0.3 mm/s rms (k=2)");
    const svg = severityBar({ judgement, within: zonesWithin(judgement) });
    expect(title(svg)).toBe("4.90 mm/s rms, 4.60 to 5.20 (k=2): zone C");
    const [low, high] = drawnShares(svg);
    expect(low).toBeCloseTo(4.6 / 4.9, 2);
    expect(high).toBeCloseTo(5.2 / 4.9, 2);
    expect(said(svg)).toContain("touches the zones B, C; the worst is C. By guard band: zone C.");
    expect(said(svg)).not.toContain("NOT DRAWN");
  });

  it.each([
    ["0.27 ± 0.02 in/s pk (k=2)", 0.25 / 0.27, 0.29 / 0.27],
    ["133.8 ± 1 dB re 1e-9 m/s (k=2)", 10 ** (-1 / 20), 10 ** (1 / 20)],
  ])("draws %s in the unit of the standard", (text, from, to) => {
    const judgement = judged(text);
    const [low, high] = drawnShares(severityBar({ judgement, within: zonesWithin(judgement) }));
    expect(Math.abs(low - from)).toBeLessThan(0.01);
    expect(Math.abs(high - to)).toBeLessThan(0.01);
  });

  it("keeps the zone of the best value by simple acceptance, and still names the worst", () => {
    const judgement = judged("4.9 ± 0.3 mm/s rms (k=2)");
    const svg = severityBar({ judgement, within: zonesWithin(judgement, { rule: "simple acceptance" }) });
    expect(title(svg)).toBe("4.90 mm/s rms, 4.60 to 5.20 (k=2): zone B");
    expect(said(svg)).toContain("the worst is C. By simple acceptance: zone B.");
  });

  it("says in title and small print where it is not drawn", () => {
    const svg = severityBar({ judgement: judged("4.9 ± 0.3 mm/s rms (k=2)") });
    expect(title(svg)).toBe("4.90 mm/s rms, ± NOT DRAWN: zone B");
    expect(said(svg)).toContain("The uncertainty of the reading is not drawn: the verdict is that of the best value.");
    expect(title(severityBar({ judgement: judge("4.9 mm/s rms", machine) }))).toBe("4.90 mm/s rms: zone B");
  });

  it("holds an interval wider than the scale", () => {
    const judgement = judged("8 ± 7.9 mm/s rms (k=2)");
    const svg = severityBar({ judgement, within: zonesWithin(judgement), width: 640 });
    const ends = /d="M[\d.]+,[\d.]+H([\d.]+)M/.exec(svg);
    expect(Number(ends?.[1])).toBeLessThan(640 - 32);
  });

  it("refuses the interval of another judgement", () => {
    const within = zonesWithin(judged("4.9 ± 0.3 mm/s rms (k=2)"));
    expect(codeOf(() => severityBar({ judgement: judged("4.1 ± 0.3 mm/s rms (k=2)"), within }))).toBe("out-of-range");
    const other = judge(
      parseUncertain("4.9 ± 0.3 mm/s rms (k=2)"),
      "motor 132 kW 1485 r/min shaft height 315 mm rigid",
    );
    expect(codeOf(() => severityBar({ judgement: other, within }))).toBe("out-of-range");
  });
});

it("nomograph and trend say that ± is not drawn", () => {
  const readings = [parseUncertain("4.9 ± 0.3 mm/s rms (k=2) at 25 Hz"), "3 mm/s rms at 25 Hz"];
  const note = "± NOT DRAWN: 1 of 2 readings have one; shown are the best values.";
  expect(said(nomograph({ readings }))).toContain(note);
  const trend = readings.map((reading, time) => ({ time, reading }));
  expect(said(trendChart({ readings: trend, as: "mm/s rms" }))).toContain(note);
  expect(said(nomograph({ readings: ["3 mm/s rms at 25 Hz"] }))).not.toContain("±");
});

it.each([
  ["severityBar", () => severityBar({ judgement: judge("4.9 mm/s rms", machine), witdh: 300 } as never), "width"],
  ["nomograph", () => nomograph({ reading: [] } as never), "readings"],
  ["nomograph, a height", () => nomograph({ height: 300 } as never), undefined],
  [
    "trendChart",
    () => trendChart({ readings: [{ time: 0, reading: 1 }], as: "mm/s rms", alram: "3 mm/s rms" } as never),
    "alarm",
  ],
])("%s refuses an option that it does not know, and names the nearest", (_, draw, nearest) => {
  const error = refusalOf(draw);
  expect(error.code).toBe("unknown-option");
  if (nearest !== undefined) expect(error.didYouMean).toContain(nearest);
});
