import type { MachineType } from "./machine-types";

/** A kind of machine as words said it. */
export interface KindSaid {
  readonly value: MachineType;
  readonly written: string;
}

/** Words that say no fact. */
export interface WordsAside {
  readonly word: string;
  /** What a name of several kinds may be. */
  readonly mayBe?: readonly string[];
  /** True for words that are known to say nothing. */
  readonly isKnown: boolean;
}
