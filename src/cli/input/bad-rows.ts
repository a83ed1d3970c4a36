import { VeladisError } from "../../core/index";
import type { NeverLeftOut, Unread } from "./level-cell";
import { linesText, MOST_LINES, NotedRows, type RowLines, rowsText } from "./row-lines";

/** Rows that were left out, by what stood in them. */
export interface LeftOut extends RowLines {
  /** That of most rows first. */
  readonly kinds: readonly { readonly what: string; readonly rows: number }[];
}

/** What a refusal says of the rows that were to be read. */
export interface RowsWanted {
  /** What each row holds: `a level`. */
  readonly what: string;
  readonly file: string;
  /** How many rows the file has. */
  readonly all: number;
  readonly decimalComma: boolean;
  /** How `--skip-bad` stands: given, not given, or why it cannot be. */
  readonly skipBad: "given" | "not given" | { readonly cannot: string };
  /** What to do about cells that say over range. */
  readonly overRange: string;
}

/** Kinds that are counted one by one; of more nobody reads. */
const MOST_KINDS = 8;
const OTHERS = "something else";

/** Rows of which something could not be read, counted by what stood there; the first are kept with their line. */
export class BadRows {
  readonly #kinds = new Map<string, number>();
  readonly #all = new NotedRows();
  readonly #never = new Map<NeverLeftOut, NotedRows>();
  readonly #told: string[] = [];
  readonly #toldNever: string[] = [];
  #expected: string | undefined;

  get rows(): number {
    return this.#all.rows;
  }

  add(line: number, { what, never, expected }: Unread): void {
    this.#expected ??= expected;
    const kind = this.#kinds.has(what) || this.#kinds.size < MOST_KINDS ? what : OTHERS;
    this.#kinds.set(kind, (this.#kinds.get(kind) ?? 0) + 1);
    this.#all.note(line);
    const text = `line ${line} ${what}`;
    if (this.#told.length < MOST_LINES) this.#told.push(text);
    if (never === undefined) return;
    const noted = this.#never.get(never) ?? new NotedRows();
    noted.note(line);
    this.#never.set(never, noted);
    if (this.#toldNever.length < MOST_LINES) this.#toldNever.push(text);
  }

  /** The rows by kind, undefined for none. */
  leftOut(): LeftOut | undefined {
    if (this.rows === 0) return undefined;
    const kinds = [...this.#kinds].map(([what, rows]) => ({ what, rows }));
    return { ...this.#all.noted(), kinds: kinds.sort((a, b) => b.rows - a.rows) };
  }

  /**
   * Refuses the rows, all of them or those that may not be left out.
   *
   * @throws {@link VeladisError} `not-a-number` with how many they are, and what stands in the first of them
   */
  check({ what, file, all, decimalComma, skipBad, overRange }: RowsWanted): void {
    const never = [...this.#never.values()].reduce((sum, { rows }) => sum + rows, 0);
    const rows = skipBad === "given" ? never : this.rows;
    if (rows === 0) return;
    const told = skipBad === "given" ? this.#toldNever : this.#told;
    const advice = [
      skipBad !== "given" && this.#expected,
      this.#never.has("decimals") && (decimalComma ? "no point by --decimal-comma" : "--decimal-comma for 7,1"),
      this.#never.has("over range") && overRange,
      this.#never.has("no level shown") &&
        "a device that shows a fault, or no level, at a known one fails there: such a row is never left out: correct the cell, or take the row out and say so",
      this.#never.has("unit") && "all in what --from tells (--file-units none where the column of units is wrong)",
      this.#never.has("uncertainty") && "levels without ±, which of several rows is not carried",
      this.#never.has("uncertain level") &&
        "levels with ± written 5 ± 0.1 or 5 ± 2 % (k=2), without a type of their own",
      never < rows &&
        (typeof skipBad === "object"
          ? skipBad.cannot
          : `--skip-bad leaves ${never > 0 ? "the other rows" : "such rows"} out`),
    ].filter((text) => typeof text === "string");
    throw new VeladisError("not-a-number", {
      expected: `${what} in each row of ${file}; ${advice.join("; ")}`,
      received: `${rows} of ${rowsText(all)} without: ${told.join(", ")}${rows > told.length ? `, and ${rows - told.length} more` : ""}`,
    });
  }
}

/** What was left out, in a line; nothing for nothing. */
export function leftOutText(leftOut: LeftOut | undefined): string {
  if (leftOut === undefined) return "";
  const kinds = leftOut.kinds.map(({ what, rows }) => `${rows} ${what}`);
  return `left out: ${rowsText(leftOut.rows)}: ${kinds.join(", ")} (${linesText(leftOut)})\n`;
}
