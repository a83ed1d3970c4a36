import { stat } from "node:fs/promises";
import { extname } from "node:path";
import type { Readable } from "node:stream";
import { parseNumeral, shown, unknownOption, VeladisError } from "../../core/index";
import type { UnitSymbol } from "../../units/index";
import { accountText } from "../delimited/account-text";
import type { WrittenAs } from "../delimited/written-as";
import { csvSamples, type SamplesTold } from "./csv-samples";
import type { Io } from "./io";
import { openFile } from "./open-file";
import { findRawFormat, type RawFormat, rawFormats, rawSamples, requireSize } from "./raw-samples";

/** What the options say about a file of samples. */
export interface FileOptions {
  readonly file: string | undefined;
  readonly column: string | undefined;
  readonly format: string | undefined;
  readonly endian: "little" | "big";
  readonly scale: string | undefined;
  readonly written: WrittenAs;
  readonly unit: UnitSymbol;
  /** Samples a second. */
  readonly rate: number;
  /** Whether it is told that a column holds samples, whatever its heading. */
  readonly waveform: boolean;
}

/** A file of samples, or what is piped in. */
export interface SampleFile {
  /** What to call it in print. */
  readonly name: string;
  /** Bytes, when they are known. */
  readonly size: number | undefined;
  /** Bytes read so far. */
  bytesRead(): number;
  readonly chunks: AsyncGenerator<Float64Array>;
  /** What became of the rows, for standard error, when all are read; nothing where there are no rows. */
  account(json: boolean): string;
}

function formatOf({ file, format }: FileOptions): RawFormat | "csv" {
  const ending = extname(file ?? "").slice(1);
  const named = format ?? ending;
  if (/^(csv|txt|tsv|)$/i.test(named) && (format !== undefined || ending !== "" || file === undefined)) return "csv";
  const raw = findRawFormat(named);
  if (raw !== undefined) return raw;
  const expected = "how the samples are stored, as in --format float32";
  const allowed = ["csv", ...Object.keys(rawFormats)];
  if (format !== undefined) throw unknownOption(format, allowed, expected);
  throw new VeladisError("missing-option", {
    expected,
    received: `a file that does not say it: ${shown(file)}`,
    allowed,
  });
}

function scaleOf(scale: string | undefined, format: RawFormat | "csv"): number {
  if (scale === undefined) {
    if (format === "csv" || format.rails === undefined) return 1;
    throw new VeladisError("missing-option", {
      expected: "what one count is in the unit of the samples, as in --scale 0.000244",
      received: "whole numbers without it",
    });
  }
  const value = parseNumeral(scale, "a factor of the stored numbers");
  if (value !== 0) return value;
  throw new VeladisError("out-of-range", {
    expected: "a factor of the stored numbers that is not zero",
    received: shown(scale),
  });
}

/**
 * The samples of a file, or of standard input without one.
 *
 * @throws {@link VeladisError} `unreadable` for a file that cannot be read, `missing-option` for one that does not say how it is stored,
 *   `length-mismatch` for a raw file that is no whole number of samples
 */
export async function sampleFile(io: Io, options: FileOptions): Promise<SampleFile> {
  const { file, column, written, unit, rate, waveform } = options;
  const format = formatOf(options);
  const littleEndian = options.endian === "little";
  const scale = scaleOf(options.scale, format);
  const stream: (Readable & { bytesRead?: number }) | undefined = file === undefined ? io.piped : await openFile(file);
  if (stream === undefined) {
    throw new VeladisError("missing-option", {
      expected: "a file of samples, as in veladis overall fan.csv --rate 5120 --unit g",
      received: "nothing",
    });
  }
  const size = file === undefined ? undefined : (await stat(file)).size;
  if (format !== "csv" && size !== undefined) requireSize(size, format);
  const name = file ?? "standard input";
  const spacing = { by: `--rate ${rate}`, seconds: 1 / rate, sampled: true } as const;
  let told: SamplesTold | undefined;
  return {
    name,
    size,
    account: (json) => (told === undefined ? "" : accountText(told.account, told.counts, json)),
    bytesRead: () => stream.bytesRead ?? 0,
    chunks:
      format === "csv"
        ? csvSamples(stream, { file: name, written, column, scale, unit, spacing, waveform }, (all) => {
            told = all;
          })
        : rawSamples(stream, { format, littleEndian, scale }),
  };
}
