import * as protection from "veladis/protection";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const p: Record<string, Loose> = protection;

const rms = { kind: "rms", averaging: 1 };
const detected = (samples: unknown, options?: unknown) => p.detectedLevels(samples, options);
const shock = { peak: "20 g pk", milliseconds: 5, time: 0.1 };
const wave = { running: "2.6 mm/s rms at 1485 r/min", shock, rate: 10000, seconds: 1 };
const waved = (changed: object) => p.shockOnRunning({ ...wave, ...changed });
const immune = {
  threshold: "9 mm/s rms",
  hysteresis: "8 %",
  onDelay: 8,
  timerResets: "below threshold",
  detector: rms,
};
const immunity = (changed: object, running: unknown = "2.6 mm/s rms at 1485 r/min", options?: object) =>
  p.shockImmunity({ ...immune, ...changed }, running, options);

const response = (shock: unknown) => p.shockResponse(immune, "2.6 mm/s rms at 1485 r/min", shock);

const cases: Cases = {
  "shockResponse, no shock": () => response(undefined),
  "shockResponse, a mistyped part": () => response({ peak: "20 g pk", miliseconds: 5 }),
  "shockResponse, a shock in velocity": () => response({ peak: "20 mm/s pk", milliseconds: 5 }),
  "shockResponse, a shape that is none": () => response({ peak: "20 g pk", milliseconds: 5, shape: "halfsine" }),
  "shockResponse, a shock of no length": () => response({ peak: "20 g pk", milliseconds: 0 }),
  "detectedLevels, a mistyped option": () => detected([1], { rate: 1, detector: rms, initail: 1 }),
  "mechanicalSwitch, a mistyped option": () => p.mechanicalSwitch("2 g pk", { limits: "7.1 mm/s rms" }),
  "detectedLevels, no options": () => detected([1]),
  "detectedLevels, no samples": () => detected(undefined, { rate: 100, detector: rms }),
  "detectedLevels, no rate": () => detected([1], { detector: rms }),
  "detectedLevels, no detector": () => detected([1], { rate: 100 }),
  "detectedLevels, a detector that is none": () => detected([1], { rate: 100, detector: { kind: "mean" } }),
  "detectedLevels, a setting of the other detector": () =>
    detected([1], { rate: 100, detector: { kind: "rms", averaging: 1, decay: 2 } }),
  "detectedLevels, a setting of the other detector, of a peak": () =>
    detected([1], { rate: 100, detector: { kind: "peak", decay: 1, averaging: 2 } }),
  "detectedLevels, no averaging time": () => detected([1], { rate: 100, detector: { kind: "rms", averaging: 0 } }),
  "detectedLevels, no decay time": () => detected([1], { rate: 100, detector: { kind: "peak", decay: 0 } }),
  "detectedLevels, a start below zero": () => detected([1], { rate: 100, detector: rms, initial: -1 }),
  "detectedLevels, a sample not a number": () => detected([1, Number.NaN], { rate: 100, detector: rms }),
  "detectedLevels, a number for samples": () => detected(5, { rate: 100, detector: rms }),
  "shockOnRunning, a mistyped key": () => waved({ phse: 1 }),
  "shockOnRunning, a mistyped key of the shock": () => waved({ shock: { ...shock, start: 0.1 } }),
  "shockOnRunning, a record without end": () => waved({ seconds: 1e9 }),
  "shockOnRunning, no options": () => p.shockOnRunning(),
  "shockOnRunning, no shock": () => waved({ shock: undefined }),
  "shockOnRunning, no rate": () => waved({ rate: 0 }),
  "shockOnRunning, no frequency": () => waved({ running: "2.6 mm/s rms" }),
  "shockOnRunning, a shock in velocity": () => waved({ shock: { ...shock, peak: "20 mm/s pk" } }),
  "shockOnRunning, a shock of no length": () => waved({ shock: { ...shock, milliseconds: 0 } }),
  "shockOnRunning, a shock before the beginning": () => waved({ shock: { ...shock, time: -1 } }),
  "shockOnRunning, a phase not a number": () => waved({ phase: Number.NaN }),
  "shockOnRunning, no length": () => waved({ seconds: 0 }),
  "velocityOf, no samples": () => p.velocityOf(undefined, 1000, 10),
  "velocityOf, no rate": () => p.velocityOf([1], 0, 10),
  "velocityOf, no corner": () => p.velocityOf([1], 1000, 0),
  "velocityOf, a corner at half the rate": () => p.velocityOf([1], 1000, 500),
  "shockImmunity, a corner above all": () => immunity({ highPass: 1e5 }),
  "shockImmunity, settings that are a text": () => p.shockImmunity("4 g pk" as never, "2.6 mm/s rms at 1485 r/min"),
  "shockImmunity, no settings": () => p.shockImmunity(undefined, "2.6 mm/s rms at 1485 r/min"),
  "shockImmunity, a mistyped key": () => immunity({ highpass: 5 }),
  "shockImmunity, null for options": () => immunity({}, undefined, null as Loose),
  "shockImmunity, a mistyped option": () => immunity({}, undefined, { multiple: [2] }),
  "shockImmunity, one shock": () => immunity({}, undefined, { milliseconds: 5 }),
  "shockImmunity, one burst": () => immunity({}, undefined, { multiples: 2 }),
  "shockImmunity, a shock of a nanosecond": () => immunity({}, undefined, { milliseconds: [1e-6] }),
  "shockImmunity, a shock of a quarter of an hour": () =>
    immunity({ threshold: "1 g pk" }, undefined, { milliseconds: [1e6] }),
  "shockImmunity, no running vibration": () => immunity({}, null),
  "shockImmunity, no frequency": () => immunity({}, "2.6 mm/s rms"),
  "shockImmunity, a threshold in displacement": () => immunity({ threshold: "4 mil pp" }),
  "shockImmunity, a corner of zero": () => immunity({ highPass: 0 }),
  "shockImmunity, running above the threshold": () => immunity({}, "9.4 mm/s rms at 1485 r/min"),
  "shockImmunity, a shock of no length": () => immunity({}, undefined, { milliseconds: [0] }),
  "shockImmunity, a burst of nothing": () => immunity({}, undefined, { multiples: [0] }),
  "shockImmunity, a burst below the threshold": () => immunity({}, undefined, { multiples: [0.5] }),
  "mechanicalSwitch, null for options": () => p.mechanicalSwitch("2 g pk", null),
  "mechanicalSwitch, null for a limit": () => p.mechanicalSwitch("2 g pk", { limit: null }),
  "mechanicalSwitch, no setting": () => p.mechanicalSwitch(),
  "mechanicalSwitch, a setting in velocity": () => p.mechanicalSwitch("10 mm/s pk"),
  "mechanicalSwitch, a setting of zero": () => p.mechanicalSwitch("0 g pk"),
  "mechanicalSwitch, a limit in acceleration": () => p.mechanicalSwitch("2 g pk", { limit: "1 g pk" }),
  "mechanicalSwitch, a limit of zero": () => p.mechanicalSwitch("2 g pk", { limit: "0 mm/s rms" }),
  "mechanicalSwitch, one speed": () => p.mechanicalSwitch("2 g pk", { speeds: "1500 r/min" }),
};

holdWording("shock", cases);
