import * as chart from "veladis/chart";
import { checkAgainstKnown, proposeSetpoints } from "veladis/protection";
import { classify, judge } from "veladis/severity";
import { parseUncertain, zonesWithin } from "veladis/uncertainty";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";
import { settings } from "../trip/trip-settings";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const c: Record<string, Loose> = chart;

const trend = (changed: object) =>
  c.trendChart({
    readings: [
      { time: 0, reading: 2 },
      { time: 1, reading: 2.1 },
    ],
    as: "mm/s rms",
    ...changed,
  });
const nomograph = (changed: object) => c.nomograph({ readings: ["4.1 mm/s rms at 1490 r/min"], ...changed });
const lines = { unit: "mm/s", detector: "rms", resolution: 1, values: Float64Array.of(0, 1, 2, 3) };
const spectrum = (changed: object) => c.spectrumChart({ spectrum: lines, speed: "60 r/min", ...changed });
const timeline = (changed: object) => c.tripTimeline({ settings, levels: [0.2, 0.6], dt: 1, ...changed });

const judgement = classify("3.9 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 2 rigid" });

const uncertain = judge(parseUncertain("4.9 ± 0.3 mm/s rms (k=2)"), "pump 90 kW 2980 r/min category II");

const proposal = proposeSetpoints({ baseline: "2 mm/s rms", machine: "pump 90 kW 2980 r/min category II" });

const check = checkAgainstKnown({ known: "8 mm/s rms", indicated: "7.9 mm/s rms", tolerance: "5 %" });

