import * as protection from "veladis/protection";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const p: Record<string, Loose> = protection;

const settings = {
  threshold: "0.51 in/s pk",
  hysteresis: "3 %",
  onDelay: 1,
  timerResets: "below threshold",
  sensorFault: "alarm",
  latching: true,
  contact: "normally open",
  coil: "normally energised",
};
const trip = (changed: object) => new p.TripLogic({ ...settings, ...changed });
const logic = () => trip({});
const run = (levels: unknown, dt: unknown, options?: unknown) => logic().run(levels, dt, options);
const pair = { vote: "1oo2", badChannel: "votes to trip", ...settings, channels: { DE: settings, NDE: settings } };
const votedTrip = (changed: object) => new p.VotedTrip({ ...pair, ...changed });
const baseline = (readings: unknown, options?: unknown) => p.baseline(readings, options);
const as = { as: "mm/s rms" };
const five = [2, 2.1, 1.9, 2, 2.2];
const propose = (changed: object) =>
  p.proposeSetpoints({ scheme: "iso-10816-3-2009", machine: "group 1 rigid", baseline: "2 mm/s rms", ...changed });
const slowOnly = {
  id: "slow",
  kind: "zones",
  standard: "site rule",
  classes: [
    {
      criteria: [
        {
          as: "um pp",
          limits: { "B/C": 50, "C/D": 90 },
          when: { speed: { below: 600 } },
          source: { title: "site rule", provenance: "memory" },
        },
      ],
    },
  ],
};
const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "site rule" };
const ofSite = (changed: object) => p.proposeSetpoints({ baseline: "none", limits: { ...limits, ...changed } });
const rms = { kind: "rms", averaging: 1 };
const detected = (samples: unknown, options?: unknown) => p.detectedLevels(samples, options);
const shock = { peak: "20 g pk", milliseconds: 5, at: 0.1 };
const wave = { running: "0.2 in/s pk at 1800 r/min", shock, rate: 10000, seconds: 1 };
const waved = (changed: object) => p.shockOnRunning({ ...wave, ...changed });
const immune = {
  threshold: "0.5 in/s pk",
  hysteresis: "5 %",
  onDelay: 1,
  timerResets: "below threshold",
  detector: rms,
};
const immunity = (changed: object, running: unknown = "0.2 in/s pk at 1800 r/min", options?: object) =>
  p.shockImmunity({ ...immune, ...changed }, running, options);
const rotor = { mass: "120 kg", speed: "1500 r/min" };

