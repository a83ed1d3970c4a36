import { shown, VeladisError } from "../core/index";
import { type Detector, detectors } from "../detectors/index";
import { type Quantity, type UnitSymbol, units } from "../units/index";

/** A linear reading type in its plain spelling: the symbol of a unit, a space, the symbol of a detector. */
export type PlainType = `${UnitSymbol} ${Detector}`;

/** A plain type taken apart. */
export interface PlainParts {
  readonly unit: UnitSymbol;
  readonly detector: Detector;
  readonly quantity: Quantity;
}

/**
 * The parts of a type in its plain spelling. It reads no other: a parser of all spellings would weigh as much as all
 * that {@link exactZone} does.
 *
 * @throws {@link VeladisError} `syntax`, `wrong-type`
 */
export function plainType(as: string): PlainParts {
  const [, unit = "", detector = ""] = (typeof as === "string" && /^(\S+) (.+)$/.exec(as)) || [];
  if (Object.hasOwn(units, unit) && Object.hasOwn(detectors, detector)) {
    const { quantity } = units[unit as UnitSymbol];
    return { unit: unit as UnitSymbol, detector: detector as Detector, quantity };
  }
  throw new VeladisError(typeof as === "string" ? "syntax" : "wrong-type", {
    expected: 'a linear reading type in its plain spelling, such as "mm/s rms"',
    received: shown(as),
  });
}
