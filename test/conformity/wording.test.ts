import { classify, judge, judgePoints } from "veladis/severity";
import * as uncertainty from "veladis/uncertainty";
import { uncertainPoints } from "../../src/conformity/index";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";
import { siteRule } from "../severity/own-scheme";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const u: Record<string, Loose> = uncertainty;

const pump = "pump 90 kW 2980 r/min category II";
const reading = uncertainty.parseUncertain("4.9 ± 0.3 mm/s rms (k=2)");
const verdict = judge(reading, pump);
const one: Loose = classify(reading, { scheme: siteRule("wording") });
const changed = (parts: object) => u.zonesWithin({ ...one, ...parts });
const [criterion] = one.criteria;
const withCriterion = (parts: object) => changed({ criteria: [{ ...criterion, ...parts }] });
const withLimit = (parts: object) =>
  withCriterion({ limits: { ...criterion.limits, "A/B": { ...criterion.limits["A/B"], ...parts } } });

const cases: Cases = {
  "points, a coverage factor behind one of them": () =>
    uncertainPoints("DE-H 3.1 ± 0.2, DE-V 2.2 ± 0.1 mm/s rms (k=2)"),
  "points, a coverage factor behind no ±": () => uncertainPoints("DE-H 3.1 ± 0.2 (k=2), DE-V 2.2 mm/s rms, k=2"),
  "points, two signs": () => uncertainPoints("DE-H 3.1 ± 0.2 ± 0.1 mm/s rms, DE-V 2.2 mm/s rms"),
  "points, a ± behind the unit they share": () => uncertainPoints("DE-H 5.0, DE-V 2.9 mm/s rms ± 5 % (k=2)"),
  "points, a frequency with a tolerance": () => uncertainPoints("DE-H 3.1 mm/s rms at 25 ± 1 Hz"),
  "points, two uncertainties of one": () => uncertainPoints("DE-H 3.1 ± 0.2 ± 0.1 mm/s rms"),
  "zonesWithin, nothing": () => u.zonesWithin(),
  "zonesWithin, a reading": () => u.zonesWithin("4.9 ± 0.3 mm/s rms"),
  "zonesWithin, a verdict on a reading without an uncertainty": () => u.zonesWithin(judge("4.9 mm/s rms", pump)),
  "zonesWithin, no verdicts": () => u.zonesWithin({ ...verdict, judgements: [] }),
  "zonesWithin, a verdict by several points": () => u.zonesWithin(judgePoints([{ point: "DE-H", reading }], pump)),
  "zonesWithin, a number for options": () => u.zonesWithin(verdict, 5),
  "zonesWithin, null for options": () => u.zonesWithin(verdict, null),
  "zonesWithin, a mistyped option": () => u.zonesWithin(verdict, { rulle: "guard band" }),
  "zonesWithin, a rule that is none": () => u.zonesWithin(verdict, { rule: "gard band" }),
  "zonesWithin, half a draw": () =>
    u.zonesWithin(judge(uncertainty.parseUncertain("4.9 ± 1 mm/s rms"), pump), { draws: 0.5 }),
  "zonesWithin, a kind that is none": () => changed({ kind: "zone", judgements: undefined }),
  "zonesWithin, no headline": () => changed({ headline: undefined }),
  "zonesWithin, criteria that are no list": () => changed({ criteria: {} }),
  "zonesWithin, no criterion": () => changed({ criteria: [] }),
  "zonesWithin, a criterion without its reading": () => withCriterion({ judged: null }),
  "zonesWithin, limits that are none": () => withCriterion({ limits: null }),
  "zonesWithin, a limit too few": () => withCriterion({ limits: { "A/B": criterion.limits["A/B"] } }),
  "zonesWithin, a limit of zero": () => withLimit({ printed: { value: 0 } }),
  "zonesWithin, a limit as a text": () => withLimit({ value: "2" }),
  "zonesWithin, a level that is none": () => withLimit({ level: "100 dB" }),
};

holdWording("conformity", cases);
