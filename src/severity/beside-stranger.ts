import { shown, VeladisError } from "../core/index";
import { askedFact, eitherWay } from "./either-way";
import { labelKey } from "./label";
import type { Machine } from "./machine";
import { isNeutral } from "./machine-phrases";
import type { Said } from "./nameplate";

/** What ends a part of a line. */
const PARTED = /[,;|]/;

/** True for what says a number, a kind of machine or another machine: words around it are about that. */
function isOther({ facts = {}, machineBeside, mayBe, spacedFrame, ...said }: Said): boolean {
  const { speed, poles, apparent, lineFrequency } = said;
  const { type, power, shaftHeight, height, naturalFrequency } = facts;
  const size = type ?? power ?? shaftHeight ?? height ?? naturalFrequency;
  return (size ?? machineBeside ?? mayBe ?? spacedFrame ?? speed ?? poles ?? apparent ?? lineFrequency) !== undefined;
}

/** True for words of letters that are not understood: a tag says nothing of what stands beside it. */
function isStranger({ didYouMean, plain }: Said, words: string): boolean {
  if (didYouMean === undefined || plain || !/\p{L}/u.test(words) || /\d/.test(words)) return false;
  return !words.split(/\s+/).every(isNeutral);
}

/** The words that are not understood and reach to the next ones, once these are read; none where a comma parts them. */
export function strangerAfter(stranger: string, said: Said, words: string, gap: string): string {
  if (isOther(said)) return "";
  if (isStranger(said, words)) return words;
  return PARTED.test(gap) ? "" : stranger;
}

/**
 * What words say that stand behind others which are not understood: a fact in words or a label is set aside, since it may
 * be that of another thing, as in `beside flexible` and `other category II`.
 *
 * @param stranger - the words not understood before these
 * @param gap - what stands between
 * @throws {@link VeladisError} `syntax` for a fact that may not be left open
 */
export function besideStranger<S extends Said>(said: S, rest: string, stranger: string, gap: string): S | Said {
  const { facts = {}, length } = said;
  if (isOther(said) || Object.keys(facts).length === 0) return said;
  const words = rest.slice(0, length);
  const fact = askedFact(facts);
  // a shaft without its place has other rules
  if (stranger === "" || PARTED.test(gap) || fact === "shaft") return said;
  if (fact !== undefined) throw eitherWay(fact, words, `${stranger}, ${words}`, `${stranger} ${words}`);
  return { length, didYouMean: [`${stranger}, ${words}`] };
}

/** Facts that were set aside, in their words. */
export interface SetAside {
  readonly facts: Machine;
  readonly words: string;
}

/**
 * Refuses a machine of which words that were set aside say another fact than those that were taken.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function requireNoOther(machine: Machine, aside: readonly SetAside[]): void {
  const taken = new Map<string, unknown>(Object.entries(machine));
  for (const { facts, words } of aside) {
    for (const [fact, value] of Object.entries(facts)) {
      const other = taken.get(fact);
      if (other === undefined || labelKey(String(other)) === labelKey(String(value))) continue;
      throw new VeladisError("syntax", {
        expected: `one ${fact} in the description of a machine`,
        received: `${shown(String(other))} and ${shown(words)}`,
      });
    }
  }
}
