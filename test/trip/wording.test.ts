import * as protection from "veladis/protection";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";
import { settings } from "./trip-settings";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const p: Record<string, Loose> = protection;

const trip = (changed: object) => new p.TripLogic({ ...settings, ...changed });
const logic = () => trip({});
const run = (levels: unknown, dt: unknown, options?: unknown) => logic().run(levels, dt, options);
const relay = { latching: true, contact: "normally open", coil: "normally energised" };
const pair = { vote: "1oo2", badChannel: "votes to trip", ...relay, channels: { DE: settings, NDE: settings } };
const votedTrip = (changed: object) => new p.VotedTrip({ ...pair, ...changed });

const alert = { ...settings, threshold: "0.1 in/s pk" };
const mixed = { ...pair, vote: "1 danger and 1 alert of 2", alerts: { DE: alert, NDE: alert } };
const mixedTrip = (changed: object) => new p.VotedTrip({ ...mixed, ...changed });
const mixedState = (changed: object) => {
  const state = mixedTrip({}).snapshot();
  const channels = { ...state.channels, "DE alert": { ...state.channels["DE alert"], ...changed } };
  return mixedTrip({}).resume({ ...state, channels });
};

const pairRun = (options: object) => votedTrip({}).run({ DE: [0.2], NDE: [0.2] }, 1, options);
const pairState = (changed: object) => new p.VotedTrip(pair, { ...votedTrip({}).snapshot(), ...changed });
const stepped = () => {
  const voting = votedTrip({});
  voting.step({ DE: 0.1, NDE: 0.1 }, 1);
  return voting.snapshot();
};
const tripped = () => {
  const high = logic();
  high.step(0.6, 5);
  return high.snapshot();
};
const firstOut = (changed: object) =>
  new p.TripLogic(settings, { ...tripped(), firstOut: { ...tripped().firstOut, ...changed } });

