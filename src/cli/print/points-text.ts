import { intervalText, type PointsWithin } from "../../conformity/index";
import { visibleText } from "../../core/index";
import type { PointsVerdict } from "../../severity/index";
import { verdictBody } from "./judgement-text";
import { labelled } from "./labelled";
import type { VerdictSettings } from "./short-verdict";
import { textTable } from "./text-table";
import { uncertainText } from "./uncertain";
import { verdictHeadline } from "./verdict-headline";
import { withinText } from "./within-text";

/** Beside a point without ± among others that have one. */
export const EXACT = "no ±: taken as exact";

/** What was not read, to be read before relying on the verdict; undefined where nothing is known to be missing. */
export function notReadText({ notRead }: PointsVerdict): string | undefined {
  return notRead.length === 0 ? undefined : `${notRead.join(", ")}: the worst direction governs, read or not`;
}

/** Several points of a machine as a person reads them: the worst first, then each, then the page of the worst. */
export function pointsText(answer: PointsWithin, settings: VerdictSettings & { readonly colour: boolean }): string {
  const { governing, points } = answer;
  const { digits, colour } = settings;
  const not = notReadText(answer);
  const isKnown = points.some(({ within }) => within !== undefined);
  const headline = verdictHeadline({ ...governing.verdict, ...answer }, colour);
  const rows = points.map((one) => [
    one === governing ? ">" : "",
    one.point,
    uncertainText(one.reading, digits),
    one.verdict.headline,
    ...(isKnown
      ? [one.within === undefined ? EXACT : `${intervalText(one.within, digits)}: ${one.within.zones.join(", ")}`]
      : []),
  ]);
  return [
    `${visibleText(governing.point)} governs, ${uncertainText(governing.reading, digits)}: ${headline}\n\n`,
    textTable(
      ["", "point", "reading", "verdict", ...(isKnown ? ["within"] : [])].map((title) => ({ title })),
      rows,
    ),
    labelled("not read", not === undefined ? [] : [not], 12),
    ...(governing.within === undefined ? [] : ["\n", withinText(governing.within, digits)]),
    `\n${verdictBody(governing.verdict, { ...settings, cautions: answer.cautions })}`,
  ].join("");
}
