import { lazily, shown, VeladisError } from "../core/index";
import { folded } from "./label";
import { phraseAt } from "./machine-phrases";
import { builds, drivenSets, kindMarks } from "./machine-words";

/** Where a machine stands, and what stands beside it. */
const PLACE =
  "(?:hall|house|room|building|station|plant|bay|shed|yard|area|site|cabin|container|workshop|basement|enclosure|compound|farm|park|deck|section|shop)s?";
const BESIDE = "(?:beside|near|next\\s+to|adjacent\\s+to|opposite|behind|alongside)(?:\\s+(?:the|an?))?";
const MOST_WORDS = 4;

/** The most places that are looked at one by one; all together are looked at besides. */
const MOST_PLACES = 16;

/** Where a place or a neighbour stands in a line, with how many words of its name. */
interface Span {
  readonly start: number;
  readonly end: number;
  readonly count: number;
}

/** The pattern of a place with words before it, or of a neighbour; made when first asked for, since few machines have one. */
const patterns = /* @__PURE__ */ lazily(() => ({
  place: new RegExp(`^${PLACE}(?!\\p{L})`, "iu"),
  beside: new RegExp(`^${BESIDE}(?!\\p{L})`, "iu"),
}));

/** True where a text holds a word that could make a kind of machine. */
function namesKind(text: string): boolean {
  return (text.match(/\p{L}+/gu) ?? []).some((word) => {
    const key = folded(word);
    return (
      builds.includes(key) ||
      kindMarks.some(([marks]) => marks.some((mark) => folded(mark) === key)) ||
      phraseAt(word)?.facts.type !== undefined
    );
  });
}

/** Places and neighbours in a line, each with one word to four of those that may be its name. */
function placesIn(line: string): Span[] {
  const { place, beside } = patterns();
  const found: Span[] = [];
  const words = [...line.matchAll(/\p{L}+/gu)].map(({ 0: word, index }) => ({
    start: index,
    end: index + word.length,
  }));
  // words of one name: white space or hyphens stand between
  const isTied = (from: number, to: number): boolean => /^[\s‐‑-]+$/.test(line.slice(from, to));
  for (const [i, { start }] of words.entries()) {
    const whole = place.exec(line.slice(start))?.[0].length ?? 0;
    for (let k = i - 1; whole > 0 && k >= Math.max(0, i - MOST_WORDS); k--) {
      const [word, next] = [words[k], words[k + 1]];
      if (word === undefined || next === undefined || !isTied(word.end, next.start)) break;
      found.push({ start: word.start, end: start + whole, count: i - k });
    }
    const lead = start + (beside.exec(line.slice(start))?.[0].length ?? 0);
    let last = lead;
    const names = lead === start ? [] : words.filter((one) => one.start > lead).slice(0, MOST_WORDS);
    for (const [k, word] of names.entries()) {
      if (!isTied(last, word.start)) break;
      last = word.end;
      found.push({ start, end: last, count: k + 1 });
    }
  }
  return found.filter(({ start, end }) => namesKind(line.slice(start, end)));
}

/** A line without some of its places. */
function lineWithout(line: string, spans: readonly Span[]): string {
  let rest = "";
  let at = 0;
  for (const { start, end } of [...spans].sort((a, b) => a.start - b.start)) {
    if (start >= at) rest += `${line.slice(at, start)},`;
    at = Math.max(at, end);
  }
  return rest + line.slice(at);
}

/** True where words go on with the name of what drives a set: `gas engine` before `generator in an engine house`. */
function goesOn(before: string, driver: string, set: string): boolean {
  return (
    drivenSets[driver as keyof typeof drivenSets] === set &&
    /\p{L}[\s‐‑-]+$/u.test(before) &&
    !/(?:^|\P{L})(?:in|at|of|on|for|with|by|from|the|kW|MW)[\s‐‑-]+$/iu.test(before)
  );
}

/**
 * Refuses a line in which the name of a place or of a neighbour makes another kind of a machine: a generator in a diesel
 * hall is not driven by a diesel engine.
 *
 * @param kindOf - the kind of machine that a line says; undefined where none is said or the line is refused
 * @throws {@link VeladisError} `syntax`
 */
export function requireNoPlace(
  line: string,
  type: string | undefined,
  kindOf: (line: string) => string | undefined,
): void {
  if (type === undefined) return;
  const places = placesIn(line);
  const counts = Array.from({ length: MOST_WORDS }, (_, i) => places.filter(({ count }) => count === i + 1));
  const each = places.slice(0, MOST_PLACES).map((one) => [one]);
  for (const spans of [...each, ...counts.filter((some) => some.length > 1)]) {
    const rest = lineWithout(line, spans);
    const other = /\p{L}/u.test(rest) ? kindOf(rest) : undefined;
    if (other === undefined || other === type) continue;
    if (spans.every(({ start }) => goesOn(line.slice(0, start), other, type))) continue;
    const written = spans.map(({ start, end }) => line.slice(start, end)).join(" and ");
    throw new VeladisError("syntax", {
      expected: `one kind of machine, named whole such as ${shown(type)} or ${shown(other)}, or the line without ${shown(written)} where that is a place or what stands beside the machine`,
      received: shown(line),
      parameter: "line",
      didYouMean: [other, type],
    });
  }
}
