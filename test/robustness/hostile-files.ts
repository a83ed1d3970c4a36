/** Files that no one should give to a program, and that people do: ten kinds, drawn from a seed. */
import { parquetWriteBuffer } from "hyparquet-writer";

/** A whole number below a bound. */
export type Draw = (bound: number) => number;

/** The same numbers for the same seed. */
export function drawing(seed: number): Draw {
  let state = seed >>> 0;
  return (bound) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * bound);
  };
}

/** A file to give to commands. */
export interface HostileFile {
  readonly ending: ".csv" | ".parquet";
  readonly content: Buffer;
  /** Rows below the header, blank lines and remarks too, where that is beyond doubt. */
  readonly rowsIn?: number;
}

const oneOf = <T>(draw: Draw, list: readonly T[]): T => list[draw(list.length)] as T;
const times = <T>(count: number, make: (i: number) => T): T[] => Array.from({ length: count }, (_, i) => make(i));
const text = (content: string, rowsIn?: number): HostileFile => ({
  ending: ".csv",
  content: Buffer.from(content),
  ...(rowsIn !== undefined && { rowsIn }),
});

const header = ["time", "level", "known", "indicated"];

/** The cells of a row without fault. */
const row = (draw: Draw, i: number): string[] => {
  const level = (1 + draw(90) / 10).toFixed(1);
  return [
    `2026-03-04 11:${String(Math.floor(i / 60) % 60).padStart(2, "0")}:${String(i % 60).padStart(2, "0")}`,
    level,
    String(i + 1),
    String(i + 1),
  ];
};
const rowsOf = (draw: Draw, count: number): string[][] => times(count, (i) => row(draw, i));
const written = (rows: readonly (readonly string[])[], separator: string, end = "\n"): string =>
  rows.map((cells) => cells.join(separator) + end).join("");

const separator = (draw: Draw): string => oneOf(draw, [",", ";", "\t", "|"]);

/** A whole Parquet file of some rows. */
function wholeParquet(draw: Draw): { bytes: Buffer; rows: number } {
  const rows = 20 + draw(200);
  const columnData = [
    { name: "time", data: times(rows, (i) => new Date(1.767e12 + i * 60_000)), type: "TIMESTAMP" as const },
    { name: "level", data: times(rows, (i) => (i % 13 === 5 ? null : draw(1000) / 100)), type: "DOUBLE" as const },
    { name: "tag", data: times(rows, (i) => `pump ${i % 4}`), type: "STRING" as const },
  ];
  const codec = oneOf(draw, ["SNAPPY", "UNCOMPRESSED"] as const);
  return { bytes: Buffer.from(parquetWriteBuffer({ columnData, codec, rowGroupSize: 50 + draw(100) })), rows };
}

