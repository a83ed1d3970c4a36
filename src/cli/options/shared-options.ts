import type { OptionRow, OptionRows } from "./option-row";

/** Options that several commands have, each written once. */

export const json = { help: "one JSON object a line" } as const satisfies OptionRow;

export const explain = { help: "the arithmetic behind the answer, step by step" } as const satisfies OptionRow;

const significantDigits = { argument: "<n>", help: "significant digits" } as const;

export const digits = { ...significantDigits, default: "3" } as const satisfies OptionRow;

/** For answers that other programs read. */
export const allDigits = {
  ...significantDigits,
  example: "5",
  otherwise: "all there are",
} as const satisfies OptionRow;

export const keepGoing = {
  help: "exit 0 although some were refused (they are still reported)",
} as const satisfies OptionRow;

export const full = {
  help: "also the zones of every criterion, the sources and how the tables are read",
} as const satisfies OptionRow;

export const strict = {
  help: "refuse what would be assumed: a fact not given (also new or in service, housing or shaft), a word not understood",
} as const satisfies OptionRow;

export const crestFactor = {
  argument: "<n>",
  help: "peak over RMS, in place of the sine's 1.414",
  example: "3.2",
} as const satisfies OptionRow;

export const machine = {
  argument: "<words>",
  help: "the machine in words",
  example: '"pump 90 kW 2980 r/min rigid category II"',
} as const satisfies OptionRow;

export const scheme = {
  argument: "<scheme>",
  help: "id of a published table of limits (veladis schemes lists them), or a .json file with one of your own",
  example: "iso-10816-3-2009",
  list: "schemes",
} as const satisfies OptionRow;

/** For commands that find a scheme by themselves. */
export const schemeFound = { ...scheme, otherwise: "all that the machine's facts admit; the worst governs" } as const;

export const confirmed = {
  argument: "<file>",
  help: "limits confirmed against a printed copy, .csv or .json; may be given several times",
  example: "iso-10816-7-2009.csv",
  several: true,
} as const satisfies OptionRow;

export const band = {
  argument: "<low-high>",
  help: "the measuring band of the device: 10-1000 in Hz, or with units",
  example: '"10 Hz to 1 kHz"',
} as const satisfies OptionRow;

export const sheet = {
  argument: "<format>",
  help: "a sheet to sign, in place of the answer",
  example: "markdown",
  values: ["markdown", "html", "json"],
} as const satisfies OptionRow;

export const name = {
  argument: "<text>",
  help: "the machine's name on the sheet",
  example: '"ID fan 1, fan bearing"',
} as const satisfies OptionRow;

export const uncertainty = {
  argument: "<amount>",
  help: "uncertainty of the known level, in %, dB or its unit; without (k=...) or (95 %) a bound with equal chance within",
  example: '"2 % (k=2)"',
} as const satisfies OptionRow;

export const tolerance = {
  argument: "<share>",
  help: 'the error allowed: a share, decibels, or an amount such as "0.4 mm/s rms"',
  example: '"5 %"',
} as const satisfies OptionRow;

/** How a file of delimited text is written, for every command that reads one. */
export const fileOptions = {
  separator: {
    argument: "<name>",
    help: "what stands between cells; none for one column",
    example: "semicolon",
    values: ["comma", "semicolon", "tab", "pipe", "none"],
    otherwise: "found from the header and the first 1,000 rows",
  },
  "decimal-comma": {
    help: "numbers are written 7,1 and not 7.1; a comma separates only with --separator comma and such numbers in quotes",
  },
  "header-line": {
    argument: "<n>",
    help: "the line of the header; those above it are passed over",
    example: "4",
    otherwise: "the first line that is not blank and no remark",
  },
  encoding: {
    argument: "<name>",
    help: "the encoding of a file without a byte order mark",
    example: "latin-1",
    values: ["utf-8", "utf-16", "latin-1"],
    otherwise: "utf-8",
  },
  remarks: {
    argument: "<sign>",
    help: "what remarks begin with, none for no remarks",
    example: '"#"',
    otherwise: "#, but for lines that may be rows",
  },
  quotes: {
    argument: "none",
    help: "a quotation mark is a plain character",
    example: "none",
    values: ["none"],
    otherwise: "quotation marks stand about cells",
  },
  "file-units": {
    argument: "none",
    help: "units that headings or a column of units say, and times beside evenly spaced rows, do not count",
    example: "none",
    values: ["none"],
    otherwise: "what contradicts the options is refused",
  },
} as const satisfies OptionRows;
