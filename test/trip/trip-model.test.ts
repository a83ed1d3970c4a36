import fc from "fast-check";
import { parseAmplitude } from "veladis";
import {
  type TripCommand,
  type TripEvent,
  type TripLevel,
  TripLogic,
  type TripMask,
  type TripSettings,
  tripMasks,
  unmaskedTrips,
} from "veladis/protection";
import { describe, expect, it } from "vitest";
import { type ModelCommand, type ModelLevel, type ModelSettings, modelOutcome, type Stretch } from "./reference-trip";

/** Seconds a tick; not a whole number of binary fractions, so that sums of it carry float noise. */
const TICK = 0.1;

/**
 * How the model's levels, percents of the threshold, reach the library: scaled, and stored as a 64-bit or 32-bit number
 * or not. The model compares the percents exactly.
 */
interface Recorder {
  scale: number;
  single: boolean;
}

const exact: Recorder = { scale: 1, single: false };

const recorders: fc.Arbitrary<Recorder> = fc.record({
  scale: fc.constantFrom(1, 0.071, 0.09, 0.046, 0.0035, 1.6),
  single: fc.boolean(),
});

const recorded = (percent: number, { scale, single }: Recorder): number =>
  single ? Math.fround(percent * scale) : percent * scale;

/** A level as a step takes it; what a loop shows outside its range is no help to tell where the true level lies. */
function levelOf(value: ModelLevel, recorder: Recorder): TripLevel {
  if (typeof value === "number") return recorded(value, recorder);
  if (value === "fault") return value;
  const shown = parseAmplitude(`${recorded(value === "above range" ? 50 : 400, recorder)} mm/s rms`);
  return { ...shown, state: value };
}

const settingsOf = (model: ModelSettings, { scale } = exact): TripSettings => ({
  threshold: `${Number((model.threshold * scale).toPrecision(12))} mm/s rms` as const,
  hysteresis: `${model.hysteresis} %`,
  onDelay: model.onDelay * TICK,
  offDelay: model.offDelay * TICK,
  startInhibit: model.inhibit * TICK,
  ...(model.multiplied > 0 && { multiplier: { factor: model.factor, seconds: model.multiplied * TICK } }),
  timerResets: model.resetsBelow === "threshold" ? "below threshold" : "below reset level",
  sensorFault: model.fault,
  latching: model.latching,
  contact: "normally open",
  coil: "normally energised",
});

const span = fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 4 }), fc.integer({ min: 5, max: 70 }));

const models: fc.Arbitrary<ModelSettings> = fc.record({
  threshold: fc.constant(100),
  hysteresis: fc.constantFrom(0, 3, 5, 20),
  onDelay: span,
  offDelay: span,
  inhibit: fc.oneof(
    { weight: 3, arbitrary: fc.constant(0) },
    { weight: 1, arbitrary: fc.integer({ min: 1, max: 30 }) },
  ),
  factor: fc.constantFrom(2, 3),
  multiplied: fc.oneof(
    { weight: 3, arbitrary: fc.constant(0) },
    { weight: 1, arbitrary: fc.integer({ min: 1, max: 30 }) },
  ),
  resetsBelow: fc.constantFrom("threshold", "reset level"),
  fault: fc.constantFrom("alarm", "hold", "bad"),
  latching: fc.boolean(),
});

const level = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.constantFrom(0, 50, 79.9, 80, 94.9, 95, 96.9, 97, 98, 99.9, 100, 101, 150, 199, 200, 310),
  },
  { weight: 3, arbitrary: fc.constantFrom(98, 100, 400) },
  { weight: 1, arbitrary: fc.constant("fault" as const) },
  { weight: 1, arbitrary: fc.constantFrom("above range" as const, "below range" as const) },
);

const commands: fc.Arbitrary<ModelCommand[]> = fc.oneof(
  { weight: 6, arbitrary: fc.constant<ModelCommand[]>([]) },
  {
    weight: 2,
    arbitrary: fc.array(
      fc.constantFrom<ModelCommand[]>(
        "reset",
        "start",
        "bypass on",
        "bypass off",
        "bypass off",
        "power lost",
        "power back",
        "power back",
      ),
      { maxLength: 2 },
    ),
  },
  { weight: 1, arbitrary: fc.constant<ModelCommand[]>(["reset"]) },
);