/** What makes a file of each kind. */
export const hostileKinds: Readonly<Record<string, (draw: Draw) => HostileFile>> = {
  quotes(draw) {
    const rows = rowsOf(draw, 3 + draw(30));
    const at = draw(rows.length);
    const cells = rows[at] as string[];
    const separated = separator(draw);
    const kind = draw(5);
    if (kind === 0) cells[0] = `"two\nlines"`;
    else if (kind === 1) cells[0] = `"${separated}""${separated}\r\n"`;
    else if (kind === 2) cells[0] = `"never closed`;
    else if (kind === 3) cells[1] = `${cells[1]}"`;
    else cells[1] = `"${cells[1]}"mm`;
    return text(written([header, ...rows], separated), kind < 2 ? rows.length : undefined);
  },
  ragged(draw) {
    const rows = rowsOf(draw, 3 + draw(40));
    for (let i = 0; i <= draw(4); i++) {
      const cells = oneOf(draw, rows);
      if (draw(2) === 0) cells.push("more");
      else cells.length = draw(header.length) + 1;
    }
    const torn = draw(3) === 0;
    const content = written([header, ...rows], separator(draw));
    return text(torn ? content.slice(0, -1 - draw(3)) : content, rows.length);
  },
  encodings(draw) {
    const rows = rowsOf(draw, 3 + draw(30));
    const titles = [header[0], header[1], "Höhe µm", "known"] as string[];
    const content = written([titles, ...rows], ";");
    const kind = draw(7);
    const rowsIn = rows.length;
    const utf16 = (marked: string): Buffer => Buffer.from(marked, "utf16le");
    const made: Buffer[] = [
      Buffer.from(`\ufeff${content}`),
      utf16(`\ufeff${content}`),
      utf16(`\ufeff${content}`).swap16(),
      utf16(content),
      Buffer.from(content, "latin1"),
      Buffer.from(content.replace("level", "le\0vel")),
      Buffer.from(content.replace(/\n$/, "\ud800\n")),
    ];
    return { ending: ".csv", content: made[kind] as Buffer, ...(kind < 3 && { rowsIn }) };
  },
  "line ends"(draw) {
    const rows = rowsOf(draw, 3 + draw(40));
    const kind = draw(5);
    const end = oneOf(draw, ["\n", "\r\n", "\r"]);
    const mixed = (): string => oneOf(draw, kind === 1 ? ["\n", "\r\n"] : [end]);
    const lines = [header, ...rows].map((cells) => cells.join(",") + mixed());
    if (kind === 2) lines.splice(draw(lines.length) + 1, 0, ...times(draw(5), () => oneOf(draw, ["", "  "]) + end));
    if (kind === 3) lines[draw(lines.length)] += "\r";
    return text(lines.join(""), kind < 2 ? rows.length : undefined);
  },
  "long lines"(draw) {
    const size = (1 << 16) << draw(7);
    const kind = draw(4);
    const filler = oneOf(draw, ["1,", "x", '"', "1;2,3;", " "]).repeat(Math.ceil(size / 2));
    const head = written([header], ",");
    if (kind === 0) return text(filler);
    if (kind === 1) return text(head + filler);
    if (kind === 2) return text(`${head}${written(rowsOf(draw, 5), ",")}${filler}\n${written(rowsOf(draw, 5), ",")}`);
    return text(`${filler}\n${written(rowsOf(draw, 5), ",")}`);
  },
  headings(draw) {
    const strange = ["level", "level ", "", " ", "__proto__", "constructor", "1", "2", "\u202elevel", "\u001b[2Jlevel"];
    const titles = times(4, () => oneOf(draw, [...strange, ...header, "x".repeat(300), "=1+1", "Höhe, mm/s"]));
    const rows = rowsOf(draw, 2 + draw(20));
    return text(written([titles, ...rows], ";"), rows.length);
  },
  separators(draw) {
    const count = 3 + draw(30);
    const comma = (value: string | undefined): string => String(value).replace(".", ",");
    const rows = rowsOf(draw, count);
    const kind = draw(6);
    if (kind === 0) return text(`level, mm/s\n${rows.map(([, level]) => `${comma(level)}\n`).join("")}`, count);
    if (kind === 1)
      return text(`time;level, if any\n${rows.map(([at, level]) => `${at};${comma(level)}\n`).join("")}`, count);
    if (kind === 2) return text(`time;le|vel\n${rows.map(([at, level]) => `${at};a|${level}\n`).join("")}`, count);
    if (kind === 3) return text(`sep=;\n${written([header, ...rows], ",")}`, count + 1);
    if (kind === 4) return text(written([header, ...rows.map((cells) => cells.map(comma))], ";"), count);
    return text(written([header, ...rows.map((cells, i) => (i % 2 ? cells : cells.map(comma)))], ","), count);
  },
  values(draw) {
    const rows = rowsOf(draw, 4 + draw(40));
    const odd = [
      "",
      "OL",
      "N/A",
      "4,1",
      "1e999",
      "-3",
      "0x10",
      "NaN",
      "Infinity",
      "١٢",
      "4.1 mm/s",
      "=4.1",
      "1_000",
      "12:30",
    ];
    const dates = [
      "2026-02-30 10:00:00",
      "03/04/2026",
      "46000.5",
      "",
      "noon",
      "24:00",
      "2026-13-01 00:00:00",
      "-271822-01-01",
    ];
    for (let i = 0; i <= draw(5); i++) oneOf(draw, rows)[1] = oneOf(draw, odd);
    if (draw(2) === 0) oneOf(draw, rows)[0] = oneOf(draw, dates);
    return text(written([header, ...rows], ";"), rows.length);
  },
  remarks(draw) {
    const rows = rowsOf(draw, 3 + draw(20)).map((cells) => cells.join(";"));
    for (let i = 0; i < draw(5); i++)
      rows.splice(draw(rows.length + 1), 0, oneOf(draw, ["# said", "#", "", " ", "#3 fan;1;2;3"]));
    const above = times(draw(4), () => oneOf(draw, ["# exported", "Plant 7", "", "a;b", '"']));
    const marked = above.every((line) => line.startsWith("#"));
    return text(
      `${[...above, header.join(";"), ...rows].join("\n")}\n`,
      marked ? above.length + rows.length : undefined,
    );
  },
  parquet(draw) {
    const { bytes, rows } = wholeParquet(draw);
    const kind = draw(5);
    if (kind === 0) return { ending: ".parquet", content: bytes, rowsIn: rows };
    if (kind === 1) return { ending: ".parquet", content: bytes.subarray(0, draw(bytes.length)) };
    for (let i = 0; i <= (kind === 2 ? 20 : 0); i++) {
      const at = draw(bytes.length);
      bytes[at] = (bytes[at] as number) ^ (1 << draw(8));
    }
    return { ending: ".parquet", content: bytes };
  },
};
