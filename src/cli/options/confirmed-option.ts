import { counted, jsonText, VeladisError, visibleText } from "../../core/index";
import type { Scheme } from "../../severity/index";
import type { Io } from "../input/io";
import { MOST_LINES } from "../input/row-lines";
import { failureText } from "../print/failure";
import { ownScheme } from "./named-scheme";

function lineOf({ expected }: VeladisError): number {
  return Number(/^line (\d+) of /.exec(expected)?.[1] ?? 0);
}

/** Tells the first faults where they are several; the error for all of them. */
function refusalOf(faults: readonly VeladisError[], io: Io, json: boolean): VeladisError {
  const [first, ...more] = [...faults].sort((a, b) => lineOf(a) - lineOf(b)) as [VeladisError, ...VeladisError[]];
  if (more.length === 0) return first;
  for (const fault of [first, ...more].slice(0, MOST_LINES)) io.err(failureText(fault, json));
  return new VeladisError(first.code, {
    expected: "confirmations without a fault: one refuses them all",
    received: `${faults.length} with one, ${faults.length > MOST_LINES ? `the first ${MOST_LINES} of them` : "all"} told above`,
  });
}

/** What is told of lines in a file that were passed over as remarks. */
function remarksText(file: string, remarks: number, json: boolean): string {
  if (json) return `${jsonText({ confirmed: { file, remarks } })}\n`;
  const lines = counted(remarks, "line");
  return `${visibleText(file)}: ${lines} with # in front passed over as ${remarks === 1 ? "a remark" : "remarks"}\n`;
}

/** The built-in schemes and those in files that are named, which stand in the place of a built-in one with their id. */
export async function schemesBeside(names: readonly string[]): Promise<readonly Scheme[]> {
  const { builtInSchemes } = await import("../../severity/index");
  const read = await Promise.all([...new Set(names)].map(ownScheme));
  const own = read.filter((scheme) => scheme !== undefined);
  return [...builtInSchemes.filter(({ id }) => own.every((scheme) => scheme.id !== id)), ...own];
}

/**
 * The built-in schemes and those of one's own that are named, with what the files of `--confirmed` confirm; undefined without a file. Lines that were passed over
 * are told on standard error, and so is each fault where there are several.
 *
 * @param named - what schemes are named by beside it: ids, and files with one's own
 * @throws {@link VeladisError} for a file or a row that is refused: nothing of any file is taken then
 */
export async function confirmedOption(
  files: readonly string[],
  io: Io,
  json = false,
  named: readonly (string | undefined)[] = [],
): Promise<readonly Scheme[] | undefined> {
  if (files.length === 0) return undefined;
  const { confirmationsOfFile } = await import("../input/confirmations-file");
  const { confirmedSchemes } = await import("../../severity/index");
  const { confirmationFaults } = await import("../input/confirmation-faults");
  const all = [];
  const faults: VeladisError[] = [];
  for (const file of files) {
    const read = await confirmationsOfFile(file);
    if (read.remarks > 0) io.err(remarksText(file, read.remarks, json));
    all.push(...read.confirmations);
    faults.push(...read.faults);
  }
  const schemes = await schemesBeside(named.filter((name) => name !== undefined));
  faults.push(...confirmationFaults(all, schemes));
  if (faults.length > 0) throw refusalOf(faults, io, json);
  return confirmedSchemes(all, schemes);
}
