import { type Assumption, assumedText } from "../../reading/index";

/** What an answer assumed, in words: one text an assumption, then the facts that stood in for some not given. */
export function assumedWords({
  assumed,
  assumedFacts = [],
  crestFactor,
}: {
  readonly assumed: readonly Assumption[];
  readonly assumedFacts?: readonly string[];
  readonly crestFactor?: number | undefined;
}): string[] {
  const stated = crestFactor === undefined ? { history: [] } : { crestFactor };
  return [...assumed.map((one) => assumedText({ assumed: [one], ...stated }).slice(1, -1)), ...assumedFacts];
}
