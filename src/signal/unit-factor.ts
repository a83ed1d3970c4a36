import { shown, text, VeladisError } from "../core/index";
import { type Detector, detectors, findDetector } from "../detectors/index";
import { quantities, type UnitSymbol, unitSymbol, units } from "../units/index";

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
