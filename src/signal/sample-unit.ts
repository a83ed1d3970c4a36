import { inPlace, requireText, shown, VeladisError } from "../core/index";
import { findDetector } from "../detectors/index";
import { type UnitSymbol, unitSymbol } from "../units/index";

/**
 * The symbol of the samples' unit; a type such as `"g rms"` is refused, since samples have no detector. */
export function sampleUnit(unit: string, option = "unit"): UnitSymbol {
  const written = requireText(unit, 'the unit of the samples, such as "g"', { option });
  try {
    return inPlace({ option }, () => unitSymbol(written));
  } catch (error) {
    const words = written.trim().split(/\s+/);
    const detected =
      words.length <= 6 && words.some((_, at) => at > 0 && findDetector(words.slice(at).join(" ")) !== undefined);
    if (!(error instanceof VeladisError) || !detected) throw error;
    throw new VeladisError("unknown-unit", {
      expected: "the unit of the samples without a detector, since samples have none",
      received: shown(unit),
      option,
    });
  }
}
