/**
 * The charts of the documentation, by file name. Each is drawn when the site is built, wide and narrow, so that none
 * is stale. The plant and its readings are invented.
 */
import { nomograph, severityBar, spectrumChart, trendChart, tripTimeline } from "../../src/entries/chart";
import type { TripSettings } from "../../src/entries/protection";
import { classify } from "../../src/entries/severity";
import { spectrum } from "../../src/entries/signal";

/** Settings of the induced-draught fan in the examples; invented. */
export const fanSettings: TripSettings = {
  threshold: "7.1 mm/s rms",
  hysteresis: "5 %",
  onDelay: 3,
  timerResets: "below threshold",
  sensorFault: "alarm",
  latching: true,
  contact: "normally open",
  coil: "normally energised",
};

/** One level a second: a gust that passes, then a blade that lost its wear plate; invented. */
export const fanLevels = [
  3.1, 3.2, 3.0, 3.3, 8.2, 8.9, 4.1, 3.2, 3.1, 3.4, 3.3, 4.6, 6.2, 7.4, 8.3, 9.1, 9.6, 9.4, 8.8, 7.0, 5.2, 3.9, 3.6,
  3.5,
];

/** A wobble without chance, so that every build draws the same. */
const wobble = (i: number): number => Math.sin(i * 12.9898) * 0.5 + Math.sin(i * 4.1414) * 0.5;

const rate = 2048;
/** One second of a pump bearing: unbalance at 1x, a bent coupling at 2x, vane passing at 7x, some noise; invented. */
const pumpSecond = Float64Array.from({ length: rate * 4 }, (_, i) => {
  const t = (2 * Math.PI * 24.75 * i) / rate;
  return 3.1 * Math.sin(t) + 1.7 * Math.sin(2 * t + 1) + 0.9 * Math.sin(7 * t) + 0.5 * wobble(i);
});

const day = 86_400_000;
const trend = Array.from({ length: 26 }, (_, week) => ({
  time: new Date(Date.UTC(2026, 3, 6) + week * 7 * day),
  reading: 1.9 + 0.22 * wobble(week) + (week > 14 ? 0.017 * (week - 14) ** 2 : 0),
}));

/** Each chart by its file name, drawn at a width in pixels. */
export const charts: Readonly<Record<string, (width: number) => string>> = {
  nomograph: (width) =>
    nomograph({
      width,
      title: "Hollowmere: three bearings on one scale",
      severity: { scheme: "iso-10816-3-2009", machine: "group 1 rigid" },
      readings: [
        { reading: "2.6 mil pp at 1485 r/min", label: "ID fan, drive end" },
        { reading: "0.12 g pk at 7425 r/min", label: "gear mesh side" },
        { reading: "0.25 in/s pk at 2980 r/min", label: "feed pump" },
      ],
    }),
  "nomograph-sine": (width) => nomograph({ width, units: "imperial", detector: "pk" }),
  "severity-bar": (width) =>
    severityBar({
      width,
      judgement: classify("3.9 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 1 rigid" }),
    }),
  "trip-timeline": (width) =>
    tripTimeline({
      width,
      title: "ID fan: a gust is ridden out, the second rise trips",
      settings: fanSettings,
      levels: fanLevels,
      dt: 1,
      commands: [{ at: 22, do: "reset" }],
    }),
  trend: (width) =>
    trendChart({
      width,
      title: "Feed pump, drive end, half a year",
      readings: trend,
      as: "mm/s rms",
      baseline: "1.9 mm/s rms",
      alarm: "3.02 mm/s rms",
      trip: "7.1 mm/s rms",
      severity: { scheme: "iso-10816-3-2009", machine: "group 1 rigid" },
    }),
  spectrum: (width) =>
    spectrumChart({
      width,
      title: "Circulation pump, drive end",
      spectrum: spectrum(pumpSecond, { rate, unit: "mm/s", as: "mm/s rms" }),
      speed: "1485 r/min",
      orders: [1, 2, 3, 7],
      frequency: [0, 250],
    }),
};
