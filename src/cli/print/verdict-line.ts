import type { PointsWithin } from "../../conformity/index";
import { limitsKnown, visibleText } from "../../core/index";
import type { Verdict } from "../../severity/index";
import { assumedWords } from "./assumed-words";
import { EXACT, notReadText } from "./points-text";
import { uncertainText } from "./uncertain";
import { verdictHeadline } from "./verdict-headline";
import { marginOf } from "./verdict-parts";
import { withinLine } from "./within-text";

/** The nearest limit and the scheme it is from, and what the verdict rests on. */
function restText(verdict: Verdict, digits: number): string {
  const { provenance, confirmed, standard, edition, judged, ...rest } = verdict;
  const { assumed, assumedFacts, judgements, setAside } = rest;
  const words = assumedWords({ assumed, assumedFacts, crestFactor: judged.crestFactor });
  const known = limitsKnown(provenance, confirmed);
  const others = judgements.slice(1).map((one) => one.scheme);
  return [
    marginOf(verdict, digits),
    `${standard} (${edition})${known === undefined ? "" : `, ${known}`}`,
    ...rest.differences,
    ...(others.length === 0 ? [] : [`also judged by ${others.join(", ")}`]),
    ...(words.length === 0 ? [] : [`assumed: ${words.join("; ")}`]),
    ...(setAside.length === 0 ? [] : [`set aside: ${setAside.join("; ")}`]),
  ].join("; ");
}

/** A verdict on one line, for many readings. */
export function verdictLine(written: string, verdict: Verdict, digits: number, within?: string): string {
  const told = within === undefined ? "" : `${within}; `;
  return `${visibleText(`${written}: ${verdictHeadline(verdict, false)}; ${told}${restText(verdict, digits)}`)}\n`;
}

/** The verdict on several points on one line. */
export function pointsLine(answer: PointsWithin, digits: number): string {
  const { governing, points } = answer;
  const not = notReadText(answer);
  const isKnown = points.some(({ within }) => within !== undefined);
  const exact = (within: unknown) => (isKnown && within === undefined ? ` (${EXACT})` : "");
  const all = points.map(({ point, verdict, within }) => `${point} ${verdict.headline}${exact(within)}`).join(", ");
  const headline = verdictHeadline({ ...governing.verdict, ...answer }, false);
  const reading = uncertainText(governing.reading, digits);
  const within = governing.within === undefined ? "" : `${withinLine(governing.within, digits)}; `;
  const rest = `${within}${restText(governing.verdict, digits)}`;
  const line = `${governing.point} ${reading}: ${headline}; ${all}; ${rest}${not === undefined ? "" : `; not read: ${not}`}`;
  return `${visibleText(line)}\n`;
}
