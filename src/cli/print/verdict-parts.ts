import { provenances, sourceText } from "../../core/index";
import { assumptions, format, historyOf, isUncertain, significant } from "../../reading/index";
import { type CriterionJudgement, type Judgement, marginText, type Verdict } from "../../severity/index";

/** The zone of a scheme without the word before it. */
export function shortZone({ headline }: Judgement): string {
  return headline.replace(/^zone /, "");
}

/** What a fact that was not given is said to be. */
export const TAKEN = /: [^:]* given, assumed$/;

/** What one of several schemes was taken for: what not all of them assume. */
export function takenFor({ judgements }: Verdict, { assumedFacts }: Judgement): string[] {
  return assumedFacts.filter(
    (text) =>
      TAKEN.test(text) &&
      !text.startsWith("condition ") &&
      !judgements.every((other) => other.assumedFacts.includes(text)),
  );
}

/** What was assumed, without what the table of schemes says already. */
export function assumedTexts(verdict: Verdict): string[] {
  const { judgements, assumedFacts, assumed } = verdict;
  const told = judgements.length < 2 ? [] : judgements.flatMap((one) => takenFor(verdict, one));
  return [...assumedFacts.filter((text) => !told.includes(text)), ...assumed.map((one) => assumptions[one])];
}

/** Criteria of other quantities that may be worse than the one that governs, each with the limit that decides. */
export function worsePossible(verdict: Verdict, digits: number): string[] {
  const fromWorst = ({ zones, zone }: Pick<Verdict, "zones" | "zone">) => zones.length - zones.indexOf(zone);
  return verdict.criteria.flatMap((one) => {
    if (one.quantity === verdict.quantity) return [];
    const { zone, zones, bound } = one;
    const at = zones.indexOf(zone);
    const isAbove = fromWorst(one) < fromWorst(verdict);
    const found = Object.entries(one.limits)[isAbove ? at - 1 : at];
    if (found === undefined || (!isAbove && bound !== "least")) return [];
    const [name, { printed }] = found;
    const size = `${name} ${Number(printed.value.toPrecision(6))} ${printed.unit} ${printed.detector}`;
    return [
      `${one.quantity} ${judgedText(one, digits)}: ${isAbove ? `may be ${zone}, above` : "may be above"} ${size}`,
    ];
  });
}

/**
 * How far the reading is from the limit next to it: with the scheme of that limit where it is not the one in front, and
 * with what it leaves out: the uncertainty of the reading, and limits in other quantities that may be exceeded.
 */
export function marginOf(verdict: Verdict, digits: number): string {
  const { limit, limits, judgements, judged, quantity } = verdict;
  const isOf = (one: Pick<CriterionJudgement, "limits">): boolean => Object.values(one.limits).includes(limit);
  const other = isOf({ limits }) ? undefined : judgements.find(({ criteria }) => criteria.some(isOf));
  const best = isUncertain(historyOf(judged)) ? "of the best value" : undefined;
  const alone = worsePossible(verdict, digits).length > 0 ? `of the ${quantity} alone` : undefined;
  const by = other === undefined ? undefined : `by ${other.scheme}`;
  return [marginText(verdict, { digits }), by, best, alone].filter((part) => part !== undefined).join(", ");
}

/** The same, in decibels and as a ratio. */
export function marginLine(verdict: Verdict, digits: number): string {
  const { ratio } = verdict.margin;
  const away = marginOf(verdict, digits);
  if (ratio === Number.POSITIVE_INFINITY) return `${away}; the reading is zero`;
  return ratio >= 1
    ? `${away} (${significant(ratio, 4)} times the reading)`
    : `${away} (the reading is ${significant(1 / ratio, 4)} times that)`;
}

/** Criteria that were not applied, of all schemes. */
export function notJudged({ unjudged }: Verdict): string[] {
  return [...new Set(unjudged.map(({ as, because }) => `${as}: ${because}`))];
}

/** Where the rule of the background is from, and how it is known, where a reading at rest was given. */
export function backgroundSource({ background }: Verdict): string[] {
  if (background === undefined) return [];
  const { source } = background;
  return [`background: ${sourceText(source)} (${provenances[source.provenance].cell})`];
}

/** By which rule the support was computed or taken, and how the rule is known. */
export function supportSource({ supportRule }: Verdict): string[] {
  if (supportRule === undefined) return [];
  const { text, source } = supportRule;
  return [`support: ${text}; ${sourceText(source)} (${provenances[source.provenance].cell})`];
}

/** A reading in the quantity of a criterion, with what is known of how far it may be off. */
export function judgedText({ judged, bound }: CriterionJudgement, digits: number): string {
  const most = bound === "most" ? " or less" : "";
  return `${format(judged, { digits })}${bound === "least" ? " or more" : most}`;
}
