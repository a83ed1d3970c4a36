import { shown } from "../../core/index";
import { findDetector } from "../../detectors/index";
import { type ColumnTold, contradicted, headingRefused } from "./heading-agrees";
import { headingSays, type Said, saidBy } from "./heading-says";
import { signalIn } from "./heading-spellings";
import type { DelimitedVisitor } from "./row-reading";
import type { UnitsRow } from "./table-form";
import type { WrittenAs } from "./written-as";

/** Units of other columns, and how a date is written there; none of them is a unit of vibration. */
const others =
  /^(?:-+|%|°|deg|°?[CFK]|(?:m|h|k|M)?(?:bar|Pa)|psi|[kM]?(?:W|VA|N|V)|A|Nm|(?:m3|m³|l|t|kg)\/(?:s|min|h)|[dmyhst]{1,4}(?:[-./: T]+[dmyhst]{1,4})+)$/i;
const aNumber = /^[+-]?[.,]?\d/;

/** The text of a cell of units, out of its brackets. */
function plainUnit(cell: string): string {
  return /^[[({<]\s*(.*?)\s*[\])}>]$/.exec(cell.trim())?.[1] ?? cell.trim();
}

function saidByUnit(unit: string): Said | undefined {
  const detector = findDetector(unit);
  return detector === undefined ? saidBy(unit) : { written: unit, detector };
}

function isUnit(cell: string): boolean {
  const unit = plainUnit(cell);
  return others.test(unit) || signalIn(unit) === unit || saidByUnit(unit) !== undefined;
}

/** Whether each cell of a row is a unit, a dash or empty, and one of them a unit. */
function mayBeUnits(cells: readonly string[]): boolean {
  const written = cells.filter((cell) => cell.trim() !== "");
  return written.every(isUnit) && written.some((cell) => !/^-+$/.test(plainUnit(cell)));
}

/** Whether numbers stand below units, and no unit does. */
function isAboveNumbers(units: readonly string[], below: readonly string[]): boolean {
  const cells = below.filter((_, i) => (units[i] as string).trim() !== "").map((cell) => cell.trim());
  return cells.some((cell) => aNumber.test(cell)) && !cells.some((cell) => cell !== "" && isUnit(cell));
}

/**
 * A visitor before whom the header is held back until it is known whether a row of units stands below it: a first row
 * of units and empty cells alone, above numbers. It is no row of the table, and handed over with the header.
 */
export function besideUnits(visitor: DelimitedVisitor) {
  let header: Parameters<DelimitedVisitor["header"]> | undefined;
  let first: UnitsRow | undefined;
  let units: UnitsRow | undefined;
  const open = (): void => {
    if (header === undefined) return;
    const [cells, raw, form] = header;
    const row = units === undefined ? first : undefined;
    header = undefined;
    visitor.header(cells, raw, form, units);
    if (row !== undefined) visitor.row(row.cells, row.raw, row.line);
  };
  const shownTo: DelimitedVisitor = {
    header(...told) {
      header = told;
    },
    row(cells, raw, line) {
      if (header !== undefined) {
        if (first === undefined && mayBeUnits(cells)) {
          first = { cells, raw, line };
          return;
        }
        if (first !== undefined && isAboveNumbers(first.cells, cells)) units = first;
        open();
      }
      visitor.row(cells, raw, line);
    },
    refused(error, raw, line, cells) {
      open();
      visitor.refused(error, raw, line, cells);
    },
  };
  return {
    visitor: shownTo,
    /** Hands over what is held back, when all rows are read. */
    end: open,
    get units(): UnitsRow | undefined {
      return units;
    },
  };
}

/** What a unit tells of its column, where headings can contradict it. */
function toldBy({ unit, detector, level, frequency, time }: Said, by: string): ColumnTold | undefined {
  if (unit !== undefined) return { by, unit, ...(detector !== undefined && { detector }) };
  if (level !== undefined && level !== "dB") return { by, level };
  if (frequency !== undefined) return { by, frequency };
  return time === undefined ? undefined : { by, isTime: true };
}

/** What a heading says that the unit below it does not. */
function otherSaid(heading: string, unit: string, by: string): Said | undefined {
  const said = saidByUnit(unit);
  if (said === undefined) return undefined;
  const says = headingSays(heading);
  const told = toldBy(said, by);
  const detectors = says.filter(({ detector }) => detector !== undefined);
  if (said.time !== undefined) {
    const other = says.find(({ time }) => time !== undefined && time !== said.time);
    if (other !== undefined) return other;
  }
  if (told !== undefined) return contradicted(told, says);
  return detectors.every(({ detector }) => detector !== said.detector) ? detectors[0] : undefined;
}

/**
 * The headings of a table as far as they say units: the unit below a heading stands in brackets behind it.
 *
 * @throws {@link VeladisError} `unknown-option` for a heading that contradicts the unit below it
 */
export function headingsOf(
  header: readonly string[],
  units: UnitsRow | undefined,
  { fileUnits }: WrittenAs,
): readonly string[] {
  if (units === undefined || fileUnits === "none") return header;
  return header.map((heading, i) => {
    const unit = plainUnit(units.cells[i] as string);
    if (unit === "") return heading;
    const by = `${shown(unit)} in the row of units, line ${units.line}`;
    const other = otherSaid(heading, unit, by);
    if (other !== undefined) throw headingRefused(by, other, heading, i);
    return `${heading.trim()} [${unit}]`;
  });
}

/** The unit below a heading; undefined for none. */
export function unitBelow(units: UnitsRow | undefined, index: number, { fileUnits }: WrittenAs): string | undefined {
  const unit = units === undefined || fileUnits === "none" ? "" : plainUnit(units.cells[index] as string);
  return unit === "" ? undefined : unit;
}
