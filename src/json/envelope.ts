import { citedList } from "./cited";
import { writtenField } from "./written";

/** The version of all that is written: it is raised when a key is renamed, removed, or gets another meaning. */
export const jsonVersion = 1;

/** An answer as it stands in JSON. */
export interface Envelope {
  readonly version: typeof jsonVersion;
  /** What kind of answer it is. */
  readonly kind: string;
  /** The answer, in which sources and histories are places in the lists below, from 0. */
  readonly answer: unknown;
  /** Where its values come from, each written once. */
  readonly sources: readonly unknown[];
  /** The steps that led to its values, each history written once. */
  readonly histories: readonly unknown[];
}

/** An answer in its envelope. */
export function envelopeOf(kind: string, answer: unknown): Envelope {
  const cited = { sources: citedList(), histories: citedList() };
  const written = writtenField(answer, kind, kind, cited);
  return {
    version: jsonVersion,
    kind,
    answer: written,
    sources: cited.sources.list,
    histories: cited.histories.list,
  };
}
