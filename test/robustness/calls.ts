import { all, create } from "mathjs";
import * as root from "veladis";
import * as chart from "veladis/chart";
import * as explanation from "veladis/explain";
import * as factTables from "veladis/facts";
import * as json from "veladis/json";
import * as kit from "veladis/kit";
import * as mathjs from "veladis/mathjs";
import * as ownScheme from "veladis/own";
import * as plants from "veladis/plant";
import * as protection from "veladis/protection";
import * as sensors from "veladis/sensor";
import * as severity from "veladis/severity";
import * as signal from "veladis/signal";
import * as sql from "veladis/sql";
import * as uncertainty from "veladis/uncertainty";
import * as vector from "veladis/vector";
import { plantCheckCalls } from "./plant-check-calls";

/** A device that is knocked. */
const knocked = {
  threshold: "0.5 g pk",
  hysteresis: "10 %",
  onDelay: 0.01,
  timerResets: "below threshold",
  detector: { kind: "peak", decay: 0.05 },
  highPass: 2,
} as const;

/** Every entry of the package, by the name it is imported with. */
export const entries = {
  veladis: root,
  "veladis/severity": severity,
  "veladis/protection": protection,
  "veladis/plant": plants,
  "veladis/signal": signal,
  "veladis/chart": chart,
  "veladis/mathjs": mathjs,
  "veladis/sql": sql,
  "veladis/vector": vector,
  "veladis/uncertainty": uncertainty,
  "veladis/sensor": sensors,
  "veladis/explain": explanation,
  "veladis/facts": factTables,
  "veladis/json": json,
  "veladis/own": ownScheme,
  "veladis/kit": kit,
} as const;

/** A public function, or a method of what one returns, with arguments that it answers. */
export interface Call {
  readonly name: string;
  /** Made anew for every call, since a call may keep or change what it is given. */
  readonly args: () => unknown[];
  readonly run: (...args: unknown[]) => unknown;
}

// biome-ignore lint/suspicious/noExplicitAny: hostile arguments are of no type
type Loose = any;

const on =
  (module: object) =>
  (name: string, ...args: unknown[]): Call => ({
    name,
    args: () => structuredClone(args),
    run: (...given) => (module as Loose)[name](...given),
  });

/** The arguments of a constructor. */
const made =
  (module: object) =>
  (name: string, ...args: unknown[]): Call => ({
    name: `new ${name}`,
    args: () => structuredClone(args),
    run: (...given) => new (module as Loose)[name](...given),
  });

/** A method of a fresh object for every call. */
const of = (name: string, object: () => object, method: string, ...args: unknown[]): Call => ({
  name: `${name}.${method}`,
  args: () => structuredClone(args),
  run: (...given) => (object() as Loose)[method](...given),
});

/** Calls the object itself, as a converter or a classifier is called. */
const calling = (name: string, object: () => unknown, ...args: unknown[]): Call => ({
  name: `${name}()`,
  args: () => structuredClone(args),
  run: (...given) => (object() as Loose)(...given),
});

/** The answer of an attempt; its refusal is thrown, as by the call itself. */
function answerOf(attempt: root.Attempt<unknown>): unknown {
  if (!attempt.ok) throw attempt.error;
  return attempt.value;
}

const amplitude = { value: 4, unit: "mm/s", detector: "rms", quantity: "velocity", hertz: 25 };
const samples = Array.from({ length: 64 }, (_, i) => Math.sin(i) + 0.1 * Math.cos(3 * i));
const shape = { rate: 1000, unit: "g" };

const r = on(root);
const amplitudes: Call[] = [
  r("assumedText", { assumed: ["sine", "crest-factor"], crestFactor: 3 }),
  r("amplitude", { value: 0.25, unit: "in/s", detector: "pk", quantity: "velocity", at: "25 Hz", crestFactor: 4 }),
  r("amplitude", { value: 95, unit: "dB re 1 nm/s" }),
  {
    name: "attempt",
    args: () => [1, "mm/s rms", "in/s pk"],
    run: (...given) => answerOf(root.attempt(() => (root.convert as Loose)(...given))),
  },
  r("convert", 0.25, "in/s pk", "mil pp", { at: "1500 r/min" }),
  r("convert", 2, "g rms", "g pk", { crestFactor: 4 }),
  r("convert", 95, "dB re 1e-9 m/s", "mm/s rms"),
  r("convertAmplitude", "0.25 in/s pk", "mil pp", { at: { hertz: 25 }, crestFactor: undefined }),
  r("convertAmplitude", amplitude, "in/s pk", { crestFactor: 4 }),
  r("converter", "in/s pk", "mm/s rms", { at: "25 Hz" }),
  calling("converter", () => root.converter("in/s pk", "mm/s rms"), 1),
  calling("converter of levels", () => root.converter("dB re 1e-9 m/s", "mm/s rms"), 90),
  of("converter", () => root.converter("in/s pk", "mm/s rms"), "array", Float64Array.of(1, 2), Float64Array.of(0, 0)),
  of("converter of levels", () => root.converter("mm/s rms", "dB re 1e-9 m/s"), "array", Float64Array.of(1, 2)),
  r("detectorSymbol", "peak-to-peak"),
  r("equivalents", "0.25 in/s pk at 25 Hz", { at: "25 Hz" }),
  r("format", amplitude, { digits: 4 }),
  r("format", amplitude, { fixed: 1, locale: "de-DE", symbols: "typographic" }),
  r("readingText", amplitude, { digits: 4 }),
  r("format", 4.5, "mm/s rms", { digits: 4 }),
  r("frequency", "2x 1500 r/min"),
  r("frequency", "1477,5 r/min", { decimal: "," }),
  r("frequencyUnitSymbol", "rpm"),
  r("hertz", "25 Hz"),
  r("hertz", { hertz: 25 }),
  r("isReadingType", "ips peak"),
  r("parseAmplitude", "0.25 in/s pk at 1500 r/min"),
  r("parseAmplitude", "7,1 mm/s rms", { decimal: "," }),
  r("quantityOf", "ips peak"),
  r("readingType", "ips peak"),
  r("significant", 12.345, 3),
  {
    name: "tryConvert",
    args: () => [0.25, "in/s pk", "mil pp", { at: "1500 r/min" }],
    run: (...given) => answerOf((root.tryConvert as Loose)(...given)),
  },
  r("unitSymbol", "inches per second"),
  r("writtenValue", { value: 3, level: { decibels: 60, re: "1 nm/s" } }),
];

