import fc from "fast-check";
import { VeladisError } from "veladis";
import * as protection from "veladis/protection";
import { describe, it } from "vitest";
import { settings } from "../trip/trip-settings";

/** Anything at all, and among it what the functions know. */
const anything = fc.oneof(
  fc.anything(),
  fc.double(),
  fc.constantFrom("5 %", "0.35 in/s pk", "2 g pk", "10 mm/s rms at 25 Hz", "25 Hz", "1180 r/min", "none", "0.5 dB"),
  fc.constantFrom("normally open", "normally energised", "below threshold", "alarm", "2oo3", "does not vote", "G 6.3"),
  fc.constantFrom("95 dB re 1 nm/s", "120 kg", "300 mm", "20 g·mm", 3, 0, -1, null, undefined, true, false),
);

const record = (...keys: string[]) =>
  fc.oneof(
    { weight: 3, arbitrary: fc.record(Object.fromEntries(keys.map((key) => [key, anything])), { requiredKeys: [] }) },
    { weight: 1, arbitrary: anything },
  );

const listOf = (of: fc.Arbitrary<unknown>) => fc.oneof(fc.array(of, { maxLength: 5 }), anything);

const channel = ["threshold", "hysteresis", "onDelay", "timerResets", "sensorFault", "offDelay", "startInhibit"];
const relay = ["latching", "contact", "coil"];
const plan = ["threshold", "hysteresis", "onDelay", "latching", "frequencies", "band", "load", "tolerance"];
const shaker = ["lowest", "highest", "displacement", "velocity", "acceleration", "force", "movingMass", "payload"];

// biome-ignore lint/suspicious/noExplicitAny: junk is of no type
type Loose = Record<string, any>;
const p: Loose = protection;

const calls: [string, fc.Arbitrary<unknown[]>, (...args: unknown[]) => unknown][] = [
  ["TripLogic", fc.tuple(record(...channel, "multiplier", ...relay)), (one) => new p.TripLogic(one)],
  [
    "TripLogic, one setting wrong",
    fc.tuple(record(...channel, "multiplier", ...relay)),
    (one) => new p.TripLogic({ ...settings, ...(one as object) }),
  ],
  ["TripLogic.step", fc.tuple(anything, anything), (...args) => new p.TripLogic(settings).step(...args)],
  [
    "TripLogic.run",
    fc.tuple(listOf(anything), anything, record("as", "at", "commands", "nan", "excursions")),
    (...args) => new p.TripLogic(settings).run(...args),
  ],
  [
    "TripLogic.run, options",
    fc.tuple(record("as", "at", "commands", "nan", "excursions")),
    (one) => new p.TripLogic(settings).run([1, 2], 1, one),
  ],
  ["VotedTrip", fc.tuple(record("vote", "badChannel", "channels", ...relay)), (one) => new p.VotedTrip(one)],
  ["voted", fc.tuple(anything, listOf(anything), anything), (...args) => p.voted(...args)],
  [
    "baseline",
    fc.tuple(listOf(anything), record("as", "at", "modes", "mask", "speed", "time", "enough", "percentile")),
    (...args) => p.baseline(...args),
  ],
  [
    "proposeSetpoints",
    fc.tuple(
      record("baseline", "scheme", "limits", "machine", "sensor", "device", "multiples", "raised", "k", "onDelay"),
    ),
    (...args) => p.proposeSetpoints(...args),
  ],
  [
    "storedSetpoint",
    fc.tuple(anything, record("step", "lowest", "highest", "rounds")),
    (...args) => p.storedSetpoint(...args),
  ],
  [
    "shockImmunity",
    fc.tuple(record("threshold", "hysteresis", "onDelay", "timerResets", "detector", "highPass"), anything),
    (...args) => p.shockImmunity(...args),
  ],
  ["shockOnRunning", fc.tuple(record("running", "shock", "rate", "phase")), (...args) => p.shockOnRunning(...args)],
  [
    "detectedLevels",
    fc.tuple(listOf(anything), record("rate", "detector", "initial")),
    (...args) => p.detectedLevels(...args),
  ],
  [
    "mechanicalSwitch",
    fc.tuple(anything, record("speeds", "limit")),
    (one, more) => p.mechanicalSwitch(one, more ?? {}),
  ],
  [
    "permissibleUnbalance",
    fc.tuple(anything, record("mass", "speed", "planes")),
    (...args) => p.permissibleUnbalance(...args),
  ],
  ["gradeOfUnbalance", fc.tuple(anything, record("mass", "speed")), (...args) => p.gradeOfUnbalance(...args)],
  [
    "checkAgainstKnown",
    fc.tuple(record("known", "indicated", "tolerance", "uncertainty", "rule")),
    (...args) => p.checkAgainstKnown(...args),
  ],
  ["linearity", fc.tuple(listOf(record("known", "indicated")), record("tolerance")), (...args) => p.linearity(...args)],
  [
    "tripPointTest",
    fc.tuple(anything, listOf(record("level", "set")), record("tolerance")),
    (...args) => p.tripPointTest(...args),
  ],
  ["delayTest", fc.tuple(anything, listOf(anything), anything), (...args) => p.delayTest(...args)],
  ["benchPlan", fc.tuple(record(...plan), record(...shaker)), (...args) => p.benchPlan(...args)],
  ["combinedUncertainty", fc.tuple(listOf(anything)), (...args) => p.combinedUncertainty(...args)],
  ["bandResponse", fc.tuple(anything, record("lowest", "highest", "order")), (...args) => p.bandResponse(...args)],
];

describe("junk is refused by the one error, or not at all", () => {
  it.each(calls)("%s", (_, args, call) => {
    fc.assert(
      fc.property(args, (given) => {
        try {
          call(...given);
        } catch (error) {
          if (!(error instanceof VeladisError)) throw error;
        }
      }),
      { numRuns: 1000 },
    );
  });
});
