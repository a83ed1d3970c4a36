import fc from "fast-check";
import {
  type RunOptions,
  type TripCommand,
  type TripEvent,
  type TripLevel,
  TripLogic,
  type TripSettings,
  type VotedCommand,
  type VotedEvent,
  VotedTrip,
  type VotedTripSettings,
} from "veladis/protection";
import { describe, expect, it } from "vitest";
import { quick } from "./voted-settings";

const delay = fc.constantFrom(0, 0, 1, 2, 5);

const channelSettings = fc.record({
  onDelay: delay,
  offDelay: delay,
  startInhibit: fc.constantFrom(0, 0, 3),
  multiplier: fc.constantFrom(undefined, undefined, { factor: 2, seconds: 4 }),
  timerResets: fc.constantFrom("below threshold" as const, "below reset level" as const),
  sensorFault: fc.constantFrom("alarm" as const, "hold" as const, "bad" as const),
});

const settingsOf = ({ multiplier, ...more }: typeof channelSettings extends fc.Arbitrary<infer One> ? One : never) => ({
  ...quick,
  ...more,
  ...(multiplier !== undefined && { multiplier }),
});

const relays = fc.record({
  latching: fc.boolean(),
  contact: fc.constant("normally open" as const),
  coil: fc.constant("normally energised" as const),
});

const level = fc.constantFrom(1, 3.9, 4, 6, 8, 9, 16, 20, Number.NaN);
const loopReading = { ...({ value: 5, unit: "mm/s", detector: "rms", quantity: "velocity" } as const) };
const name = fc.constantFrom("reset", "start", "bypass on", "bypass off", "power lost", "power back", "power back");
const dts = fc.constantFrom(0.1, 0.25, 1, 1 / 3);

/** As a file would hold it. */
const stored = <State>(state: State): State => JSON.parse(JSON.stringify(state)) as State;

/** The commands of rows from one to another, at the beginning of their rows. */
const within = <Command extends { time: number }>(commands: readonly Command[], from: number, to: number, dt: number) =>
  commands.filter(({ time }) => time >= from && time < to).map((one) => ({ ...one, time: one.time * dt }));