const own = {
  id: "invented-fan-house",
  kind: "zones",
  standard: "site rule, invented",
  edition: "2026",
  classes: [
    {
      by: { support: "rigid", power: { above: 15, to: 300 } },
      criteria: [
        {
          as: "mm/s rms",
          limits: { "A/B": 1.4, "B/C": 2.8, "C/D": 4.5 },
          source: { title: "site rule, invented", provenance: "memory" },
        },
      ],
    },
  ],
};
const machine = { type: "motor", power: "90 kW", support: "rigid", speed: "2980 r/min", group: 2 };
const scheme = "iso-10816-3-2009";

const confirmations = [
  {
    ...{ scheme: "iso-10816-7-2009", edition: "2009", row: "category I, power up to 200 kW", as: "mm/s rms" },
    ...{ limit: "C/D", printed: 6.6, page: "12", by: "J. Example", on: "2024-03-04" },
    ...{ second: "K. Example", reread: true, shipped: 6.5 },
  },
];

const ownKind = {
  name: "pellet mill",
  also: ["pelletiser"],
  judgedAs: "gear drive",
  source: { title: "site rule 9, invented", provenance: "memory" },
};
const s = on(severity);
const judge = (): Loose => severity.classifier(scheme, "group 2 rigid", "mm/s rms");
const severities: Call[] = [
  s("changeFromBaseline", "4 mm/s rms", amplitude, { scheme, machine: "group 2 rigid", assume: "lowest limits" }),
  s("checkBackground", "4 mm/s rms", "1 mm/s rms"),
  s("classifier", scheme, machine, "in/s pk", { at: "25 Hz", crestFactor: 3, assume: "lowest limits" }),
  calling("classifier", judge, 3),
  of("classifier", judge, "index", 3),
  of("classifier", judge, "array", Float64Array.of(1, 3), new Uint8Array(2)),
  s("classify", ["4 mm/s rms", "30 um rms"], { scheme, machine, assume: "lowest limits" }),
  s("classify", amplitude, { scheme: own, machine: "90 kW rigid", crestFactor: 2 }),
  s("conditionText", { support: ["rigid"], power: { above: 15, to: 300 } }),
  s("confirmableLimits", own),
  s("confirmScheme", "iso-10816-7-2009", confirmations),
  s("confirmedSchemes", confirmations),
  s("confirmedDifferences", [own]),
  s("countLimits", [own]),
  s("defineMachineKind", ownKind),
  s("severityToolkit", { machineKinds: [ownKind] }),
  s("defineScheme", own),
  s("sealedScheme", own),
  s("limitsFor", { scheme, machine, assume: "lowest limits", as: "um pp", at: "25 Hz" }),
  s("parseMachine", "pump 90 kW 2980 r/min rigid"),
  s("schemeById", scheme),
  s("selectSchemes", machine, [own]),
  s("selectSchemes", "motor 90 kW rigid"),
  s("schemesFor", machine, { place: "housing", assume: "lowest limits", schemes: [own] }),
  s("schemesFor", "motor 90 kW rigid"),
  s("judge", "2 mm/s rms", machine, { assume: "lowest limits", schemes: [own], crestFactor: 2 }),
  s("judge", "2 mm/s rms", "motor 90 kW 1485 r/min rigid"),
  s("machineClassifier", machine, "mm/s rms", { assume: "lowest limits", schemes: [own] }),
  s("machineNotes", { assumed: ["power 90 kW"], notUnderstood: [{ word: "rgid", didYouMean: ["rigid"] }] }),
  s("parsePoints", "DE-H 3.1, DE-V 2.2 mm/s rms"),
  s("judgePoints", "DE-H 3.1, DE-V 2.2 mm/s rms", machine, { schemes: [own] }),
  s("severityColour", 1, 4),
  s("supportOf", "65 Hz", { hertz: 25 }),
  s("zoneWord", "zones", "B"),
  s("marginText", severity.classify("4 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 1 rigid" }), {
    digits: 3,
  }),
];

