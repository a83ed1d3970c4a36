import { readdir, stat } from "node:fs/promises";
import { basename, extname, join } from "node:path";
import { counted, shown, VeladisError } from "../../core/index";
import type { Plant, RouteReading } from "../../plant/index";
import { amplitudeOf, writtenIn } from "../../reading/index";
import type { WrittenAs } from "../delimited/written-as";
import { levelHistories } from "../input/level-histories";
import type { ReportHistory } from "./machine-report";

/** A file of a history, with the tag of its machine. */
export interface HistoryFile {
  readonly tag: string;
  readonly path: string;
}

const ENDINGS = [".csv", ".tsv", ".txt"];
const plain = (name: string): string => name.trim().toLowerCase();

/** The tag that a history is told for: `TAG=file`, of a tag that the list has. */
function byTag(written: string, tags: ReadonlySet<string>): HistoryFile | undefined {
  for (let at = written.indexOf("="); at > 0; at = written.indexOf("=", at + 1)) {
    const tag = written.slice(0, at).trim();
    if (tags.has(tag)) return { tag, path: written.slice(at + 1) };
  }
  return undefined;
}

/** The files of a folder, each called by the tag of its machine; capital and small letters are one. */
async function ofFolder(folder: string, tags: ReadonlySet<string>): Promise<HistoryFile[]> {
  const names = (await readdir(folder)).filter((name) => ENDINGS.includes(extname(name).toLowerCase())).sort();
  const byName = new Map([...tags].map((tag) => [plain(tag), tag]));
  return names.map((name) => {
    const tag = byName.get(plain(basename(name, extname(name))));
    if (tag !== undefined) return { tag, path: join(folder, name) };
    throw new VeladisError("unknown-option", {
      expected: "files of histories called by the tags of the list, such as LU-01.csv",
      received: `${shown(name)} in ${shown(folder)}`,
      option: "history",
    });
  });
}

/**
 * The files of histories that were told, by tag.
 *
 * @throws {@link VeladisError} `unknown-option` for a tag that the list does not have, `unreadable` for a folder that cannot be
 *   read
 */
export async function historyFiles(told: readonly string[], { machines }: Plant): Promise<HistoryFile[]> {
  const tags = new Set(machines.map(({ tag }) => tag));
  const files: HistoryFile[] = [];
  for (const written of told) {
    const one = byTag(written, tags);
    if (one !== undefined) {
      files.push(one);
      continue;
    }
    const isFolder = await stat(written).then(
      (found) => found.isDirectory(),
      () => false,
    );
    if (!isFolder) {
      throw new VeladisError("unknown-option", {
        expected: "a folder of histories, or TAG=file with a tag of the list",
        received: shown(written),
        option: "history",
      });
    }
    files.push(...(await ofFolder(written, tags)));
  }
  return files;
}

/** The histories of a file, as a page draws them. */
export async function historiesOfFile({ path }: HistoryFile, as: WrittenAs): Promise<ReportHistory[]> {
  const found = await levelHistories(path, as);
  return found.map(({ name, as: type, times, levels, notes }) => ({
    name: `${basename(path)}: ${name}`,
    as: type,
    readings: Array.from(levels, (level, i) => ({
      time: times[i] as Date | number,
      ...(Number.isNaN(level) ? {} : { reading: level }),
    })),
    ...(times[0] instanceof Date ? {} : { timeUnit: "s" }),
    notes,
  }));
}

/** The dated readings of several routes by tag and point, as histories; a point that was read once is none. */
export function historiesOfRoutes(routes: readonly (readonly RouteReading[])[]): Map<string, ReportHistory[]> {
  const points = new Map<string, { readonly tag: string; readonly point: string; readonly read: RouteReading[] }>();
  for (const row of routes.flat()) {
    if (row.date === undefined) continue;
    const { tag, point = "" } = row;
    const key = JSON.stringify([tag, point]);
    const found = points.get(key) ?? { tag, point, read: [] };
    found.read.push(row);
    points.set(key, found);
  }
  const histories = new Map<string, ReportHistory[]>();
  for (const { tag, point, read } of points.values()) {
    const days = new Set(read.map(({ date }) => date));
    const amplitudes = read.map(({ reading }) => amplitudeOf(reading));
    const last = amplitudes.at(-1);
    if (days.size < 2 || last === undefined) continue;
    // one of another quantity has no place on the axis without its frequency
    const isDrawn = amplitudes.map(({ quantity }) => quantity === last.quantity);
    const left = isDrawn.filter((is) => !is).length;
    const history: ReportHistory = {
      name: `Routes${point === "" ? "" : `, ${point}`}`,
      as: writtenIn(last),
      readings: read.flatMap(({ date }, i) =>
        isDrawn[i] ? [{ time: new Date(date as string), reading: amplitudes[i] as typeof last }] : [],
      ),
      notes: left > 0 ? [`Not drawn: ${counted(left, "reading")} of another quantity than ${writtenIn(last)}.`] : [],
    };
    histories.set(tag, [...(histories.get(tag) ?? []), history]);
  }
  return histories;
}
