import type { TripLogic, VotedTrip } from "../../src/entries/protection";
import type { currentLoop } from "../../src/entries/sensor";
import { type Seeded, seeded } from "./seeded";
import { type SlowCommand, type SlowSettings, type SlowSignal, SlowTrip, slowHistory } from "./slow-trip";
import { alertOf, type Channel, channelOf, commandOf, signalOf, spacings } from "./trip-choices";

/** What of the library is asked. */
export interface TripLibrary {
  readonly TripLogic: typeof TripLogic;
  readonly VotedTrip: typeof VotedTrip;
  readonly currentLoop: typeof currentLoop;
}

/** One history: what the library and the model say of it, each in lines. */
interface Told {
  readonly history: string;
  readonly library: readonly string[];
  readonly model: readonly string[];
}

interface Driven {
  readonly trip: unknown;
  readonly model: SlowTrip;
  readonly names: readonly string[];
  readonly channels: readonly Channel[];
}

type AnyTrip = Record<
  "step" | "run" | "reset" | "start" | "power" | "bypass" | "snapshot",
  (...all: unknown[]) => never
> & {
  readonly status: Record<string, unknown>;
};
interface AnyEvent {
  readonly time: number;
  readonly event: string;
  readonly channel?: string;
}

const lineOf = (time: number, of: string, event: string): string => `${time.toFixed(6)} ${of} ${event}`;

/** The relay and the vote at a moment. */
function stateLines(trip: AnyTrip, { model, names }: Driven, normallyEnergised: boolean, normallyOpen: boolean) {
  const { status } = trip;
  const isVoted = names.length > 0;
  const energised = model.hasPower() && model.isOutputSet() !== normallyEnergised;
  const contact = energised === normallyOpen ? "closed" : "open";
  const { needed, others, good, calls } = model.count();
  const isMixed = model.settings.vote?.others !== undefined;
  const left = isMixed ? `${needed} danger and ${others} alert of ${good}` : `${needed}oo${good}`;
  // without power no votes are taken, and what they would need is not said
  const voteOf = (first: unknown, voting: unknown, unable: unknown, effective: unknown, says: string) =>
    ` ${first} ${model.hasPower() ? `${voting} ${unable} ${effective}` : ""} ${says}`;
  const own = status.channels as Record<string, string> | undefined;
  const library = `${status.output} ${status.coil} ${status.contact}${isVoted ? voteOf(status.firstOut, status.voting, status.unable, status.effective, names.map((name) => own?.[name]).join()) : ""}`;
  const expected = `${energised === normallyEnergised ? "healthy" : "trip"} ${energised ? "energised" : "de-energised"} ${contact}${isVoted ? voteOf(model.firstOut(), calls, needed + others > good, left, names.map((name) => model.says(name)).join()) : ""}`;
  return { library, expected };
}