const channel = {
  threshold: "0.35 in/s pk",
  hysteresis: "10 %",
  onDelay: 2,
  timerResets: "below threshold",
  sensorFault: "alarm",
  offDelay: 2,
  startInhibit: 3,
  multiplier: { factor: 2, seconds: 5 },
};
const relay = { latching: true, contact: "normally open", coil: "normally energised" };
const settings = { ...channel, ...relay };
const shaker = {
  name: "bench shaker",
  lowest: "8 Hz",
  highest: "3 kHz",
  displacement: "5 mm pp",
  velocity: "1 m/s pk",
  acceleration: "6 g pk",
  force: { newtons: 50 },
  movingMass: "0.2 kg",
  payload: "1.5 kg",
  uncertainty: "2 %",
};
const plan = {
  threshold: "9 mm/s rms at 1485 r/min",
  hysteresis: "8 %",
  onDelay: 8,
  offDelay: 1,
  latching: true,
  contact: "normally open",
  coil: "normally energised",
  sensorFault: "alarm",
  frequencies: ["30 Hz", { hertz: 60 }],
  band: { lowest: "10 Hz", highest: "1 kHz", order: 2 },
  load: "0.3 kg",
  tolerance: "5 %",
};
const rest = { tolerance: "5 %", uncertainty: "2 %", rule: "guard band" };
const check = { known: "8 mm/s rms at 2400 r/min", indicated: "7.9 mm/s rms", ...rest };
const history = [1, 1.1, 1.2, 1.05, 1.1, 1.15, 1.3, 1.2, 1.1, 1.05, 1.2];

const p = on(protection);
const rising = [
  { level: "0.34 in/s pk", set: false },
  { level: "0.36 in/s pk", set: true },
];
const falling = [
  { level: "0.32 in/s pk", set: true },
  { level: "0.31 in/s pk", set: false },
];
const logic = (): Loose => new protection.TripLogic(settings as Loose);
const votes = {
  vote: "2oo3",
  badChannel: "does not vote",
  ...relay,
  channels: { a: channel, b: { ...channel }, c: { ...channel } },
};
const voting = (): Loose => new protection.VotedTrip(votes as Loose);
const whole: Loose = (() =>
  protection.setpointSheet({
    machine: "boiler-feed pump 2",
    facts: { place: "drive end" },
    baseline: protection.baseline(history, { as: "mm/s rms" }),
    proposal: protection.proposeSetpoints({ baseline: "1.2 mm/s rms", scheme, machine: "group 2 rigid" }),
    settings: settings as Loose,
    known: check.known,
    check: protection.checkAgainstKnown(check as Loose),
    linearity: protection.linearity([check, { ...check, known: "16 mm/s rms" }], rest as Loose),
    tripPoint: protection.tripPointTest("0.35 in/s pk", rising, rest as Loose),
    resetPoint: protection.resetPointTest("0.315 in/s pk", falling, rest as Loose),
    delay: protection.delayTest(8, [8.1, 7.9], "0.2 s"),
    plan: protection.benchPlan(plan as Loose, shaker as Loose),
    remarks: ["invented"],
  }))();
