import { type Amplitude, amplitudeIn, madeOf, type ParsedType } from "../reading/index";

/** A band in words, for the history of what was computed in it. */
export function bandNote([low, high]: readonly [number, number]): string {
  return `overall of ${low} Hz to ${high} Hz`;
}

/** A value that was computed from a signal, as an amplitude of all its frequencies whose history says how. */
export function measured(value: number, as: ParsedType, note: string): Amplitude {
  return Object.freeze({
    ...amplitudeIn(as, value),
    ...madeOf([], { does: "overall", value, type: as.type, note }),
  });
}
