import { findFrequencyUnit } from "../frequency/index";
import { phraseAt } from "./machine-phrases";
import { kilovoltAmperesPer, kilowattsPer, millimetresPer, unitIn } from "./size";

/** Revolutions per minute as plates of other countries have them (common practice, no source). */
const ABROAD = /^(?:U|tr|giri|omw|ot|ob)\/min$|^U\.?p\.?M$/i;

/** A unit at the beginning of a text. */
export interface UnitSaid {
  readonly quantity: "power" | "apparent power" | "length" | "frequency";
  /** As tables write it. */
  readonly symbol: string;
  /** How many characters it takes. */
  readonly length: number;
}

/** True where a fact or a word that leads to one follows, and not a word such as `service` behind `in`. */
function saysMore(behind: string): boolean {
  const next = behind.replace(/^[\s-]+/, "");
  return phraseAt(`in ${next}`) === undefined && phraseAt(next) !== undefined && !/^(?:the|an?)\b/i.test(next);
}

/** The unit of a nameplate that a text begins with, if it begins with one. */
export function unitAt(text: string): UnitSaid | undefined {
  const token = /^[^\s,;()[\]|]+(?:\s+per\s+[a-z]+)?/i.exec(text)?.[0] ?? "";
  const written = token.replace(/[.:]+$/, "");
  const { length } = written;
  // 3 in the boiler house: no inches
  if (length === 0 || (/^in[\s-]+[a-z]/i.test(text) && !saysMore(text.slice(2)))) return undefined;
  const power = unitIn(kilowattsPer, written);
  if (power !== undefined) return { quantity: "power", symbol: power, length };
  const apparent = unitIn(kilovoltAmperesPer, written);
  if (apparent !== undefined) return { quantity: "apparent power", symbol: apparent, length };
  const measure = unitIn(millimetresPer, written);
  if (measure !== undefined) return { quantity: "length", symbol: measure, length };
  const frequency = ABROAD.test(written) ? "r/min" : findFrequencyUnit(written);
  return frequency && { quantity: "frequency", symbol: frequency, length };
}

/** Symbols of all units that a number on a nameplate may have. */
export function unitNames(): string[] {
  return [kilowattsPer, kilovoltAmperesPer, millimetresPer]
    .flatMap((per) => Object.keys(per))
    .concat("r/min", "rpm", "Hz");
}