const histories: fc.Arbitrary<Stretch[]> = fc.array(
  fc.record({ commands, level, ticks: fc.oneof(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 40 })) }),
  { minLength: 1, maxLength: 12 },
);

const told = ["trip", "clear", "reset", "reset refused"];

function essence(events: readonly TripEvent[]): { time: number; event: string }[] {
  return events
    .filter(({ event }) => told.includes(event))
    .map(({ time, event }) => ({ time: Math.round((time / TICK) * 1e6) / 1e6, event }));
}

function obey(logic: TripLogic, name: TripCommand["do"]): TripEvent[] {
  if (name === "reset") {
    const { time } = logic;
    return [{ time, event: logic.reset().accepted ? "reset" : "reset refused", level: null }];
  }
  if (name === "start") return [...logic.start().events];
  if (name === "bypass on" || name === "bypass off") return [...logic.bypass(name === "bypass on").events];
  return [...logic.power(name === "power back").events];
}

/** Steps through a history, each stretch cut in pieces. */
function stepped(
  settings: TripSettings,
  history: readonly Stretch[],
  recorder: Recorder,
  pieces: (ticks: number) => number[],
) {
  const logic = new TripLogic(settings);
  const events: TripEvent[] = [];
  const set: boolean[] = [];
  for (const { commands: names, level: value, ticks } of history) {
    for (const name of names) events.push(...obey(logic, name));
    for (const seconds of pieces(ticks)) events.push(...logic.step(levelOf(value, recorder), seconds).events);
    set.push(logic.firstOut !== null);
  }
  return { events: essence(events), set, logic };
}

/** A list of numbers has no states of a loop: one far above every limit and a failed sensor stand for them. */
function flat(
  history: readonly Stretch[],
  recorder: Recorder,
): { levels: Float64Array | Float32Array; commands: TripCommand[] } {
  const levels: number[] = [];
  const found: TripCommand[] = [];
  for (const { commands: names, level: value, ticks } of history) {
    for (const name of names) found.push({ time: levels.length * TICK, do: name });
    for (let k = 0; k < ticks; k++)
      levels.push(typeof value === "number" ? recorded(value, recorder) : value === "above range" ? 1e9 : Number.NaN);
  }
  return { levels: (recorder.single ? Float32Array : Float64Array).from(levels), commands: found };
}

