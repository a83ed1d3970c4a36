import { shown, VeladisError } from "../../core/index";
import { findDetector } from "../../detectors/index";
import { findFrequencyUnit } from "../../frequency/index";
import { findUnit } from "../../units/index";

const EXPECTED =
  'a name before the last colon, with no reading and no speed in it: "P-7: DE-H 4.1, DE-V 2.2 mm/s rms" for several points, ' +
  '"Fan 8: 40 um pp at 2980 r/min" for a speed';

/** A time of day or a date, which is no reading. */
const MOMENT = /(?<![^\sT])\d\d:\d\d(?::\d\d)?(?![\d:.])|(?<!\S)\d{1,4}([.-])\d{1,2}\1\d{1,4}(?![\d.])/g;

/** A number with decimals. */
const DECIMAL = /\d[.,]\d|(?:^|[\s(:=])[.,]\d|[\u00bc-\u00be\u2150-\u215e]/;

/** A number behind a colon, a bar, a tab, several blanks, `=`, `at`, a speed, or the direction of a point. */
const VALUE = /(?:[:=|\t@]|\s\s|\b(?:at|speed)\s|(?:^|[\s-])[HVA]\s)\s*[+\u2212-]?\d/i;

/** A number and the word behind it, with the one that follows, which may be a number with a word of its own. */
const COUNTED = /\d\s*([^\s\d,;:|()[\]=-][^\s,;:|()[\]=]*)(?=(?:\s+([^\s,;:|()[\]=]+))?)/g;

/** A speed in other languages than the units of the library are: U/min, tr/min, /min, min-1, Upm. */
const TURNS =
  /^\p{L}{0,5}\.?\/(?:min|\u043c\u0438\u043d)\p{L}*\.?$|^min\.?\^?[-\u2212\u207b][1\u00b9]$|^[ut]\.?p\.?m\.?$/iu;

/** Units of a signal or a level, as no machine is named. */
const SIGNAL = /^(?:[um\u00b5\u03bc]V|mA|%|dB)$/;

/** Whether a number with these words behind it has a unit; `1 in hall B` has none. */
function isCounted(word: string, next: string | undefined): boolean {
  if (
    findFrequencyUnit(word) !== undefined ||
    TURNS.test(word) ||
    SIGNAL.test(word) ||
    findDetector(word) !== undefined
  )
    return true;
  const hasDetector = next !== undefined && findDetector(next) !== undefined;
  if (findUnit(word) !== undefined) return word !== "in" || next === undefined || hasDetector;
  return word === "V" && hasDetector;
}

/**
 * Refuses the name of a place that holds a reading, a speed or a number that may be one: it would be lost. `P-7`, `Fan 8` and
 * `Turbine 1 bearing 2` are names.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function requireName(place: string): void {
  const plain = place.replace(MOMENT, "-").replace(/\s*\/\s*/g, "/");
  const isName =
    !DECIMAL.test(plain) &&
    !VALUE.test(plain) &&
    [...plain.matchAll(COUNTED)].every(([, word = "", next]) => !isCounted(word, next));
  if (!isName) throw new VeladisError("syntax", { expected: EXPECTED, received: shown(place) });
}
