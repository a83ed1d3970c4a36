import { counted, knownText, provenances, type Source, sourceText, visibleText } from "../../core/index";
import {
  auditRules,
  type ChangeFinding,
  changeRules,
  findingSeverities,
  type PlantAudit,
  type PlantFinding,
} from "../../plant/index";
import { cautionsText } from "./cautions-text";
import { labelled } from "./labelled";
import { wrapped } from "./wrapped";
import { wrappedTable } from "./wrapped-table";

/** A finding on a row of the list, or on its record of changes. */
type Finding = PlantFinding | ChangeFinding;

/** The rule that found something. */
function ruleOf(code: Finding["code"]): { readonly why: string; readonly mend: string } {
  return Object.hasOwn(auditRules, code)
    ? auditRules[code as keyof typeof auditRules]
    : changeRules[code as keyof typeof changeRules];
}

/** Tags that are named one by one. */
const MOST_TAGS = 8;

/** The tags of rows, the first of many. */
function tagsText(tags: readonly string[]): string {
  const more = tags.length - MOST_TAGS;
  return `${tags.slice(0, MOST_TAGS).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}

/** Rows by a text that they share, in the order in which it first comes. */
function groupedBy<Row>(rows: readonly Row[], textOf: (row: Row) => string): ReadonlyMap<string, readonly Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const text = textOf(row);
    const before = groups.get(text);
    if (before === undefined) groups.set(text, [row]);
    else before.push(row);
  }
  return groups;
}

function sourceLine(source: Source): string {
  return source.provenance === "practice" ? sourceText(source) : `${sourceText(source)} (${knownText(source)})`;
}

/** How many findings there are of each severity, in words. */
function countsOfFindings(findings: readonly Finding[]): string {
  return findingSeverities
    .map((severity) => counted(findings.filter((one) => one.severity === severity).length, severity))
    .join(", ");
}

/** A tag longer than this is broken. */
const LONG_TAG = 24;

function findingsTable(findings: readonly Finding[]): string {
  const isLong = findings.some(({ tag }) => tag.length > LONG_TAG);
  const rows = findings.map(({ severity, tag, line, code, what, mend }) => [
    [severity],
    [tag],
    [line === 0 ? "" : `${line}`],
    [`${code}: ${what}`, ...(mend === ruleOf(code).mend ? [] : [`mend: ${mend}`])],
  ]);
  return wrappedTable(
    [
      { title: "severity" },
      { title: "tag", ...(isLong && { wraps: true as const }) },
      { title: "line", align: "right" },
      { title: "finding", wraps: true },
    ],
    rows,
  );
}

/** The rules that found something, each once: why, what would mend it, and the sources. */
function rulesText(findings: readonly Finding[]): string {
  const groups = [...groupedBy(findings, ({ code }) => code)];
  return groups
    .map(([code, rows]) => {
      const { why, mend } = ruleOf(code as Finding["code"]);
      const sources = new Set(rows.map(({ source }) => sourceLine(source)));
      return `${code}\n${labelled("  why", [why])}${labelled("  mend", [mend])}${labelled("  source", [...sources])}`;
    })
    .join("");
}

function notCheckedText({ notChecked }: Pick<PlantAudit, "notChecked">): string {
  const byReason = groupedBy(notChecked, ({ because }) => because);
  return [...byReason]
    .map(([because, rows]) => {
      const codes = [...new Set(rows.map(({ code }) => code))];
      const tags = [...new Set(rows.map(({ tag }) => tag))];
      return wrapped(`${because}: ${codes.join(", ")} (${tagsText(tags)})`, "  ", "- ");
    })
    .join("");
}

function limitsText({ limits }: Pick<PlantAudit, "limits">): string {
  const groups = groupedBy(limits, ({ tables, by, provenance }) =>
    by === "limits"
      ? `${tables.join(", ")}; limits as stated on the list`
      : [
          tables.join(", "),
          by === "table" ? "named by the row" : "chosen by the nameplate",
          provenances[provenance].text,
        ].join("; "),
  );
  return [...groups]
    .map(([text, rows]) => wrapped(`${text}: ${tagsText(rows.map(({ tag }) => tag))}`, "  ", "- "))
    .join("");
}

function section(title: string, text: string): string {
  return text === "" ? "" : `\n${title}\n${text}`;
}

/** An audit as text, at most 100 columns wide: findings, why, what was not checked, by which limits, cautions. */
export function plantAuditText(
  audit: Omit<PlantAudit, "findings"> & { readonly findings: readonly Finding[] },
  file: string,
): string {
  const { findings, machines, on, refused } = audit;
  const day = on === null ? "" : ` on ${on}`;
  const rows = new Set(refused.map(({ line }) => line)).size;
  const left = rows === 0 ? "" : `; ${counted(rows, "row")} refused, of which nothing is said`;
  return [
    wrapped(`${visibleText(file)}: ${counted(machines, "machine")} looked at${day}${left}`),
    `${countsOfFindings(findings)}\n`,
    findings.length === 0 ? "" : `\n${findingsTable(findings)}`,
    section("why", rulesText(findings)),
    section("not checked", notCheckedText(audit)),
    section("limits", limitsText(audit)),
    cautionsText(),
  ].join("");
}
