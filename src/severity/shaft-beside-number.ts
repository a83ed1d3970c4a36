import { shown, VeladisError } from "../core/index";
import type { Said } from "./nameplate";

/** What a number beside `shaft` may be of the shaft, and whether it is so with no word between. */
const numbers = {
  power: { name: "the power", isBare: true },
  height: { name: "the height", isBare: true },
  speed: { name: "the speed", isBare: false },
} as const;

type What = "shaft" | "place" | keyof typeof numbers;

/** The last number, `shaft` or `place` of a line, with the words from there on. */
export interface Neighbour {
  readonly what: What;
  readonly written: string;
  readonly words: string;
  /** True where a word such as `at` or a bracket follows. */
  readonly isJoined: boolean;
}

/** Words between a number and what it is of. */
const JOINS =
  /^(?:@|at|on|the|of|its|is|power|rated|absorbed|consumed|required|delivered|developed|transmitted|output|input)$/i;

function whatIs({ facts, apparent, speed }: Said, words: string): What | undefined {
  if (facts?.place === "shaft") return /^\p{L}+$/u.test(words) ? "shaft" : undefined;
  if (/^place$/i.test(words)) return "place";
  if (!/\d/.test(words)) return undefined;
  if (facts?.power !== undefined || apparent !== undefined) return "power";
  // 280M is the frame of a motor
  if (facts?.shaftHeight !== undefined && facts.frame === undefined) return "height";
  return speed === undefined ? undefined : "speed";
}

function refusal(what: keyof typeof numbers, number: string, first: Neighbour, words: string): VeladisError {
  const { name } = numbers[what];
  const second = first.what === "shaft" ? number : words;
  return new VeladisError("syntax", {
    expected: `the place of the reading and ${name} apart: ${shown(`${first.written}, ${second}`)} where the reading was taken on the shaft; ${shown(`shaft ${what} ${number}`)} where it is ${name} of the shaft`,
    received: shown(`${first.words} ${words}`),
  });
}

/**
 * The number, `shaft` or `place` that the next words are, or that words such as `at` join to what follows.
 *
 * @param gap - what stands between these words and those before
 * @throws {@link VeladisError} `syntax` for `90 kW at shaft` and the like: a place of the reading, or a power of the shaft
 */
export function neighbourOf(
  before: Neighbour | undefined,
  said: Said,
  words: string,
  gap: string,
): Neighbour | undefined {
  const last = before === undefined || !/^[\s:=()[\]]*$/.test(gap) ? undefined : before;
  const isJoined = last?.isJoined === true || /[:=([]/.test(gap);
  const what = whatIs(said, words);
  if (what === undefined)
    return last !== undefined && JOINS.test(words)
      ? { ...last, words: `${last.words} ${words}`, isJoined: true }
      : undefined;
  // place shaft is plain
  if (what === "shaft" && last?.what === "place") return undefined;
  if (last !== undefined && (what === "shaft") !== (last.what === "shaft")) {
    const number = what === "shaft" ? last.what : what;
    if (number !== "shaft" && number !== "place" && (isJoined || numbers[number].isBare))
      throw refusal(number, what === "shaft" ? last.written : words, last, words);
  }
  return { what, written: words, words, isJoined: false };
}