const sheet = (): Loose => structuredClone(whole);
const { frequencies: _, band: __, ...byLoop } = { ...plan, loop: "0 to 20 mm/s rms" } as Loose;
const protections: Call[] = [
  p("asFoundAsLeft", { known: check.known, asFound: "7.3 mm/s rms", asLeft: check.indicated, ...rest }),
  p("amountOf", "5 %", "10 mm/s rms"),
  p("balanceGrade", "G 6.3"),
  p("balanceGrade", 6.3),
  p("bandResponse", "25 Hz", plan.band),
  p("baseline", history, {
    as: "mm/s rms",
    at: "25 Hz",
    mask: history.map(() => true),
    speed: { readings: history.map(() => 1490), unit: "r/min", atLeast: "1400 r/min", atMost: "1500 r/min" },
    time: { readings: history.map((_, i) => i), start: 0, end: 20 },
    enough: 10,
    percentile: 95,
  }),
  p("baseline", ["1 mm/s rms", amplitude, "0.1 in/s pk"], { as: "mm/s rms" }),
  p("benchPlan", plan, shaker),
  p("centrifugalForce", "20 g·mm", "1500 r/min"),
  p("checkAgainstKnown", check),
  p("checkPoints", [{ known: check.known, indicated: check.indicated, point: "one" }], rest),
  p("injectionPlan", byLoop, { inject: "mA", resolution: "0.01 mA", uncertainty: "1 %", finalElement: "breaker" }),
  p("combinedUncertainty", ["2 %", "1 %"]),
  p("combinedUncertainty", ["± 0.1 mm/s rms", "1 % (k=2)"], "4.9 mm/s rms"),
  p("delayAdvice", "fan", 25),
  p("delayTest", 8, [8.1, 7.9], "0.2 s"),
  p("detectedLevels", samples, { rate: 1000, detector: { kind: "rms", averaging: 0.1 }, initial: 1 }),
  p("detectedLevels", samples, { rate: 1000, detector: { kind: "peak", decay: 0.1 } }),
  p("convertUnbalance", "20 g·mm", "oz·in"),
  p("journalUnbalance", {
    mass: "120 kg",
    speed: "1500 r/min",
    planes: { left: "300 mm", right: "200 mm" },
  }),
  p("gradeOfUnbalance", "20 g·mm", { mass: "120 kg", speed: "1500 r/min" }),
  p("linearity", [check, { known: "4 mm/s rms", indicated: "3.9 mm/s rms" }], rest),
  p("mechanicalSwitch", "2 g pk", { speeds: ["900 r/min", { hertz: 25 }], limit: "7.1 mm/s rms" }),
  p("mechanicalSwitch", "2 g pk", { speeds: [], limit: amplitude }),
  p("parseVote", "2oo3"),
  p("permissibleEccentricity", "G 6.3", "1500 r/min"),
  p("permissibleUnbalance", "G 6.3", {
    mass: "120 kg",
    speed: "1500 r/min",
    planes: { left: "300 mm", right: "200 mm" },
  }),
  p(
    "askedWarnings",
    { stored: amplitude },
    protection.proposeSetpoints({ baseline: "1.2 mm/s rms", scheme, machine: "group 2 rigid" }),
  ),
  p("proposeSetpoints", {
    baseline: "1.2 mm/s rms",
    scheme,
    machine,
    sensor: { noiseFloor: "0.1 mm/s rms", fullScale: "2 in/s pk", loop: "0 to 25 mm/s rms" },
    device: { step: "0.1 mm/s rms", lowest: "0.5 mm/s rms", highest: "50 mm/s rms", rounds: "down", band: plan.band },
    k: 3,
    onDelay: 3,
  }),
  p("baseline", history, {
    as: "mm/s rms",
    modes: { readings: history.map((_, i) => (i % 2 === 0 ? "a" : "b")), only: "a" },
  }),
  p("baseline", history, { as: "mm/s rms", modes: { readings: history.map((_, i) => 40 + i), only: "40 to 46" } }),
  p("proposeSetpoints", {
    baseline: "40 um pp",
    limits: { "B/C": "100 um pp", "C/D": "160 um pp", source: "maker" },
    machine: "steam turbine 5400 r/min shaft",
    multiples: { alarm: 1.5, trip: 3 },
    raised: { factor: 2, from: "1900 r/min", to: "2600 r/min", seconds: 30 },
  }),
  p("proposeSetpoints", {
    baseline: protection.baseline(history, { as: "mm/s rms" }),
    limits: { "B/C": "2.8 mm/s rms", "C/D": amplitude, source: "the maker's manual" },
    k: 2,
  }),
  p("relayStatus", relay, true, true),
  p("resetPointTest", "0.315 in/s pk", falling, rest),
  p("confirmationSheet", own),
  p("setpointSheet", {
    machine: "boiler-feed pump 2",
    facts: { place: "drive end" },
    settings,
    known: check.known,
    remarks: ["invented"],
  }),
  {
    name: "setpointSheet",
    args: () => [sheet().data],
    run: (one) => protection.setpointSheet(one as Loose),
  },
  p("shakerReach", "8 mm/s rms at 40 Hz", shaker, "0.3 kg"),
  {
    name: "sheetHtml",
    args: () => [sheet(), "en"],
    run: (...a) => (protection as Loose).sheetHtml(...a),
  },
  { name: "sheetJson", args: () => [sheet()], run: (...a) => (protection as Loose).sheetJson(...a) },
  {
    name: "sheetMarkdown",
    args: () => [sheet()],
    run: (...a) => (protection as Loose).sheetMarkdown(...a),
  },
  p("shockImmunity", knocked, "0.1 g pk at 25 Hz", { milliseconds: [5], multiples: [2] }),
  p("shockResponse", knocked, "0.1 g pk at 25 Hz", { peak: "5 g pk", milliseconds: 5, shape: "half-sine" }),
  p("shockOnRunning", {
    running: "0.1 g pk at 25 Hz",
    shock: { peak: "5 g pk", milliseconds: 5, time: 0.02 },
    rate: 1000,
    seconds: 0.1,
    phase: 0.1,
  }),
  p(
    "storedSetpoint",
    "0.35 in/s pk",
    { step: "0.1 mm/s rms", lowest: "0.5 mm/s rms", highest: "50 mm/s rms" },
    "25 Hz",
    "down",
  ),
  p("bypassCost", "2oo3", ["rear"]),
  p("unmaskedTrips", { ...settings, startInhibit: 1, multiplier: { factor: 2, seconds: 2 } }, [0.1, 0.6, 0.6, 0.6], 1, {
    as: "in/s pk",
    commands: [{ time: 2, do: "bypass on" }],
    nan: "sensor fault",
  }),
  p("levelGaps", settings, [0.1, 0.6, 0.1], [0, 1, 90], { as: "mm/s rms", longest: 60, nan: "sensor fault" }),
  p("tripPointTest", "0.35 in/s pk", rising, rest),
  p("unbalanceOf", "20 g", "10 mm", "g·mm"),
  p("velocityOf", samples, 1000, 2),
  p("voteAlternatives", votes, { a: [0.1, 0.6], b: [0.1, 0.6], c: [0, 0] }, 1, { nan: "sensor fault" }),
  p("voted", "2oo3", ["trip", "healthy", "bad"], "does not vote"),
  made(protection)("TripLogic", settings),
  { ...made(protection)("TripLogic", settings, logic().snapshot()), name: "new TripLogic from a state" },
  of("TripLogic", logic, "resume", logic().snapshot()),
  of("TripLogic", logic, "step", 0.3, 1),
  of("TripLogic", logic, "step", "0.3 in/s pk", 1),
  of("TripLogic", logic, "run", [0.1, 0.6, 0.6, 0.6], 1, {
    as: "in/s pk",
    at: "25 Hz",
    commands: [{ time: 2, do: "bypass on" }],
    nan: "sensor fault",
    excursions: true,
  }),
  of("TripLogic", logic, "run", [0.1, 0.6, 0.6, 0.6], [1, 2, 4, 5]),
  of("TripLogic", logic, "bypass", true),
  of("TripLogic", logic, "power", false),
  made(protection)("VotedTrip", votes),
  of("VotedTrip", voting, "step", { a: 0.1, b: "0.1 in/s pk", c: 0.2 }, 1),
  of("VotedTrip", voting, "run", { a: [0.1, 0.6], b: [0.1, 0.6], c: [0, 0] }, 1, { nan: "sensor fault" }),
  of("VotedTrip", voting, "run", { a: [0.1, 0.6], b: [0.1, 0.6], c: [0, 0] }, [1, 2], {
    as: { a: "in/s pk", b: "g pk", c: "in/s pk" },
    at: { a: "25 Hz", b: "25 Hz", c: "25 Hz" },
    commands: [
      { time: 1, do: "bypass on", channel: "a" },
      { time: 2, do: "start" },
    ],
    excursions: true,
  }),
  { ...made(protection)("VotedTrip", votes, voting().snapshot()), name: "new VotedTrip from a state" },
  of("VotedTrip", voting, "resume", voting().snapshot()),
  of("VotedTrip", voting, "bypass", "a", true),
  of("VotedTrip", voting, "power", false),
];

