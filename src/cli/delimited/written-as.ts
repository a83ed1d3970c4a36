import { parseNumeral, shown, VeladisError } from "../../core/index";
import type { SeparatorName } from "./separators";

/** How the options say that a file of delimited text is written. */
export interface WrittenAs {
  readonly separator?: SeparatorName;
  readonly encoding?: string;
  /** The line of the header, from 1. */
  readonly headerLine?: number;
  /** The sign that remarks begin with, or `none`. */
  readonly remarks?: string;
  readonly quotes?: "none";
  /** What headings and columns of units say does not count. */
  readonly fileUnits?: "none";
  /** Whether numbers are written 7,1 and not 7.1; a comma separates then only where that is told, too. */
  readonly decimalComma: boolean;
}

/** What the options of a command say of a file; rows in `shared-options.ts`. */
interface WrittenValues {
  readonly separator?: SeparatorName | undefined;
  readonly encoding?: string | undefined;
  readonly "header-line"?: string | undefined;
  readonly remarks?: string | undefined;
  readonly quotes?: "none" | undefined;
  readonly "file-units"?: "none" | undefined;
  readonly "decimal-comma": boolean;
}

function headerLineOf(written: string): number {
  const line = parseNumeral(written, "the line of the header");
  if (Number.isSafeInteger(line) && line >= 1) return line;
  throw new VeladisError("out-of-range", { expected: "the line of the header, 1 or more", received: shown(written) });
}

/** A sign that a number or a cell in quotes could begin with would take rows for remarks. */
function remarkSign(written: string): string {
  if (written === "none" || (/^[!#-/:-@[-`{-~]{1,8}$/.test(written) && !/^[-+.]$/.test(written))) return written;
  throw new VeladisError("syntax", {
    expected: 'a sign that remarks begin with, such as "#" or "//", or none',
    received: shown(written),
  });
}

/**
 * How the options say that a file is written.
 *
 * @throws {@link VeladisError} for a line of the header that is none, and a sign that is none
 */
export function writtenAs(values: WrittenValues): WrittenAs {
  const { separator, encoding, remarks, quotes, "header-line": line } = values;
  const { "file-units": fileUnits, "decimal-comma": decimalComma } = values;
  return {
    ...(separator !== undefined && { separator }),
    ...(encoding !== undefined && { encoding }),
    ...(line !== undefined && { headerLine: headerLineOf(line) }),
    ...(remarks !== undefined && { remarks: remarkSign(remarks) }),
    ...(quotes !== undefined && { quotes }),
    ...(fileUnits !== undefined && { fileUnits }),
    decimalComma,
  };
}

const optionNames = {
  separator: "--separator",
  encoding: "--encoding",
  headerLine: "--header-line",
  remarks: "--remarks",
  quotes: "--quotes",
  fileUnits: "--file-units",
} as const satisfies Readonly<Record<Exclude<keyof WrittenAs, "decimalComma">, string>>;

/** The options that were told. */
export function toldOf(as: WrittenAs): string[] {
  const names = Object.keys(optionNames) as (keyof typeof optionNames)[];
  const told: string[] = names.filter((name) => as[name] !== undefined).map((name) => optionNames[name]);
  return as.decimalComma ? [...told, "--decimal-comma"] : told;
}
