import { GUIDE } from "../core/index";
import { editionText, type Judgement, type Verdict } from "../severity/index";
import { assumedNotes } from "./assumed-notes";
import { knownNote } from "./known-note";

/** A sentence from words, or nothing from none. */
function sentence(words: string): string[] {
  return words === "" ? [] : [`${words[0]?.toUpperCase()}${words.slice(1)}.`];
}

/** A scheme by its standard; where others are of the same one, with where it measures. */
function nameOf({ standard, edition, measuredOn }: Judgement, all: readonly Judgement[]): string {
  const isOne = all.filter((one) => one.standard === standard && one.edition === edition).length === 1;
  return `${editionText({ standard, edition })}${isOne ? "" : `, ${measuredOn}`}`;
}

/** True for readings of housing or shaft, where nobody said which: the zones of the one are not those of the other. */
export function isPlaceOpen(judgement: Judgement | Verdict): boolean {
  return "deciding" in judgement && judgement.deciding.includes("place");
}

/** What the other schemes say, where a verdict rests on several; of one standard, with where it measures. */
function otherSchemes(judgement: Judgement | Verdict): string[] {
  const all = "judgements" in judgement ? judgement.judgements : [];
  const [first, ...others] = all;
  const told = others.map((one) => `${nameOf(one, all)}: ${one.headline}`);
  if (told.length === 0) return [];
  const whose = isPlaceOpen(judgement)
    ? `The zones drawn are those of ${first?.measuredOn}; the other place has limits of its own.`
    : "The limits are those of the worst scheme.";
  return [`${whose} ${told.join("; ")}.`];
}

/** What was assumed: by all schemes, and by each of several what the others do not, so that no two lines contradict. */
function assumedBy(judgement: Judgement | Verdict): string[] {
  const { assumed, assumedFacts } = judgement;
  const judgements = "judgements" in judgement ? judgement.judgements : [];
  const shared = assumedFacts.filter((fact) => {
    const times = judgements.filter((one) => one.assumedFacts.includes(fact)).length;
    return times === 0 || times === judgements.length;
  });
  const own = judgements.flatMap((one) => {
    const facts = one.assumedFacts.filter((fact) => assumedFacts.includes(fact) && !shared.includes(fact));
    return facts.length === 0 ? [] : [`Assumed for ${nameOf(one, judgements)}: ${facts.join("; ")}.`];
  });
  return [...assumedNotes(assumed, shared, assumedFacts), ...own];
}

/** The small print of a judgement: what it means, what it rests on, and what was left out of it. */
export function verdictNotes(judgement: Judgement | Verdict): string[] {
  const { kind, word, standard, edition, provenance, confirmed, criteria, possible, cautions } = judgement;
  const isPlain = kind === "grades" && possible.length === 1;
  return [
    ...(isPlain ? [] : sentence(word)),
    knownNote(editionText({ standard, edition }), provenance, confirmed),
    ...cautions.filter((text) => text === GUIDE || text.startsWith("peak: ")).flatMap(sentence),
    ...judgement.differences.map((text) => `${text}.`),
    ...otherSchemes(judgement),
    ...(criteria.length > 1 ? ["The worst of several criteria is shown."] : []),
    ...judgement.unjudged.map(({ as, because }) => `Not judged, limits in ${as}: ${because}.`),
    ...judgement.setAside.map((one) => `Set aside: ${one}.`),
    ...assumedBy(judgement),
  ];
}
