import { counted } from "../../core/index";
import { gravities, type Standing } from "./machine-report";
import { type Markup, markup } from "./markup";
import { zoneChip, zoneStep, zoneWords } from "./zone-chip";

const named = { error: "errors", warning: "warnings", note: "notes" } as const;

/** How many findings of each level there are. */
export function countsOf({ findings }: Pick<Standing, "findings">): Readonly<Record<keyof typeof named, number>> {
  const count = (level: string): number => findings.filter((one) => one.gravity === level).length;
  return { error: count("error"), warning: count("warning"), note: count("note") };
}

/** The counts of findings, those there are; empty for none. */
export function countChips(standing: Pick<Standing, "findings">): Markup[] {
  const counts = countsOf(standing);
  return gravities.flatMap((level) => {
    const count = counts[level];
    if (count === 0) return [];
    return [markup`<span class="level ${level}">${count} ${count === 1 ? level : named[level]}</span>`];
  });
}

/** The zone of the worst reading in a word, or why there is none. */
export function zoneOf({ points: [worst], unjudged }: Pick<Standing, "points" | "unjudged">): string {
  if (worst !== undefined) return zoneWords(worst.verdict.kind, worst.verdict.worst);
  return unjudged.length > 0 ? "not judged" : "not read";
}

/** The zone of the worst reading, or why there is none; beside it what was refused, since that may be worse. */
export function standingChip(standing: Pick<Standing, "points" | "unjudged">): Markup {
  const { points, unjudged } = standing;
  const [worst] = points;
  const left = counted(unjudged.length, "reading");
  if (worst === undefined) {
    if (unjudged.length === 0) return markup`<span class="level note">${zoneOf(standing)}</span>`;
    return markup`<span class="level warning">${zoneOf(standing)}: ${left} refused</span>`;
  }
  if (unjudged.length === 0) return zoneChip(worst);
  return markup`${zoneChip(worst)} <span class="level warning">of the readings that could be read: ${left} refused</span>`;
}

/** What weighs most of a machine. To order machines otherwise, change this table. */
const weights = { worstZone: 5, error: 4, secondZone: 3, warning: 2, unread: 1, none: 0 } as const;

/** The order of an index in words, as {@link rankOf} makes it. */
export const ORDER =
  "Worst first: machines in the worst zone of their table, then those with an error in the list, then those in the zone next to it, then those with a warning or a refused reading, then those that were not read; among equals as in the list.";

/** How bad a machine stands. */
export function rankOf(standing: Standing): number {
  const { error, warning } = countsOf(standing);
  const [worst] = standing.points;
  const step = worst === undefined ? 0 : zoneStep(worst);
  if (step === 3) return weights.worstZone;
  if (error > 0) return weights.error;
  if (step === 2) return weights.secondZone;
  if (warning > 0 || standing.unjudged.length > 0) return weights.warning;
  return worst === undefined ? weights.unread : weights.none;
}

/** How many of something, for a heading: `1,000 machines`. */
export function many(count: number, noun: string): string {
  return counted(count, noun, count.toLocaleString("en-GB"));
}
