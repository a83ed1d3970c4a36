import { pointedWords, shown, VeladisError } from "../../core/index";
import type { NamedMachine, RefusedMachine } from "../../sql/index";
import { columnIndex } from "../delimited/column-index";
import { accountOf, type RowAccount, readDelimited } from "../delimited/read-delimited";
import type { WrittenAs } from "../delimited/written-as";
import { openFile } from "./open-file";

/** A row of a list that names no machine, with its line. */
interface RefusedRow {
  readonly line: number;
  readonly error: VeladisError;
}

/** A machine of a list with its line; one whose words or name cannot be read, with the reason. */
type ListedMachine = (NamedMachine | RefusedMachine) & { readonly line: number };

/** A list of machines as read: each name once. Of a name that comes twice neither row judges. */
export interface MachineList {
  readonly machines: readonly ListedMachine[];
  readonly refused: readonly RefusedRow[];
  readonly account: RowAccount;
}

/** Which columns of a list are read. */
export interface ListColumns {
  /** The column that names the machine. */
  readonly name: string;
  /** Columns of words on it; empty for all others. */
  readonly words: readonly string[];
}

/** The words on a machine: the cells of its columns that are not empty, with commas between. */
function wordsOf(cells: readonly string[], columns: readonly number[], { decimalComma }: WrittenAs): string {
  return columns
    .map((column) => pointedWords((cells[column] as string).trim(), decimalComma))
    .filter((text) => text !== "")
    .join(", ");
}

/** The words on a machine, or why they cannot be read. */
function machineOrError(words: () => string): { readonly machine: string } | { readonly error: VeladisError } {
  try {
    return { machine: words() };
  } catch (error) {
    if (!VeladisError.is(error)) throw error;
    return { error };
  }
}

/**
 * The machines of a list in delimited text: a row each, with a name and words.
 *
 * @throws {@link VeladisError} for a file or columns that cannot be read
 */
export async function machineList(path: string, as: WrittenAs, columns: ListColumns): Promise<MachineList> {
  const machines = new Map<string, ListedMachine>();
  const refused: RefusedRow[] = [];
  let [name, words]: [number, number[]] = [0, []];
  const reading = readDelimited(await openFile(path), path, as, {
    header(cells) {
      name = columnIndex(cells, columns.name);
      const told = columns.words.map((one) => columnIndex(cells, one));
      words = told.length > 0 ? told : cells.map((_, i) => i).filter((i) => i !== name);
    },
    row(cells, _, line) {
      const text = (cells[name] as string).trim();
      const before = machines.get(text);
      const unnamed = (received: string): VeladisError =>
        new VeladisError("syntax", { expected: "a name of its own for each machine", received });
      if (text === "" || before !== undefined) {
        const received = before === undefined ? "an empty cell" : `${shown(text)}, as on line ${before.line}`;
        refused.push({ line, error: unnamed(received) });
      }
      if (before !== undefined) {
        const error = unnamed(`more than one machine of this name, ${shown(text)}: lines ${before.line} and ${line}`);
        machines.set(text, { name: text, error, line: before.line });
      } else if (text !== "") {
        machines.set(text, { name: text, line, ...machineOrError(() => wordsOf(cells, words, as)) });
      }
    },
    refused: (error, _, line) => void refused.push({ line, error }),
  });
  const account = await accountOf(reading);
  return { machines: [...machines.values()], refused, account };
}
