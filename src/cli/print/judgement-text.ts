import { type Provenance, provenances, sourceText, visibleText } from "../../core/index";
import { assumptions, format, significant } from "../../reading/index";
import {
  type CriterionJudgement,
  conditionText,
  type Judgement,
  type Limit,
  marginText,
  type Verdict,
} from "../../severity/index";
import { labelled } from "./labelled";
import { machineLine } from "./machine-line";
import { textTable } from "./text-table";
import { verdictHeadline } from "./verdict-headline";

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

/** The zone of a scheme without the word before it. */
function shortZone({ headline }: Judgement): string {
  return headline.replace(/^zone /, "");
}

const TAKEN = /: [^:]* given, assumed$/;

/** What one of several schemes was taken for: what not all of them assume. */
function takenFor({ judgements }: Verdict, { assumedFacts }: Judgement): string[] {
  return assumedFacts.filter(
    (text) =>
      TAKEN.test(text) &&
      !text.startsWith("condition ") &&
      !judgements.every((other) => other.assumedFacts.includes(text)),
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

/** What was assumed, without what the table of schemes says already. */
function assumedTexts(verdict: Verdict): string[] {
  const { judgements, assumedFacts, assumed } = verdict;
  const told = judgements.length < 2 ? [] : judgements.flatMap((one) => takenFor(verdict, one));
  return [...assumedFacts.filter((text) => !told.includes(text)), ...assumed.map((one) => assumptions[one])];
}

/** How far the reading is from the limit next to it, in decibels and as a ratio. */
function marginLine(verdict: Verdict, digits: number): string {
  const { ratio } = verdict.margin;
  const away = marginText(verdict, { digits });
  if (ratio === Number.POSITIVE_INFINITY) return `${away}; the reading is zero`;
  return ratio >= 1
    ? `${away} (${significant(ratio, 4)} times the reading)`
    : `${away} (the reading is ${significant(1 / ratio, 4)} times that)`;
}

function bandText({ band }: CriterionJudgement): string {
  return band === null ? "band not stated by the source" : `${band[0]} to ${band[1]} Hz`;
}

/** A reading in the quantity of a criterion, with what is known of how far it may be off. */
function judgedText({ judged, bound }: CriterionJudgement, digits: number): string {
  const most = bound === "most" ? " or less" : "";
  return `${format(judged, { digits })}${bound === "least" ? " or more" : most}`;
}

/** Criteria that were not applied, of all schemes. */
function notJudged({ unjudged }: Verdict): string[] {
  return [...new Set(unjudged.map(({ as, because }) => `${as}: ${because}`))];
}

/** Where the rule of the background is from, and how it is known, where a reading at rest was given. */
function backgroundSource({ background }: Verdict): string[] {
  if (background === undefined) return [];
  const { source } = background;
  return [`background: ${sourceText(source)} (${provenances[source.provenance].cell})`];
}

/** By which rule the support was computed or taken, and how the rule is known. */
function supportSource({ supportRule }: Verdict): string[] {
  if (supportRule === undefined) return [];
  const { text, source } = supportRule;
  return [`support: ${text}; ${sourceText(source)} (${provenances[source.provenance].cell})`];
}

/** A verdict below its headline: what the machine was taken for, the schemes, the limits, the margin, and what it rests on. */
export function verdictPage(
  verdict: Verdict,
  settings: { readonly digits: number; readonly cautions?: readonly string[] },
): string {
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

/** A verdict as a person reads it: the headline first. */
export function judgementText(
  verdict: Verdict,
  settings: {
    readonly written: string;
    readonly digits: number;
    readonly colour: boolean;
    readonly cautions?: readonly string[];
    /** What is to stand between the headline and the page. */
    readonly within?: string;
  },
): string {
  const { written, colour, within = "" } = settings;
  return `${visibleText(written)}: ${verdictHeadline(verdict, colour)}\n\n${within}${verdictPage(verdict, settings)}`;
}
