/**
 * The charts of the documentation, by file name. Each is drawn when the site is built, wide and narrow, so that none
 * is stale. The plant and its readings are invented.
 */
import { readFileSync } from "node:fs";
import {
  nomograph,
  setpointChart,
  severityBar,
  spectrumChart,
  trendChart,
  tripTimeline,
} from "../../src/entries/chart";
import { baseline, proposeSetpoints, type TripSettings } from "../../src/entries/protection";
import { classify, defineScheme, judge } from "../../src/entries/severity";
import { profileDensity, spectrum } from "../../src/entries/signal";

/** Settings of induced-draught fan 1 as its sheet has them, `docs/guides/example-plant.md`; invented. */
export const fanSettings: TripSettings = {
  threshold: "9 mm/s rms",
  hysteresis: "8 %",
  onDelay: 8,
  timerResets: "below threshold",
  sensorFault: "alarm",
  latching: true,
  contact: "normally open",
  coil: "normally energised",
};

/** One level a second: a gust that passes, then a blade that lost its wear plate; invented. */
export const fanLevels = [
  2.6, 2.7, 2.5, 9.4, 10.1, 4.8, 3.0, 2.9, 6.4, 9.2, 9.8, 10.4, 10.9, 11.2, 11.3, 11.1, 10.8, 10.2, 8.9, 6.7, 4.9, 3.6,
  3.0, 2.6,
];

/** A wobble without chance, so that every build draws the same. */
const wobble = (i: number): number => Math.sin(i * 12.9898) * 0.5 + Math.sin(i * 4.1414) * 0.5;

const rate = 2048;
/** Seconds of a record: whole turns at 1490 r/min, so that the lines of the shaft stand where they are. */
const seconds = 6;
const turns = 1490 / 60;
/** A pump bearing: unbalance at 1x, a bent coupling at 2x, vane passing at 7x, some noise; invented. */
const pumpRecord = Float64Array.from({ length: rate * seconds }, (_, i) => {
  const t = (2 * Math.PI * turns * i) / rate;
  return 3.1 * Math.sin(t) + 1.7 * Math.sin(2 * t + 1) + 0.9 * Math.sin(7 * t) + 0.5 * wobble(i);
});

const day = 86_400_000;
const trend = Array.from({ length: 26 }, (_, week) => ({
  time: new Date(Date.UTC(2026, 3, 6) + week * 7 * day),
  reading: 1.9 + 0.22 * wobble(week) + (week > 14 ? 0.017 * (week - 14) ** 2 : 0),
}));

/** A column of an example file, by its number from 0; run from the folder of the project. */
function column(path: string, at: number): number[] {
  const lines = readFileSync(`${process.cwd()}/docs/examples/${path}`, "utf8").trim().split("\n");
  return lines.map((line) => Number(line.split(",")[at])).filter((value) => Number.isFinite(value));
}

/** Boiler-feed pump A of the sheet; invented. */
const feedPump = "pump 250 kW 2980 r/min category I";

/** The readings and the proposal of the guide to setpoints; invented. */
const steady = [1.9, 2.1, 2.05, 2.0, 1.8, 2.2, 2.0, 1.9, 2.1, 2.0];
const steadyBaseline = baseline(steady, { as: "mm/s rms" });
const proposal = proposeSetpoints({
  baseline: steadyBaseline,
  scheme: "iso-10816-7-2009",
  machine: feedPump,
  device: { step: "0.2 mm/s rms" },
});

/** The rule of the guide to tables of one's own; invented. */
const ownRule = defineScheme({
  id: "hollowmere-circulation-drives",
  kind: "zones",
  standard: "Hollowmere site rule 7, invented",
  edition: "second issue",
  machines: ["gear drive", "pump"],
  classes: [
    {
      when: { power: { above: 15, to: 500 } },
      criteria: [
        {
          as: "mm/s rms",
          limits: { "A/B": 1.8, "B/C": 3.5, "C/D": 5.6 },
          source: { title: "Hollowmere site rule 7", where: "table 1", provenance: "printed", page: "p. 2" },
        },
      ],
    },
  ],
});

/** The profile of the guide to densities: break points of NAVMAT P-9492, with end points as usually quoted. */
const profile = [
  [20, 0.01],
  [80, 0.04],
  [350, 0.04],
  [2000, 0.007],
] as const;

/** The two tones in the explanation of overalls: 2.5 mm/s at 1x and 0.9 mm/s at 7x; invented. */
const twoTones = Float64Array.from({ length: rate * seconds }, (_, i) => {
  const t = (2 * Math.PI * turns * i) / rate;
  return Math.SQRT2 * (2.5 * Math.sin(t) + 0.9 * Math.sin(7 * t));
});

