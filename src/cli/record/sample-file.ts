import { extname } from "node:path";
import type { Readable } from "node:stream";
import { parseNumeral, shown, unknownOption, VeladisError } from "../../core/index";
import type { UnitSymbol } from "../../units/index";
import { accountText } from "../delimited/account-text";
import type { WrittenAs } from "../delimited/written-as";
import { csvSamples, type SamplesTold } from "../input/csv-samples";
import type { Io } from "../input/io";
import { type FileStream, openFile } from "../input/open-file";
import { findRawFormat, type RawFormat, rawFormats, rawSamples, requireSize } from "../input/raw-samples";
import { timedRecord } from "../input/timed-record";
import { waveSamples } from "../input/wave-file";
import { type FileRows, rowsOfFile } from "./rows-of-file";

/** What the options say about a file of samples. */
export interface FileOptions {
  readonly file: string | undefined;
  readonly column: string | undefined;
  readonly format: string | undefined;
  readonly endian: "little" | "big";
  readonly scale: string | undefined;
  readonly written: WrittenAs;
  readonly unit: UnitSymbol;
  /** Samples a second, as it is told. */
  readonly rate: number | undefined;
  /** Name or number of a column of times, and whether uneven ones are made even. */
  readonly time: string | undefined;
  readonly resample: boolean;
  /** Whether it is told that a column holds samples, whatever its heading. */
  readonly waveform: boolean;
}

/** A file of samples, or what is piped in. */
export interface SampleFile {
  /** What to call it in print. */
  readonly name: string;
  /** Bytes, when they are known. */
  readonly size: number | undefined;
  /** Samples a second: as told, as the file says, or as its times say. */
  readonly rate: number;
  /** What became of its times, in words, and the highest frequency that they leave. */
  readonly how?: string;
  readonly highest?: number;
  /** Bytes read so far. */
  bytesRead(): number;
  readonly chunks: AsyncGenerator<Float64Array>;
  /** What became of the rows, for standard error, when all are read; nothing where there are no rows. */
  account(json: boolean): string;
}

/** How samples are stored: as rows, as WAVE, or one number behind the other. */
type Stored = RawFormat | "csv" | "parquet" | "wav";

function formatOf({ file, format }: FileOptions): Stored {
  const ending = extname(file ?? "").slice(1);
  const named = format ?? ending;
  if (/^(csv|txt|tsv|)$/i.test(named) && (format !== undefined || ending !== "" || file === undefined)) return "csv";
  if (/^wave?$/i.test(named)) return "wav";
  if (/^parquet$/i.test(named)) return "parquet";
  const raw = findRawFormat(named);
  if (raw !== undefined) return raw;
  const expected = "how the samples are stored, as in --format float32";
  const allowed = ["csv", "parquet", "wav", ...Object.keys(rawFormats)];
  if (format !== undefined) throw unknownOption(format, allowed, expected);
  throw new VeladisError("missing-option", {
    expected,
    received: `a file that does not say it: ${shown(file)}`,
    allowed,
  });
}

function scaleOf(scale: string | undefined, format: Stored): number {
  if (scale === undefined) {
    const isCounts = format === "wav" || (typeof format === "object" && format.rails !== undefined);
    if (!isCounts) return 1;
    throw new VeladisError("missing-option", {
      expected: "what one count is in the unit of the samples, as in --scale 0.000244",
      received: format === "wav" ? "the numbers of a WAVE file without it" : "whole numbers without it",
    });
  }
  const value = parseNumeral(scale, "a factor of the stored numbers");
  if (value !== 0) return value;
  throw new VeladisError("out-of-range", {
    expected: "a factor of the stored numbers that is not zero",
    received: shown(scale),
  });
}

function requireRate(rate: number | undefined): number {
  if (rate !== undefined) return rate;
  throw new VeladisError("missing-option", {
    expected: "--rate such as 25600: sampling rate in Hz",
    received: "nothing",
  });
}

