import { shown } from "../../core/index";
import { doubtfulRow, mayBeDecimal } from "./doubtful-comma";
import { hasQuotedDecimal } from "./quoted-decimals";
import { refusedFile } from "./refused-file";
import { candidates, rowText, type SampleRow } from "./sample-rows";
import { type SeparatorName, separators } from "./separators";

/** Where the rows of a sample stand, to show them. */
export interface Sample {
  readonly bytes: Buffer;
  readonly rows: readonly SampleRow[];
  readonly name: string;
}

function textOf({ bytes }: Sample, row: SampleRow): string {
  return rowText(bytes, row);
}

/** The first row of which nobody can tell whether a comma separates or marks the decimals. */
function cutRow(sample: Sample, header: SampleRow, body: readonly SampleRow[]): SampleRow | undefined {
  const index = doubtfulRow(textOf(sample, header), body.length, (row) => textOf(sample, body[row] as SampleRow));
  return index === undefined ? undefined : body[index];
}

/** How many cells a row has by each of the separators, in words. */
function countsText(names: readonly SeparatorName[], { counts }: SampleRow): string {
  const cells = names.map((name) => {
    const count = name === "none" ? 1 : (counts[candidates.indexOf(name)] ?? 0) + 1;
    return `${count} ${count === 1 ? "cell" : "cells"} by ${name}`;
  });
  return cells.join(", ");
}

function undecided(sample: Sample, names: readonly SeparatorName[], row: SampleRow | undefined): Error {
  const header = sample.rows[0] as SampleRow;
  const below = row === undefined ? "" : `; ${shown(textOf(sample, row))} is ${countsText(names, row)}`;
  return refusedFile(
    `a separator that nobody has to guess: ${names.map((name) => `--separator ${name}`).join(" or ")}`,
    `the header ${shown(textOf(sample, header))} is ${countsText(names, header)}${below}`,
    (row ?? header).line,
    sample.name,
  );
}

/**
 * The separator of a table, from its header and the rows of a sample: tab, semicolon or pipe where one of them has one
 * count in all; else the comma; else there is one column.
 *
 * @throws {@link VeladisError} `syntax` with both readings where two are possible
 */
export function chosenSeparator(sample: Sample, decimalComma: boolean): SeparatorName {
  const [header, ...rows] = sample.rows as [SampleRow, ...SampleRow[]];
  // a last row without its line end may be torn off
  const body = rows.length > 1 && rows[rows.length - 1]?.ended === false ? rows.slice(0, -1) : rows;
  const strong = ([0, 1, 2] as const).filter((one) => header.counts[one] > 0);
  const odd = (one: 0 | 1 | 2): SampleRow | undefined => body.find(({ counts }) => counts[one] !== header.counts[one]);
  const steady = strong.filter((one) => odd(one) === undefined);
  if (steady.length === 1) return candidates[steady[0] as 0];
  if (steady.length > 1)
    throw undecided(
      sample,
      steady.map((one) => candidates[one]),
      body[0],
    );
  const commas = !decimalComma && header.counts[3] > 0;
  if (strong.length > 0) {
    const names = [...strong.map((one) => candidates[one]), commas ? "comma" : "none"] as const;
    throw undecided(sample, names, odd(strong[0] as 0));
  }
  const quoted = decimalComma && header.counts[3] > 0 && body.find((row) => hasQuotedDecimal(textOf(sample, row)));
  if (quoted) {
    throw refusedFile(
      "--separator comma beside --decimal-comma, where numbers with a comma stand in quotes, or --separator none for one column",
      `${shown(textOf(sample, quoted))} below the header ${shown(textOf(sample, header))}`,
      quoted.line,
      sample.name,
    );
  }
  if (!commas) return "none";
  const cut = cutRow(sample, header, body);
  if (cut === undefined) return "comma";
  const row = textOf(sample, cut);
  const isOne = mayBeDecimal(row);
  throw refusedFile(
    isOne
      ? `--decimal-comma where ${shown(row)} is one number, or --separator comma where it is ${cut.counts[3] + 1} cells`
      : `--separator comma where ${shown(row)} is ${cut.counts[3] + 1} cells; a number with a decimal comma stands in quotes, or between semicolons or tabs`,
    `it below the header ${shown(textOf(sample, header))}, and neither told`,
    cut.line,
    sample.name,
  );
}

/** The separator that a line such as `sep=;` above the header tells. */
export function separatorLine(line: string): SeparatorName | undefined {
  const told = /^sep=([,;\t|])\r?$/i.exec(line)?.[1];
  const names = Object.keys(separators) as SeparatorName[];
  return told === undefined ? undefined : names.find((name) => separators[name] === told);
}
