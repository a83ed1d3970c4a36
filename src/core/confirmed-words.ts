import { knownText } from "./known-text";
import type { Source } from "./source";

/** Who confirmed limits of these sources, each once. */
export function signaturesOf(sources: readonly Source[]): readonly string[] {
  return [...new Set(sources.filter(({ provenance }) => provenance === "confirmed").map(knownText))];
}

/** What is said of limits for which the printed copy has another value than the table had. */
export function differencesOf(sources: readonly Source[]): readonly string[] {
  const told = sources.filter(({ shipped }) => shipped !== undefined).map(({ note }) => note ?? "");
  return [...new Set(told)].map((text) => `DIFFERS FROM THE TABLE AS SHIPPED: ${text}`);
}