const cases: Cases = {
  "TripLogic, no settings": () => new p.TripLogic(),
  "TripLogic, null for settings": () => new p.TripLogic(null),
  "TripLogic, null for a level": () => logic().step(null, 1),
  "TripLogic, null for a snapshot": () => new p.TripLogic(settings, null),
  "TripLogic, a word for settings": () => new p.TripLogic("2oo3"),
  "TripLogic, a snapshot that is none": () => new p.TripLogic(settings, {}),
  "TripLogic, a snapshot with a phase that is none": () =>
    new p.TripLogic(settings, { ...logic().snapshot(), phase: "tripped" }),
  "TripLogic, a snapshot with a word for what was assumed": () =>
    new p.TripLogic(settings, { ...logic().snapshot(), assumed: {} }),
  "TripLogic, a snapshot that assumed nothing known": () =>
    new p.TripLogic(settings, { ...logic().snapshot(), assumed: ["cosine"] }),
  "TripLogic, a mistyped key": () => trip({ ofDelay: 2 }),
  "bypass, a word": () => logic().bypass("off"),
  "power, not said": () => logic().power(),
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
  "run, a command before the time": () => run([0.2], 1, { commands: [{ time: -1, do: "reset" }] }),
  "run, a command that is none": () => run([0.2], 1, { commands: [{ time: 0, do: "rest" }] }),
  "run, a command behind the history": () => run([0.2], 1, { commands: [{ time: 5, do: "reset" }] }),
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
  "VotedTrip.run, a word for options": () => votedTrip({}).run({ DE: [0.2], NDE: [0.2] }, 1, "sensor fault"),
  "VotedTrip.run, histories of one channel alone": () => votedTrip({}).run({ DE: [0.2] }, 1),
  "TripLogic.run, a word for the levels": () => run("0.2", 1),
  "TripLogic.run, null for the levels": () => run(null, 1),
  "TripLogic.run, a list of no length": () => run({ length: -1 }, 1),
  "TripLogic.run, a list of half a level": () => run({ length: 0.5 }, 1),
  "TripLogic.run, a list without end": () => run({ length: 2 ** 40 }, 1),
  "TripLogic.run, a mistyped option": () => run([0.2], 1, { excursion: true }),
  "TripLogic.run, NaN for another thing": () => run([0.2], 1, { nan: "hold" }),
  "run, a frequency of levels in the unit of the threshold": () => run([0.2], 1, { at: "50 Hz" }),
  "run, excursions as a word": () => run([0.2], 1, { excursions: "yes" }),
  "run, null for a command": () => run([0.2], 1, { commands: [null] }),
  "run, a command of a channel": () => run([0.2], 1, { commands: [{ time: 0, do: "start", channel: "DE" }] }),
  "VotedTrip.run, a type for one channel alone": () => pairRun({ as: { DE: "in/s pk" } }),
  "VotedTrip.run, a type for a channel that is none": () => pairRun({ as: { DE: "g pk", NDE: "g pk", top: "g pk" } }),
  "VotedTrip.run, a frequency for one channel alone": () => pairRun({ as: "g pk", at: { DE: "50 Hz" } }),
  "VotedTrip.run, a frequency of levels in the unit of the thresholds": () => pairRun({ at: "50 Hz" }),
  "VotedTrip.run, a bypass of no channel": () => pairRun({ commands: [{ time: 0, do: "bypass on" }] }),
  "VotedTrip.run, a bypass of a channel that is none": () =>
    pairRun({ commands: [{ time: 0, do: "bypass on", channel: "top" }] }),
  "VotedTrip.run, a bypass of a number": () => pairRun({ commands: [{ time: 0, do: "bypass on", channel: 1 }] }),
  "VotedTrip.run, a start of one channel": () => pairRun({ commands: [{ time: 0, do: "start", channel: "DE" }] }),
  "VotedTrip.run, null for a command": () => pairRun({ commands: [null] }),
  "VotedTrip.run, a part that no command has": () => pairRun({ commands: [{ time: 0, do: "start", of: "DE" }] }),
  "VotedTrip.run, a mistyped option": () => pairRun({ excursion: true }),
  "bypassCost, no vote": () => p.bypassCost(undefined, []),
  "bypassCost, a word for the channels": () => p.bypassCost("1oo2", "DE"),
  "bypassCost, a number for a channel": () => p.bypassCost("1oo2", [1]),
  "bypassCost, a channel twice": () => p.bypassCost("1oo2", ["DE", "DE"]),
  "bypassCost, more channels than there are": () => p.bypassCost("1oo1", ["DE", "NDE"]),
  "TripLogic, a snapshot with a part that none has": () =>
    new p.TripLogic(settings, { ...logic().snapshot(), timers: 0 }),
  "TripLogic, a snapshot with a timer below zero": () =>
    new p.TripLogic(settings, { ...tripped(), phase: "timing", timer: -1e9, firstOut: null }),
  "TripLogic, a snapshot with a first-out of nothing": () =>
    new p.TripLogic(settings, { ...logic().snapshot(), firstOut: {} }),
  "TripLogic, a snapshot that is set for no reason": () => new p.TripLogic(settings, { ...tripped(), firstOut: null }),
  "TripLogic, a snapshot whose first-out is no trip": () => firstOut({ event: "clear" }),
  "TripLogic, a snapshot whose first-out has no time": () => firstOut({ time: undefined }),
  "TripLogic, a snapshot whose first-out is to come": () => firstOut({ time: 99 }),
  "TripLogic, a snapshot whose first-out has no cause": () => firstOut({ cause: undefined }),
  "TripLogic, a snapshot whose first-out was on no level": () => firstOut({ level: 0.1 }),
  "TripLogic, a snapshot whose first-out is a fault that is held": () =>
    new p.TripLogic(
      { ...settings, sensorFault: "hold" },
      { ...tripped(), firstOut: { ...tripped().firstOut, cause: "sensor fault" } },
    ),
  "TripLogic, a snapshot whose first-out assumed a word": () => firstOut({ assumed: "sine" }),
  "TripLogic, a snapshot whose first-out assumed nothing known": () => firstOut({ assumed: ["cosine"] }),
  "TripLogic, a snapshot whose first-out has a part that none has": () => firstOut({ channel: "DE" }),
  "VotedTrip, null for a snapshot": () => new p.VotedTrip(pair, null),
  "VotedTrip, a snapshot with a part that none has": () => pairState({ votes: 0 }),
  "VotedTrip, a snapshot with a word for set": () => pairState({ set: "no" }),
  "VotedTrip, a snapshot with a word for unable": () => pairState({ unable: "no" }),
  "VotedTrip, a snapshot with a number for first": () => pairState({ first: 1 }),
  "VotedTrip, a snapshot with a word for calls": () => pairState({ calls: "DE" }),
  "VotedTrip, a snapshot without channels": () => pairState({ channels: undefined }),
  "VotedTrip, a snapshot with a word for channels": () => pairState({ channels: "DE, NDE" }),
  "VotedTrip, a snapshot of one channel alone": () =>
    pairState({ channels: { DE: votedTrip({}).snapshot().channels.DE } }),
  "VotedTrip, a snapshot on two clocks": () =>
    pairState({ channels: { ...stepped().channels, DE: { ...stepped().channels.DE, base: 5 } } }),
  "VotedTrip, a snapshot with a level on one channel alone": () =>
    pairState({
      channels: {
        ...votedTrip({}).snapshot().channels,
        DE: { ...votedTrip({}).snapshot().channels.DE, signal: "good" },
      },
    }),
  "VotedTrip, a snapshot in which a channel calls that is not set": () => pairState({ calls: ["DE"] }),
  "VotedTrip, a snapshot whose calls stand against the times of the trips": () => {
    const both = votedTrip({});
    both.step({ DE: 99, NDE: 0 }, 99);
    both.step({ DE: 99, NDE: 99 }, 99);
    return new p.VotedTrip(pair, { ...both.snapshot(), calls: ["NDE", "DE"] });
  },
  "VotedTrip, a snapshot with a word for inhibited": () => pairState({ inhibited: "DE" }),
  "VotedTrip, a snapshot in which a channel is inhibited that has no inhibit": () => pairState({ inhibited: ["DE"] }),
  "VotedTrip, a snapshot whose first is no channel": () => pairState({ first: "top" }),
  "VotedTrip, a snapshot whose first does not call": () => pairState({ first: "DE" }),
  "VotedTrip, a snapshot that is unable for no reason": () => pairState({ unable: true }),
  "VotedTrip, a snapshot that is set without a vote": () => {
    const loose = { ...pair, latching: false };
    return new p.VotedTrip(loose, { ...new p.VotedTrip(loose).snapshot(), set: true });
  },
  "unmaskedTrips, no settings": () => p.unmaskedTrips(undefined, [0.2], 1),
  "unmaskedTrips, a mistyped option": () => p.unmaskedTrips(settings, [0.2], 1, { comands: [] }),
  "levelGaps, no times": () => p.levelGaps(settings, [0.2], undefined),
  "levelGaps, fewer times than levels": () => p.levelGaps(settings, [0.2, 0.3], [0]),
  "levelGaps, a first time that is none": () => p.levelGaps(settings, [0.2], [Number.NaN]),
  "levelGaps, a longest of nothing": () => p.levelGaps(settings, [0.2], [0], { longest: 0 }),
  "levelGaps, a mistyped option": () => p.levelGaps(settings, [0.2], [0], { longestGap: 5 }),
  "levelGaps, seconds that no number holds": () => p.levelGaps(settings, [0.2, 0.2], [-1.7e308, 1.7e308]),
  "VotedTrip.run, no seconds between levels": () => votedTrip({}).run({ DE: [0.2], NDE: [0.2] }, undefined),
  "VotedTrip.run, fewer times than levels": () => votedTrip({}).run({ DE: [0.2], NDE: [0.2] }, []),
  "VotedTrip.run, no time between levels": () => votedTrip({}).run({ DE: [0.2], NDE: [0.2] }, 0),
  "VotedTrip.run, histories of two lengths": () => votedTrip({}).run({ DE: [0.2], NDE: [0.2, 0.3] }, 1),
  "VotedTrip, a setting of the channels beside them": () => votedTrip({ threshold: "7.1 mm/s rms" }),
  "voteAlternatives, no settings": () => p.voteAlternatives(undefined, { DE: [0.2], NDE: [0.2] }, 1),
  "voteAlternatives, no histories": () => p.voteAlternatives(pair, undefined, 1),
  "voteAlternatives, a mistyped option": () => p.voteAlternatives(pair, { DE: [0.2], NDE: [0.2] }, 1, { comands: [] }),
  "VotedTrip, a mixed vote without an alert": () => votedTrip({ vote: "1 danger and 0 alert of 2" }),
  "VotedTrip, a mixed vote without alerts": () => mixedTrip({ alerts: undefined }),
  "VotedTrip, an alert of one channel alone": () => mixedTrip({ alerts: { DE: alert } }),
  "VotedTrip, alerts that do not vote": () => mixedTrip({ vote: "2oo2" }),
  "VotedTrip, an alert at the trip": () => mixedTrip({ alerts: { DE: settings, NDE: alert } }),
  "VotedTrip, an alert in another unit": () =>
    mixedTrip({ alerts: { DE: { ...alert, threshold: "1 mm/s rms" }, NDE: alert } }),
  "VotedTrip, an alert with a rule for faults of its own": () =>
    mixedTrip({ alerts: { DE: { ...alert, sensorFault: "hold" }, NDE: alert } }),
  "VotedTrip, a channel named as the alert of another": () =>
    mixedTrip({
      channels: { DE: settings, "DE alert": settings },
      alerts: { DE: alert, "DE alert": alert },
    }),
  "VotedTrip.resume, an alert that is bypassed alone": () => mixedState({ bypassed: true }),
  "VotedTrip, no channels": () => votedTrip({ channels: null }),
  "VotedTrip, null for a channel": () => votedTrip({ channels: { DE: settings, NDE: null } }),
  "VotedTrip.step, no levels": () => votedTrip({}).step(undefined, 1),
  "VotedTrip.run, no histories": () => votedTrip({}).run(undefined, 1),
  "VotedTrip.run, a number for the first history": () => votedTrip({}).run({ DE: 0.2, NDE: [0.2] }, 1),
  "VotedTrip.run, a number for another history": () => votedTrip({}).run({ DE: [0.2], NDE: 0.2 }, 1),
  "VotedTrip.power, a word": () => votedTrip({}).power("off"),
  "VotedTrip.bypass, not said": () => votedTrip({}).bypass("DE"),
  "VotedTrip.bypass, no channel": () => votedTrip({}).bypass(undefined, true),
};

holdWording("trip", cases);
