import { isSignal } from "../../amplitude/index";
import { shown, VeladisError } from "../../core/index";
import { isReading } from "../../reading/index";
import { plainSpelling } from "../../sentence/index";

/** Where a number begins: not within a word such as P-7, nor behind a digit. */
const NUMBERS = /(?<![\w.,])[+\u2212-]?[.,]?\d/g;

/** More numbers than the notes of one reading have. */
const MOST_NUMBERS = 12;

/** What may stand behind a reading: a target, a speed, a load. */
const BEHIND = /\s+(?:to|in|->|\u2192)\s.*$|\s*[,;(]\s*(?:at\s+|running\s|speed|load|\d+\s*%\s*load).*$/i;

/** A number alone where a reading stands: all there is, or behind a colon, a bar, a tab or several blanks. */
const BARE = /(?:^|[:|\t]|\s\s)\s*[+\u2212-]?\d[\d.,]*\s*$/;

/** A unit that nothing but vibration has, whose detector may be left out. */
const RATE = /(?:\/\s*s(?:2|\u00b2)?|ips|mils?|[u\u00b5\u03bc]m)\s*$/i;

function readsAs(text: string): boolean {
  const spelt = plainSpelling(text.replace(/^([+\u2212-]?\d*),(?=\d)/, "$1."));
  return isReading(spelt) || isSignal(spelt) || (RATE.test(spelt) && isReading(`${spelt} rms`));
}

/** Whether a text ends in a reading; where numbers need no unit, in a number. */
function endsInReading(text: string, bare: boolean): boolean {
  if (bare && BARE.test(text)) return true;
  return [...text.matchAll(NUMBERS)].slice(-MOST_NUMBERS).some(({ index }) => {
    const end = text.slice(index).trim();
    return readsAs(end) || readsAs(end.replace(BEHIND, ""));
  });
}

/**
 * Whether a line says nothing: blank, or a remark.
 *
 * @param bare - whether numbers are readings without a unit
 * @throws {@link VeladisError} `syntax` for a line that begins as a remark and ends in a reading, such as `#3 brg: 22 mm/s rms`
 */
export function isRemark(text: string, { bare }: { readonly bare: boolean }): boolean {
  if (text.trim() === "") return true;
  if (!text.startsWith("#")) return false;
  if (!endsInReading(text.replace(/^[#\s]+/, "").trimEnd(), bare)) return true;
  throw new VeladisError("syntax", {
    expected: 'a reading or a remark: # begins a remark; "no. 3 brg: 4.1 mm/s rms" names a place by its number',
    received: shown(text.trim()),
  });
}
