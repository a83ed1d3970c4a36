import { VeladisError } from "../../core/index";
import { type Detector, findDetector } from "../../detectors/index";
import { type FrequencyUnitSymbol, findFrequencyUnit } from "../../frequency/index";
import { parsedType, type ReadingType } from "../../reading/index";
import { findUnit, type Quantity, type UnitSymbol } from "../../units/index";
import { axisIn, levelWordIn, librarySpelling, quantitiesIn, signalIn } from "./heading-spellings";
import { findTimeUnit, type TimeUnitSymbol } from "./time-units";

/** What a text says of the numbers below it: one of these, each as the library's own parsers read it. */
export interface Said {
  /** The words that say it. */
  readonly written: string;
  readonly unit?: UnitSymbol;
  readonly detector?: Detector;
  /** Decibels, and their reference where it is told. */
  readonly level?: ReadingType | "dB";
  readonly frequency?: FrequencyUnitSymbol;
  readonly time?: TimeUnitSymbol;
  /** A quantity by its word. */
  readonly quantity?: Quantity;
  /** The unit of a signal, such as mV. */
  readonly signal?: string;
  /** What rows are counted along, by its word. */
  readonly axis?: "time" | "frequency";
  /** That each number is formed over a time, by its word: a level, a trend. */
  readonly overTime?: true;
}

/** A part of a heading: words in brackets, behind a comma, or what is outside of both. */
interface Part {
  readonly words: readonly string[];
  /** Whether it is where a unit stands: all but what is before a comma. */
  readonly isPlace: boolean;
}

/** Beyond this a text is no heading. */
const LONGEST = 200;
const MOST_WORDS = 5;

function typeSaid(written: string): Said | undefined {
  try {
    const { type, unit, detector, reference } = parsedType(written);
    return reference > 0 ? { written, level: type } : { written, unit, detector };
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    return undefined;
  }
}

function saidExactly(written: string): Said | undefined {
  const type = typeSaid(written);
  if (type !== undefined) return type;
  if (/^db$/i.test(written)) return { written, level: "dB" };
  const unit = findUnit(written);
  if (unit !== undefined) return { written, unit };
  const frequency = findFrequencyUnit(written);
  if (frequency !== undefined) return { written, frequency };
  const time = findTimeUnit(written);
  return time === undefined ? undefined : { written, time };
}

/** What a text says as a whole; a rate or a type in capitals too, and the unit of a quantity over its unit (`t/s`). */
export function saidBy(written: string): Said | undefined {
  const spelled = librarySpelling(written);
  const exact = saidExactly(spelled) ?? (/[/ ]/.test(spelled) ? saidExactly(spelled.toLowerCase()) : undefined);
  if (exact !== undefined) return { ...exact, written };
  const over = /^[^\s/]+\/(.+)$/.exec(spelled)?.[1];
  const said = over === undefined ? undefined : saidExactly(librarySpelling(over));
  return said && { ...said, written: over as string };
}

function wordsOf(text: string): string[] {
  return text
    .split(/\s+/)
    .map((word) => word.replace(/[:;.]+$/, ""))
    .filter((word) => word !== "");
}

/** The parts of a heading, what stands in brackets first. */
function partsOf(heading: string): Part[] {
  const inside: string[] = [];
  const outside = heading.replace(/[([{<]([^()[\]{}<>]*)[)\]}>]/g, (_, content: string) => {
    inside.push(...content.split(/[,;|]|\s\/\s/));
    return " ";
  });
  const pieces = outside.replace(/[()[\]{}<>]/g, " ").split(/[,;|]|\s\/\s/);
  return [
    ...inside.map((text) => ({ words: wordsOf(text), isPlace: true })),
    ...pieces.map((text, i) => ({ words: wordsOf(text), isPlace: i > 0 || pieces.length === 1 })),
  ];
}

/** Whether words can hardly mean another thing, wherever they stand: a type, or a rate such as mm/s. */
function isPlain({ written, unit, detector }: Said): boolean {
  return unit !== undefined && (detector !== undefined || written.includes("/"));
}

/** What the last words of a part say, the longest that say something; what a number is counted in is none. */
function saidLast({ words, isPlace }: Part): Said | undefined {
  for (let end = words.length; end > 0; end--) {
    for (let from = Math.max(0, end - MOST_WORDS); from < end; from++) {
      const said = saidBy(words.slice(from, end).join(" "));
      if (said === undefined) continue;
      const counts = said.unit === undefined && said.level === undefined && /\d/.test(words[from - 1] ?? "");
      // `10-1000 Hz` and `10 min` tell of a band and of a mean
      if (!counts && ((isPlace && end === words.length) || isPlain(said))) return said;
      break;
    }
  }
  return undefined;
}

/** Detectors named anywhere; `average` alone is as often a mean over time. */
function detectorsIn(words: readonly string[]): Said[] {
  const found: Said[] = [];
  for (let from = 0; from < words.length; from++) {
    for (let end = Math.min(words.length, from + 3); end > from; end--) {
      const written = words.slice(from, end).join(" ");
      const detector = findDetector(written.replaceAll(" ", ""));
      if (detector === undefined) continue;
      if (detector !== "avg") found.push({ written, detector });
      from = end - 1;
      break;
    }
  }
  return found;
}

/**
 * All that a heading says of the numbers below it: a reading type, units and detectors, a unit of frequency or time, at
 * its end, in brackets or behind a comma; a type or a rate anywhere, and a quantity or the unit of a signal. `_` parts words, and `mm_s` is read as `mm/s` too.
 */
export function headingSays(heading: string): readonly Said[] {
  // `mm / s` is one unit, while `v / mm/s` is a quantity over its unit
  const text = heading.slice(-LONGEST).replace(/(\p{L}) \/ (?=s(?:ec)?[2²]?(?!\p{L}))/gu, "$1/");
  const spaced = text.replace(/_+/g, " ");
  const spelled = [spaced, text.replace(/_(?=s2?(?:_|\b|$))/gi, "/").replace(/_+/g, " ")];
  const parts = [...new Set(spelled)].map(partsOf);
  const found = parts.flatMap((some) => some.flatMap((part) => saidLast(part) ?? []));
  const said = found.filter(({ written }, i) => found.findIndex((other) => other.written === written) === i);
  // of `vel_mm_s` the s is no second
  const units = said.some(isPlain) ? said.filter(({ time }) => time === undefined) : said;
  const signal = signalIn(text);
  const axis = axisIn(spaced);
  // VelRMS and RMS1 are words written together
  const apart = spaced.replace(/(?<=\p{Ll}|\bv)(?=\p{Lu}{2}|\p{Lu}\p{Ll})|(?<=\p{L}{2})(?=\d)/gu, " ");
  const level = levelWordIn(spaced) ?? levelWordIn(apart);
  const others = [
    ...quantitiesIn(text),
    ...(signal === undefined ? [] : [{ written: signal, signal }]),
    ...(axis === undefined ? [] : [axis]),
    ...(level === undefined ? [] : [{ written: level, overTime: true } as const]),
  ];
  if (units.some(({ unit, detector }) => unit !== undefined && detector !== undefined)) return [...units, ...others];
  const detectors = detectorsIn((parts[0] as Part[]).flatMap(({ words }) => words));
  return [
    ...units.filter(({ detector }) => detector === undefined),
    ...(detectors.length > 0 ? detectors : detectorsIn(apart.split(/[^\p{L}\d]+/u))),
    ...others,
  ];
}
