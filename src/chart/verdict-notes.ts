import type { Judgement, Verdict } from "../severity/index";
import { assumedNotes } from "./assumed-notes";

/** A sentence from words, or nothing from none. */
function sentence(words: string): string[] {
  return words === "" ? [] : [`${words[0]?.toUpperCase()}${words.slice(1)}.`];
}

/** What the other schemes say, where a verdict rests on several; of one standard, with where it measures. */
function otherSchemes(judgement: Judgement | Verdict): string[] {
  const [first, ...others] = "judgements" in judgement ? judgement.judgements : [];
  const told = others.map(({ standard, edition, measuredOn, headline }) => {
    const isSame = standard === first?.standard && edition === first.edition;
    return `${standard}:${edition}${isSame ? `, ${measuredOn}` : ""}: ${headline}`;
  });
  return told.length === 0 ? [] : [`The limits are those of the worst scheme. ${told.join("; ")}.`];
}

/** The small print of a judgement: what it means, what it rests on, and what was left out of it. */
export function verdictNotes(judgement: Judgement | Verdict): string[] {
  const { kind, word, standard, edition, verified, assumed, assumedFacts, criteria, possible } = judgement;
  const isPlain = kind === "grades" && possible.length === 1;
  return [
    ...(isPlain ? [] : sentence(word)),
    `${standard}:${edition}${verified ? "" : ", limits from memory: check them against the standard before relying on them"}.`,
    ...otherSchemes(judgement),
    ...(criteria.length > 1 ? ["The worst of several criteria is shown."] : []),
    ...judgement.unjudged.map(({ as, because }) => `Not judged, limits in ${as}: ${because}.`),
    ...judgement.setAside.map((one) => `Set aside: ${one}.`),
    ...assumedNotes(assumed, assumedFacts),
  ];
}
