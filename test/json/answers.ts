import { convertAmplitude, equivalents } from "veladis";
import { explain } from "veladis/explain";
import type { AnswerKind } from "veladis/json";
import {
  auditChanges,
  auditPlant,
  benchRound,
  changeTitles,
  doubtfulPeriods,
  dueChecks,
  parseChanges,
  resultTitles,
  takeResults,
} from "veladis/plant";
import {
  asFoundAsLeft,
  baseline,
  benchPlan,
  bypassCost,
  checkAgainstKnown,
  delayAdvice,
  delayTest,
  levelGaps,
  linearity,
  mechanicalSwitch,
  permissibleUnbalance,
  proposeSetpoints,
  resetPointTest,
  shakerReach,
  shockImmunity,
  storedSetpoint,
  TripLogic,
  unmaskedTrips,
  VotedTrip,
  voted,
} from "veladis/protection";
import { currentLoop, probeGap, sensor } from "veladis/sensor";
import {
  builtInSchemes,
  changeFromBaseline,
  checkBackground,
  classify,
  confirmableLimits,
  judge,
  judgePoints,
  limitsFor,
  selectSchemes,
} from "veladis/severity";
import {
  bandOverall,
  bandWaveform,
  density,
  densityOverall,
  descriptors,
  orderLines,
  overall,
  overallStream,
  profileOverall,
  spectrum,
  topLines,
} from "veladis/signal";
import { parseUncertain, ratioOf, uncertaintyOf, zonesWithin } from "veladis/uncertainty";
import { differenceOfVectors, parseVector, uncertaintyOfVector } from "veladis/vector";
import { plantOf } from "../plant/lists";
import { settings } from "../trip/trip-settings";

/** Numbers that an answer is made of: an amplitude, a share, and a choice. */
export interface Given {
  /** From 0.1 to 20. */
  readonly amplitude: number;
  /** From 0 to 1. */
  readonly share: number;
  readonly pick: number;
}

const pick = <Item>(list: readonly Item[], at: number): Item => list[at % list.length] as Item;
const machines = [
  "pump 90 kW 2980 r/min category II rigid",
  "motor 400 kW 1485 r/min",
  "fan 250 kW 1490 r/min rigid",
  "compressor 2 MW 11000 rpm",
];
const kinds = ["mm/s rms", "in/s pk", "mm/s pp", "mm/s true pk"];
const reading = ({ amplitude, pick: at }: Given): string => `${amplitude} ${pick(kinds.slice(0, 3), at)}`;
const machine = ({ pick: at }: Given): string => pick(machines, at);
const samples = ({ amplitude, share }: Given): number[] =>
  Array.from({ length: 256 }, (_, i) => amplitude * Math.sin(i / 3) + share * Math.sin(i * i));
const shape = { rate: 1000, unit: "g" } as const;
const levels = ({ amplitude, share }: Given): number[] =>
  Array.from({ length: 40 }, (_, i) => amplitude * (1 + share * Math.sin(i * i)));
const shaker = { lowest: "5 Hz", highest: "1000 Hz", displacement: "5 mm pp", acceleration: "5 g pk" } as const;
const known = ({ amplitude, share }: Given) => ({
  known: `${amplitude} mm/s rms at 80 Hz`,
  indicated: `${amplitude * (1 + share / 10)} mm/s rms at 80 Hz`,
  tolerance: "5 %",
  uncertainty: "2 %",
});
const votes = {
  vote: "1oo2",
  badChannel: "does not vote",
  latching: true,
  contact: "normally open",
  coil: "normally energised",
  channels: { front: settings, rear: settings },
} as const;

/** A plant with a device that is to be checked, and one that no shaker of the tests suits. */
const checkedPlant = ({ amplitude }: Given) =>
  plantOf(
    { alarm: `${amplitude / 2} mm/s rms`, trip: `${amplitude} mm/s rms`, loop: "", "check date": "2025-03-10" },
    { tag: "LU-02", alarm: "", trip: "", "check date": "", known: "", "as found": "", "as left": "", "checked by": "" },
  );
