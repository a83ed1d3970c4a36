import { shown, VeladisError } from "../core/index";
import { drivenSets } from "./machine-words";

/** Where a machine stands, and what stands beside it. */
const PLACE =
  "(?:hall|house|room|building|station|plant|bay|shed|yard|area|site|cabin|container|workshop|basement|enclosure|compound|farm|park|deck|section|shop)s?";
const BESIDE = "(?:beside|near|next\\s+to|adjacent\\s+to|opposite|behind|alongside)(?:\\s+(?:the|an?))?";
const MOST_WORDS = 4;

interface PlaceSaid {
  readonly written: string;
  /** What stands before it. */
  readonly before: string;
  /** The line without it. */
  readonly rest: string;
}

/** The pattern of a place with words before it, or of a neighbour; made when first asked for, since few machines have one. */
const patterns = /* @__PURE__ */ (() => {
  let made: { place: RegExp; beside: RegExp } | undefined;
  return () => {
    made ??= {
      place: new RegExp(`^${PLACE}(?!\\p{L})`, "iu"),
      beside: new RegExp(`^${BESIDE}(?!\\p{L})`, "iu"),
    };
    return made;
  };
})();

/** Places and neighbours in a line, each with one word to four of those that may be its name. */
function placesIn(line: string): PlaceSaid[] {
  const { place, beside } = patterns();
  const found: PlaceSaid[] = [];
  const add = (start: number, end: number): void => {
    const [before, behind] = [line.slice(0, start), line.slice(end)];
    if (/\p{L}/u.test(before + behind))
      found.push({ written: line.slice(start, end), before, rest: `${before},${behind}` });
  };
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
      add(word.start, start + whole);
    }
    const lead = start + (beside.exec(line.slice(start))?.[0].length ?? 0);
    let last = lead;
    for (const word of lead === start ? [] : words.filter((one) => one.start > lead).slice(0, MOST_WORDS)) {
      if (!isTied(last, word.start)) break;
      last = word.end;
      add(start, last);
    }
  }
  return found;
}

/** True where words go on with the name of what drives a set: `gas engine` before `generator in an engine house`. */
function goesOn({ before }: PlaceSaid, driver: string, set: string): boolean {
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
  for (const said of placesIn(line)) {
    const { written, rest } = said;
    const other = kindOf(rest);
    if (other === undefined || other === type || goesOn(said, other, type)) continue;
    throw new VeladisError("syntax", {
      expected: `one kind of machine, named whole such as ${shown(type)} or ${shown(other)}, or the line without ${shown(written)} where that is a place or what stands beside the machine`,
      received: shown(line),
      didYouMean: [other, type],
    });
  }
}
