import type { Amplitude } from "./amplitude";
import type { Assumption } from "./assumptions";
import { typeOf } from "./parsed-type";
import type { Step } from "./step";
import { writtenValue } from "./written-value";

/** More steps than a person reads; beyond them a history is told in one, so that no loop makes it grow. */
const MOST_STEPS = 64;

/** What an amplitude is written in: unit and detector, or a level with its reference. */
export function writtenIn({ unit, detector, level }: Amplitude): string {
  return level === undefined ? typeOf(unit, detector).type : `dB re ${level.re}`;
}

/** Both lists in one, nothing twice. */
export function union<Item>(one: readonly Item[] = [], other: readonly Item[] = []): readonly Item[] {
  if (other.every((item) => one.includes(item))) return one;
  return Object.freeze([...new Set([...one, ...other])]);
}

/**
 * The steps that led to an amplitude; of a reading as it was given, that it was given. Where the value is no longer
 * the one that the last step gave, a step says so: nothing may hide that it was replaced.
 */
export function historyOf(amplitude: Amplitude): readonly Step[] {
  const { history = [], hertz } = amplitude;
  const [value, type] = [writtenValue(amplitude), writtenIn(amplitude)];
  const last = history.at(-1);
  if (last?.value === value && last.type === type) return history;
  const does = last === undefined ? "given" : "replaced";
  const told = Object.freeze(hertz === undefined ? { does, value, type } : { does, value, type, hertz });
  return [...history, told];
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

/** The histories one behind the other, and the place where each ends; one that stands twice is written once. */
function joined(amplitudes: readonly Amplitude[]): { steps: Step[]; ends: number[] } {
  const whole = amplitudes.map(historyOf);
  const tooLong = whole.reduce((sum, { length }) => sum + length, 0) >= MOST_STEPS;
  const steps: Step[] = [];
  const written = new Map<readonly Step[], number>();
  const ends = whole.map((history, i) => {
    const before = written.get(history);
    if (before !== undefined) return before;
    const offset = steps.length;
    const told = tooLong && history.length > 1 ? [condensed(history, amplitudes[i] as Amplitude)] : history;
    for (const step of told) {
      steps.push(step.of === undefined || offset === 0 ? step : { ...step, of: step.of.map((at) => at + offset) });
    }
    written.set(history, steps.length - 1);
    return steps.length - 1;
  });
  return { steps, ends };
}

/** What an amplitude owes to how it was made: the part that it has beside value, type and frequency. */
export type Made = Pick<Amplitude, "assumed" | "crestFactor" | "state" | "history">;

/** The crest factor of all amplitudes that have one, if it is one and the same: two waveforms together have another. */
function commonCrestFactor(amplitudes: readonly Amplitude[]): number | undefined {
  const [first, ...others] = amplitudes.flatMap(({ crestFactor }) => crestFactor ?? []);
  return others.every((one) => one === first) ? first : undefined;
}

const stateOrder = ["in range", "below range", "above range"] as const;

/**
 * The history of what a step made of some amplitudes: theirs, then the step; their assumptions and its own, nothing
 * lost. The worst state of a loop goes along, and the crest factor if it is one: the step's, or that of all which have one.
 */
export function madeOf(amplitudes: readonly Amplitude[], step: Omit<Step, "of">): Made {
  const { steps, ends } = joined(amplitudes);
  steps.push(Object.freeze({ ...step, ...(ends.length > 0 && { of: Object.freeze(ends) }) }));
  const inherited = amplitudes.reduce<readonly Assumption[]>((all, { assumed }) => union(all, assumed), []);
  const crestFactor = step.crestFactor ?? commonCrestFactor(amplitudes);
  const state = stateOrder.findLast((one) => amplitudes.some((amplitude) => amplitude.state === one));
  return {
    assumed: union(inherited, step.assumed),
    ...(crestFactor !== undefined && { crestFactor }),
    ...(state !== undefined && { state }),
    history: Object.freeze(steps),
  };
}
