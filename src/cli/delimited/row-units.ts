import { cached, shown, VeladisError } from "../../core/index";
import { findDetector } from "../../detectors/index";
import { type ColumnTold, contradicted, requireHeadingAgrees } from "./heading-agrees";
import { type Said, saidBy } from "./heading-says";
import type { WrittenAs } from "./written-as";

/** Headings of columns that say what each row is written in. */
const headed = /^(?:units?|detectors?)$/i;

/** What a cell of such a column says: a unit, a type or a detector. */
function cellSays(cell: string): Said | undefined {
  const detector = findDetector(cell);
  return detector === undefined ? saidBy(cell) : { written: cell, detector };
}

/** Whether a cell can hardly be another thing than a unit. */
function isUnit(cell: string): boolean {
  const said = saidBy(cell.trim());
  return said?.unit !== undefined && (said.detector !== undefined || cell.includes("/"));
}

/** What refuses a row, or undefined. */
export type RowRefused = (cells: readonly string[]) => VeladisError | undefined;

/** The columns that were asked for. */
interface ColumnsAsked {
  /** Indices of those of which it is told what they are written in. */
  readonly read: readonly number[];
  /** Indices of the others. */
  readonly others?: readonly number[];
  /** How each row would be read by its own, for the refusal. */
  readonly instead?: string;
}

/**
 * Holds what a file says of units against what is told of all rows: the headings of the columns that are read, and what
 * rows say in a column that nobody asked for. Such a column is headed `unit` or `detector`, or has a rate or a reading
 * type in the first row.
 *
 * @throws {@link VeladisError} `unknown-option` for a heading that contradicts what is told
 */
export function rowUnitsRefusal(
  header: readonly string[],
  { read, others = [], instead = "" }: ColumnsAsked,
  told: ColumnTold,
  written: WrittenAs,
): RowRefused {
  if (written.fileUnits === "none") return () => undefined;
  for (const index of read) requireHeadingAgrees(header, index, told, written);
  const used = [...read, ...others];
  let columns: readonly number[] | undefined;
  const differs = cached((cell) => {
    const said = cellSays(cell);
    return said === undefined || contradicted(told, [said]) !== undefined;
  });
  return (cells) => {
    columns ??= header.flatMap((heading, i) =>
      !used.includes(i) && (headed.test(heading.trim()) || isUnit(cells[i] as string)) ? [i] : [],
    );
    for (const index of columns) {
      const cell = (cells[index] as string).trim();
      if (cell === "" || !differs(cell)) continue;
      return new VeladisError("unknown-option", {
        expected: `rows in one unit and detector, as ${told.by} tells; ${instead}--file-units none passes over column ${index + 1}`,
        received: `${shown(cell)} in column ${index + 1} ${shown(header[index]?.trim())}`,
      });
    }
    return undefined;
  };
}
