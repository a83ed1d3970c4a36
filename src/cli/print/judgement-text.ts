import { format, significant } from "../../reading/index";
import {
  type Candidate,
  type CriterionJudgement,
  conditionText,
  type Judgement,
  type Limit,
} from "../../severity/index";
import { assumptionLines } from "./assumption-lines";
import { labelled } from "./labelled";
import { textTable } from "./text-table";
import { zoneMark } from "./zone-mark";

/** `read` or `memory`: how a limit is known, as the tables print it. */
function knownText({ verified }: { readonly verified: boolean }): string {
  return verified ? "read" : "MEMORY";
}

/** A limit in the reader's type. */
function sizeText({ value, as }: Limit, digits: number): string {
  return format(value, as, { digits });
}

/** The zones of a criterion, one a row, the reading's own marked. */
function zoneTable(one: CriterionJudgement, digits: number): string {
  const limits: Limit[] = Object.values(one.limits);
  const [first] = limits as [Limit, ...Limit[]];
  const printed = `${first.printed.unit} ${first.printed.detector}`;
  const rows = one.zones.map((zone, i) => {
    const limit = limits[i];
    const mark = zone === one.zone ? ">" : "";
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
      { title: `as printed, ${printed}`, align: "right" },
      { title: "known" },
    ],
    rows,
  );
}

function marginText({ limit, margin }: CriterionJudgement, digits: number): string {
  const { ratio, decibels } = margin;
  const name = limit.name.includes("/") ? `limit ${limit.name}` : `${limit.name} limit`;
  const size = sizeText(limit, digits);
  if (ratio === Number.POSITIVE_INFINITY) return `the reading is zero; the ${name} is ${size}`;
  return decibels >= 0
    ? `the ${name}, ${size}, is ${significant(ratio, 4)} times the reading: ${decibels.toFixed(2)} dB to go`
    : `the reading is ${significant(1 / ratio, 4)} times the ${name}, ${size}: ${(-decibels).toFixed(2)} dB above`;
}

function sourceText({ source }: CriterionJudgement): string {
  const { title, where, note, page } = source;
  return [title, where, note, page].filter(Boolean).join("; ");
}

function bandText({ band }: CriterionJudgement): string {
  return band === null ? "band not stated by the source" : `${band[0]} to ${band[1]} Hz`;
}

/** A judgement as a person reads it: zone and word first, then the limits, the margin and what it rests on. */
export function judgementText(
  judgement: Judgement,
  settings: {
    readonly written: string;
    readonly digits: number;
    readonly colour: boolean;
    readonly others: readonly Candidate[];
  },
): string {
  const { written, digits, colour, others } = settings;
  const { zone, zones, kind, word, standard, edition, machineClass, criteria, unjudged, cautions } = judgement;
  const mark = zoneMark(zone, zones.indexOf(zone), zones.length, colour);
  const named = kind === "zones" ? `zone ${mark}` : mark;
  const which = conditionText(machineClass);
  const also = criteria
    .filter((one) => one.quantity !== judgement.quantity)
    .map((one) => `${one.quantity} ${format(one.judged, { digits })}: ${one.zone} (${knownText(one)})`);
  const not = unjudged.map(({ as, because }) => `not judged in ${as}: ${because}`);
  const rest = others.map((one) => `${one.scheme} (${one.kind}${one.withdrawn ? ", withdrawn" : ""})`);
  return [
    `${written}: ${named}${word === zone ? "" : `, ${word}`}\n\n`,
    `${standard} (${edition})${which && `, ${which}`}\n\n`,
    `${zoneTable(judgement, digits)}\n`,
    labelled("margin", [marginText(judgement, digits)]),
    labelled("judged", [`${format(judgement.judged, { digits })}`, ...also, ...not]),
    labelled("measure", [`${judgement.measuredOn}; ${bandText(judgement)}`]),
    assumptionLines(judgement),
    labelled("source", [sourceText(judgement)]),
    labelled("also", rest.length === 0 ? [] : [rest.join(", ")]),
    labelled("caution", cautions),
  ].join("");
}
