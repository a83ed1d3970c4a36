import type { Readable } from "node:stream";
import { VeladisError } from "../../core/index";
import { PARQUET, parquetFault } from "../delimited/parquet-refused";

/** One line of an input, counted from 1. */
export interface Line {
  readonly number: number;
  readonly text: string;
}

/** Beyond any line a person writes; what is longer is no text file. */
const LONGEST = 1 << 20;

function decoderOf(start: Buffer): InstanceType<typeof TextDecoder> {
  if (start[0] === 0xff && start[1] === 0xfe) return new TextDecoder("utf-16le");
  return new TextDecoder(start[0] === 0xfe && start[1] === 0xff ? "utf-16be" : "utf-8");
}

/** The texts of a stream, UTF-16 where it begins with the mark of that; U+FFFD stands for bytes that are none. */
async function* textsOf(stream: Readable): AsyncGenerator<string> {
  let decoder: InstanceType<typeof TextDecoder> | undefined;
  let start: Buffer = Buffer.alloc(0);
  for await (const chunk of stream) {
    const bytes: Buffer = typeof chunk === "string" ? Buffer.from(chunk) : chunk;
    if (decoder === undefined) start = start.length === 0 ? bytes : Buffer.concat([start, bytes]);
    if (start.length < 2) continue;
    const fresh = decoder === undefined ? start : bytes;
    decoder ??= decoderOf(start);
    yield decoder.decode(fresh, { stream: true });
  }
  yield decoder === undefined ? decoderOf(start).decode(start) : decoder.decode();
}

/** What a line has to be and what it has instead, where it is no line of text. */
function fault(text: string): readonly [expected: string, received: string] | undefined {
  if (text.length > LONGEST) return [`lines of text, none longer than ${LONGEST} characters`, "without an end"];
  if (text.startsWith(PARQUET) && /[\0\uFFFD]/.test(text))
    return [parquetFault.expected, `with ${parquetFault.received}`];
  if (text.includes("\0")) return ["text in UTF-8, or in UTF-16 with its mark", "with a zero byte"];
  if (text.includes("\uFFFD")) {
    return ["text in UTF-8: save it so, or send it through iconv -f latin1 -t utf-8", "with bytes of something else"];
  }
  return /[\r\n]/.test(text) ? ["lines that all end alike", "with another line end within"] : undefined;
}

function checkedLine(number: number, text: string): Line {
  const [expected, received] = fault(text) ?? [];
  if (expected === undefined) return { number, text: text.replace(/^\uFEFF/, "") };
  throw new VeladisError("syntax", { expected, received: `line ${number} ${received}` });
}

/**
 * The lines of a stream, without their ends, blank ones too; memory for one chunk and one line.
 *
 * Text is UTF-8, or UTF-16 by its mark. A line ends with a line feed, behind a carriage return or not; with a carriage
 * return alone where the first does.
 *
 * @throws {@link VeladisError} `syntax` for a line beyond a megabyte, for bytes that are no text, and for line ends that
 *   are mixed
 */
export async function* linesOf(stream: Readable): AsyncGenerator<Line> {
  let rest = "";
  let number = 0;
  let lineEnd: string | undefined;
  for await (const text of textsOf(stream)) {
    const all = rest + text;
    lineEnd ??= /\r(?=[^\n])|\n/.exec(all)?.[0];
    const pieces = lineEnd === undefined ? [all] : all.split(lineEnd);
    rest = pieces.pop() as string;
    for (const piece of pieces) yield checkedLine(++number, lineEnd === "\n" ? piece.replace(/\r$/, "") : piece);
    // nothing longer is waited for
    if (rest.length > LONGEST) checkedLine(number + 1, rest);
  }
  if (rest !== "") yield checkedLine(number + 1, rest.replace(/\r$/, ""));
}