const g = on(signal);

const spectrum = (): Loose => structuredClone(signal.spectrum(samples, { ...(shape as Loose), segment: 32 }));
const density = (): Loose => structuredClone(signal.density(samples, { ...(shape as Loose), segment: 32 }));
const averaging = { ...shape, segment: 32, overlap: 0.5, window: "hann", detrend: "mean" };
const stream = { ...shape, band: [10, 400], as: "mm/s rms", order: 4, settlingTime: 0.01 };
const withSpectrum = (name: string, ...more: unknown[]): Call => ({
  name,
  args: () => [spectrum(), ...structuredClone(more)],
  run: (...given) => (signal as Loose)[name](...given),
});
const withDensity = (name: string, ...more: unknown[]): Call => ({
  ...withSpectrum(name),
  args: () => [density(), ...structuredClone(more)],
});
const points = [
  [20, 0.01],
  [80, 0.04],
  [350, 0.04],
  [2000, 0.007],
];
const signals: Call[] = [
  withSpectrum("bandOverall", [50, 400]),
  g("vectorDifference", "3 mil pp at 25 Hz", "1 mil pp at 25 Hz", 90),
  g("rssDifference", "5 mm/s rms", "3 mm/s rms"),
  g("bandPassPowerGain", [10, 1000], 4, 25),
  g("bandWaveform", samples, {
    ...shape,
    band: [50, 400],
    as: "mm/s",
    edges: "-3 dB",
    order: 4,
    detrend: "mean",
    oversample: 2,
  }),
  g("butterworth", { kind: "band-pass", order: 4, edges: [10, 400], rate: 1000 }),
  g("coherentGain", Float64Array.of(0.5, 1, 0.5)),
  withDensity("convertDensity", "(mm/s)2/Hz", { lowest: 40 }),
  withSpectrum("convertSpectrum", "mm/s rms", { lowest: 40 }),
  g("decibelsPerOctave", 2),
  g("density", samples, averaging),
  withDensity("densityOverall", [50, 400], "m/s2 rms"),
  g("densityUnit", "(mm/s)2/Hz"),
  g("descriptors", samples, { unit: "g", detrend: "linear" }),
  g("detrended", samples, "linear"),
  g("format", amplitude, { digits: 3 }),
  g("gaussianWithin", 3),
  g("noiseBandwidth", Float64Array.of(0.5, 1, 0.5)),
  withSpectrum("orderLines", { speed: "3000 r/min", orders: [1, 2], within: 0.1 }),
  g("overall", samples, {
    ...shape,
    band: [50, 400],
    as: "mm/s rms",
    edges: "-3 dB",
    order: 4,
    detrend: "mean",
    window: "hann",
    oversample: 2,
  }),
  g("overall", samples, { ...shape, band: [50, 400], as: "g pk" }),
  g("overallStream", stream),
  of("overallStream", () => signal.overallStream(stream as Loose), "push", samples),
  g("pointAlong", [20, 0.01], 3, 80),
  g("profileDensity", points, 100),
  g("profileOverall", points, { unit: "g2/Hz", as: "g rms", sigmas: 3 }),
  g("profileSlopes", points),
  g("linesOverall", points, { type: "mm/s rms", as: "um rms", band: [10, 1000], tones: true }),
  g("resolvingSettings", "24 Hz", "25 Hz", { highest: "1 kHz", window: "hann", averages: 4, overlap: 0.5 }),
  g("rayleighBeyond", 3),
  g("responseAt", [{ b: [1, 2, 1], a: [-0.5, 0.1] }], 25, 1000),
  g("sineFrequency", "4 mm/s rms", "0.1 g pk"),
  g("slopeExponent", 3),
  g("spectrum", samples, { ...averaging, as: "mm/s rms", lowest: 40 }),
  g("spectrumStream", { ...averaging, as: "g pk" }),
  of("spectrumStream", () => signal.spectrumStream(averaging as Loose), "push", samples),
  withSpectrum("topLines", { count: 3, band: [50, 400] }),
  g("windowName", "Hanning"),
  g("windowWeights", "hann", 16),
];

