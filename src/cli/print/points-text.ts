import { visibleText } from "../../core/index";
import { format } from "../../reading/index";
import type { PointsVerdict } from "../../severity/index";
import { verdictPage } from "./judgement-text";
import { labelled } from "./labelled";
import { textTable } from "./text-table";
import { verdictHeadline } from "./verdict-headline";

/** What was not read, to be read before relying on the verdict; undefined where nothing is known to be missing. */
export function notReadText({ notRead }: PointsVerdict): string | undefined {
  return notRead.length === 0 ? undefined : `${notRead.join(", ")}: the worst direction governs, read or not`;
}

/** Several points of a machine as a person reads them: the worst first, then each, then the page of the worst. */
export function pointsText(
  answer: PointsVerdict,
  settings: { readonly digits: number; readonly colour: boolean },
): string {
  const { governing, points } = answer;
  const { digits, colour } = settings;
  const not = notReadText(answer);
  const headline = verdictHeadline({ ...governing.verdict, ...answer }, colour);
  const rows = points.map((one) => [
    one === governing ? ">" : "",
    one.point,
    format(one.reading, { digits }),
    one.verdict.headline,
  ]);
  return [
    `${visibleText(governing.point)} governs, ${format(governing.reading, { digits })}: ${headline}\n\n`,
    textTable(
      ["", "point", "reading", "verdict"].map((title) => ({ title })),
      rows,
    ),
    labelled("not read", not === undefined ? [] : [not], 12),
    `\n${verdictPage(governing.verdict, { digits })}`,
  ].join("");
}
