import { shown, text, VeladisError } from "../core/index";
import { type Detector, detectors, findDetector, unknownDetector } from "../detectors/index";
import {
  findUnit,
  type Quantity,
  quantities,
  type UnitSpelling,
  type UnitSymbol,
  unitSymbol,
  units,
} from "../units/index";

/** What an answer is written in, `<unit> <detector>`: `"mm/s rms"`, `"um pp"`. */
export type AmplitudeType = `${UnitSpelling} ${Detector}`;

/** A measured amplitude: what `format`, `convertAmplitude` and `classify` take. */
export interface MeasuredAmplitude {
  /** Zero or more, in `unit`, by `detector`. */
  readonly value: number;
  readonly unit: UnitSymbol;
  readonly detector: Detector;
  readonly quantity: Quantity;
  /** Frequency in hertz of what is one tone; undefined for a level of many. */
  readonly hertz: number | undefined;
}

/** An amplitude type, taken apart. */
export type AnswerType = Pick<MeasuredAmplitude, "unit" | "detector" | "quantity">;

const FORM = 'a unit and a detector for the answer, such as "mm/s rms"';

/**
 * The amplitude type that a text names, taken apart.
 *
 * @throws {@link VeladisError} `wrong-type`, `syntax`, `out-of-range` for a level, `unknown-unit`, `unknown-detector`, `missing-detector`
 */
export function answerType(as: string): AnswerType {
  const words = text(as, FORM).trim().split(/\s+/);
  if (/^dB$/i.test(words[0] as string)) {
    throw new VeladisError("out-of-range", {
      expected: 'a linear unit for the answer, such as "mm/s rms"; convert the answer to have it as a level',
      received: shown(as),
    });
  }
  for (let at = 1; at < Math.min(words.length, 6); at++) {
    const detector = findDetector(words.slice(at).join(" "));
    if (detector === undefined) continue;
    const unit = unitSymbol(words.slice(0, at).join(" "));
    return { unit, detector, quantity: units[unit].quantity };
  }
  const all = words.join(" ");
  if (words.length === 1 || findUnit(all) !== undefined) {
    throw new VeladisError("missing-detector", {
      expected: `a detector after the unit, as in "${unitSymbol(all)} rms"`,
      received: shown(as),
      allowed: Object.keys(detectors),
    });
  }
  throw unknownDetector(words[words.length - 1] as string);
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

/** What a detector reads from a sine, over what another reads. */
export function sineRatio(from: Detector, to: Detector): number {
  const [a, b] = [detectors[from], detectors[to]];
  return ((b.num * a.den) / (b.den * a.num)) * Math.PI ** (b.pi - a.pi) * Math.SQRT2 ** (b.rootTwo - a.rootTwo);
}

/** The symbol of the samples' unit; a type such as `"g rms"` is refused, since samples have no detector. */
export function sampleUnit(unit: string): UnitSymbol {
  const written = text(unit, 'the unit of the samples, such as "g"');
  try {
    return unitSymbol(written);
  } catch (error) {
    const words = written.trim().split(/\s+/);
    const detected =
      words.length <= 6 && words.some((_, at) => at > 0 && findDetector(words.slice(at).join(" ")) !== undefined);
    if (!(error instanceof VeladisError) || !detected) throw error;
    throw new VeladisError("unknown-unit", {
      expected: "the unit of the samples without a detector, since samples have none",
      received: shown(unit),
    });
  }
}

/** A value in the answer's unit and detector, as an amplitude of all frequencies. */
export function amplitudeOf(value: number, { unit, detector, quantity }: AnswerType): MeasuredAmplitude {
  return { value, unit, detector, quantity, hertz: undefined };
}