const c = on(chart);
const drawn = { width: 640, height: 200, title: "a title", description: "a text", theme: "dark" };
const charts: Call[] = [
  c("nomograph", {
    width: 640,
    title: "a title",
    description: "a text",
    theme: "dark",
    readings: ["4 mm/s rms at 25 Hz", amplitude, { reading: "4 mm/s rms at 30 Hz", label: "pump" }],
    severity: { scheme, machine: "group 2 rigid", assume: "lowest limits" },
    detector: "rms",
    units: "metric",
    frequency: [1, 1000],
    velocity: [0.1, 100],
  }),
  {
    name: "checkChart",
    args: () => [
      { ...drawn, checks: [{ name: "one", check: structuredClone(protection.checkAgainstKnown(check as Loose)) }] },
    ],
    run: (...given) => (chart as Loose).checkChart(...given),
  },
  {
    name: "severityBar",
    args: () => [
      { ...drawn, judgement: structuredClone(severity.classify("4 mm/s rms", { scheme, machine: "group 2 rigid" })) },
    ],
    run: (...given) => (chart as Loose).severityBar(...given),
  },
  {
    name: "severityBar",
    args: () => [{ ...drawn, judgement: structuredClone(severity.judge("2 mm/s rms", "motor 1485 r/min rigid")) }],
    run: (...given) => (chart as Loose).severityBar(...given),
  },
  {
    name: "setpointChart",
    args: () => [
      {
        ...drawn,
        proposal: structuredClone(
          protection.proposeSetpoints({ baseline: "1.2 mm/s rms", scheme, machine: "group 2 rigid" }),
        ),
        statistics: structuredClone(protection.baseline(history, { as: "mm/s rms" })),
        asked: structuredClone(protection.storedSetpoint("3.3 mm/s rms", {})),
      },
    ],
    run: (...given) => (chart as Loose).setpointChart(...given),
  },
  {
    name: "spectrumChart",
    args: () => [
      { ...drawn, spectrum: spectrum(), speed: "3000 r/min", orders: [1, 2], frequency: [50, 400], scale: "log" },
    ],
    run: (...given) => (chart as Loose).spectrumChart(...given),
  },
  c("trendChart", {
    ...drawn,
    readings: [
      { time: 0, reading: 1 },
      { time: 5, reading: "2 mm/s rms" },
      { time: 9, reading: amplitude },
    ],
    as: "mm/s rms",
    timeUnit: "d",
    baseline: "1 mm/s rms",
    alarm: "2 mm/s rms",
    trip: amplitude,
    severity: { scheme, machine: "group 2 rigid" },
  }),
  c("tripTimeline", {
    ...drawn,
    settings,
    levels: [0.1, 0.6, 0.6, 0.6, 0.1],
    dt: 1,
    as: "in/s pk",
    at: "25 Hz",
    commands: [{ time: 2, do: "bypass on" }],
    nan: "sensor fault",
  }),
];

const m = on(mathjs);
const math = /* one for all: an instance costs half a second */ create(all as Loose);
const idleMath = (): object => ({
  typed: Object.assign(() => () => undefined, { addType: () => undefined, addTypes: () => undefined }),
  import: () => undefined,
  evaluate: () => 1,
  createUnit: () => undefined,
});
const calculators: Call[] = [
  {
    name: "completions",
    args: () => ["4 mm/s r", mathjs.newSession()],
    run: (...given) => (mathjs as Loose).completions(...given),
  },
  m("evaluateLine", "a = 0.25 in/s pk at 1500 r/min to mm/s rms"),
  {
    name: "evaluateLine",
    args: () => ["a = 2 * 3", mathjs.newSession()],
    run: (...given) => (mathjs as Loose).evaluateLine(...given),
  },
  m("helpText", "units"),
  m("newSession"),
  {
    name: "newSession",
    args: () => [[own]],
    // schemes are checked when they judge, so that a session brings no table along
    run: (...given) => (mathjs as Loose).evaluateLine("1 + 1", (mathjs as Loose).newSession(...given)),
  },
  {
    name: "registerAmplitudes",
    // an instance of its own kind: one that takes everything in and does nothing
    args: () => [idleMath()],
    run: (...given) => (mathjs as Loose).registerAmplitudes(...given),
  },
  {
    name: "registerAmplitudes.amplitude",
    args: () => ["4 mm/s rms"],
    run: (...given) => typeof given[0] === "string" && (math as Loose).amplitude(...given),
  },
];

