import { cached, requireText, shown, unknownName, VeladisError } from "../core/index";
import { type DetectorEntry, detectors, findDetector } from "../detectors/index";
import { type ParsedType, parsedType } from "../reading/index";
import { findUnit, quantities, type Unit, units } from "../units/index";
import type { OwnDetector } from "./own-detector";
import type { OwnUnit } from "./own-unit";

/** A reading type of a toolkit, taken apart. */
export interface OwnParsed extends ParsedType {
  /** Whether its detector is one of your own. */
  readonly isOwnDetector: boolean;
  /** Whether its unit or its detector is one of your own. */
  readonly isOwn: boolean;
}

function twoOfName(name: string): VeladisError {
  return new VeladisError("out-of-range", {
    expected: "names that differ in one toolkit",
    received: shown(name),
    parameter: "name",
  });
}

/** The rows by each of their names. */
function byNames<Row>(rows: readonly Row[], namesOf: (row: Row) => readonly string[]): Map<string, Row> {
  const found = new Map<string, Row>();
  for (const row of rows) {
    for (const name of namesOf(row)) {
      if (found.has(name)) throw twoOfName(name);
      found.set(name, row);
    }
  }
  return found;
}

/** The product, where it is exact. */
function product(a: number, b: number): number {
  if (Number.isSafeInteger(a * b)) return a * b;
  throw new VeladisError("out-of-range", {
    expected: "unit and detector whose ratios multiply to whole numbers below 2^53",
    received: `${a} times ${b}`,
  });
}

/** The parser of reading types that knows own units and detectors besides the built-in ones. */
export function ownParser(own: readonly OwnUnit[], reads: readonly OwnDetector[]): (type: string) => OwnParsed {
  const ownUnits = byNames(own, ({ symbol, also = [] }) => [symbol, ...also]);
  const ownDetectors = byNames(reads, ({ symbol }) => [symbol]);
  for (const name of ownDetectors.keys()) if (ownUnits.has(name)) throw twoOfName(name);
  const names = (...lists: readonly Iterable<string>[]) =>
    new Map(lists.flatMap((list) => [...list].map((one) => [one, one])));

  return cached((type: string): OwnParsed => {
    const words = requireText(type, "a reading type").slice(0, 80).trim().split(/\s+/);
    const last = words.at(-1) as string;
    const first = words.slice(0, -1).join(" ");
    const detector = ownDetectors.get(last);
    // a detector of two words stands behind a single word of a unit of your own
    const unit = ownUnits.get(detector === undefined ? (words[0] as string) : first);
    if (unit === undefined && detector === undefined)
      return Object.freeze({ ...parsedType(type), isOwnDetector: false, isOwn: false });
    const written = unit === undefined ? first : words[0];
    const symbol = unit?.symbol ?? findUnit(first);
    if (symbol === undefined || (detector !== undefined && unit !== undefined && words.length !== 2)) {
      throw unknownName("unknown-unit", "a unit of vibration", first, [
        names(Object.keys(units), ownUnits.keys()),
        units,
      ]);
    }
    const rest = words.slice(1).join("");
    const known = detector === undefined ? findDetector(rest) : undefined;
    if (detector === undefined && known === undefined) {
      const all = names(Object.keys(detectors), ownDetectors.keys());
      if (rest !== "") throw unknownName("unknown-detector", "a detector", rest, [all, detectors]);
      throw new VeladisError("missing-detector", {
        expected: `a detector after the unit, as in "${written} rms"`,
        received: shown(type),
        allowed: [...all.keys()],
      });
    }
    const row: Unit = unit ?? units[symbol as "m"];
    const sine: Pick<DetectorEntry, "num" | "den"> & { pi?: number; rootTwo?: number } =
      detector ?? detectors[known as "pk"];
    return Object.freeze({
      type: `${symbol} ${detector?.symbol ?? known}` as ParsedType["type"],
      unit: symbol as ParsedType["unit"],
      // an own one is a function of the sine alone, as the RMS value is
      detector: known ?? "rms",
      quantity: row.quantity,
      order: quantities[row.quantity],
      num: product(row.num, sine.den),
      den: product(row.den, sine.num),
      pi: sine.pi ?? 0,
      rootTwo: sine.rootTwo ?? 0,
      reference: 0,
      isOwnDetector: detector !== undefined,
      isOwn: true,
    });
  });
}
