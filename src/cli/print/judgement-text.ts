import { type Provenance, provenances, sourceText, visibleText } from "../../core/index";
import { format } from "../../reading/index";
import { type CriterionJudgement, conditionText, type Limit, type Verdict } from "../../severity/index";
import { labelled } from "./labelled";
import { machineLine } from "./machine-line";
import { shortVerdict, type VerdictSettings } from "./short-verdict";
import { textTable } from "./text-table";
import { verdictHeadline } from "./verdict-headline";
import {
  assumedTexts,
  backgroundSource,
  judgedText,
  marginLine,
  notJudged,
  shortZone,
  supportSource,
  TAKEN,
  takenFor,
} from "./verdict-parts";

/** How a limit is known, as the tables print it. */
function knownText({ provenance }: { readonly provenance: Provenance }): string {
  return provenances[provenance].cell;
}

/** A limit in the reader's type. */
function sizeText(limit: Limit, digits: number): string {
  return format(limit, { digits });
}

/** The zones of the governing criterion, one a row: `>` before the one that was judged, `?` before others that are possible. */
function zoneTable(one: Verdict, digits: number): string {
  const limits: Limit[] = Object.values(one.limits);
  const [first] = limits as [Limit, ...Limit[]];
  const printed = `${first.printed.unit} ${first.printed.detector}`;
  const rows = one.zones.map((zone, i) => {
    const limit = limits[i];
    const mark = zone === one.zone ? ">" : one.possible.includes(zone) ? "?" : "";
    if (limit === undefined) return [mark, zone, "above", "", ""];
    return [
      mark,
      zone,
      sizeText(limit, digits).split(" ")[0] as string,
      `${Number(limit.printed.value.toPrecision(6))}`,
      knownText(limit),
    ];
  });
  return textTable(
    [
      { title: "" },
      { title: "zone" },
      { title: `up to, ${first.as}`, align: "right" },
      { title: `in the table, ${printed}`, align: "right" },
      { title: "known" },
    ],
    rows,
  );
}

/** All schemes that the machine's facts admit, worst first; nothing where it is one. */
function schemeTable(verdict: Verdict): string {
  const { judgements } = verdict;
  if (judgements.length < 2) return "";
  const rows = judgements.map((one) => [
    one.scheme,
    conditionText(one.machineClass),
    shortZone(one),
    takenFor(verdict, one)
      .map((text) => text.replace(TAKEN, ""))
      .join("; "),
  ]);
  const titles = ["scheme", "class", "zone", "taken for"].map((title) => ({ title }));
  return `${textTable(titles, rows)}\n`;
}

function bandText({ band }: CriterionJudgement): string {
  return band === null ? "band not stated by the source" : `${band[0]} to ${band[1]} Hz`;
}

/** A verdict below its headline: what the machine was taken for, the schemes, the limits, the margin, and what it rests on. */
function fullVerdict(verdict: Verdict, settings: VerdictSettings): string {
  const { digits, cautions = [] } = settings;
  const { standard, edition, machineClass, criteria, machine, setAside } = verdict;
  const which = conditionText(machineClass);
  const known = machineLine(machine);
  const line = (label: string, texts: readonly string[]): string => labelled(label, texts, 12);
  const also = criteria
    .filter((one) => one.quantity !== verdict.quantity)
    .map((one) => `${one.quantity} ${judgedText(one, digits)}: ${one.zone} (${knownText(one)})`);
  return [
    line("machine", known === "" ? [] : [known]),
    line("by", [`${standard} (${edition})${which && `, ${which}`}`]),
    "\n",
    schemeTable(verdict),
    `${zoneTable(verdict, digits)}\n`,
    line("margin", [marginLine(verdict, digits)]),
    line("judged", [judgedText(verdict, digits), ...also]),
    line("not judged", notJudged(verdict)),
    line("measure", [`${verdict.measuredOn}; ${bandText(verdict)}`]),
    line("assumed", assumedTexts(verdict)),
    line("set aside", setAside),
    line("source", [sourceText(verdict.source), ...supportSource(verdict), ...backgroundSource(verdict)]),
    line(
      "confirmed",
      verdict.confirmed.map((text) => text.replace(/^confirmed /, "")),
    ),
    line("caution", [...cautions, ...verdict.cautions]),
  ].join("");
}

/** A verdict below its headline, short or whole. */
export function verdictBody(verdict: Verdict, settings: VerdictSettings): string {
  return (settings.full ? fullVerdict : shortVerdict)(verdict, settings);
}

/** A verdict as a person reads it: the headline first; short, or with all that it rests on. */
export function judgementText(
  verdict: Verdict,
  settings: VerdictSettings & {
    readonly written: string;
    readonly colour: boolean;
    /** What is to stand between the headline and the page. */
    readonly within?: string;
  },
): string {
  const { written, colour, full, within = "" } = settings;
  const gap = full ? "\n" : "";
  return `${visibleText(written)}: ${verdictHeadline(verdict, colour)}\n${gap}${within}${verdictBody(verdict, settings)}`;
}
