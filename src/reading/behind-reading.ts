import { parseNumeral, requirePositive, shown, splitNumeral, VeladisError } from "../core/index";
import { type FrequencyText, hertz } from "../frequency/index";
import { type LoopState, loopStates } from "./amplitude";
import { type Assumption, assumptionOf } from "./assumptions";
import { union } from "./history";

/** What stands behind a reading: its crest factor, what was assumed on the way to it, and those words as they were. */
export interface Behind {
  readonly crestFactor: number | undefined;
  readonly assumed: readonly Assumption[] | undefined;
  readonly note: string | undefined;
}

/** All parts are its own: what others put on every object is no part of a reading. */
const nothing: Behind = { crestFactor: undefined, assumed: undefined, note: undefined };

/** What may stand behind what was assumed: the figures that go with a sum or a difference in phase. */
const REMARK = /^(up to \S+ with a phase between them|root sum of squares \S+)$/;

/** The bracket at the end of a text, and what it holds. */
const BRACKET = /\s*\(([^()]*)\)\s*$/;

/** True for the words in a bracket that say what was assumed, well or badly, and not a detector or a factor. */
function saysAssumed(words: string): boolean {
  const [first = ""] = words.split(/[,;]/);
  return assumptionOf(first) !== undefined || /^\s*crest factor\b/i.test(first);
}

function crestFactorOf(digits: string): number {
  return requirePositive(parseNumeral(digits, "a crest factor"), "a crest factor (peak over RMS) of 1 or more");
}

/** What the words in a bracket say was assumed. */
function assumedIn(words: string): Behind {
  const [list = "", remark] = words.split(/;\s*/, 2) as [string, string?];
  const items = list.split(",");
  const assumed = items.map(assumptionOf).filter((one) => one !== undefined);
  if (assumed.length < items.length || (remark !== undefined && !REMARK.test(remark.trim()))) {
    throw new VeladisError("syntax", {
      expected: 'what was assumed, in brackets behind a reading, as in "(one frequency, sine)" or "(crest factor 4)"',
      received: shown(`(${words})`),
    });
  }
  const digits = items.map((item) => /factor\s+(\S+)/i.exec(item)?.[1]).find((one) => one !== undefined);
  return {
    assumed: union([], assumed),
    note: words.trim(),
    crestFactor: digits === undefined ? undefined : crestFactorOf(digits),
  };
}

/**
 * The text of a reading up to what stands behind it, `, crest factor 4` and `(one frequency, sine)`, and what that says.
 *
 * @throws {@link VeladisError} `syntax` for words that say no assumption among such that do, `out-of-range` for two crest
 *   factors, `not-a-number`, `not-positive`
 */
export function behindReading(written: string): [text: string, behind: Behind] {
  // nearly every reading is its value and type alone: nothing is searched in it
  if (!written.includes(")") && !written.includes(",")) return [written, nothing];
  const words = BRACKET.exec(written)?.[1];
  const isOurs = words !== undefined && saysAssumed(words);
  const rest = isOurs ? written.replace(BRACKET, "") : written;
  const behind = isOurs ? assumedIn(words) : nothing;
  const [all, digits] = /,\s*crest factor\s+(\S+)\s*$/i.exec(rest) ?? [];
  if (all === undefined || digits === undefined) return [rest, behind];
  const crestFactor = crestFactorOf(digits);
  if (behind.crestFactor !== undefined && behind.crestFactor !== crestFactor) {
    throw new VeladisError("out-of-range", {
      expected: "one crest factor for the reading",
      received: `${crestFactor} and ${behind.crestFactor}`,
    });
  }
  return [rest.slice(0, -all.length), { ...behind, crestFactor }];
}

/** The text up to the state of a loop behind it, `(above range)`, and that state. */
export function stateBehind(written: string): [text: string, state: LoopState | undefined] {
  if (!written.includes(")")) return [written, undefined];
  const words = BRACKET.exec(written)?.[1]?.trim();
  const state = loopStates.find((one) => one === words);
  return state === undefined ? [written, undefined] : [written.replace(BRACKET, ""), state];
}

/**
 * The frequency that a text says, alone or once more in brackets: `25 Hz (1500 r/min)`. Of two that differ by their last
 * digits only, the one of fewer digits, since the other was rounded to be written.
 */
export function frequencyTwice(written: string): number {
  const words = written.includes(")") ? BRACKET.exec(written)?.[1] : undefined;
  if (words === undefined) return hertz(written as FrequencyText);
  const before = written.replace(BRACKET, "").trim();
  const [one, other] = [hertz(before as FrequencyText), hertz(words.trim() as FrequencyText)];
  if (Math.abs(one - other) <= 1e-5 * one) {
    return splitNumeral(before)[0].length <= splitNumeral(words.trim())[0].length ? one : other;
  }
  throw new VeladisError("out-of-range", {
    expected: "one frequency for the reading, also where it is written twice",
    received: shown(written.trim()),
  });
}

/** The place where what stands behind a reading ends within a longer text; the place itself if nothing does. */
export function endBehind(text: string, start: number): number {
  const factor = /\s*,\s*crest factor\s+(?=[\d.])/iy;
  factor.lastIndex = start;
  const end =
    factor.exec(text) === null ? start : factor.lastIndex + splitNumeral(text.slice(factor.lastIndex))[0].length;
  const bracket = /\s*\(([^()]*)\)/y;
  bracket.lastIndex = end;
  const words = bracket.exec(text)?.[1];
  return words !== undefined && saysAssumed(words) ? bracket.lastIndex : end;
}
