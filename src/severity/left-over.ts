import { lazily, shown, type VeladisError } from "../core/index";
import { labelKey } from "./label";
import { unitAt } from "./machine-units";
import { type LabelName, wordLabels } from "./machine-words";
import type { Said } from "./nameplate";
import { twoLabels, twoNumbers, twoValues } from "./two-values";

/** A value that was read, to which a word left over behind it may be a second one. */
export interface Lead {
  readonly what: string;
  readonly written: string;
  /** Of a label: which, and its value. */
  readonly label?: readonly [fact: LabelName, value: string];
  /** The word right before the next one. */
  readonly before: string;
}

/** Words before a number that names a thing or a document, and not a second value. */
const names = /* @__PURE__ */ lazily(
  () =>
    /^(?:unit|bearing|line|boiler|building|hall|house|train|stage|stand|station|point|block|plant|pump|tag|serial|year|built|made|in|since|model|item|pos|position|frame|size|ratio|eff|efficiency|phi|factor|SF|poles|phases|IP|IE|IEC|ISO|EN|DIN|BS|VDI|API|ANSI|HI|NEMA|MG)[.:]?$/i,
);

/** Line 3, unit V, 400/690 V: the word before says what a numeral is. */
function isNamed(word: string, before: string): boolean {
  return names().test(before) || (word === "V" && /\d$/.test(before));
}

/** The words of a text without the marks between and around them. */
function wordsOf(text: string): readonly string[] {
  // 2.5 and V-belt are one, BV-3.BV-4 is two
  return text
    .split(/[^\p{L}\d#.,–—‐‑-]+|(?<!\d)[.,]+|[.,]+(?!\d)|[–—]+/u)
    .map((word) => word.replace(/^-+|-+$/g, ""))
    .filter((word) => word !== "");
}

const NUMERAL = /^(?:bv[\s-]?)?(?:[ivx]+|\d{1,2})$/i;

/** True where a word is a value of a label like the one that was read. */
function isValue(word: string, [fact, value]: readonly [LabelName, string]): boolean {
  if (NUMERAL.test(value)) return NUMERAL.test(word) && /^(?:bv)?\d+$/.test(labelKey(word));
  if (/^[a-z]$/i.test(value)) return /^[b-z]$/i.test(word) || word === "A";
  return wordLabels[fact].some((one) => new RegExp(`^(?:${one})$`, "i").test(word));
}

/** What a number without a unit behind a fact would be a second one of. */
function numberOf(said: Said): string | undefined {
  if (said.isRange) return undefined;
  if (said.speed !== undefined) return "speed";
  if (said.facts?.power !== undefined || said.apparent !== undefined) return "power";
  return said.facts?.shaftHeight !== undefined && said.facts.frame === undefined ? "shaft height" : undefined;
}

function twoOf({ what, written, label }: Lead, second: string): VeladisError {
  return label === undefined ? twoNumbers(what, written, second) : twoLabels(label[0], label[1], second);
}

/** Refuses words left over that hold a second value of what was read before them. */
function requireNoSecond(lead: Lead, words: string, behind: string): void {
  // 1 of 2: which of them it is; 400 V, 95 %: a number with a unit of its own
  if (/^\s+of\s+\d|^\s*%/.test(behind) || /^\d[\d.,]*\s*[\p{L}%]/u.test(words)) return;
  let { before } = lead;
  for (const word of wordsOf(words)) {
    const isNumber = /^\d+(?:[.,]\d+)?$/.test(word);
    const isAlone = !isNumber || (/^[^\p{L}]*$/u.test(words) && wordsOf(words).length === 1);
    const key = (one: string) => labelKey(/^bv/i.test(lead.label?.[1] ?? "") ? one.replace(/^bv[\s-]?/i, "") : one);
    const isSecond =
      lead.label === undefined ? isNumber : isValue(word, lead.label) && key(word) !== key(lead.label[1]);
    if (isSecond && isAlone && !isNamed(word, before)) throw twoOf(lead, word);
    before = word;
  }
}

/**
 * Refuses a Roman numeral that stands alone anywhere behind a label which is another one: `category II 2980 r/min (I)`.
 *
 * @param label - the last label that was read
 * @param before - the line up to these words
 */
export function requireNoNumeral(label: Lead | undefined, said: Said, words: string, before: string): void {
  if (label?.label === undefined || said.didYouMean === undefined || said.plain || !/^[IVX]+$/.test(words)) return;
  const [, value] = label.label;
  if (!isValue(words, label.label) || labelKey(words) === labelKey(value.replace(/^bv[\s-]?/i, ""))) return;
  if (!isNamed(words, wordsOf(before).at(-1) ?? "")) throw twoOf(label, words);
}

/** Two numbers before one unit: `300 / 90 kW`, `315 (280) mm`. */
const two = /* @__PURE__ */ lazily(() => /^(\d+(?:[.,]\d+)?)\s*[([{/|&+;]+\s*(\d+(?:[.,]\d+)?)\s*[)\]}]?\s*(?=\p{L})/u);

function requireOneNumber(text: string): void {
  const [whole = "", first = "", second = ""] = two().exec(text) ?? [];
  const unit = whole === "" ? undefined : unitAt(text.slice(whole.length));
  // 3/50 Hz: phases and the line
  if (unit === undefined || (unit.symbol === "Hz" && /^[13]$/.test(first)) || Number(first) === Number(second)) return;
  const [one, other] = [first, second].map((digits) => shown(`${digits} ${unit.symbol}`)) as [string, string];
  throw twoValues("number with its unit", one, other, shown(text.slice(0, whole.length + unit.length)));
}

/**
 * The value that words left over behind it may contradict, once the next words are read: a label, a power, a speed or a
 * shaft height. Any word left over between it and the next fact that is a value of the same kind is a second one.
 *
 * @param rest - the line from these words on
 * @throws {@link VeladisError} `syntax` with both named
 */
export function leadAfter(
  lead: Lead | undefined,
  said: Said & { readonly label?: true },
  rest: string,
): Lead | undefined {
  const words = rest.slice(0, said.length);
  if (said.label) {
    if (words.endsWith('"')) return undefined;
    const [label] = Object.entries(said.facts ?? {}) as [[LabelName, string]];
    return { what: label[0], written: words, label, before: "" };
  }
  const what = said.didYouMean === undefined ? numberOf(said) : undefined;
  if (what !== undefined) return { what, written: words.replace(/\s+/g, " "), before: "" };
  if (said.didYouMean !== undefined && !said.plain) {
    if (!/\p{L}/u.test(words)) requireOneNumber(rest);
    if (lead !== undefined) requireNoSecond(lead, words, rest.slice(said.length));
  }
  const saysFact = said.facts !== undefined || said.poles !== undefined || said.machineBeside !== undefined;
  if (lead === undefined || saysFact) return undefined;
  return { ...lead, before: wordsOf(words).at(-1) ?? "" };
}