function tripHistory(library: TripLibrary, r: Seeded): Told {
  const dt = r.oneOf(spacings);
  const isVoted = r.chance(0.5);
  const latching = r.chance(0.5);
  const [coil, contact] = [
    r.oneOf(["normally energised", "normally de-energised"]),
    r.oneOf(["normally open", "normally closed"]),
  ];
  const relay = { latching, coil, contact };
  const names = isVoted ? ["a", "b", "c", "d"].slice(0, r.whole(2, 4)) : [];
  const channels = isVoted ? names.map(() => channelOf(r, dt, false)) : [channelOf(r, dt, latching)];
  const needed = isVoted ? r.whole(1, names.length) : 1;
  const badChannel = r.oneOf(["votes to trip", "does not vote"]);
  const others = isVoted && needed < names.length && r.chance(0.5) ? r.whole(1, names.length - needed) : undefined;
  const alerts = others === undefined ? [] : channels.map((one) => alertOf(r, dt, one));
  const settings = isVoted
    ? {
        ...relay,
        vote:
          others === undefined
            ? `${needed}oo${names.length}`
            : `${needed} danger and ${others} alert of ${names.length}`,
        badChannel,
        ...(others !== undefined && {
          alerts: Object.fromEntries(names.map((name, i) => [name, (alerts[i] as Channel).told])),
        }),
        channels: Object.fromEntries(names.map((name, i) => [name, (channels[i] as Channel).told])),
      }
    : { ...relay, ...(channels[0] as Channel).told };
  const slow: SlowSettings = {
    channels: Object.fromEntries(
      (isVoted ? names : ["-"]).map((name, i) => {
        const alert = alerts[i]?.slow;
        return [name, { ...(channels[i] as Channel).slow, ...(alert !== undefined && { alert }) }];
      }),
    ),
    ...(isVoted && {
      vote: { needed, ...(others !== undefined && { others }), badVotes: badChannel === "votes to trip", latching },
    }),
  };
  const told: string[] = [`settings ${JSON.stringify(settings)}`];
  const lines: string[] = [];
  const wanted: string[] = [];
  const Maker = (isVoted ? library.VotedTrip : library.TripLogic) as unknown as new (...all: unknown[]) => AnyTrip;
  let trip = new Maker(settings);
  const ids = isVoted ? names : ["-"];
  const start = r.chance(0.5) ? "times" : r.oneOf(["even", "steps", "steps"] as const);
  const firstTime = start === "times" ? dt * r.whole(0, 5) : 0;
  const model = new SlowTrip(slow, firstTime);
  const driven: Driven = { trip, model, names, channels };
  const note = (events: readonly AnyEvent[]): void => {
    for (const { time, channel = "-", event } of events) lines.push(lineOf(time, channel, event));
  };
  const last: SlowSignal[] = channels.map(() => "none");

  const history = (kind: "times" | "even"): void => {
    const count = r.whole(1, 12);
    // where times do not divide evenly, the two clocks may be apart by a rounding, which is no time that a level stands
    let at = model.isFresh() ? model.time : (trip.status.time as number);
    const spacing = kind === "even" ? dt * r.oneOf([1, 1, 2]) : 0;
    const rows: { at: number; levels: Record<string, SlowSignal> }[] = [];
    const times: number[] = [];
    const columns: number[][] = channels.map(() => []);
    const base = at;
    for (let i = 0; i < count; i++) {
      if (kind === "times")
        at +=
          i === 0
            ? rows.length === 0 && lines.length === 0
              ? 0
              : dt * r.whole(0, 2)
            : dt * r.oneOf([0, 0.5, 1, 1, 1, 2, 3]);
      else at = base + i * spacing;
      const levels: Record<string, SlowSignal> = {};
      for (const [k, id] of ids.entries()) {
        last[k] = signalOf(r, channels[k] as Channel, last[k] === "above" ? 0 : (last[k] as SlowSignal), false);
        levels[id] = last[k] as SlowSignal;
        (columns[k] as number[]).push(last[k] === "failed" ? Number.NaN : (last[k] as number));
      }
      rows.push({ at, levels });
      times.push(at);
    }
    const end = kind === "even" ? base + count * spacing : at;
    const grid = dt / r.oneOf([1, 2, 4]);
    const from = times[0] as number;
    const most = Math.round((end - from) / grid);
    // a rounding is no time between two levels; where even levels do not divide evenly, a command is in their midst
    const isExact = Number.isInteger(dt * 4);
    const onTime = (time: number): number => {
      if (kind === "even" && !isExact) return from + spacing * (r.whole(0, count - 1) + 0.5);
      return [...times, end].find((one) => Math.abs(one - time) < 1e-6) ?? time;
    };
    const commands = Array.from({ length: r.oneOf([0, 0, 1, 2, 3, 4]) }, () => ({
      time: onTime(Math.min(end, from + grid * r.whole(0, most))),
      ...commandOf(r, names),
    })).sort((a, b) => a.time - b.time);
    const spaced = kind === "even" ? spacing : r.chance(0.5) ? times : Float64Array.from(times);
    const isTyped = r.chance(0.5);
    const typed = columns.map((one) => (isTyped ? Float64Array.from(one) : one));
    const own = isVoted ? Object.fromEntries(names.map((name, k) => [name, typed[k]])) : typed[0];
    const options = { nan: "sensor fault", excursions: true, ...(commands.length > 0 && { commands }) };
    told.push(`run ${JSON.stringify(own)} ${JSON.stringify(spaced)} ${JSON.stringify(commands)}`);
    slowHistory(model, rows, commands, end);
    note(trip.run(own, spaced, options));
  };

  const steps = (): void => {
    const count = r.whole(1, 12);
    for (let i = 0; i < count; i++) {
      const which = r.next();
      if (which < 0.25) {
        const command = commandOf(r, names);
        told.push(`method ${JSON.stringify(command)}`);
        model.method(command);
        note(method(trip, command, isVoted));
      } else if (which < 0.3) {
        told.push("stored");
        trip = new Maker(settings, JSON.parse(JSON.stringify(trip.snapshot())));
      } else {
        const levels: Record<string, SlowSignal> = {};
        const given: unknown[] = [];
        for (const [k, id] of ids.entries()) {
          last[k] = signalOf(r, channels[k] as Channel, last[k] as SlowSignal, true);
          levels[id] = last[k] as SlowSignal;
          given.push(
            last[k] === "failed"
              ? "fault"
              : last[k] === "above"
                ? library.currentLoop("0 to 40 mm/s rms").reading(20.9)
                : last[k],
          );
        }
        const seconds = dt * r.oneOf([0, 0.5, 1, 1, 2, 3, 5]);
        told.push(`step ${JSON.stringify(levels)} ${seconds}`);
        model.begin([], levels);
        model.stand(model.time + seconds);
        const status = trip.step(
          isVoted ? Object.fromEntries(names.map((name, k) => [name, given[k]])) : given[0],
          seconds,
        ) as { events: AnyEvent[] };
        note(status.events);
      }
      compare();
    }
  };
  const compare = (): void => {
    const { library: says, expected } = stateLines(
      trip,
      driven,
      coil === "normally energised",
      contact === "normally open",
    );
    lines.push(says);
    wanted.push(...model.events.splice(0).map(({ time, of, event }) => lineOf(time, of, event)), expected);
  };

  if (start === "steps") {
    steps();
    if (r.chance(0.3)) history(r.oneOf(["times", "even"]));
  } else {
    history(start);
    if (r.chance(0.3)) steps();
  }
  compare();
  return { history: told.join("\n"), library: lines, model: wanted };
}

