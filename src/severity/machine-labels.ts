import { frameAt } from "./frame-size";
import { labelKey } from "./label";
import type { Machine } from "./machine";
import { numberAt, symbolAt } from "./machine-numbers";
import { phraseAt } from "./machine-phrases";
import { unitAt } from "./machine-units";
import { abbreviations, labelled } from "./machine-words";

const NAME = /* @__PURE__ */ (() => new RegExp(`^(${labelled.join("|")})(?=[\\s:=]+[^\\s:=,;])`, "i"))();

/** A name cut short, before a numeral: cat. II, gr 2, cl.III. */
const SHORT = /* @__PURE__ */ (() =>
  new RegExp(
    `^(${Object.keys(abbreviations).join("|")})(?:\\.[\\s:=]*|[\\s:=]+)(bv[\\s-]?\\d|[ivx]+|\\d+)(?![\\w.])`,
    "i",
  ))();

/** True for a label of one numeral or letter. */
function isMark(word: string): boolean {
  return /^(?:[a-z]|\d+)$/i.test(word) || /^\d+$/.test(labelKey(word));
}

/** True where a text begins with something that says a fact of its own, and belongs to no label before it. */
function saysFact(text: string): boolean {
  const number = numberAt(text, "", false);
  if (number !== undefined) return number.didYouMean === undefined;
  const phrase = phraseAt(text);
  return (
    NAME.test(text) ||
    SHORT.test(text) ||
    symbolAt(text) > 0 ||
    frameAt(text) !== undefined ||
    (phrase !== undefined && phrase.leads === undefined)
  );
}

/** How many characters a label of several words takes: up to the next fact, comma or semicolon. */
function labelLength(text: string, first: number): number {
  let length = first;
  let at = first;
  for (;;) {
    const [space = "", word = ""] = /^\s+([^\s,;]+)/.exec(text.slice(at)) ?? [];
    const rest = text.slice(at + space.length - word.length);
    if (word === "" || saysFact(rest)) return length;
    at += space.length;
    // and, at, with: part of a label only where more of it follows
    if (phraseAt(rest) === undefined) length = at;
  }
}

/**
 * The label behind the name of a fact at the beginning of a text: `group 2`, `class low end`, `part "cylinder (rod)"`.
 * The first word always belongs to it; numerals, single letters and BV numbers stand alone.
 */
export function labelAt(text: string): { facts: Machine; length: number; label: true } | undefined {
  const category = /^bv[\s-]?(\d)\b/i.exec(text);
  if (category !== null) return { facts: { category: `BV-${category[1]}` }, length: category[0].length, label: true };
  const [short = "", cut = "", numeral = ""] = SHORT.exec(text) ?? [];
  if (short !== "" && unitAt(text.slice(short.length).trimStart()) === undefined)
    return {
      facts: { [abbreviations[cut.toLowerCase() as keyof typeof abbreviations]]: numeral },
      length: short.length,
      label: true,
    };
  const name = NAME.exec(text)?.[1];
  if (name === undefined) return undefined;
  const [before] = /^[\s:=]+/.exec(text.slice(name.length)) as unknown as [string];
  const start = name.length + before.length;
  const rest = text.slice(start);
  const fact = name.toLowerCase();
  // test 90 kW: the number says a fact of its own
  const [digits = ""] = /^\d+(?:\.\d+)?/.exec(rest) ?? [];
  const unit = digits === "" ? undefined : unitAt(rest.slice(digits.length).trimStart());
  if (unit !== undefined && unit.quantity !== "length") return undefined;
  const quoted = /^"([^"]+)"/.exec(rest);
  if (quoted !== null) return { facts: { [fact]: quoted[1] }, length: start + quoted[0].length, label: true };
  const [word] = /^bv[\s-]?\d\b/i.exec(rest) ?? (/^[^\s,;]+/.exec(rest) as unknown as [string]);
  const length = /^bv[\s-]?\d$/i.test(word) || isMark(word) ? word.length : labelLength(rest, word.length);
  return { facts: { [fact]: rest.slice(0, length).replace(/\s+/g, " ") }, length: start + length, label: true };
}
