import { attempt, cachedWithRefusals } from "../core/index";
import type { Frequency } from "../frequency/index";
import { type Amplitude, agreedHertz, amplitudeOf, parseAmplitude } from "../reading/index";
import type { CalendarDay } from "./plant-machine";

/** A reading of a route, by the tag of its machine. */
export interface RouteReading {
  readonly tag: string;
  /** Line of its row; the heading is line 1. */
  readonly line: number;
  /** With its unit and detector, e.g. `"3.1 mm/s rms"`, or an amplitude; what its history assumed counts. */
  readonly reading: string | Amplitude;
  /** The point of the machine, e.g. `"DE-H"`. */
  readonly point?: string | undefined;
  readonly date?: CalendarDay | undefined;
  /** The frequency of the vibration, where the reading does not say it. */
  readonly at?: Frequency | undefined;
  /** What the row says of its machine, e.g. `"1485 r/min, rigid"`: refused where the list says otherwise. */
  readonly machine?: string | undefined;
}

/** A short plain number before a type. */
const PLAIN = /^\s*(\d{1,12}(?:\.\d{1,12})?)\s+(\S.*)$/s;

/** An amplitude of one in a type, as a text has it behind its number; all that is behind it is the same for others. */
const one = /* @__PURE__ */ cachedWithRefusals((behind) => parseAmplitude(`1 ${behind}`));

/** True for an amplitude that is a number in a type, with a frequency at most: nothing was assumed on the way to it. */
export function isPlain({ level, crestFactor, state, assumed, history }: Amplitude): boolean {
  return [level, crestFactor, state, assumed, history].every((part) => part === undefined);
}

/** The amplitude that a text says; of a plain number the type is read once for all that share it. */
function amplitudeIn(text: string): Amplitude {
  const [, digits, behind] = PLAIN.exec(text) ?? [];
  if (digits === undefined || behind === undefined || behind.length > 60) return parseAmplitude(text);
  const like = attempt(() => one(behind));
  // whatever is wrong is told of the text itself
  if (!like.ok || !isPlain(like.value)) return parseAmplitude(text);
  const { unit, detector, quantity, hertz } = like.value;
  return { value: Number(digits), unit, detector, quantity, hertz };
}

/**
 * The amplitude of a reading of a route, at the frequency that is told beside it.
 *
 * @throws {@link VeladisError} as {@link parseAmplitude}; `out-of-range` for two frequencies that differ
 */
export function routeAmplitude({ reading, at }: Pick<RouteReading, "reading" | "at">): Amplitude {
  const amplitude = typeof reading === "string" ? amplitudeIn(reading) : amplitudeOf(reading);
  if (at === undefined) return amplitude;
  return { ...amplitude, hertz: agreedHertz(amplitude.hertz, at) };
}
