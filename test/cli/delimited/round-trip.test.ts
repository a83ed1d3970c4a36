import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byteCounter } from "../../../src/cli/delimited/byte-counter";
import { quotedCell } from "../../../src/cli/delimited/cells";
import { delimitedWriter } from "../../../src/cli/delimited/delimited-writer";
import { separators } from "../../../src/cli/delimited/separators";
import { readText } from "./read";

const encoders = {
  "utf-8": (text: string) => Buffer.from(text),
  "utf-8 with a mark": (text: string) => Buffer.from(`\ufeff${text}`),
  "utf-16le": (text: string) => Buffer.from(`\ufeff${text}`, "utf16le"),
  "utf-16be": (text: string) => Buffer.from(`\ufeff${text}`, "utf16le").swap16(),
  "utf-16 without a mark": (text: string) => Buffer.from(text, "utf16le"),
  "latin-1": (text: string) => Buffer.from(text, "latin1"),
} as const;

/** What stands above a row: nothing, or lines that are no rows. */
const above = fc.constantFrom("", "", "", "", "blank", "spaces", "remark");
const cell = fc.oneof(
  fc.stringMatching(/^[a-z0-9.µé -]{0,6}$/),
  fc.stringMatching(/^[a-z0-9",;|\n\t# ]{0,8}$/),
  fc.constantFrom("", "4,9", "#3", '"', "\r\n", "\r"),
);
const tables = fc.record({
  rows: fc.array(fc.record({ cells: fc.array(cell, { minLength: 3, maxLength: 3 }), above }), { maxLength: 12 }),
  separator: fc.constantFrom("comma", "semicolon", "tab", "pipe"),
  encoding: fc.constantFrom(...(Object.keys(encoders) as (keyof typeof encoders)[])),
  lineEnd: fc.constantFrom("\n", "\r\n", "\r"),
  /** Whether all cells stand in quotes, or those alone that must. */
  quoteAll: fc.boolean(),
  lastEnd: fc.boolean(),
  preamble: fc.array(fc.constantFrom("Export of plant", 'a "b', "", "# x;y", "1,2;3"), { maxLength: 3 }),
  told: fc.boolean(),
  cuts: fc.array(fc.nat(600), { maxLength: 6 }),
});

describe("a table written with any separator, encoding, line end and quoting", () => {
  it("is read back cell for cell; the account adds up, and is that of the bytes and of who wrote it", async () => {
    await fc.assert(
      fc.asyncProperty(tables, async (one) => {
        const { lineEnd, quoteAll, encoding } = one;
        // a first row of units alone above numbers is no row: a first one that is none keeps it out
        const table = one.rows.length === 0 ? [] : [{ cells: ["first", "of all", "the rows"], above: "" }, ...one.rows];
        // a header alone without its line end would not tell what that is
        const lastEnd = one.lastEnd || table.length === 0;
        const between = separators[one.separator];
        // where a carriage return alone ends rows none may stand in the first cells as something else
        const texts = table.map(({ cells }) =>
          cells.map((text) => (lineEnd === "\r" ? text.replace(/[\r\n]+/g, "\r") : text)),
        );
        const written = (text: string): string =>
          quoteAll || /^#/.test(text) || text.trim() === ""
            ? `"${text.replaceAll('"', '""')}"`
            : quotedCell(text, between);
        const header = ["one", "two", "three"];
        const lines = [
          ...one.preamble,
          header.join(between),
          ...table.flatMap(({ above: what }, i) => [
            ...(what === "" ? [] : [{ blank: "", spaces: "  ", remark: '# a "remark' }[what as "blank"]]),
            (texts[i] as string[]).map(written).join(between),
          ]),
        ];
        const content = encoders[encoding](lines.join(lineEnd) + (lastEnd ? lineEnd : ""));
        const { rows, account, form, ...file } = await readText(
          content,
          {
            headerLine: one.preamble.length + 1,
            ...(one.told && { separator: one.separator }),
            ...(encoding === "latin-1" && { encoding }),
            ...(encoding === "utf-16 without a mark" && { encoding: "utf-16" }),
          },
          one.cuts,
        );
        expect(file.header).toEqual(header);
        expect(rows.map(({ cells }) => cells)).toEqual(texts);
        expect(form).toMatchObject({ separator: between, lineEnd });

        const count = (what: string): number => table.filter((row) => row.above === what).length;
        const skipped = {
          blank: count("blank") + count("spaces"),
          remarks: count("remark"),
          preamble: one.preamble.length,
        };
        const behind = table.flatMap(({ above }, i) => (["blank", "spaces", "remark"].includes(above) ? [i] : []));
        const lineOf = (i: number | undefined): number => (i === undefined ? 0 : (rows[i]?.line as number));
        const behindSkipped = { first: behind[0] === 0 ? lineOf(0) : 0, later: lineOf(behind.find((i) => i > 0)) };
        const rowsIn = table.length + skipped.blank + skipped.remarks + skipped.preamble;
        expect(account).toEqual({
          ...{ rowsIn, rows: table.length, refused: 0, skipped, behindSkipped, separator: one.separator },
          torn: !lastEnd,
        });

        // what is written of it is the file again, without what was passed over
        const { start, row, encoded } = delimitedWriter(form, false);
        const whole = `${start}${header.join(between)}${lineEnd}${rows.map(({ raw }) => row(raw, [])).join("")}`;
        const bytes = encoded(Buffer.from(whole, "latin1"));
        const kept = lines.filter(
          (line, i) => i <= one.preamble.length || (line.trim() !== "" && !line.startsWith("# a")),
        );
        expect(bytes).toEqual(encoders[encoding](kept.join(lineEnd) + lineEnd));
      }),
      { numRuns: 600 },
    );
  });

  it("the counter of bytes takes them one by one", () => {
    const counter = byteCounter({ encoding: "utf-8", mark: 0, lineEnd: "\n", preamble: 0, sign: "#", quotes: true });
    for (const byte of Buffer.from('a\n# "\n"x\ny"\n\nz')) counter.take(Uint8Array.of(byte));
    expect(counter.rows()).toBe(4);
  });
});
