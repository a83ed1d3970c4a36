import type { Amplitude } from "./amplitude";
import type { Assumption } from "./assumptions";
import { historyOf, isLong, type Made, madeOf, union } from "./history";
import { ownHistory } from "./own-history";
import type { Step } from "./step";

/** Something that is still being put together: a frozen copy with a part more costs many times what the part does. */
export type Unfinished<Parts> = { -readonly [Name in keyof Parts]: Parts[Name] };

const nothing: readonly Assumption[] = /* @__PURE__ */ Object.freeze([]);

/** The first places in a history, which nearly every step starts from one of. */
const places: readonly (readonly number[])[] = [
  /* @__PURE__ */ Object.freeze([0]),
  /* @__PURE__ */ Object.freeze([1]),
  /* @__PURE__ */ Object.freeze([2]),
];

/** A history with a step behind it that starts from its end; the step is finished here and belongs to the caller no more. */
export function withStep(history: readonly Step[], step: Unfinished<Step>): readonly Step[] {
  const end = history.length - 1;
  step.of = places[end] ?? Object.freeze([end]);
  if (step.assumed !== undefined) Object.freeze(step.assumed);
  return ownHistory([...history, Object.freeze(step)]);
}

/** As {@link madeOf}, of one amplitude by a step of its own: what every conversion does, so it is kept fast. */
export function madeOfOne(amplitude: Amplitude, step: Unfinished<Step>): Made {
  const before = historyOf(amplitude);
  if (isLong(before)) return madeOf([amplitude], step);
  const inherited = amplitude.assumed === undefined ? nothing : union(nothing, amplitude.assumed);
  const made: Unfinished<Made> = {
    assumed: inherited.length === 0 ? Object.freeze(step.assumed ?? nothing) : union(inherited, step.assumed),
  };
  const crestFactor = step.crestFactor ?? amplitude.crestFactor;
  if (crestFactor !== undefined) made.crestFactor = crestFactor;
  if (amplitude.state !== undefined) made.state = amplitude.state;
  made.history = withStep(before, step);
  return made;
}