const cases: Cases = {
  "TripLogic, no settings": () => new p.TripLogic(),
  "TripLogic, a word for settings": () => new p.TripLogic("2oo3"),
  "TripLogic, latching not said": () => trip({ latching: undefined }),
  "TripLogic, a word for latching": () => trip({ latching: "yes" }),
  "TripLogic, contact not said": () => trip({ contact: undefined }),
  "TripLogic, a contact that is none": () => trip({ contact: "normally opened" }),
  "TripLogic, coil not said": () => trip({ coil: undefined }),
  "TripLogic, a coil that is none": () => trip({ coil: "energized" }),
  "TripLogic, no threshold": () => trip({ threshold: undefined }),
  "TripLogic, a threshold without unit": () => trip({ threshold: 0.51 }),
  "TripLogic, a threshold of zero": () => trip({ threshold: "0 in/s pk" }),
  "TripLogic, no hysteresis": () => trip({ hysteresis: undefined }),
  "TripLogic, a hysteresis as large as the threshold": () => trip({ hysteresis: "100 %" }),
  "TripLogic, timerResets not said": () => trip({ timerResets: undefined }),
  "TripLogic, a timerResets that is none": () => trip({ timerResets: "below treshold" }),
  "TripLogic, a multiplier of nothing": () => trip({ multiplier: { factor: 0, seconds: 10 } }),
  "TripLogic, a multiplier of 1": () => trip({ multiplier: { factor: 1, seconds: 10 } }),
  "TripLogic, a multiplier for no time": () => trip({ multiplier: { factor: 2, seconds: 0 } }),
  "TripLogic, no onDelay": () => trip({ onDelay: undefined }),
  "TripLogic, an onDelay below zero": () => trip({ onDelay: -1 }),
  "TripLogic, an offDelay below zero": () => trip({ offDelay: -1 }),
  "TripLogic, a startInhibit below zero": () => trip({ startInhibit: -1 }),
  "TripLogic, sensorFault not said": () => trip({ sensorFault: undefined }),
  "TripLogic, a sensorFault that is none": () => trip({ sensorFault: "trip" }),
  "TripLogic, a snapshot that is none": () => new p.TripLogic(settings, {}),
  "TripLogic, a snapshot with a phase that is none": () =>
    new p.TripLogic(settings, { ...logic().snapshot(), phase: "tripped" }),
  "step, seconds below zero": () => logic().step(0.2, -1),
  "step, a level below zero": () => logic().step(-0.2, 1),
  "step, no level": () => logic().step(undefined, 1),
  "run, no seconds between levels": () => run([0.2], undefined),
  "run, no time between levels": () => run([0.2], 0),
  "run, no options": () => run([0.2], 1, null),
  "run, no levels": () => run(undefined, 1),
  "run, a text among the levels": () => run([0.2, "0.3"], 1),
  "run, a level below zero": () => run([0.2, -0.3], 1),
  "run, a level not a number": () => run([0.2, Number.NaN], 1),
  "run, a level infinite": () => run([0.2, Number.POSITIVE_INFINITY], 1),
  "run, levels in decibels": () => run([0.2], 1, { as: "dB re 1e-9 m/s" }),
  "run, commands as a word": () => run([0.2], 1, { commands: "reset" }),
  "run, a command before the time": () => run([0.2], 1, { commands: [{ at: -1, do: "reset" }] }),
  "run, a command that is none": () => run([0.2], 1, { commands: [{ at: 0, do: "rest" }] }),
  "run, a command behind the history": () => run([0.2], 1, { commands: [{ at: 5, do: "reset" }] }),
  "run, fewer times than levels": () => run([0.2, 0.3], [0]),
  "run, times that fall": () => run([0.2, 0.3], [1, 0]),
  "parseVote, no vote": () => p.parseVote(undefined),
  "parseVote, a vote that is none": () => p.parseVote("2 of 3"),
  "parseVote, more than there are": () => p.parseVote("3oo2"),
  "voted, badChannel not said": () => p.voted("1oo2", ["trip", "healthy"]),
  "voted, no channels": () => p.voted("1oo2", undefined, "votes to trip"),
  "voted, too few channels": () => p.voted("2oo3", ["trip", "healthy"], "votes to trip"),
  "voted, a channel that says nothing known": () => p.voted("1oo2", ["trip", "heathy"], "votes to trip"),
  "VotedTrip, no settings": () => new p.VotedTrip(),
  "VotedTrip, badChannel not said": () => votedTrip({ badChannel: undefined }),
  "VotedTrip, too few channels": () => votedTrip({ vote: "2oo3" }),
  "VotedTrip.step, seconds below zero": () => votedTrip({}).step({ DE: 0.2, NDE: 0.2 }, -1),
  "VotedTrip.step, a level missing": () => votedTrip({}).step({ DE: 0.2 }, 1),
  "VotedTrip.step, a channel that is none": () => votedTrip({}).step({ DE: 0.2, NDE: 0.2, top: 0.2 }, 1),
  "VotedTrip.run, no time between levels": () => votedTrip({}).run({ DE: [0.2], NDE: [0.2] }, 0),
  "VotedTrip.run, histories of two lengths": () => votedTrip({}).run({ DE: [0.2], NDE: [0.2, 0.3] }, 1),
  "baseline, no options": () => baseline(five),
  "baseline, no readings": () => baseline(undefined, as),
  "baseline, in decibels": () => baseline(five, { as: "dB re 1e-9 m/s" }),
  "baseline, a percentile that is none": () => baseline(five, { ...as, percentile: 101 }),
  "baseline, a reading below zero": () => baseline([2, -2], as),
  "baseline, a reading missing": () => baseline([2, null], as),
  "baseline, marks for other readings": () => baseline(five, { ...as, mask: [true] }),
  "baseline, no speeds": () => baseline(five, { ...as, speed: {} }),
  "baseline, speeds for other readings": () => baseline(five, { ...as, speed: { readings: [1500] } }),
  "baseline, a speed below zero": () => baseline(five, { ...as, speed: { readings: [1500, -1, 1500, 1500, 1500] } }),
  "baseline, times for other readings": () => baseline(five, { ...as, time: { readings: [0] } }),
  "baseline, a time not a number": () => baseline(five, { ...as, time: { readings: [0, 1, Number.NaN, 3, 4] } }),
  "baseline, two readings": () => baseline([2, 2.1], as),
  "storedSetpoint, no device": () => p.storedSetpoint("4 mm/s rms"),
  "storedSetpoint, no setpoint": () => p.storedSetpoint(undefined, {}),
  "storedSetpoint, a setpoint of zero": () => p.storedSetpoint("0 mm/s rms", {}),
  "storedSetpoint, no lowest level": () => p.storedSetpoint("4 mm/s rms", { step: "0.1 mm/s rms", lowest: null }),
  "storedSetpoint, a rounding that is none": () => p.storedSetpoint("4 mm/s rms", { rounds: "nearer" }),
  "storedSetpoint, a step of zero": () => p.storedSetpoint("4 mm/s rms", { step: "0 mm/s rms" }),
  "storedSetpoint, below what the device holds": () => p.storedSetpoint("0.4 mm/s rms", { lowest: "1 mm/s rms" }),
  "proposeSetpoints, nothing": () => p.proposeSetpoints(),
  "proposeSetpoints, null for the device": () => propose({ device: null }),
  "proposeSetpoints, null for the sensor": () => propose({ sensor: null }),
  "proposeSetpoints, zero deviations": () => propose({ k: 0 }),
  "proposeSetpoints, no baseline": () => propose({ baseline: undefined }),
  "proposeSetpoints, a delay below zero": () => propose({ onDelay: -1 }),
  "proposeSetpoints, a scheme of grades": () => propose({ scheme: "iso-10816-6-1995-grades" }),
  "proposeSetpoints, a table that does not apply at the speed": () =>
    propose({ scheme: slowOnly, machine: "1500 r/min" }),
  "proposeSetpoints, a limit missing": () => ofSite({ "C/D": undefined }),
  "proposeSetpoints, a limit of zero": () => ofSite({ "B/C": "0 mm/s rms" }),
  "proposeSetpoints, limits out of order": () => ofSite({ "C/D": "4 mm/s rms" }),
  "detectedLevels, no options": () => detected([1]),
  "detectedLevels, no samples": () => detected(undefined, { rate: 100, detector: rms }),
  "detectedLevels, no rate": () => detected([1], { detector: rms }),
  "detectedLevels, no detector": () => detected([1], { rate: 100 }),
  "detectedLevels, a detector that is none": () => detected([1], { rate: 100, detector: { kind: "mean" } }),
  "detectedLevels, no averaging time": () => detected([1], { rate: 100, detector: { kind: "rms", averaging: 0 } }),
  "detectedLevels, no decay time": () => detected([1], { rate: 100, detector: { kind: "peak", decay: 0 } }),
  "detectedLevels, a start below zero": () => detected([1], { rate: 100, detector: rms, initial: -1 }),
  "detectedLevels, a sample not a number": () => detected([1, Number.NaN], { rate: 100, detector: rms }),
  "shockOnRunning, no options": () => p.shockOnRunning(),
  "shockOnRunning, no shock": () => waved({ shock: undefined }),
  "shockOnRunning, no rate": () => waved({ rate: 0 }),
  "shockOnRunning, no frequency": () => waved({ running: "0.2 in/s pk" }),
  "shockOnRunning, a shock in velocity": () => waved({ shock: { ...shock, peak: "20 mm/s pk" } }),
  "shockOnRunning, a shock of no length": () => waved({ shock: { ...shock, milliseconds: 0 } }),
  "shockOnRunning, a shock before the beginning": () => waved({ shock: { ...shock, at: -1 } }),
  "shockOnRunning, a phase not a number": () => waved({ phase: Number.NaN }),
  "shockOnRunning, no length": () => waved({ seconds: 0 }),
  "velocityOf, no rate": () => p.velocityOf([1], 0, 10),
  "velocityOf, no corner": () => p.velocityOf([1], 1000, 0),
  "shockImmunity, no settings": () => p.shockImmunity(undefined, "0.2 in/s pk at 1800 r/min"),
  "shockImmunity, no running vibration": () => immunity({}, null),
  "shockImmunity, no frequency": () => immunity({}, "0.2 in/s pk"),
  "shockImmunity, a threshold in displacement": () => immunity({ threshold: "4 mil pp" }),
  "shockImmunity, a corner of zero": () => immunity({ highPass: 0 }),
  "shockImmunity, running above the threshold": () => immunity({}, "0.6 in/s pk at 1800 r/min"),
  "shockImmunity, a shock of no length": () => immunity({}, undefined, { milliseconds: [0] }),
  "shockImmunity, a burst of nothing": () => immunity({}, undefined, { multiples: [0] }),
  "shockImmunity, a burst below the threshold": () => immunity({}, undefined, { multiples: [0.5] }),
  "mechanicalSwitch, no setting": () => p.mechanicalSwitch(),
  "mechanicalSwitch, a setting in velocity": () => p.mechanicalSwitch("10 mm/s pk"),
  "mechanicalSwitch, a setting of zero": () => p.mechanicalSwitch("0 g pk"),
  "mechanicalSwitch, a limit in acceleration": () => p.mechanicalSwitch("2 g pk", { limit: "1 g pk" }),
  "mechanicalSwitch, a limit of zero": () => p.mechanicalSwitch("2 g pk", { limit: "0 mm/s rms" }),
  "delayAdvice, a machine near one": () => p.delayAdvice("pumpe", 25),
  "delayAdvice, at a standstill": () => p.delayAdvice("pump", 0),
  "mechanicalSwitch, one speed": () => p.mechanicalSwitch("2 g pk", { speeds: "1500 r/min" }),
  "balance grade, zero": () => p.permissibleEccentricity(0, "1500 r/min"),
  "balance grade, a text that is none": () => p.permissibleEccentricity("6.3", "1500 r/min"),
  "balance grade, a text of zero": () => p.permissibleEccentricity("G 0", "1500 r/min"),
  "balance grade, a decimal comma": () => p.permissibleEccentricity("G 6,3", "1500 r/min"),
  "permissibleUnbalance, no rotor": () => p.permissibleUnbalance("G 6.3"),
  "gradeOfUnbalance, no rotor": () => p.gradeOfUnbalance("1200 g·mm"),
  "mass, nothing": () => p.permissibleUnbalance("G 6.3", { speed: "1500 r/min" }),
  "mass, no text": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: {} }),
  "mass, no number": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: "kg" }),
  "mass, no unit": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: 120 }),
  "mass, a unit that is none": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: "120 stone" }),
  "mass, zero": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: "0 kg" }),
  "mass, a decimal comma": () => p.permissibleUnbalance("G 6.3", { ...rotor, mass: "1,5 kg" }),
  "distance, no unit": () => p.unbalanceOf("20 g", "300"),
  "distance, a unit that is none": () => p.unbalanceOf("20 g", "3 yd"),
  "unbalance, no unit": () => p.centrifugalForce("1200", "1500 r/min"),
  "unbalance, a unit that is none": () => p.centrifugalForce("1200 g/mm", "1500 r/min"),
  "unbalance, a unit of mass that is none": () => p.centrifugalForce("1200 gr mm", "1500 r/min"),
  "unbalance, a unit of length that is none": () => p.centrifugalForce("1200 g yd", "1500 r/min"),
  "unbalance, beyond what a number holds": () => p.unbalanceOf("1e300 kg", "1e300 m"),
};

holdWording("protection", cases);
