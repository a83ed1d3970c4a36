import { citedList } from "./cited";
import { refuse } from "./refuse";
import { requireKindName } from "./shapes/index";
import { writtenField } from "./written";

/** The version of all that is written: it is raised when a key is renamed, removed, or gets another meaning. */
export const jsonVersion = 1;

/** What stands beside the keys of an answer. */
const OWN = ["version", "answer", "list", "sources", "histories"] as const;

/** An answer as it stands in JSON: its own keys stand beside these. */
export interface Envelope {
  readonly version: typeof jsonVersion;
  /** What kind of answer it is. */
  readonly answer: string;
  /** The answers, where it is a list of them. */
  readonly list?: unknown;
  /** Where its values come from, each written once: in the answer stands the place in this list, from 0. */
  readonly sources: readonly unknown[];
  /** The steps that led to its values, each history written once, and cited as sources are. */
  readonly histories: readonly unknown[];
}

/** An answer in its envelope. */
export function envelopeOf(kind: string, answer: unknown): Envelope {
  const cited = { sources: citedList(), histories: citedList() };
  const written = writtenField(answer, requireKindName(kind), kind, cited) as object;
  const isList = Array.isArray(written);
  for (const key of isList ? [] : OWN) if (Object.hasOwn(written, key)) refuse(key, kind, "a key of its own");
  return {
    version: jsonVersion,
    answer: kind,
    ...(isList ? { list: written } : written),
    sources: cited.sources.list,
    histories: cited.histories.list,
  };
}