/** Refuses what tells of times where there are none. */
function requireNoTimes({ time, resample }: FileOptions, what: string): void {
  const told = [time !== undefined && "--time", resample && "--resample"].filter((one) => one !== false);
  if (told.length === 0) return;
  throw new VeladisError("unknown-option", {
    expected: "a file of delimited text with a column of times",
    received: `${told.join(" and ")}, and ${what}`,
  });
}

/**
 * The samples of a file, or of standard input without one.
 *
 * @throws {@link VeladisError} `unreadable` for a file that cannot be read, `missing-option` for one that does not say how it is stored,
 *   `length-mismatch` for a raw file that is no whole number of samples, `unknown-option` for a rate that the file contradicts
 */
export async function sampleFile(io: Io, options: FileOptions): Promise<SampleFile> {
  const { file, rate } = options;
  const format = formatOf(options);
  const scale = scaleOf(options.scale, format);
  if (typeof format === "object" || format === "wav") {
    requireNoTimes(options, format === "wav" ? "a WAVE file" : "raw numbers");
  }
  if (typeof format === "object") requireRate(rate);
  const what = "a file of samples, as in veladis overall fan.csv --rate 5120 --unit g";
  if (format === "csv" || format === "parquet") {
    const rows = await rowsOfFile(io, { file, format, written: options.written }, what);
    return rowFile(rows, { ...options, scale });
  }
  if (file === undefined && io.piped === undefined) {
    throw new VeladisError("missing-option", { expected: what, received: "nothing" });
  }
  const stream: Readable & Partial<Pick<FileStream, "size" | "bytesRead">> =
    file === undefined ? (io.piped as Readable) : await openFile(file);
  const { size } = stream;
  const common = { name: file ?? "standard input", size };
  const bytesRead = () => stream.bytesRead ?? 0;
  if (format === "wav") {
    const wave = await waveSamples(stream, options.column, scale);
    if (rate !== undefined && rate !== wave.rate) {
      throw new VeladisError("unknown-option", {
        expected: "a rate as the file says it, or none",
        received: `--rate ${rate}, and a WAVE file of ${wave.rate} samples a second`,
      });
    }
    return { ...common, bytesRead, rate: wave.rate, account: () => "", chunks: wave.samples };
  }
  if (size !== undefined) requireSize(size, format);
  const chunks = rawSamples(stream, { format, littleEndian: options.endian === "little", scale });
  return { ...common, bytesRead, rate: requireRate(rate), account: () => "", chunks };
}

/** The samples of a file of rows: by their own times, or at the rate that is told. */
async function rowFile(
  { reader, written, size, bytesRead }: FileRows,
  options: Omit<FileOptions, "scale"> & { readonly scale: number },
): Promise<SampleFile> {
  const { file, column, unit, rate, waveform, time, resample, scale } = options;
  const common = { name: file ?? "standard input", size, bytesRead };
  const accountOf = (told: SamplesTold | undefined, json: boolean): string =>
    told === undefined ? "" : accountText(told.account, told.counts, json);
  if (rate === undefined || time !== undefined || resample) {
    const settings = { file: common.name, written, column, time, scale, unit, waveform };
    const record = await timedRecord(reader, settings, { rate, resample, again: file !== undefined });
    const { told, how, highest, chunks } = record;
    return {
      ...{ ...common, rate: record.rate, how, chunks },
      ...(highest !== undefined && { highest }),
      account: (json) => accountOf(told(), json),
    };
  }
  const how =
    written.fileUnits === "none"
      ? "spaced by --rate alone: no column was looked at for times, as --file-units none says"
      : undefined;
  const spacing = { by: `--rate ${rate}`, seconds: 1 / rate, sampled: true } as const;
  let told: SamplesTold | undefined;
  const settings = { file: common.name, written, column, scale, unit, spacing, waveform };
  const chunks = csvSamples(reader, settings, (all) => {
    told = all;
  });
  return { ...common, rate, chunks, ...(how !== undefined && { how }), account: (json) => accountOf(told, json) };
}
