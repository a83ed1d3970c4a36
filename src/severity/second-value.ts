import { shown } from "../core/index";
import { labelKey } from "./label";
import type { Machine } from "./machine";
import { numberAt } from "./machine-numbers";
import { type LabelName, wordLabels } from "./machine-words";
import type { Said } from "./nameplate";
import { twoLabels, twoNumbers } from "./two-values";

/** What parts two values, or lists them. */
const LINK = /^[\s,;:()[\]"]*(?:(?:[/|&+\\–—-]|\b(?:and|or|to)\b)[\s,;:()[\]"]*)*/i;
const STRONG = /[/|&+\\–—-]|[a-z]/i;

/** Marks within a word that make two of it. */
const WITHIN = /[/|&+\\:;*=~{}]+|[-–—.…]+(?=(?:[a-z]|[ivx]+|\d+)$)/i;

/** A numeral of a class, group or category, with BV before it perhaps. */
const NUMERAL = /^(?:bv[\s-]?)?([ivx]+|\d{1,2})(?![\w.]|-\w)/i;

const isLetter = (label: string): boolean => /^[a-z]$/i.test(label);

/** True for a number that says nothing by itself and has no unit. */
function isBare(text: string): boolean {
  const [digits = ""] = /^\d+(?:[.,]\d+)?/.exec(text) ?? [];
  const said = digits === "" ? undefined : numberAt(text, "", false);
  // 1 of 2: which of them it is
  return (
    said?.didYouMean !== undefined && said.length === digits.length && !/^\s+of\s+\d/.test(text.slice(said.length))
  );
}

/** The numeral that a text begins with, where it is a label. */
function numeralAt(text: string): string | undefined {
  const [whole = "", numeral = ""] = NUMERAL.exec(text) ?? [];
  if (whole === "" || /^v\s+belt/i.test(text) || (/^\d/.test(whole) && !isBare(text))) return undefined;
  return /^\d+$/.test(labelKey(numeral)) ? whole : undefined;
}

/** The second value of a label at the beginning of a text. */
function valueAt(text: string, fact: LabelName, first: string, link: string): string | undefined {
  if (NUMERAL.test(first)) {
    const numeral = numeralAt(text);
    if (numeral !== undefined) return numeral;
  }
  const isStrong = STRONG.test(link);
  // a pump: an article
  if (!isStrong && /^a\s+\S/.test(text)) return undefined;
  const [letter] = /^[a-z](?![\w-])/i.exec(text) ?? [];
  if (isLetter(first) && letter !== undefined) return letter;
  if (link.trim() === "") return undefined;
  // rigid behind a comma is the support
  const words = wordLabels[fact].filter((one) => isStrong || one !== "rigid");
  return words.length === 0 ? undefined : new RegExp(`^(?:${words.join("|")})(?![\\w-])`, "i").exec(text)?.[0];
}

/** What parts the words of a label. */
const AMONG = /\s+(?:[-–—]|and|or|to)\s+|\s*\(\s*/gi;

/** A label is one value: `II/I`, `II, I` and `BV-3 and 4` are two. */
function requireOneLabel(fact: LabelName, written: string, following: string): void {
  // normal / A: the article ends the label
  const value = written.replace(/(?:\s*[/|&+]|\s+(?:and|or|to|[-–—]))+$/i, "");
  const behind = written.slice(value.length) + following;
  const [before = "", after = ""] = value.split(WITHIN, 2);
  const isRange = !/[/|&+\\:;*=~{}]/.test(value);
  // BV-3 and high-speed are one
  if (after !== "" && before !== "" && !(isRange && !/^(?:[a-z]|[ivx]+|\d+)$/i.test(before))) {
    throw twoLabels(fact, before.trim(), after.trim());
  }
  for (const { 0: among, index } of value.matchAll(AMONG)) {
    const second = valueAt(value.slice(index + among.length), fact, "", among);
    if (second !== undefined) throw twoLabels(fact, value.slice(0, index), second);
  }
  const [link] = LINK.exec(behind) as unknown as [string];
  const second = valueAt(behind.slice(link.length), fact, value, link);
  // BV-3 (3)
  const asFirst = /^bv/i.test(value) && /^\d/.test(second ?? "") ? `bv${second}` : second;
  if (asFirst !== undefined && labelKey(asFirst) !== labelKey(value)) throw twoLabels(fact, value, second as string);
}

/** Behind a power or speed: `(nominal 300)`, `/ 300`. */
const BESIDE = /^\s*(?:[,;]?\s*\(?\s*(?:nominal(?:ly)?|rated|nameplate|design)[\s:=]+|\(\s*|[/|&+]\s*|and\s+)(?=\d)/i;

/**
 * Refuses a second value right behind a fact, which would be set aside so that the order of the two decides: another
 * value of a label, a number without a unit behind a power or a speed.
 *
 * @param behind - what follows the fact
 * @throws {@link VeladisError} `syntax` with both named
 */
export function requireOneValue(said: Said & { readonly label?: true }, words: string, behind: string): void {
  if (said.label) {
    // what stands in quotation marks is a name
    if (words.endsWith('"')) return;
    const [[fact, value]] = Object.entries(said.facts as Machine) as [[LabelName, string]];
    requireOneLabel(fact, value, behind);
    return;
  }
  if (said.facts?.power === undefined && said.speed === undefined) return;
  const [link = ""] = BESIDE.exec(behind) ?? [];
  const second = behind.slice(link.length);
  if (link === "" || !isBare(second)) return;
  const [digits] = /^[\d.,]*\d/.exec(second) as unknown as [string];
  const what = said.speed === undefined ? "power" : "speed";
  throw twoNumbers(what, words, digits, shown(`${words}${link}${digits}`));
}