/** A command by its method; the events that it leaves, and of a reset, which answers for itself, the event that it would be. */
function method(trip: AnyTrip, command: SlowCommand, isVoted: boolean): readonly AnyEvent[] {
  const { channel } = command;
  if (command.do === "reset") {
    const event = (trip.reset() as { accepted: boolean }).accepted ? "reset" : "reset refused";
    return [{ time: trip.status.time as number, event, ...(isVoted && { channel: "vote" }) }];
  }
  const answer = ((): unknown => {
    if (command.do === "start") return trip.start();
    if (command.do.startsWith("power")) return trip.power(command.do === "power back");
    const on = command.do === "bypass on";
    return isVoted ? trip.bypass(channel, on) : trip.bypass(on);
  })();
  return (answer as { events: AnyEvent[] }).events;
}

/** So many random histories by the library and by the slow model; those that differ, with where. */
export function tripDifferences(library: TripLibrary, count: number, seed = 15): string[] {
  const r = seeded(seed);
  const differences: string[] = [];
  for (let i = 0; i < count; i++) {
    const { history, library: says, model } = tripHistory(library, r);
    const at = says.findIndex((line, k) => line !== model[k]);
    if (at < 0 && says.length === model.length) continue;
    const where = at < 0 ? says.length : at;
    differences.push(
      [
        `history ${i}`,
        history,
        `library: ${says.slice(Math.max(0, where - 3), where + 4).join(" | ")}`,
        `model:   ${model.slice(Math.max(0, where - 3), where + 4).join(" | ")}`,
      ].join("\n"),
    );
  }
  return differences;
}