const q = on(sql);
const queries: Call[] = [
  q("schemeToSql", scheme, machine, {
    column: "v",
    from: "in/s pk",
    at: "25 Hz",
    crestFactor: 3,
    assume: "lowest limits",
    answer: "worst",
    dialect: "duckdb",
  }),
  q("machineToSql", machine, {
    column: "v",
    from: "in/s pk",
    at: "25 Hz",
    answer: "worst",
    assume: "lowest limits",
    schemes: [scheme],
    dialect: "duckdb",
  }),
  q("machinesToSql", [{ name: "P-11", machine }], {
    ...{ table: "t", machine: "tag", column: "v", from: "in/s pk", at: "25 Hz", crestFactor: 3 },
    ...{ assume: "lowest limits", schemes: [scheme], limits: "kept", dialect: "duckdb" },
  }),
  q("toSql", "in/s pk", "mil pp", {
    column: ["t", "v"],
    at: { column: "n", unit: "r/min", order: 2 },
    dialect: "spark",
  }),
  q("toSql", "g pk", "mm/s rms", { expression: "a + b", at: { hertz: 25 } }),
  q("toSql", "g rms", "g pk", { column: "v", crestFactor: 4 }),
];

const pl = on(plants);
const listed = {
  heading: [
    "tag",
    "kind",
    "power",
    "speed",
    "alarm",
    "trip",
    "trip delay s",
    "hysteresis",
    "baseline",
    "check date",
    "room",
  ],
  rows: [
    ["A", "fan", "132 kW", "1485 r/min", "5.6 mm/s rms", "9 mm/s rms", "8", "8 %", "2.6 mm/s rms", "2026-03-10", "K2"],
    ["B", "fan", "132 kW", "1485 r/min", "5.6 mm/s rms", "9", "8 s", "8 %", "2.6 mm/s rms", "2026-03-10", "K2"],
  ],
  lines: [2, 3],
};
const routeRow = { tag: "A", line: 2, reading: "4.1 mm/s rms", point: "DE-H", date: "2026-04-10" };
const lists: readonly Call[] = [
  pl("parsePlant", listed, { decimal: ".", dates: "day-first", own: [], schemes: [scheme] }),
  // as a caller may have made it, unfrozen
  pl("auditPlant", structuredClone(plants.parsePlant(listed)), { on: "2026-11-28", schemes: [scheme] }),
  pl("judgeRoute", structuredClone(plants.parsePlant(listed)), [routeRow], {
    before: [{ ...routeRow, reading: "3.4 mm/s rms", date: "2026-03-12" }],
    schemes: [scheme],
  }),
  pl("machineVerdict", structuredClone(plants.parsePlant(listed).machines[0]), "4.1 mm/s rms", ["iso-14694-2003"]),
  pl("scheduleSetpoints", structuredClone(plants.parsePlant(listed)), { schemes: [scheme] }),
];

const v = on(vector);
const parts = {
  amplitude: { value: 40, unit: "um", detector: "pp", quantity: "displacement", hertz: 90 },
  ...{ phase: 60, order: 1, speed: 90, probe: "1Y", direction: "vertical" },
  ...{ assumedFacts: ["one mark"], cautions: ["run-out is in it"] },
};
const written = "30 um pp ∠ 150° at 1x of 5400 r/min";
const withPhase = {
  ...parts,
  amplitude: {
    ...parts.amplitude,
    history: [
      {
        ...{ does: "given", value: 40, type: "um pp", hertz: 90, phase: 60 },
        phaseUncertainty: { standard: 1, distribution: "normal", stated: "± 2 degrees (k=2)" },
      },
    ],
  },
};
const vectors: Call[] = [
  v("convertVector", parts, "mm/s pk"),
  v("convertVector", written, "mm/s pk"),
  v("differenceOfVectors", parts, written),
  v("formatVector", parts, { digits: 4 }),
  v("parseVector", written),
  v("shaftAbsolute", parts, "4 mm/s pk ∠ 30° at 1x of 5400 r/min"),
  v("slowRollCompensated", parts, "6 um pp ∠ 150° at 1x of 300 r/min", { limit: "50 um pp" }),
  v("sumOfVectors", written, parts),
  v("uncertaintyOfVector", "30 ± 1 um pp (k=2) ∠ 150 ± 2° (k=2) at 1x of 5400 ± 10 r/min"),
  v("uncertaintyOfVector", withPhase, { method: "first order", draws: 1000, seed: 1 }),
];

const u = on(uncertainty);
const known = { standard: 0.15, distribution: "normal", stated: "± 0.3 (k=2)" };
const uncertain = {
  ...amplitude,
  history: [{ does: "given", value: 4, type: "mm/s rms", hertz: 25, uncertainty: known, hertzUncertainty: known }],
};
const uncertainties: Call[] = [
  u("formatUncertain", "4.9 ± 0.3 mm/s rms (k=2)"),
  u("formatUncertain", uncertain),
  u("parseUncertain", "4.9 ± 0.3 mm/s rms (k=2) at 25 ± 0.5 Hz"),
  u("ratioOf", "5.2 ± 2 % mm/s rms (k=2)", uncertain),
  u("uncertaintyOf", "95 ± 0.5 dB re 1e-9 m/s"),
  u("uncertaintyOf", uncertain, { method: "Monte Carlo", draws: 1000, seed: 3 }),
  u("uncertaintyOf", {
    history: [
      ...uncertain.history,
      {
        does: "scale",
        of: [0],
        by: 1,
        value: 4,
        type: "mm/s rms",
        uncertainty: { ...known, in: "dB", name: "sensor" },
      },
      { does: "convert", of: [1], value: 4 / (50 * Math.PI), type: "mm rms", hertz: 25, assumed: ["one-frequency"] },
    ],
  }),
  u(
    "zonesWithin",
    severity.classify(uncertainty.parseUncertain("4 ± 0.3 mm/s rms (k=2)"), {
      scheme: "iso-10816-3-2009",
      machine: "group 1 rigid",
    }),
    { rule: "simple acceptance", draws: 1000, seed: 3 },
  ),
  u("withUncertainty", uncertain, "± 5 % (k=2)", "sensitivity of the sensor"),
];

