import { parseNumeral, shown, splitNumeral, unknownOption, VeladisError } from "../../core/index";
import type { Confirmation } from "../../severity/index";
import { type ConfirmationColumn, confirmationColumns, confirmationTitles } from "./confirmation-columns";
import type { ConfirmationCells } from "./confirmation-signature";

const filledIn = /* @__PURE__ */ (() =>
  confirmationTitles.filter((name) => confirmationColumns[name].from === "person"))();

/** What nobody has signed for without. */
const signed = {
  page: "page, the page on which the value stands",
  by: "by, the name of who read it",
  on: "on, the day on which it was read, as 2024-03-04",
} as const;

/** A value in a cell, with the unit and detector of the row behind it or without. */
function valueIn(cell: string, as: string, decimalComma: boolean, what: string): number {
  const [front, behind] = splitNumeral(cell);
  const unit = behind.replace(/\s+/g, " ");
  if (front !== "" && unit !== "" && unit.toLowerCase() !== as.replace(/\s+/g, " ").toLowerCase()) {
    throw new VeladisError("unknown-option", {
      expected: `${what}, in the unit and detector of the row, ${as}, or without them`,
      received: shown(cell),
    });
  }
  if (!decimalComma) return parseNumeral(front === "" ? cell : front, what);
  if (/^\d+(?:,\d+)?$/.test(front)) return Number(front.replace(",", "."));
  throw new VeladisError("not-a-number", {
    expected: `${what}, with a comma for decimals, as shipped has them, and no point`,
    received: shown(cell),
  });
}

/** Whether the values that the table has show a comma for decimals: a spreadsheet wrote the file so. */
export function hasDecimalComma(columns: readonly ConfirmationColumn[], rows: readonly (readonly string[])[]): boolean {
  const index = columns.indexOf("shipped");
  return index >= 0 && rows.some((cells) => /^\s*\d+,\d+\s*$/.test(cells[index] as string));
}

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

/** The cells of a row by their columns. */
export function confirmationCells(columns: readonly ConfirmationColumn[], cells: readonly string[]): ConfirmationCells {
  return Object.fromEntries(
    // an apostrophe keeps a spreadsheet from reading a text as a formula
    columns.map((name, i) => [name, (cells[i] ?? "").trim().replace(/^'/, "")]),
  );
}

/** True for a row in which a person filled in something. */
export function isFilledIn(row: ConfirmationCells): boolean {
  return filledIn.some((name) => (row[name] ?? "") !== "");
}

/**
 * The confirmation that a row holds in which a person filled in something, with what the signature above it says.
 *
 * @param decimalComma - whether values are written 6,3
 * @throws {@link VeladisError} for a row that is filled in by half
 */
export function confirmationOfRow(row: ConfirmationCells, at: string, decimalComma = false): Confirmation {
  const cell = (name: ConfirmationColumn): string => row[name] ?? "";
  const agrees = isYes(cell("agrees"), `${at}: agrees, yes or nothing`);
  const reread = isYes(cell("reread"), `${at}: reread, yes or nothing`);
  if (agrees === (cell("printed") !== "")) {
    throw new VeladisError(agrees ? "out-of-range" : "missing-fact", {
      expected: `${at}: agrees, or the value printed, one of the two`,
      received: agrees ? `yes and ${shown(cell("printed"))}` : "neither in a row that is filled in",
    });
  }
  const lacks = Object.entries(signed).filter(([name]) => cell(name as keyof typeof signed) === "");
  if (lacks.length > 0) {
    throw new VeladisError("missing-fact", {
      expected: `${at}: ${lacks.map(([, what]) => what).join("; ")}`,
      received: "nothing",
    });
  }
  const value = (name: "shipped" | "printed", what: string): number =>
    valueIn(cell(name), cell("as"), decimalComma, `${at}: ${name}, ${what}`);
  const shipped = cell("shipped") === "" ? undefined : value("shipped", "the value of the table");
  if (agrees && shipped === undefined) {
    throw new VeladisError("missing-fact", {
      expected: `${at}: shipped, the value that your copy agrees with`,
      received: "nothing",
    });
  }
  const printed = agrees ? (shipped as number) : value("printed", "the value of your copy");
  const { scheme, edition, row: line, limit, as, page, by, on } = row as Record<ConfirmationColumn, string>;
  return {
    ...{ scheme, edition, row: line, limit, as, printed, readAt: at },
    ...{ page, by, on },
    ...(cell("second") !== "" && { second: cell("second") }),
    ...(reread && { reread }),
    ...(shipped !== undefined && { shipped }),
  };
}