const roundOf = (given: Given) => {
  const plant = checkedPlant(given);
  return benchRound(plant, dueChecks(plant, { on: "2026-12-01" }), shaker, { on: "2026-12-01" });
};
const resultsOf = (given: Given) => {
  const { known: level, indicated, tolerance } = known(given);
  const row = ["LU-01-2026-12-01", "LU-01", "2026-12-02", level, indicated, "", tolerance, "shift B"];
  const open = ["LU-02-2026-12-01", "LU-02", "", "", "", "", "", ""];
  return takeResults(checkedPlant(given), { heading: resultTitles, rows: [row, open] }, { on: "2026-12-05" });
};
const recordedChanges = parseChanges({
  heading: changeTitles,
  rows: [
    [
      "2026-10-01",
      "LU-01",
      "trip",
      "8 mm/s rms",
      "9 mm/s rms",
      "trial",
      "shift B",
      "engineer",
      "2026-10-31",
      "2026-10-30",
    ],
    ["2026-11-01", "LU-02", "bypass", "", "trip", "sensor", "shift B", "", "", ""],
  ],
}).changes;

/** An answer of each kind that the library gives, from any numbers. */
export const makers: readonly (readonly [kind: AnswerKind, name: string, make: (given: Given) => unknown])[] = [
  ["amplitude", "convertAmplitude", (g) => convertAmplitude(reading(g), "m/s2 rms", { at: "25 Hz" })],
  ["amplitude", "of a level", (g) => convertAmplitude(reading(g), "dB re 1 nm/s")],
  ["amplitude", "with a crest factor", (g) => convertAmplitude(`${g.amplitude} g rms`, "g pk", { crestFactor: 4 })],
  ["amplitude", "of zero", () => convertAmplitude("0 mm/s rms", "in/s pk")],
  ["amplitude", "with ±", (g) => parseUncertain(`${g.amplitude} mm/s rms ± 5 % (k=2) at 25 ± 0.5 Hz`)],
  ["equivalents[]", "equivalents", (g) => equivalents(`${reading(g)} at 25 Hz`)],
  ["explanation", "explain", (g) => explain(convertAmplitude(reading(g), "mm pp", { at: "25 Hz" }))],
  ["loop reading", "currentLoop", (g) => currentLoop("0 to 25 mm/s rms").reading(4 + 16 * g.share, "in/s pk")],
  ["loop current", "currentLoop", (g) => currentLoop("0 to 25 mm/s rms").current(`${g.amplitude} mm/s rms`)],
  ["voltage reading", "sensor", (g) => sensor("100 mV/g").voltage(`${g.amplitude} g pk`, "mV rms")],
  ["spectrum", "spectrum", (g) => spectrum(samples(g), { ...shape, segment: 64, window: "hann" })],
  ["spectrum", "in velocity", (g) => spectrum(samples(g), { ...shape, as: "mm/s rms", lowest: 40 })],
  ["density", "density", (g) => density(samples(g), { ...shape, segment: 64 })],
  ["descriptors", "descriptors", (g) => descriptors(samples(g), { unit: "g" })],
  ["overall", "overall", (g) => overall(samples(g), { ...shape, band: [50, 400], as: "mm/s rms" })],
  [
    "overall",
    "overallStream",
    (g) => {
      const stream = overallStream({ ...shape, band: [10, 400], as: "g rms", settlingTime: 0.01 });
      stream.push(samples(g));
      return stream.read();
    },
  ],
  ["band overall", "bandOverall", (g) => bandOverall(spectrum(samples(g), shape), [50, 400])],
  ["band overall", "densityOverall", (g) => densityOverall(density(samples(g), shape), [50, 400])],
  ["band waveform", "bandWaveform", (g) => bandWaveform(samples(g), { ...shape, band: [50, 400], as: "mm/s" })],
  ["spectrum line[]", "topLines", (g) => topLines(spectrum(samples(g), shape), { count: 5 })],
  [
    "order line[]",
    "orderLines",
    (g) => orderLines(spectrum(samples(g), shape), { speed: "3000 r/min", orders: [1, 2, 3] }),
  ],
  [
    "profile overall",
    "profileOverall",
    (g) =>
      profileOverall(
        [
          [20, 0.01],
          [80, g.amplitude],
          [2000, 0.01],
        ],
        { unit: "g2/Hz", as: "g rms" },
      ),
  ],
  ["verdict", "judge", (g) => judge(reading(g), machine(g))],
  ["verdict", "of zero", (g) => judge("0 mm/s rms", machine(g))],
  [
    "verdict",
    "with a background",
    (g) => judge(`${g.amplitude} mm/s rms`, machine(g), { background: "0.01 mm/s rms" }),
  ],
  ["judgement", "classify", (g) => classify(reading(g), { scheme: "iso-10816-3-2009", machine: "group 2 rigid" })],
  ["points verdict", "judgePoints", (g) => judgePoints(`DE-H ${g.amplitude}, DE-V 2.2 mm/s rms`, machine(g))],
  [
    "change",
    "changeFromBaseline",
    (g) =>
      changeFromBaseline(`${g.amplitude} mm/s rms`, "2 mm/s rms", {
        scheme: "iso-10816-3-2009",
        machine: "group 2 rigid",
      }),
  ],
  ["background check", "checkBackground", (g) => checkBackground(reading(g), "1 mm/s rms")],
  ["criterion limits[]", "limitsFor", () => limitsFor({ scheme: "iso-10816-3-2009", machine: "group 2 rigid" })],
  ["selection", "selectSchemes", (g) => selectSchemes(machine(g))],
  ["scheme", "a built-in scheme", ({ pick: at }) => pick(builtInSchemes, at)],
  ["confirmable limit[]", "confirmableLimits", ({ pick: at }) => confirmableLimits(pick(builtInSchemes, at))],
  ["uncertainty", "uncertaintyOf", (g) => uncertaintyOf(`${g.amplitude} mm/s rms ± 5 % (k=2)`)],
  [
    "uncertainty",
    "Monte Carlo",
    (g) => uncertaintyOf(`${g.amplitude} mm/s rms ± 5 % (k=2)`, { method: "Monte Carlo", draws: 1000, seed: 3 }),
  ],
  ["ratio", "ratioOf", (g) => ratioOf(`${g.amplitude} ± 2 % mm/s rms (k=2)`, "3 mm/s rms")],
  [
    "zones within",
    "zonesWithin",
    (g) => {
      const stated = parseUncertain(`${g.amplitude} mm/s rms ± 5 % (k=2)`);
      return zonesWithin(judge(stated, machine(g)), { draws: 1000, seed: 3 });
    },
  ],
  ["vector", "parseVector", (g) => parseVector(`${g.amplitude} um pp ∠ ${360 * g.share * 0.99}° at 1x of 5400 r/min`)],
  [
    "vector",
    "differenceOfVectors",
    (g) =>
      differenceOfVectors(`${g.amplitude} um pp ∠ 60° at 1x of 5400 r/min`, "0.05 um pp ∠ 330° at 1x of 5400 r/min"),
  ],
  [
    "uncertainty of vector",
    "uncertaintyOfVector",
    (g) => uncertaintyOfVector(`${g.amplitude} um pp ± 5 % (k=2) ∠ 60° at 1x of 5400 r/min`),
  ],
  ["baseline", "baseline", (g) => baseline(levels(g), { as: "mm/s rms" })],
  [
    "proposal",
    "proposeSetpoints",
    (g) => proposeSetpoints({ baseline: baseline(levels(g), { as: "mm/s rms" }), machine: machine(g) }),
  ],
  ["stored setpoint", "storedSetpoint", (g) => storedSetpoint(`${g.amplitude} mm/s rms`, { step: "0.1 mm/s rms" })],
  ["delay advice", "delayAdvice", (g) => delayAdvice("pump", 25 + g.share)],
  [
    "immunity",
    "shockImmunity",
    (g) =>
      shockImmunity(
        {
          threshold: "0.5 g pk",
          hysteresis: "10 %",
          onDelay: g.pick % 2 === 0 ? 0 : 0.01,
          timerResets: "below threshold",
          detector: { kind: "peak", decay: 0.05 },
        },
        `${0.3 * g.share} g pk at 25 Hz`,
        { milliseconds: [5], multiples: [2] },
      ),
  ],
  [
    "baseline",
    "baseline of modes",
    (g) => baseline(levels(g), { as: "mm/s rms", modes: { readings: levels(g).map((_, i) => (i % 2 ? "a" : "b")) } }),
  ],
  [
    "proposal",
    "proposal with a raised setpoint",
    () =>
      proposeSetpoints({
        baseline: "40 um pp",
        limits: { "B/C": "100 um pp", "C/D": "160 um pp", source: "maker" },
        machine: "steam turbine 5400 r/min shaft",
        multiples: { alarm: 2 },
        raised: "2 times from 1900 to 2600 r/min for 30 s",
      }),
  ],
  [
    "probe gap",
    "probeGap",
    (g) =>
      probeGap(`-${3 + g.share} V`, {
        ...{ sensitivity: "200 mV/mil", range: "-2 to -18 V", cold: "-10 V" },
        ...(g.pick % 2 === 0 && { vibration: "300 um pp", limit: "10 mil" }),
      }),
  ],
  ["switch reach", "mechanicalSwitch", (g) => mechanicalSwitch(`${g.amplitude} g pk`, { limit: "7.1 mm/s rms" })],
  [
    "permissible unbalance",
    "permissibleUnbalance",
    (g) => permissibleUnbalance("G 6.3", { mass: `${g.amplitude} kg`, speed: "1490 r/min" }),
  ],
  ["known check", "checkAgainstKnown", (g) => checkAgainstKnown(known(g))],
  [
    "as found as left",
    "asFoundAsLeft",
    (g) => {
      const { indicated, ...rest } = known(g);
      return asFoundAsLeft({ ...rest, asFound: indicated, asLeft: rest.known });
    },
  ],
  [
    "linearity",
    "linearity",
    (g) =>
      linearity([known(g), known({ ...g, amplitude: 2 * g.amplitude }), known({ ...g, amplitude: 3 * g.amplitude })], {
        tolerance: "5 %",
      }),
  ],
  [
    "switching point",
    "resetPointTest",
    (g) =>
      resetPointTest(
        `${g.amplitude} mm/s rms`,
        [
          { level: `${g.amplitude * 1.1} mm/s rms`, set: true },
          { level: `${g.amplitude * 0.95} mm/s rms`, set: false },
        ],
        { tolerance: "10 %" },
      ),
  ],
  ["delay test", "delayTest", (g) => delayTest(g.share > 0.5 ? 2 : 0, [2, 2 + g.share], "0.5 s")],
  [
    "bench plan",
    "benchPlan",
    () =>
      benchPlan(
        {
          threshold: "9 mm/s rms",
          hysteresis: "10 %",
          onDelay: 2,
          latching: true,
          band: { lowest: "10 Hz", highest: "1000 Hz" },
        },
        shaker,
      ),
  ],
  ["shaker reach", "shakerReach", (g) => shakerReach(`${g.amplitude} mm/s rms at 25 Hz`, shaker, "1 kg")],
  [
    "trip event[]",
    "TripLogic.run",
    (g) => new TripLogic(settings).run(levels(g), 1, { as: "mm/s rms", excursions: true }),
  ],
  [
    "trip status",
    "TripLogic.status",
    (g) => {
      const logic = new TripLogic(settings);
      logic.run(levels(g), 1, { as: "mm/s rms" });
      return logic.status;
    },
  ],
  [
    "trip state",
    "TripLogic.snapshot",
    (g) => {
      const logic = new TripLogic(settings);
      if (g.pick % 2 === 0) logic.run(levels(g), 1, { as: "mm/s rms" });
      return logic.snapshot();
    },
  ],
  [
    "trip rules",
    "TripLogic.rules",
    () => new TripLogic({ ...settings, startInhibit: 5, multiplier: { factor: 2, seconds: 9 } }).rules,
  ],
  ["unmasked trips", "unmaskedTrips", (g) => unmaskedTrips(settings, levels(g), 1, { as: "mm/s rms" })],
  ["level gaps", "levelGaps", (g) => levelGaps(settings, [0.1, g.amplitude, 0.1], [0, 1, 90], { as: "mm/s rms" })],
  [
    "voted event[]",
    "VotedTrip.run",
    (g) => new VotedTrip(votes).run({ front: levels(g), rear: levels(g) }, 1, { as: "mm/s rms" }),
  ],
  ["voted status", "VotedTrip.bypass", () => new VotedTrip(votes).bypass("front", true)],
  ["voted state", "VotedTrip.snapshot", () => new VotedTrip(votes).snapshot()],
  ["vote outcome", "voted", () => voted("2oo3", ["trip", "healthy", "bad"], "does not vote")],
  [
    "plant audit",
    "auditPlant",
    ({ amplitude }) => auditPlant(plantOf({ trip: `${amplitude} mm/s rms` }, { trip: "9" })),
  ],
  ["due check[]", "dueChecks", (g) => dueChecks(checkedPlant(g), { on: "2026-12-01" })],
  ["bench setting[]", "benchRound", (g) => roundOf(g).settings],
  ["device left out[]", "benchRound", (g) => roundOf(g).left],
  ["check result[]", "takeResults", (g) => resultsOf(g).results],
  ["open result[]", "takeResults", (g) => resultsOf(g).open],
  ["doubtful period[]", "doubtfulPeriods", (g) => doubtfulPeriods(checkedPlant(g), resultsOf(g).results)],
  ["plant change[]", "parseChanges", () => recordedChanges],
  ["change finding[]", "auditChanges", (g) => auditChanges(checkedPlant(g), recordedChanges, { on: "2026-12-01" })],
  ["bypass cost", "bypassCost", () => bypassCost("2oo3", ["rear"])],
];
