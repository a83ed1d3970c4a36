import { VeladisError, shown } from "../core/index";
import { askedFact, eitherWay } from "./either-way";
import { knownFacts, type Machine } from "./machine";
import { isNeutral } from "./machine-phrases";
import type { Said } from "./nameplate";

/** What ends a part of a line. */
const PARTED = /[,;|()[\]"]/;

/** True for what says a fact in words or a label, and no number and no kind of machine. */
function isWordFact({ facts = {}, speed, apparent, isRange }: Said): boolean {
  const { type, power, shaftHeight, height, naturalFrequency } = facts;
  const number = type ?? power ?? shaftHeight ?? height ?? naturalFrequency ?? speed ?? apparent ?? isRange;
  return number === undefined && Object.keys(facts).length > 0;
}

/** A word that is not understood and may belong to what follows: a name of letters, and no tag. */
function isStranger({ didYouMean, plain, mayBe }: Said, words: string): boolean {
  if (didYouMean === undefined || plain || mayBe !== undefined) return false;
  return /\p{L}/u.test(words) && !/\d/.test(words) && !words.split(/\s+/).every(isNeutral);
}