/** Each chart by its file name, drawn at a width in pixels. */
export const charts: Readonly<Record<string, (width: number) => string>> = {
  nomograph: (width) =>
    nomograph({
      width,
      title: "Hollowmere: three bearings on one scale",
      severity: { scheme: "iso-10816-3-2009", machine: "group 1 rigid" },
      readings: [
        { reading: "2.6 mil pp at 1485 r/min", label: "ID fan 1" },
        { reading: "0.8 g pk at 22x 1490 r/min", label: "circulation pump, gear mesh" },
        { reading: "0.16 in/s pk at 2980 r/min", label: "feed pump A" },
      ],
    }),
  "nomograph-sine": (width) => nomograph({ width, units: "imperial", detector: "pk" }),
  "severity-bar": (width) =>
    severityBar({ width, judgement: judge("3.9 mm/s rms", "motor 132 kW 315 mm 1485 r/min rigid") }),
  "severity-bar-open": (width) => severityBar({ width, judgement: judge("2.0 mm/s rms", "motor 1485 r/min rigid") }),
  "place-not-stated": (width) =>
    severityBar({ width, judgement: judge("100 um pp", "steam turbine 12 MW 5400 r/min rigid") }),
  "trip-timeline": (width) =>
    tripTimeline({
      width,
      title: "ID fan 1: a gust is ridden out, the second rise trips",
      settings: fanSettings,
      levels: fanLevels,
      dt: 1,
      commands: [{ time: 22, do: "reset" }],
    }),
  trend: (width) =>
    trendChart({
      width,
      title: "Boiler-feed pump A, drive end, half a year",
      readings: trend,
      as: "mm/s rms",
      baseline: "2 mm/s rms",
      alarm: "3.2 mm/s rms",
      trip: "7.6 mm/s rms",
      severity: { scheme: "iso-10816-7-2009", machine: feedPump },
    }),
  spectrum: (width) =>
    spectrumChart({
      width,
      title: "Circulation pump 3, drive end",
      spectrum: spectrum(pumpRecord, { rate, unit: "mm/s", as: "mm/s rms" }),
      speed: "1490 r/min",
      orders: [1, 2, 3, 7],
      frequency: [0, 250],
    }),
  route: (width) =>
    nomograph({
      width,
      title: "The route: four readings, four ways of writing",
      velocity: [0.5, 50],
      frequency: [5, 500],
      readings: [
        { reading: "1.9 mm/s rms at 1485 r/min", label: "1.9 mm/s rms" },
        { reading: "0.12 in/s pk at 1485 r/min", label: "0.12 in/s pk" },
        { reading: "2.6 mil pp at 1485 r/min", label: "2.6 mil pp" },
        { reading: "126.8 dB re 1e-9 m/s at 1485 r/min", label: "126.8 dB re 1 nm/s" },
      ],
    }),
  "level-references": (width) =>
    nomograph({
      width,
      title: "95 dB by three references, at 25 Hz",
      velocity: [0.01, 10],
      frequency: [1, 1000],
      readings: [
        { reading: "95 dB re 1e-9 m/s at 25 Hz", label: "re 1 nm/s" },
        { reading: "95 dB re 1e-8 m/s at 25 Hz", label: "re 10 nm/s" },
        { reading: "95 dB re 5e-8 m/s at 25 Hz", label: "re 50 nm/s" },
      ],
    }),
  "condensate-pump-zone": (width) =>
    severityBar({
      width,
      judgement: classify("4.1 mm/s rms", {
        scheme: "iso-10816-7-2009",
        machine: { type: "pump", power: "90 kW", speed: "2980 r/min", category: "II" },
      }),
    }),
  calculator: (width) =>
    trendChart({
      width,
      title: "Baseline, alarm and this month's reading",
      readings: [1.9, 2.0, 2.0, 2.1, 2.0, 2.6].map((reading, i) => ({ time: i + 1, reading })),
      timeUnit: "month",
      as: "mm/s rms",
      baseline: "2 mm/s rms",
      alarm: "3.25 mm/s rms",
    }),
  historian: (width) =>
    nomograph({
      width,
      title: "Rows of the historian on one scale",
      velocity: [0.5, 50],
      frequency: [5, 500],
      readings: [
        { reading: "2.1 mm/s rms at 2980 r/min", label: "pump A, horizontal" },
        { reading: "4.6 mm/s rms at 2984 r/min", label: "pump B, horizontal" },
        { reading: "66 um pp at 1485 r/min", label: "fan 1, 66 um pp" },
        { reading: "127 um pp at 1485 r/min", label: "fan 1, 127 um pp" },
      ],
    }),
  "zones-in-sql": (width) =>
    severityBar({
      width,
      judgement: classify("0.36 in/s pk", { scheme: "iso-10816-7-2009", machine: feedPump }),
    }),
  "plant-history": (width) =>
    trendChart({
      width,
      title: "Pump KW-01: the highest reading of each month",
      readings: column("plant-months.csv", 4).map((reading, month) => ({
        time: new Date(Date.UTC(2021, month, 1)),
        reading,
      })),
      as: "mm/s rms",
      severity: { scheme: "iso-10816-7-2009", machine: "pump 132 kW category II 2975 r/min" },
    }),
  "own-rule": (width) =>
    severityBar({
      width,
      judgement: classify("0.19 in/s pk", { scheme: ownRule, machine: { type: "gear drive", power: "200 kW" } }),
    }),
  setpoints: (width) =>
    trendChart({
      width,
      title: "Boiler-feed pump A: baseline and proposed setpoints",
      readings: steady.map((reading, i) => ({ time: i + 1, reading })),
      timeUnit: "reading",
      as: "mm/s rms",
      baseline: "2.0 mm/s rms",
      ...(proposal.alarm && { alarm: proposal.alarm.stored }),
      ...(proposal.trip && { trip: proposal.trip.stored }),
      severity: { scheme: "iso-10816-7-2009", machine: feedPump },
    }),
  "setpoint-scale": (width) => setpointChart({ width, proposal, statistics: steadyBaseline }),
  "fan-trip": (width) =>
    tripTimeline({
      width,
      title: "ID fan 1: 9 mm/s RMS, 8 %, 8 s, latching",
      settings: fanSettings,
      levels: [2.6, 9.4, 9.4, 9.4, 9.4, 5, 9.2, 9.4, 9.6, 9.8, 9.8, 9.8, 9.6, 9.4, 8.6, 8.5, 8.4, 6, 4, 2.6],
      dt: 1,
      commands: [
        { time: 15, do: "reset" },
        { time: 18, do: "reset" },
      ],
    }),
  "pump-rig": (width) =>
    trendChart({
      width,
      title: "Imbalance as an impulse, measured on the rig",
      readings: column("pump-rig/imbalance-impulse.csv", 1).map((reading, time) => ({ time, reading })),
      timeUnit: "rows of the file, about 1 s each",
      as: "g rms",
      alarm: "0.2265 g rms",
    }),
  "fan-bearing": (width) =>
    spectrumChart({
      width,
      title: "Induced-draught fan 2, drive end: velocity from the record",
      spectrum: spectrum(column("fan-bearing.csv", 0), { rate: 2560, unit: "g", as: "mm/s rms", lowest: 10 }),
      speed: "1480 r/min",
      orders: [1, 2, 12],
      frequency: [0, 400],
    }),
  "mechanical-switch": (width) =>
    nomograph({
      width,
      title: "A switch of 2 g against the zones of a pump",
      severity: { scheme: "iso-10816-7-2009", machine: "pump 150 hp 1180 r/min category II" },
      velocity: [0.1, 1000],
      frequency: [1, 2000],
      readings: [
        { reading: "2 g pk at 1180 r/min", label: "operates at 1180 r/min" },
        { reading: "2 g pk at 1490 r/min", label: "at 1490 r/min" },
        { reading: "2 g pk at 2980 r/min", label: "at 2980 r/min" },
      ],
    }),
  "bench-check": (width) =>
    nomograph({
      width,
      title: "The check on the shaker: known and shown",
      velocity: [1, 100],
      frequency: [5, 500],
      readings: [
        { reading: "8 mm/s rms at 2400 r/min", label: "known 8.0 mm/s" },
        { reading: "7.3 mm/s rms at 2400 r/min", label: "shown 7.3 mm/s" },
      ],
    }),
  sensors: (width) =>
    nomograph({
      width,
      title: "Three machines, three kinds of sensor",
      velocity: [0.5, 50],
      frequency: [5, 500],
      readings: [
        { reading: "0.041 g rms at 1485 r/min", label: "fan 1, 4.1 mV" },
        { reading: "40 um pp at 5400 r/min", label: "turbine 1, 320 mV pp" },
        { reading: "2 mm/s rms at 2980 r/min", label: "feed pump A, 5.6 mA" },
      ],
    }),
  "two-tones": (width) =>
    spectrumChart({
      width,
      title: "Circulation pump 3: an overall of 2.66 mm/s from two tones",
      spectrum: spectrum(twoTones, { rate, unit: "mm/s", as: "mm/s rms" }),
      speed: "1490 r/min",
      orders: [1, 7],
      frequency: [0, 250],
    }),
  "shaker-profile": (width) =>
    spectrumChart({
      width,
      title: "The profile of the shaker: 6.06 g rms, or 52.6 mm/s rms",
      spectrum: {
        unit: "g2/Hz",
        resolution: 1,
        values: Float64Array.from({ length: 2001 }, (_, hertz) => (hertz < 20 ? 0 : profileDensity(profile, hertz))),
      },
      frequency: [20, 2000],
      scale: "log",
      frequencyScale: "log",
    }),
  "limits-from-memory": (width) =>
    severityBar({
      width,
      judgement: classify("3.9 mm/s rms", { scheme: "iso-20816-3-2022", machine: "group 1 rigid 1485 r/min" }),
    }),
  "fan-operation": (width) =>
    severityBar({
      width,
      judgement: classify("6.3 mm/s rms", {
        scheme: "iso-14694-2003",
        machine: "fan 132 kW 1485 r/min rigid BV-3, in service",
      }),
    }),
};
