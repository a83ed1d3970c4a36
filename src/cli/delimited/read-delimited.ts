import type { Readable } from "node:stream";
import { byteCounter } from "./byte-counter";
import { type Layout, layoutOf, signOf } from "./layout";
import { refusedFile } from "./refused-file";
import type { RowAccount } from "./row-account";
import { type DelimitedVisitor, type Opened, type RowReading, rowReading } from "./row-reading";
import { separators } from "./separators";
import type { TableForm } from "./table-form";
import { type Decoded, type Utf8Maker, utf8Maker } from "./text-decoder";
import { besideUnits } from "./units-row";
import type { WrittenAs } from "./written-as";

/** Portions of this size at most, whatever the stream gives. */
const PORTION = 1 << 18;
const UTF8_MARK = "\u00ef\u00bb\u00bf";

async function* portionsOf(stream: Readable): AsyncGenerator<Buffer> {
  for await (const chunk of stream) {
    const bytes: Buffer = typeof chunk === "string" ? Buffer.from(chunk) : chunk;
    for (let at = 0; at < bytes.length; at += PORTION) yield bytes.subarray(at, at + PORTION);
  }
}

function formOf(layout: Layout, bytes: Buffer, maker: Utf8Maker, as: WrittenAs): TableForm {
  const single = layout.separator === "none";
  return {
    separator: single ? (as.decimalComma ? ";" : ",") : separators[layout.separator],
    lineEnd: layout.lineEnd,
    mark: maker.mark > 0 ? UTF8_MARK : "",
    counted: "line",
    encoding: maker.encoding,
    preamble: bytes.toString("latin1", 0, layout.start),
    ...(as.quotes !== undefined && { quotes: as.quotes }),
    ...(single && { single }),
  };
}

/** The first part of a file, until it is known how the whole is written. */
function firstPart(as: WrittenAs, name: string) {
  let text: Buffer = Buffer.alloc(0);
  let tried = 0;
  return {
    get text() {
      return text;
    },
    get line() {
      return text.toString("latin1").split("\n").length;
    },
    /** How the file is written, when there is enough of it. */
    add(bytes: Buffer, whole: boolean): Layout | undefined {
      text = Buffer.concat([text, bytes]);
      // looked at anew each time, so no more often than it has grown by a quarter
      if (!whole && text.length < tried * 1.25) return undefined;
      tried = text.length;
      return layoutOf(text, whole, as, name);
    },
  };
}

/**
 * Shows a stream of delimited text to a visitor, by the one rule of all commands; memory for the first part of the file
 * and a row.
 *
 * Yields after each portion, with the bytes read so far; returns what became of the rows.
 *
 * @throws {@link VeladisError} with name and line for a file that is not written as was told, or as can be told
 */
export async function* readDelimited(
  stream: Readable,
  name: string,
  as: WrittenAs,
  visitor: DelimitedVisitor,
): AsyncGenerator<number, RowAccount> {
  const maker = utf8Maker(as.encoding);
  const first = firstPart(as, name);
  const beside = besideUnits(visitor);
  let before: Buffer[] = [];
  let opened: (Opened & { readonly rows: RowReading; readonly counter: ReturnType<typeof byteCounter> }) | undefined;
  let read = 0;

  const take = async ({ text, fault }: Decoded, bytes: Buffer, whole: boolean): Promise<void> => {
    if (opened !== undefined) {
      opened.counter.take(bytes);
      if (text.length > 0) await opened.rows.take(text);
    } else {
      before.push(bytes);
      const layout = first.add(text, whole && fault === undefined);
      if (layout !== undefined) {
        const form = formOf(layout, first.text, maker, as);
        const { encoding, mark } = maker;
        const { rowEnd: lineEnd, preamble } = layout;
        const counter = byteCounter({ encoding, mark, lineEnd, preamble, sign: signOf(as), quotes: !as.quotes });
        const rows = rowReading({ layout, form, as, name }, beside.visitor);
        opened = { layout, form, as, name, rows, counter };
        for (const one of before) counter.take(one);
        before = [];
        await rows.take(first.text.subarray(layout.start));
      }
    }
    if (fault !== undefined) throw refusedFile(fault.expected, fault.received, (opened?.rows ?? first).line, name);
  };

  for await (const bytes of portionsOf(stream)) {
    read += bytes.length;
    await take(maker.take(bytes), bytes, false);
    yield read;
  }
  await take(maker.end(), Buffer.alloc(0), true);
  const { rows, counter, layout } = opened as NonNullable<typeof opened>;
  await rows.end();
  beside.end();
  yield read;
  const { blank, remarks, torn, ...counts } = rows.counts;
  const { units } = beside;
  const ofUnits = units === undefined ? 0 : 1;
  const skipped = { blank, remarks, preamble: layout.preamble, ...(ofUnits > 0 && { units: ofUnits }) };
  const told = units !== undefined && { units: { line: units.line, cells: units.cells } };
  const handed = { ...counts, rows: counts.rows - ofUnits };
  return { rowsIn: counter.rows(), ...handed, skipped, separator: layout.separator, torn, ...told };
}

/** Reads all of it; `portion` is called after each portion and awaited. The stream is closed whatever happens. */
export async function accountOf<Account = RowAccount>(
  reading: AsyncGenerator<number, Account>,
  portion: (read: number) => void | Promise<void> = () => undefined,
): Promise<Account> {
  try {
    for (;;) {
      const step = await reading.next();
      if (step.done) return step.value;
      await portion(step.value);
    }
  } finally {
    await reading.return(undefined as never);
  }
}

export type { RowAccount } from "./row-account";
export type { DelimitedVisitor } from "./row-reading";
