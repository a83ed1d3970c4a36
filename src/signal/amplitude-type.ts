import { type Amplitude, convert, parseAmplitude } from "../amplitude/index";
import { shown, text, VeladisError } from "../core/index";
import type { Detector } from "../detectors/index";
import { type Quantity, quantities, type UnitSymbol, unitSymbol, units } from "../units/index";

/** What an answer shall be written in, taken apart. */
export interface AnswerType {
  readonly unit: UnitSymbol;
  readonly detector: Detector;
  readonly quantity: Quantity;
  /** The reading type, when it is a level in decibels. */
  readonly level?: string;
}

/**
 * The reading type that a text names, taken apart.
 *
 * @throws {@link VeladisError} as {@link parseAmplitude}
 */
export function answerType(as: string): AnswerType {
  const written = text(as, 'what to answer in, such as "mm/s rms"');
  const { unit, detector, quantity, level, hertz } = parseAmplitude(`1 ${written}`);
  if (hertz !== undefined) {
    throw new VeladisError("syntax", {
      expected: "a reading type without a frequency, since samples hold all their frequencies",
      received: shown(as),
    });
  }
  return { unit, detector, quantity, ...(level !== undefined && { level: `dB re ${level.re}` }) };
}

/** How many times the answer is the time derivative of what is measured: -2 to 2. */
export function derivations(from: UnitSymbol, to: UnitSymbol): number {
  return quantities[units[to].quantity] - quantities[units[from].quantity];
}

/** What a value in one unit is multiplied with to be in the other, both taken in SI units of their own quantity. */
export function unitFactor(from: UnitSymbol, to: UnitSymbol): number {
  const { num, den } = units[from];
  return (num * units[to].den) / (den * units[to].num);
}

/** The symbol of the samples' unit; a reading type such as `"g rms"` is refused, since samples have no detector. */
export function sampleUnit(unit: string): UnitSymbol {
  const written = text(unit, 'the unit of the samples, such as "g"');
  try {
    return unitSymbol(written);
  } catch (error) {
    if (!(error instanceof VeladisError) || !/\s(rms|pk|pp|avg)$/i.test(written)) throw error;
    throw new VeladisError("unknown-unit", {
      expected: "the unit of the samples without a detector, since samples have none",
      received: shown(unit),
    });
  }
}

/** A value in the answer's unit and detector, as an amplitude with its level if one was asked for. */
export function amplitudeOf(value: number, { unit, detector, quantity, level }: AnswerType): Amplitude {
  return {
    value,
    unit,
    detector,
    quantity,
    hertz: undefined,
    ...(level !== undefined && {
      level: Object.freeze({
        decibels: (convert as (value: number, from: string, to: string) => number)(value, `${unit} rms`, level),
        re: level.slice("dB re ".length),
      }),
    }),
  };
}