describe("trip logic against a slow model that looks back over whole ticks", () => {
  it("agrees on 20 000 random histories and settings, stepped whole, by ticks and in odd pieces, and run", () => {
    fc.assert(
      fc.property(
        models,
        histories,
        fc.array(fc.double({ min: 0.01, max: 0.99, noNaN: true }), { maxLength: 3 }),
        recorders,
        (model, history, cuts, recorder) => {
          const wanted = modelOutcome(model, history);
          const settings = settingsOf(model, recorder);
          const whole = stepped(settings, history, recorder, (ticks) => [ticks * TICK]);
          expect({ events: whole.events, set: whole.set }).toEqual(wanted);
          const byTick = stepped(settings, history, recorder, (ticks) => Array.from({ length: ticks }, () => TICK));
          expect({ events: byTick.events, set: byTick.set }).toEqual(wanted);
          const odd = stepped(settings, history, recorder, (ticks) => {
            const ends = [0, ...[...cuts].sort((a, b) => a - b), 1].map((part) => part * ticks * TICK);
            return ends.slice(1).map((end, i) => end - (ends[i] as number));
          });
          expect({ events: odd.events, set: odd.set }).toEqual(wanted);

          const { levels, commands: found } = flat(history, recorder);
          const run = new TripLogic(settings).run(levels, TICK, { commands: found, nan: "sensor fault" });
          expect(essence(run)).toEqual(wanted.events);
          const excursions = new TripLogic(settings).run(levels, TICK, {
            commands: found,
            nan: "sensor fault",
            excursions: true,
          });
          expect(essence(excursions)).toEqual(wanted.events);
          const times = Float64Array.from({ length: levels.length + 1 }, (_, i) => i * TICK);
          const closed = Float64Array.from([...levels, levels[levels.length - 1] as number]);
          const zeroDelay = model.onDelay === 0 || model.offDelay === 0;
          const timed = new TripLogic(settings).run(closed, times, { commands: found, nan: "sensor fault" });
          const end = levels.length;
          const upToEnd = (events: { time: number; event: string }[]) =>
            zeroDelay || model.inhibit || model.multiplied ? events.filter(({ time }) => time < end) : events;
          expect(upToEnd(essence(timed))).toEqual(upToEnd(wanted.events));
        },
      ),
      { numRuns: 20_000 },
    );
  }, 300_000);

  it("tells what each mask hid on 4000 random histories: the first trip and all trips without it", () => {
    const without = (model: ModelSettings, history: readonly Stretch[], mask: TripMask) => {
      const changed: Partial<Record<TripMask, Partial<ModelSettings>>> = {
        "on-delay": { onDelay: 0 },
        "start inhibit": { inhibit: 0 },
        multiplier: { multiplied: 0 },
        "sensor fault": { fault: "alarm" },
      };
      const dropped = mask === "bypass" ? "bypass" : mask === "power loss" ? "power" : "nothing";
      return {
        model: { ...model, ...changed[mask] },
        history: history.map((one) => ({ ...one, commands: one.commands.filter((name) => !name.startsWith(dropped)) })),
      };
    };
    const seen = new Map<TripMask, number>();
    fc.assert(
      fc.property(models, histories, recorders, (model, history, recorder) => {
        const { levels, commands: found } = flat(history, recorder);
        const told = unmaskedTrips(settingsOf(model, recorder), levels, TICK, { commands: found, nan: "sensor fault" });
        const trips = (of: { model: ModelSettings; history: readonly Stretch[] }) => {
          const all = modelOutcome(of.model, of.history).events.filter(({ event }) => event === "trip");
          return [all.length, all[0]?.time ?? null];
        };
        const shown = ({ first, trips: count }: typeof told.asSet) => [
          count,
          first === null ? null : Math.round((first.time / TICK) * 1e6) / 1e6,
        ];
        expect(shown(told.asSet)).toEqual(trips({ model, history }));
        for (const { mask, ...outcome } of told.without) {
          const wanted = trips(without(model, history, mask));
          expect([mask, ...shown(outcome)]).toEqual([mask, ...wanted]);
          if (wanted[0] !== shown(told.asSet)[0]) seen.set(mask, (seen.get(mask) ?? 0) + 1);
        }
        const bare = (masks: readonly TripMask[]) =>
          masks.reduce((of, mask) => without(of.model, of.history, mask), { model, history: history as Stretch[] });
        const masks = told.without.map(({ mask }) => mask);
        expect(shown(told.withoutAny)).toEqual(trips(bare(masks)));
        expect(shown(told.onDelayAlone)).toEqual(trips(bare(masks.filter((mask) => mask !== "on-delay"))));
        expect(shown(told.otherLatch)).toEqual(trips({ model: { ...model, latching: !model.latching }, history }));
      }),
      { numRuns: 4000 },
    );
    for (const mask of Object.keys(tripMasks) as TripMask[])
      expect([mask, (seen.get(mask) ?? 0) > 20]).toEqual([mask, true]);
  }, 300_000);

  it("gives the same events and the same state by run as by step, bit for bit", () => {
    fc.assert(
      fc.property(
        models,
        fc.array(
          fc.tuple(fc.constantFrom(0, 50, 90, 95, 97, 98, 100, 100, 110, 110, 250), fc.integer({ min: 1, max: 90 })),
          {
            minLength: 1,
            maxLength: 12,
          },
        ),
        fc.constantFrom(0.001, 0.1, 0.25, 1 / 3, 7),
        (model, stretches, dt) => {
          const levels = Float64Array.from(
            stretches.flatMap(([value, length]) => Array(length).fill(value) as number[]),
          );
          const one = new TripLogic(settingsOf(model));
          const events: TripEvent[] = [];
          for (const value of levels) events.push(...one.step(value, dt).events);
          const other = new TripLogic(settingsOf(model));
          const wanted = events.filter(({ event }) => event !== "timing" && event !== "rode out");
          expect(other.run(levels, dt)).toEqual(wanted);
          expect(other.snapshot()).toEqual(one.snapshot());
          const third = new TripLogic(settingsOf(model));
          expect(third.run(levels, dt, { excursions: true })).toEqual(events);
          expect(third.snapshot()).toEqual(one.snapshot());
        },
      ),
      { numRuns: 10_000 },
    );
  }, 300_000);
});
