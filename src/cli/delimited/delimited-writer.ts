import { shown, VeladisError } from "../../core/index";
import { bytesOf, quotedCell } from "./cells";
import { latin1Bytes } from "./encodings";
import type { TableForm } from "./table-form";

/** Writes rows as a file was written that was read. Texts are bytes of UTF-8, one character a byte. */
export interface DelimitedWriter {
  /** What stands before the header: the mark of the encoding, and the lines above. */
  readonly start: string;
  /** A text as a cell. */
  cell(text: string): string;
  /** A number as a cell, all digits. */
  number(value: number | string): string;
  /** A row as it was, ready for cells behind it. */
  kept(raw: string): string;
  /** A row with cells behind it, and its line end. */
  row(before: string, cells: readonly string[]): string;
  /** Bytes of UTF-8 in the encoding of the file. */
  encoded(bytes: Buffer): Buffer;
}

/**
 * Latin-1 has no byte for most characters.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
function requireLatin1(text: string): Buffer {
  const bytes = latin1Bytes(text);
  if (bytes !== undefined) return bytes;
  const foreign = [...text].find((one) => latin1Bytes(one) === undefined);
  throw new VeladisError("out-of-range", {
    expected: "text that Latin-1 can write, in a file of that encoding",
    received: shown(foreign),
  });
}

const encoders = {
  "utf-8": undefined,
  "utf-16le": (text: string) => Buffer.from(text, "utf16le"),
  "utf-16be": (text: string) => Buffer.from(text, "utf16le").swap16(),
  "latin-1": requireLatin1,
} as const;

/** Writes rows behind which cells are added: separator, quotes, encoding, mark and line ends stay. */
export function delimitedWriter(form: TableForm, decimalComma: boolean): DelimitedWriter {
  const { separator, lineEnd, mark, encoding = "utf-8", preamble = "", quotes, single } = form;
  const encoder = encoders[encoding];
  // without quotes nothing keeps a separator within a cell
  const plain = (text: string): string => text.replaceAll(separator, " ").replace(/[\r\n]+/g, " ");
  const cell = (text: string): string => bytesOf(quotes === undefined ? quotedCell(text, separator) : plain(text));
  return {
    start: mark + preamble,
    cell,
    number: (value) => (decimalComma ? cell(String(value).replace(".", ",")) : String(value)),
    kept(raw) {
      if (single !== true || !raw.includes(separator) || (quotes === undefined && raw.startsWith('"'))) return raw;
      if (quotes === undefined) return quotedCell(raw, separator);
      throw new VeladisError("syntax", {
        expected: `a cell without ${shown(separator)}, which stands before what is added, since --quotes none leaves no way to keep it`,
        received: shown(Buffer.from(raw, "latin1").toString("utf8")),
      });
    },
    row: (before, cells) => `${[before, ...cells].join(separator)}${lineEnd}`,
    encoded: (bytes) => (encoder === undefined ? bytes : encoder(bytes.toString("utf8"))),
  };
}