const l = on(sensors);
const loops: Call[] = [
  l("probeGap", "-9.8 V", { sensitivity: "200 mV/mil", range: "-2 to -18 V" }),
  l("probeGap", "-9.8 V", {
    ...{ sensitivity: "200 mV/mil", range: "-2 to -18 V", cold: "-10.4 V", vibration: "60 um pp", limit: "10 mil" },
  }),
  l("currentLoop", "0 to 25 mm/s rms"),
  l("currentLoop", "0 to 25 mm/s rms", { lowFault: 3.6, lowest: 3.8, highest: 20.5, highFault: 21 }),
  of("currentLoop", () => sensors.currentLoop("0 to 25 mm/s rms"), "reading", 12, "in/s pk", { at: "25 Hz" }),
  of("currentLoop", () => sensors.currentLoop("0 to 25 mm/s rms"), "current", amplitude, { at: "25 Hz" }),
  of("currentLoop", () => sensors.currentLoop("0 to 25 mm/s rms"), "percent", 12),
  l("signalReading", "98 mV pk by 100 mV/g at 80 Hz", { sensor: "100 mV/g" }),
  l("isSignal", "12 mA of 0 to 20 mm/s rms"),
  l("formatVoltage", { value: 0.5, unit: "mV", detector: "rms" }, 3),
  l("sensor", "100 mV/g"),
  of("sensor", () => sensors.sensor("100 mV/g"), "sensitivity", "mV/(m/s2)"),
  of("sensor", () => sensors.sensor("100 mV/g"), "voltage", "2 g pk", "mV rms", { at: "25 Hz", crestFactor: 3 }),
  of("sensor", () => sensors.sensor("100 mV/g"), "reading", { value: 3, unit: "mV", detector: "rms" }, "mm/s rms", {
    at: "25 Hz",
  }),
];

const e = on(explanation);
const explanations: Call[] = [e("explain", "0.25 in/s pk at 1500 r/min"), e("explain", amplitude)];

const j = on(json);
const texts: Call[] = [
  j("answerKinds"),
  j("toJson", "amplitude", amplitude),
  j("toJson", "amplitude[]", [amplitude]),
  j("fromJson", "amplitude", json.toJson("amplitude", root.convertAmplitude("2 g pk", "g rms"))),
];

const owns: Call[] = [
  on(ownScheme)("exactZone", 3, "mm/s rms", {
    scheme: severity.sealedScheme(own as Loose),
    machine: { support: "rigid", power: 90 },
  }),
];

const ownUnit = {
  symbol: "lin/s",
  quantity: "velocity",
  num: 127,
  den: 60_000,
  name: "line per second",
  source: { title: "Hollowmere workshop sheet 3", provenance: "memory" },
};
const kitOfOwn = (): Loose => kit.toolkit({ units: [ownUnit as Loose] });
const ofSamples = (samples: ArrayLike<number>): number => Math.max(...Array.from(samples, Math.abs)) / 2;
const kits: Call[] = [
  on(kit)("defineUnit", ownUnit),
  {
    name: "defineDetector",
    args: () => [
      { symbol: "half", num: 1, den: 2, ofSamples, name: "half of the peak", source: { ...ownUnit.source } },
    ],
    run: (...given) => (kit as Loose).defineDetector(...given).symbol,
  },
  {
    name: "toolkit",
    args: () => [{ units: [structuredClone(ownUnit)] }],
    run: (...given) => (kit as Loose).toolkit(...given).convert(1, "lin/s pk", "mm/s pk"),
  },
  of("toolkit", kitOfOwn, "convert", 1, "lin/s pk", "g rms", { at: "25 Hz" }),
  of("toolkit", kitOfOwn, "converter", "lin/s pk", "mm/s rms"),
  of("toolkit", kitOfOwn, "amplitude", 1, "lin/s pk", "mm/s rms"),
  of("toolkit", kitOfOwn, "read", Float64Array.of(1, -1, 1, -1), "rms"),
  of("toolkit", kitOfOwn, "quantityOf", "lin/s pk"),
];

mathjs.registerAmplitudes(math as Loose);

/** All of them, by entry. */
export const calls: { readonly [Entry in keyof typeof entries]: readonly Call[] } = {
  veladis: amplitudes,
  "veladis/severity": severities,
  "veladis/protection": protections,
  "veladis/plant": [...lists, ...plantCheckCalls],
  "veladis/signal": signals,
  "veladis/chart": charts,
  "veladis/mathjs": calculators,
  "veladis/sql": queries,
  "veladis/vector": vectors,
  "veladis/uncertainty": uncertainties,
  "veladis/sensor": loops,
  "veladis/explain": explanations,
  // tables alone
  "veladis/facts": [],
  "veladis/json": texts,
  "veladis/own": owns,
  "veladis/kit": kits,
};