describe("a state saved at any point and resumed gives the same as an unbroken run", () => {
  it("of one channel", () => {
    fc.assert(
      fc.property(
        channelSettings,
        relays,
        fc.array(level, { minLength: 1, maxLength: 24 }),
        fc.array(fc.record({ time: fc.nat(23), do: name }), { maxLength: 5 }),
        dts,
        fc.nat(24),
        (channel, relay, levels, all, dt, cut) => {
          const settings = { ...settingsOf(channel), ...relay } as TripSettings;
          const commands = all.filter(({ time }) => time < levels.length) as TripCommand[];
          const options = (from: number, to: number): RunOptions => ({
            nan: "sensor fault",
            excursions: true,
            commands: within(commands, from, to, dt),
          });
          const times = levels.map((_, i) => i * dt);
          const whole = new TripLogic(settings);
          const wanted = whole.run(levels, times, options(0, levels.length));
          const logic = new TripLogic(settings);
          const first = logic.run(levels.slice(0, cut), times.slice(0, cut), options(0, cut));
          const other = new TripLogic(settings, stored(logic.snapshot()));
          if (cut >= levels.length) return;
          const rest = other.run(levels.slice(cut), times.slice(cut), options(cut, levels.length));
          const told = (events: readonly TripEvent[]) => events.map((one) => ({ ...one, time: one.time.toFixed(9) }));
          expect(told([...first, ...rest])).toEqual(told(wanted));
          expect(other.status.state).toBe(whole.status.state);
        },
      ),
      { numRuns: 5000 },
    );
  }, 60_000);

  it("of one channel step by step, with readings of a loop outside its range, at every step", () => {
    const readings = fc.constantFrom<TripLevel>(1, 6, 9, "fault", "9 mm/s rms");
    const outside = fc.constantFrom("above range" as const, "below range" as const);
    fc.assert(
      fc.property(
        channelSettings,
        relays,
        fc.array(fc.tuple(fc.oneof(readings, outside), fc.constantFrom(0, 0.3, 1, 4), fc.option(name)), {
          maxLength: 16,
        }),
        (channel, relay, steps) => {
          const settings = { ...settingsOf(channel), ...relay } as TripSettings;
          const whole = new TripLogic(settings);
          let broken = new TripLogic(settings);
          for (const [one, seconds, command] of steps) {
            const given: TripLevel =
              one === "above range" || one === "below range"
                ? ({ ...loopReading, assumed: [], history: [], state: one } as never)
                : one;
            const act = (logic: TripLogic): unknown => {
              if (command === "reset") return logic.reset();
              if (command === "start") return logic.start().events;
              if (command?.startsWith("bypass")) return logic.bypass(command === "bypass on").events;
              if (command?.startsWith("power")) return logic.power(command === "power back").events;
              return null;
            };
            expect(act(broken)).toEqual(act(whole));
            broken = new TripLogic(settings, stored(broken.snapshot()));
            expect(broken.step(given, seconds)).toEqual(whole.step(given, seconds));
            broken = new TripLogic(settings, stored(broken.snapshot()));
          }
          expect(broken.snapshot()).toEqual(stored(whole.snapshot()));
        },
      ),
      { numRuns: 5000 },
    );
  }, 60_000);

  it("of a vote step by step, with its status, at every step", () => {
    const row = fc.tuple(level, level, level);
    const command = fc.tuple(name, fc.constantFrom("a", "b", "c"));
    fc.assert(
      fc.property(
        fc.tuple(channelSettings, channelSettings, channelSettings),
        relays,
        fc.constantFrom("1oo3" as const, "2oo3" as const, "3oo3" as const),
        fc.constantFrom("votes to trip" as const, "does not vote" as const),
        fc.array(fc.tuple(row, fc.constantFrom(0, 0.3, 1, 3, 4), fc.option(command)), { maxLength: 12 }),
        (channels, relay, vote, badChannel, steps) => {
          const [a, b, c] = channels.map(settingsOf);
          const settings = { vote, badChannel, channels: { a, b, c }, ...relay } as VotedTripSettings;
          const whole = new VotedTrip(settings);
          let broken = new VotedTrip(settings);
          const breakHere = (): void => {
            broken = new VotedTrip(settings, stored(broken.snapshot()));
            expect(broken.status).toEqual(whole.status);
          };
          for (const [[x, y, z], seconds, given] of steps) {
            const act = (logic: VotedTrip): unknown => {
              if (given === null) return null;
              const [what, of] = given;
              if (what === "reset") return logic.reset();
              if (what === "start") return logic.start();
              return what.startsWith("bypass")
                ? logic.bypass(of, what === "bypass on")
                : logic.power(what === "power back");
            };
            expect(act(broken)).toEqual(act(whole));
            breakHere();
            const levels = Object.fromEntries(
              Object.entries({ a: x, b: y, c: z }).map(([of, one]) => [of, Number.isNaN(one) ? "fault" : one]),
            );
            expect(broken.step(levels, seconds)).toEqual(whole.step(levels, seconds));
            breakHere();
          }
          expect(broken.snapshot()).toEqual(stored(whole.snapshot()));
        },
      ),
      { numRuns: 3000 },
    );
  }, 120_000);

  it("of a vote", () => {
    const command = fc.record({ time: fc.nat(15), do: name, of: fc.constantFrom("a", "b", "c") });
    fc.assert(
      fc.property(
        fc.tuple(channelSettings, channelSettings, channelSettings),
        relays,
        fc.constantFrom("1oo3" as const, "2oo3" as const, "3oo3" as const),
        fc.constantFrom("votes to trip" as const, "does not vote" as const),
        fc.array(fc.tuple(level, level, level), { minLength: 1, maxLength: 16 }),
        fc.array(command, { maxLength: 5 }),
        dts,
        fc.nat(16),
        (channels, relay, vote, badChannel, rows, all, dt, cut) => {
          const [a, b, c] = channels.map(settingsOf);
          const settings = { vote, badChannel, channels: { a, b, c }, ...relay } as VotedTripSettings;
          const commands = all
            .filter(({ time }) => time < rows.length)
            .map(({ time, do: what, of }) => ({ time, do: what, ...(what.startsWith("bypass") && { channel: of }) }));
          const run = (logic: VotedTrip, from: number, to: number): VotedEvent[] => {
            const part = rows.slice(from, to);
            const histories = {
              a: part.map((row) => row[0]),
              b: part.map((row) => row[1]),
              c: part.map((row) => row[2]),
            };
            const times = part.map((_, i) => (from + i) * dt);
            return logic.run(histories, times, {
              ...{ nan: "sensor fault", excursions: true },
              commands: within(commands, from, to, dt) as VotedCommand[],
            });
          };
          const whole = new VotedTrip(settings);
          const wanted = run(whole, 0, rows.length);
          const logic = new VotedTrip(settings);
          const first = run(logic, 0, cut);
          const other = new VotedTrip(settings, stored(logic.snapshot()));
          if (cut >= rows.length) return;
          const rest = run(other, cut, rows.length);
          const told = (events: readonly VotedEvent[]) => events.map((one) => ({ ...one, time: one.time.toFixed(9) }));
          expect(told([...first, ...rest])).toEqual(told(wanted));
          expect({ ...other.status, time: 0 }).toEqual({ ...whole.status, time: 0 });
        },
      ),
      { numRuns: 5000 },
    );
  }, 120_000);
});
