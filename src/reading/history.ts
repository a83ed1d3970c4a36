import { VeladisError } from "../core/index";
import { type Amplitude, type LoopState, loopStates } from "./amplitude";
import type { Assumption } from "./assumptions";
import { ownHistory } from "./own-history";
import { typeOf } from "./parsed-type";
import type { Step } from "./step";
import { isUncertain } from "./uncertainty";
import { writtenValue } from "./written-value";

/** More steps than a person reads; beyond them a history is told in one, so that no loop makes it grow. */
const MOST_STEPS = 64;

/** More steps than any sum has terms: a history with uncertainties is kept whole, but ends somewhere. */
const MOST_UNCERTAIN = 4096;

/** What an amplitude is written in: unit and detector, or a level with its reference. */
export function writtenIn({ unit, detector, level }: Amplitude): string {
  return level === undefined ? typeOf(unit, detector).type : `dB re ${level.re}`;
}

/** Both lists in one, nothing twice. */
export function union<Item>(one: readonly Item[] = [], other: readonly Item[] = []): readonly Item[] {
  if (other.every((item) => one.includes(item))) return Object.isFrozen(one) ? one : Object.freeze([...one]);
  const all: Item[] = [];
  // the lists are short: a set costs several times as much
  for (const list of [one, other]) for (const item of list) if (!all.includes(item)) all.push(item);
  return Object.freeze(all);
}

/** The steps that led to a value: as {@link historyOf}, of what is no vibration too. */
export function historyTo(
  value: number,
  type: string,
  { history = [], hertz }: Pick<Amplitude, "history"> & { readonly hertz?: number | undefined },
): readonly Step[] {
  const last = history.at(-1);
  if (last?.value === value && last.type === type) return history;
  const does = last === undefined ? "given" : "replaced";
  const told = Object.freeze(hertz === undefined ? { does, value, type } : { does, value, type, hertz });
  return [...history, told];
}

/**
 * The steps that led to an amplitude; of a reading as it was given, that it was given. Where the value is no longer
 * the one that the last step gave, a step says so: nothing may hide that it was replaced.
 */
export function historyOf(amplitude: Amplitude): readonly Step[] {
  return historyTo(writtenValue(amplitude), writtenIn(amplitude), amplitude);
}

/** True for a history that has to be told in one step before another may follow. */
export function isLong(history: readonly Step[]): boolean {
  return history.length >= MOST_STEPS;
}

function condensed(history: readonly Step[], { assumed = [], crestFactor }: Amplitude): Step {
  const { value, type } = history.at(-1) as Step;
  return Object.freeze({
    does: "condensed",
    value,
    type,
    note: `${history.length} steps`,
    ...(crestFactor !== undefined && { crestFactor }),
    ...(assumed.length > 0 && { assumed }),
  });
}

/**
 * The histories one behind the other, and the place where each ends. A step that several have in common is written
 * once: steps are frozen, and one that starts from others has them before it in every history that it stands in.
 */
function joined(amplitudes: readonly Amplitude[]): { steps: Step[]; ends: number[] } {
  const whole = amplitudes.map(historyOf);
  const steps: Step[] = [];
  const written = new Map<Step, number>();
  const tooLong = new Set(whole.flat()).size >= MOST_STEPS;
  const ends = whole.map((history, i) => {
    const told =
      tooLong && history.length > 1 && !isUncertain(history)
        ? [condensed(history, amplitudes[i] as Amplitude)]
        : history;
    const places: number[] = [];
    for (const step of told) {
      let place = written.get(step);
      if (place === undefined) {
        place = steps.length;
        const of = step.of?.map((at) => places[at] as number);
        const same = of === undefined || of.every((at, k) => at === step.of?.[k]);
        steps.push(same ? step : Object.freeze({ ...step, of: Object.freeze(of) }));
        written.set(step, place);
      }
      places.push(place);
    }
    return places.at(-1) as number;
  });
  if (steps.length <= MOST_UNCERTAIN) return { steps, ends };
  throw new VeladisError("out-of-range", {
    expected: `an answer of at most ${MOST_UNCERTAIN} steps, where its readings have an uncertainty`,
    received: `${steps.length} steps`,
  });
}

/** What an amplitude owes to how it was made: the part that it has beside value, type and frequency. */
export type Made = Pick<Amplitude, "assumed" | "crestFactor" | "state" | "history">;

/** The crest factor that all amplitudes have; a waveform without one makes that of the whole unknown. */
function commonCrestFactor(amplitudes: readonly Amplitude[]): number | undefined {
  const first = amplitudes[0]?.crestFactor;
  return amplitudes.every(({ crestFactor }) => crestFactor === first) ? first : undefined;
}

/** The worst state of a loop among several: a reading above its range may be any height. */
export function worstState(states: readonly (LoopState | undefined)[]): LoopState | undefined {
  return loopStates.findLast((one) => states.includes(one));
}

/**
 * The history of what a step made of some amplitudes: theirs, then the step; their assumptions and its own, nothing
 * lost. The worst state of a loop goes along, and the crest factor if it is one: the step's, or the one that all of them
 * have, unless they were put together as uncorrelated.
 */
export function madeOf(amplitudes: readonly Amplitude[], step: Omit<Step, "of">): Made {
  const { steps, ends } = joined(amplitudes);
  const assumed = step.assumed && { assumed: union([], step.assumed) };
  steps.push(Object.freeze({ ...step, ...assumed, ...(ends.length > 0 && { of: Object.freeze(ends) }) }));
  const inherited = amplitudes.reduce<readonly Assumption[]>((all, { assumed }) => union(all, assumed), []);
  // waves that have nothing to do with one another make another waveform
  const crestFactor = step.crestFactor ?? (step.does === "rss" ? undefined : commonCrestFactor(amplitudes));
  const state = worstState(amplitudes.map((one) => one.state));
  return {
    assumed: union(inherited, step.assumed),
    ...(crestFactor !== undefined && { crestFactor }),
    ...(state !== undefined && { state }),
    history: ownHistory(steps),
  };
}
