import { parseNumeral, shown, unknownOption, VeladisError } from "../../core/index";
import type { Confirmation } from "../../severity/index";
import { type ConfirmationColumn, confirmationColumns, confirmationTitles } from "./confirmation-columns";

const filledIn = /* @__PURE__ */ (() =>
  confirmationTitles.filter((name) => confirmationColumns[name].from === "person"))();

/** Yes or nothing; another word could be meant either way. */
function isYes(cell: string, what: string): boolean {
  if (cell === "" || cell.toLowerCase() === "yes") return cell !== "";
  throw new VeladisError("unknown-option", { expected: what, received: shown(cell), allowed: ["yes", "nothing"] });
}

/**
 * The columns of a header, each once.
 *
 * @throws {@link VeladisError} `unknown-option` for another column, `syntax` for one twice, `missing-fact` without one
 */
export function confirmationHeader(header: readonly string[], at: string): readonly ConfirmationColumn[] {
  const names = header.map((title) => title.trim().toLowerCase());
  for (const [i, name] of names.entries()) {
    if (!Object.hasOwn(confirmationColumns, name)) throw unknownOption(name, confirmationTitles, `${at}: a column`);
    if (names.indexOf(name) < i) {
      throw new VeladisError("syntax", { expected: `${at}: each column once`, received: `${shown(name)} twice` });
    }
  }
  const lacks = confirmationTitles.filter((name) => confirmationColumns[name].needed && !names.includes(name));
  const hasValue = names.includes("printed") || (names.includes("agrees") && names.includes("shipped"));
  if (lacks.length === 0 && hasValue) return names as ConfirmationColumn[];
  const wanted = hasValue ? lacks : [...lacks, "printed"];
  throw new VeladisError("missing-fact", {
    expected: `${at}: the ${wanted.length === 1 ? "column" : "columns"} ${wanted.join(", ")}`,
    received: names.map((name) => name.slice(0, 20)).join(", "),
  });
}

/**
 * The confirmation that a row holds; undefined for a row in which a person filled in nothing.
 *
 * @throws {@link VeladisError} for a row that is filled in by half
 */
export function confirmationOfRow(
  columns: readonly ConfirmationColumn[],
  cells: readonly string[],
  at: string,
): Confirmation | undefined {
  const row = Object.fromEntries(
    // an apostrophe keeps a spreadsheet from reading a text as a formula
    columns.map((name, i) => [name, (cells[i] ?? "").trim().replace(/^'/, "")]),
  ) as Partial<Record<ConfirmationColumn, string>>;
  const cell = (name: ConfirmationColumn): string => row[name] ?? "";
  if (filledIn.every((name) => cell(name) === "")) return undefined;
  const agrees = isYes(cell("agrees"), `${at}: agrees, yes or nothing`);
  const reread = isYes(cell("reread"), `${at}: reread, yes or nothing`);
  if (agrees === (cell("printed") !== "")) {
    throw new VeladisError(agrees ? "out-of-range" : "missing-fact", {
      expected: `${at}: agrees, or the value printed, one of the two`,
      received: agrees ? `yes and ${shown(cell("printed"))}` : "neither in a row that is filled in",
    });
  }
  const shipped =
    cell("shipped") === "" ? undefined : parseNumeral(cell("shipped"), `${at}: shipped, the value of the table`);
  if (agrees && shipped === undefined) {
    throw new VeladisError("missing-fact", {
      expected: `${at}: shipped, the value that your copy agrees with`,
      received: "nothing",
    });
  }
  const printed = agrees
    ? (shipped as number)
    : parseNumeral(cell("printed"), `${at}: printed, the value of your copy`);
  const { scheme, edition, row: line, limit, as, page, by, on } = row as Record<ConfirmationColumn, string>;
  return {
    ...{ scheme, edition, row: line, limit, as, printed, readAt: at },
    ...{ page, by, on },
    ...(cell("second") !== "" && { second: cell("second") }),
    ...(reread && { reread }),
    ...(shipped !== undefined && { shipped }),
  };
}
