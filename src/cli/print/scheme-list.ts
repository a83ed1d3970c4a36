import { provenances } from "../../core/index";
import { type Candidate, countLimits, type Scheme, type Selection } from "../../severity/index";
import { countsText } from "./counts-text";
import { labelled } from "./labelled";
import { textTable } from "./text-table";
import { wrapped } from "./wrapped";

/** All schemes, one a line, with how far they are known. */
export function schemeList(schemes: readonly Scheme[]): string {
  const counts = countLimits(schemes);
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

/**
 * The schemes for a machine, in the order of `judge`, those that it uses marked, with what each asks and assumes; then
 * why the nearest others are not.
 */
export function selectionText({ candidates, excluded, missing, refusal }: JudgedSelection, all: boolean): string {
  const rows = candidates.map((one) => [
    one.judges ? ">" : "",
    one.scheme,
    one.kind,
    one.withdrawn ? "withdrawn" : "",
    provenances[one.provenance].cell,
    [
      ...(one.byContract ? ["by name only"] : []),
      ...(one.status === "asks" ? [`asks ${one.missing.map(({ fact }) => fact).join(", ")}`] : []),
      ...one.assumed.map((text) => `assumes ${text.replace(": not given, and taken for its lower limits", "")}`),
    ].join("; "),
  ]);
  const table = textTable(
    ["", "scheme", "kind", "edition", "limits", "facts"].map((title) => ({ title })),
    rows,
  );
  const told = excluded.filter(({ reason }) => all || !/ only$|^for readings/.test(reason));
  const why = told.map(({ scheme, reason }) => `  ${scheme}: ${reason}\n`).join("");
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
    table,
    candidates.length > 0 ? `\n${wrapped(mark)}` : "",
    questions && `\nnot given\n${questions}`,
    why && `\nnot for this machine\n${why}`,
    all || told.length === excluded.length ? "" : "  (--all lists schemes for other machines too)\n",
  ].join("");
}
