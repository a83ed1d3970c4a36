import { provenances } from "../../core/index";
import { type Candidate, countLimits, inListOrder, type Scheme, type Selection } from "../../severity/index";
import { countsText } from "./counts-text";
import { labelled } from "./labelled";
import { textTable } from "./text-table";
import { wrapped } from "./wrapped";

/** All schemes, one a line, with how far they are known. */
export function schemeList(schemes: readonly Scheme[]): string {
  const counts = countLimits(inListOrder(schemes));
  const table = textTable(
    [{ title: "scheme" }, { title: "kind" }, { title: "place" }, { title: "status" }, { title: "limits" }],
    counts.schemes.map((one) => [one.scheme.id, one.scheme.kind, one.scheme.place, one.scheme.status, countsText(one)]),
  );
  return `${table}
${counts.limits} limits: ${countsText(counts)}. Check all that are neither printed nor confirmed against the standard.
veladis schemes <scheme> prints one; --machine "<machine>" lists those for a machine, best first.
`;
}

/** The schemes for a machine, and which of them `judge` uses. */
export interface JudgedSelection extends Omit<Selection, "candidates"> {
  readonly candidates: readonly (Candidate & { readonly judges: boolean })[];
  /** Why `judge` refuses such a machine. */
  readonly refusal?: string;
}

const WIDTH = 100;
const LOWEST = /: not given, and the lowest limits of all that it may be are taken$/;

/** What a scheme asks of a machine and what it assumes; facts of which all lowest limits are taken together. */
function factsText({ byContract, status, missing, assumedFacts: assumed }: Candidate): string {
  const lowest = assumed.filter((text) => LOWEST.test(text)).map((text) => text.replace(LOWEST, ""));
  const others = assumed.filter((text) => !LOWEST.test(text));
  return [
    ...(byContract ? ["by name only"] : []),
    ...(status === "asks" ? [`asks ${missing.map(({ fact }) => fact).join(", ")}`] : []),
    ...others.map((text) => `assumes ${text.replace(": not given, and taken for its lower limits", "")}`),
    ...(lowest.length > 0 ? [`assumes the lowest limits there are, for want of ${lowest.join(", ")}`] : []),
  ].join("; ");
}

/** The schemes in a table; texts of facts that are too long for a line stand below it. */
function candidateTable(candidates: JudgedSelection["candidates"]): string {
  const titles = ["", "scheme", "kind", "edition", "limits", "facts"].map((title) => ({ title }));
  const cells = candidates.map((one) => [
    one.judges ? ">" : "",
    one.scheme,
    one.kind,
    one.withdrawn ? "withdrawn" : "",
    provenances[one.provenance].cell,
  ]);
  const [, rule = ""] = textTable(titles.slice(0, -1), cells).split("\n");
  const facts = candidates.map(factsText);
  const isLong = (text: string): boolean => rule.length + 2 + text.length > WIDTH;
  const rows = cells.map((row, i) => [...row, isLong(facts[i] as string) ? "see below" : (facts[i] as string)]);
  const below = candidates.flatMap(({ scheme }, i) =>
    isLong(facts[i] as string) ? [wrapped(`${scheme}: ${facts[i]}`, "    ", "  ")] : [],
  );
  return `${textTable(titles, rows)}${below.length > 0 ? `\nfacts\n${below.join("")}` : ""}`;
}

/**
 * The schemes for a machine, in the order of `judge`, those that it uses marked, with what each asks and assumes; then
 * why the nearest others are not.
 */
export function selectionText({ candidates, excluded, missing, refusal }: JudgedSelection, all: boolean): string {
  const told = excluded.filter(({ reason }) => all || !/ only$|^for readings/.test(reason));
  const why = told.map(({ scheme, reason }) => wrapped(`${scheme}: ${reason}`, "    ", "  ")).join("");
  const questions = missing
    .map(({ fact, ask, allowed, unit }) => {
      const answers = allowed === undefined ? "" : ` (${allowed.join(", ")})`;
      return labelled("", [`${fact}: ${ask}${unit === undefined ? "" : `, in ${unit}`}${answers}`], 2);
    })
    .join("");
  const mark =
    refusal === undefined
      ? "> veladis judge uses these; of a displacement without its place also those for the shaft"
      : `judge refuses such a machine: ${refusal}`;
  return [
    candidateTable(candidates),
    candidates.length > 0 ? `\n${wrapped(mark)}` : "",
    questions && `\nnot given\n${questions}`,
    why && `\nnot for this machine\n${why}`,
    all || told.length === excluded.length ? "" : "  (--all lists schemes for other machines too)\n",
  ].join("");
}
