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
  "VotedTrip.run, a word for options": () => votedTrip({}).run({ DE: [0.2], NDE: [0.2] }, 1, "sensor fault"),
  "VotedTrip.run, histories of one channel alone": () => votedTrip({}).run({ DE: [0.2] }, 1),
  "TripLogic.run, a word for the levels": () => run("0.2", 1),
  "TripLogic.run, null for the levels": () => run(null, 1),
  "TripLogic.run, a list of no length": () => run({ length: -1 }, 1),
  "TripLogic.run, a list of half a level": () => run({ length: 0.5 }, 1),
  "TripLogic.run, a list without end": () => run({ length: 2 ** 40 }, 1),
  "TripLogic.run, a mistyped option": () => run([0.2], 1, { excursion: true }),
  "TripLogic.run, NaN for another thing": () => run([0.2], 1, { nan: "hold" }),
  "VotedTrip.run, an option of one channel": () =>
    votedTrip({}).run({ DE: [0.2], NDE: [0.2] }, 1, { commands: [{ at: 0, do: "start" }] }),
  "unmaskedTrips, no settings": () => p.unmaskedTrips(undefined, [0.2], 1),
  "unmaskedTrips, a mistyped option": () => p.unmaskedTrips(settings, [0.2], 1, { comands: [] }),
  "levelGaps, no times": () => p.levelGaps(settings, [0.2], undefined),
  "levelGaps, fewer times than levels": () => p.levelGaps(settings, [0.2, 0.3], [0]),
  "levelGaps, a first time that is none": () => p.levelGaps(settings, [0.2], [Number.NaN]),
  "levelGaps, a longest of nothing": () => p.levelGaps(settings, [0.2], [0], { longest: 0 }),
  "levelGaps, a mistyped option": () => p.levelGaps(settings, [0.2], [0], { longestGap: 5 }),
  "levelGaps, seconds that no number holds": () => p.levelGaps(settings, [0.2, 0.2], [-1.7e308, 1.7e308]),
  "VotedTrip.run, no time between levels": () => votedTrip({}).run({ DE: [0.2], NDE: [0.2] }, 0),
  "VotedTrip.run, histories of two lengths": () => votedTrip({}).run({ DE: [0.2], NDE: [0.2, 0.3] }, 1),
  "VotedTrip, a setting of the channels beside them": () => votedTrip({ threshold: "7.1 mm/s rms" }),
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
