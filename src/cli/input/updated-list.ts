import { cellText, shown, VeladisError } from "../../core/index";
import { type PlantColumn, plantHeadings, type TakenResult } from "../../plant/index";
import { bytesOf, quotedCell } from "../delimited/cells";
import { accountOf, readDelimited } from "../delimited/read-delimited";
import type { TableForm } from "../delimited/table-form";
import type { WrittenAs } from "../delimited/written-as";
import { openFile } from "./open-file";

/** The list as bytes, how it is written, and the cells of each line. */
interface ReadList {
  readonly bytes: string;
  readonly form: TableForm;
  readonly heading: readonly string[];
  readonly rows: ReadonlyMap<number, readonly string[]>;
}

async function readList(file: string, as: WrittenAs): Promise<ReadList> {
  const portions: Buffer[] = [];
  for await (const portion of await openFile(file)) portions.push(portion);
  const rows = new Map<number, readonly string[]>();
  let form: TableForm | undefined;
  let heading: readonly string[] = [];
  await accountOf(
    readDelimited(await openFile(file), file, as, {
      header(cells, _raw, told) {
        heading = cells;
        form = told;
      },
      row: (cells, _raw, line) => void rows.set(line, cells),
      refused: () => undefined,
    }),
  );
  return { bytes: Buffer.concat(portions).toString("latin1"), form: form as TableForm, heading, rows };
}

/** Where each cell of the row begins and ends that starts at a place; quotation marks belong to their cell. */
function cellPlaces(bytes: string, start: number, { separator, lineEnd, quotes }: TableForm): readonly (readonly [number, number])[] {
  const end = lineEnd.at(-1) as string;
  const places: [number, number][] = [];
  let [from, at, isQuoted] = [start, start, false];
  for (; at < bytes.length && (isQuoted || bytes[at] !== end); at++) {
    if (bytes[at] === '"' && quotes === undefined) isQuoted = !isQuoted;
    else if (!isQuoted && bytes[at] === separator) {
      places.push([from, at]);
      from = at + 1;
    }
  }
  const last = bytes[at - 1] === "\r" && end === "\n" ? at - 1 : at;
  return [...places, [from, last]];
}

/** Where a line begins. */
function startOf(bytes: string, line: number, end: string, mark: number): number {
  let at = line === 1 ? mark : 0;
  for (let i = 1; i < line; i++) at = bytes.indexOf(end, at) + 1;
  return at;
}

/** A text as bytes of the file's encoding. */
function encoded(text: string, encoding: string): string {
  if (encoding === "utf-8") return bytesOf(text);
  const bytes = Buffer.from(text, "latin1").toString("latin1");
  if (bytes === text) return bytes;
  throw new VeladisError("out-of-range", { expected: "text that Latin-1 can write, in a file of that encoding", received: shown(text) });
}

function requireColumns(columns: ReadonlyMap<PlantColumn, number>, results: readonly TakenResult[]): void {
  const needed = new Set(results.flatMap(({ cells }) => Object.keys(cells) as PlantColumn[]));
  const lacks = [...needed].filter((column) => !columns.has(column));
  if (lacks.length === 0) return;
  throw new VeladisError("missing-fact", {
    expected: `a list with the ${lacks.length === 1 ? "column" : "columns"} ${lacks.join(", ")}, empty where nothing is known`,
    received: "a list without",
    option: "out",
  });
}

/**
 * The bytes of a list in which the cells of checks are new; every other byte is as it was.
 *
 * @throws {@link VeladisError} `missing-fact` for a list without one of the columns, `unreadable` for one that has changed since
 *   it was read, `out-of-range` for an encoding or a text that cannot be written
 */
export async function updatedList(file: string, as: WrittenAs, own: readonly string[], results: readonly TakenResult[]): Promise<Uint8Array> {
  const { bytes, form, heading, rows } = await readList(file, as);
  const { encoding = "utf-8", lineEnd, separator, mark, quotes } = form;
  if (encoding.startsWith("utf-16")) {
    throw new VeladisError("out-of-range", { expected: "a list in UTF-8 or Latin-1 to be written again", received: encoding, option: "out" });
  }
  const { columns } = plantHeadings(heading, own);
  requireColumns(columns, results);
  const edits: { from: number; to: number; text: string }[] = [];
  // the last result of a machine is what the list holds
  const latest = new Map(results.map((one) => [one.machineLine, one]));
  for (const [line, { tag, cells }] of latest) {
    const places = cellPlaces(bytes, startOf(bytes, line, lineEnd.at(-1) as string, mark.length), form);
    if (rows.get(line)?.[columns.get("tag") as number]?.trim() !== tag || places.length !== heading.length) {
      throw new VeladisError("unreadable", { expected: `the row of ${tag} at line ${line}, as it was read`, received: "another one", option: "out" });
    }
    for (const [column, cell] of Object.entries(cells) as [PlantColumn, string][]) {
      const [from, to] = places[columns.get(column) as number] as readonly [number, number];
      const text = as.decimalComma && column !== "check date" ? cell.replace(/(?<=\d)\.(?=\d)/g, ",") : cell;
      const plain = quotes === undefined ? quotedCell(cellText(text), separator) : cellText(text).replaceAll(separator, " ");
      edits.push({ from, to, text: encoded(plain, encoding) });
    }
  }
  let updated = bytes;
  for (const { from, to, text } of edits.sort((a, b) => b.from - a.from)) updated = updated.slice(0, from) + text + updated.slice(to);
  return Buffer.from(updated, "latin1");
}