const cases: Cases = {
  "severityBar, the interval of another judgement": () => c.severityBar({ judgement, within: zonesWithin(uncertain) }),
  "severityBar, an interval with zones that the bar does not have": () => {
    const within = zonesWithin(uncertain);
    const criteria = within.criteria.map((one) => ({ ...one, zones: ["A"] }));
    return c.severityBar({ judgement: uncertain, within: { ...within, criteria } });
  },
  "severityBar, an interval that is none": () => c.severityBar({ judgement, within: {} }),
  "severityBar, an option that is none": () => c.severityBar({ judgement, colour: "red" }),
  "setpointChart, no proposal": () => c.setpointChart({}),
  "setpointChart, a proposal without its limits": () => c.setpointChart({ proposal: { ...proposal, limits: null } }),
  "setpointChart, limits of no kind": () =>
    c.setpointChart({
      proposal: { ...proposal, limits: { ...proposal.limits, kind: "rows" } },
    }),
  "setpointChart, nothing to draw": () =>
    c.setpointChart({ proposal: { ...proposal, baseline: null, alarm: null, trip: null } }),
  "setpointChart, an option that is none": () => c.setpointChart({ proposal, colour: "red" }),
  "checkChart, no options": () => c.checkChart(),
  "checkChart, no list": () => c.checkChart({ checks: check }),
  "checkChart, no checks": () => c.checkChart({ checks: [] }),
  "checkChart, a check without its name": () => c.checkChart({ checks: [{ check }] }),
  "checkChart, a name without end": () => c.checkChart({ checks: [{ name: "x".repeat(201), check }] }),
  "checkChart, a check that is none": () =>
    c.checkChart({ checks: [{ name: "", check: { ...check, error: 1, as: 7 } }] }),
  "checkChart, an option that is none": () => c.checkChart({ checks: [{ name: "", check }], colour: "red" }),
  "nomograph, a height": () => nomograph({ height: 300 }),
  "nomograph, a part of a reading that is none": () =>
    nomograph({ readings: [{ reading: "4.1 mm/s rms at 25 Hz", lable: "fan" }] }),
  "trendChart, an alarm mistyped": () => trend({ alram: "3 mm/s rms" }),
  "spectrumChart, an option that is none": () => spectrum({ sclae: "log" }),
  "tripTimeline, an option that is none": () => timeline({ delay: 3 }),
  "severityBar, a judgement without limits": () => c.severityBar({ judgement: { ...judgement, limits: {} } }),
  "severityBar, a judgement that assumed nothing known": () =>
    c.severityBar({ judgement: { ...judgement, assumed: ["cosine"] } }),
  "severityBar, a judgement of no reading": () => c.severityBar({ judgement: { ...judgement, judged: null } }),
  "nomograph, a number for a detector": () => nomograph({ detector: 1 }),
  "nomograph, a number for a label": () => nomograph({ readings: [{ reading: "4.1 mm/s rms at 25 Hz", label: 4 }] }),
  "nomograph, one frequency": () => nomograph({ frequency: 10 }),
  "nomograph, null for a table": () => nomograph({ severity: null }),
  "spectrumChart, a spectrum without unit": () => spectrum({ spectrum: { ...lines, unit: undefined } }),
  "spectrumChart, a word for what was assumed": () => spectrum({ spectrum: { ...lines, assumed: "sine" } }),
  "spectrumChart, a number for a detector": () => spectrum({ spectrum: { ...lines, detector: 1 } }),
  "spectrumChart, a spectrum without lines": () => spectrum({ spectrum: { ...lines, values: undefined } }),
  "spectrumChart, one frequency": () => spectrum({ frequency: 10 }),
  "spectrumChart, a frame from nowhere": () => spectrum({ frequency: [Number.NaN, 3] }),
  "spectrumChart, a frame without end": () => spectrum({ frequency: [0, Number.POSITIVE_INFINITY] }),
  "trendChart, no options": () => c.trendChart(),
  "trendChart, a word for options": () => c.trendChart("trend"),
  "trendChart, no readings": () => trend({ readings: undefined }),
  "trendChart, readings that are none": () => trend({ readings: "2 mm/s rms" }),
  "trendChart, an empty list": () => trend({ readings: [] }),
  "trendChart, dates among numbers": () =>
    trend({
      readings: [
        { time: 0, reading: 2 },
        { time: new Date(0), reading: 2 },
      ],
    }),
  "trendChart, times without a reading": () => trend({ readings: [{ time: 0 }, { time: 1 }] }),
  "trendChart, a longest gap of nothing": () => trend({ longestGap: 0 }),
  "trendChart, a second axis of another quantity": () => trend({ beside: "g pk" }),
  "trendChart, a second axis in decibels": () => trend({ beside: "dB re 1e-9 m/s" }),
  "spectrumChart, a second axis of a density": () =>
    spectrum({ spectrum: { unit: "g2/Hz", resolution: 1, values: lines.values }, beside: "m/s2 rms" }),
  "trendChart, a reading below zero": () => trend({ readings: [{ time: 0, reading: -2 }] }),
  "trendChart, a time that is none": () => trend({ readings: [{ time: "noon", reading: 2 }] }),
  "trendChart, a table of another quantity": () =>
    trend({ as: "g pk", severity: { scheme: "iso-10816-3-2009", machine: "group 1 rigid" } }),
  "width, too small": () => trend({ width: 100 }),
  "width, a text": () => trend({ width: "640" }),
  "height, too large": () => trend({ height: 5000 }),
  "theme, near one": () => trend({ theme: "drak" }),
  "nomograph, no options": () => c.nomograph(null),
  "nomograph, units that are none": () => nomograph({ units: "metrical" }),
  "nomograph, from zero": () => nomograph({ frequency: [0, 100] }),
  "nomograph, to zero": () => nomograph({ frequency: [1, 0] }),
  "nomograph, from high to low": () => nomograph({ velocity: [100, 1] }),
  "nomograph, a reading without frequency": () => nomograph({ readings: ["4.1 mm/s rms"] }),
  "nomograph, a reading of zero": () => nomograph({ readings: ["0 mm/s rms at 25 Hz"] }),
  "severityBar, a verdict by points": () => c.severityBar({ judgement: { ...judgement, governing: {} } }),
  "severityBar, no options": () => c.severityBar(),
  "severityBar, no judgement": () => c.severityBar({}),
  "spectrumChart, no options": () => c.spectrumChart(),
  "spectrumChart, no spectrum": () => spectrum({ spectrum: undefined }),
  "spectrumChart, no resolution": () => spectrum({ spectrum: { ...lines, resolution: 0 } }),
  "spectrumChart, a line not a number": () => spectrum({ spectrum: { ...lines, values: [0, Number.NaN, 1] } }),
  "spectrumChart, from high to low": () => spectrum({ frequency: [3, 1] }),
  "spectrumChart, from zero on a logarithmic scale": () => spectrum({ frequency: [0, 3], frequencyScale: "log" }),
  "spectrumChart, one line": () => spectrum({ frequency: [0.5, 1.5] }),
  "spectrumChart, a scale that is none": () => spectrum({ scale: "logarithmic" }),
  "spectrumChart, a scale of the frequencies that is none": () => spectrum({ frequencyScale: "octaves" }),
  "spectrumChart, an order of zero": () => spectrum({ orders: [0] }),
  "tripTimeline, no settings": () => timeline({ settings: undefined }),
  "tripTimeline, no options": () => c.tripTimeline(),
  "tripTimeline, no time between levels": () => timeline({ dt: 0 }),
  "tripTimeline, neither a time between levels nor their times": () => timeline({ dt: undefined }),
  "tripTimeline, fewer times than levels": () => timeline({ dt: [0] }),
  "tripTimeline, times that fall": () => timeline({ dt: [5, 2] }),
  "tripTimeline, no levels": () => timeline({ levels: [] }),
  "tripTimeline, a title that is none": () => timeline({ title: 7 }),
  "tripTimeline, a description without end": () => timeline({ description: "x".repeat(10_001) }),
  "tripTimeline, commands that are none": () => timeline({ commands: 7 }),
  "nomograph, readings that are none": () => nomograph({ readings: 7 }),
  "nomograph, beyond all frames": () => nomograph({ frequency: [1, 1e300] }),
  "severityBar, a judgement that is none": () => c.severityBar({ judgement: { limits: {}, zones: 7 } }),
  "spectrumChart, orders that are none": () => spectrum({ orders: 7 }),
  "trendChart, times beyond what can be placed": () =>
    trend({
      readings: [
        { time: -1.7e308, reading: 2 },
        { time: 1.7e308, reading: 2.1 },
      ],
    }),
  "trendChart, a reading that is none": () => trend({ readings: [7] }),
  "trendChart, a unit of time that is none": () => trend({ timeUnit: 7 }),
};

holdWording("chart", cases);
