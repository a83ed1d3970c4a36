import { cachedWithRefusals, shown } from "../../core/index";
import { unitSymbol } from "../../units/index";
import { type ColumnTold, contradicted, headingRefused, typeTold } from "../delimited/heading-agrees";
import { headingSays } from "../delimited/heading-says";
import { rowUnitsRefusal } from "../delimited/row-units";
import { headedColumn } from "../input/headed-column";
import { rowCache } from "./row-cache";
import { signalOf, type TableSettings } from "./settings";

type Cells = readonly string[];

/** What the options tell of the readings of all rows; undefined where each says its own. */
function toldOfAll(settings: TableSettings): ColumnTold | undefined {
  const { from, detector } = settings;
  if (from.fixed === undefined) return undefined;
  const signal = signalOf(settings);
  if (signal !== undefined) return signal.told;
  const by = `--from ${shown(from.fixed)}`;
  if (detector.column !== undefined) return { by, unit: unitSymbol(from.fixed) };
  if (detector.fixed === undefined) return typeTold(by, from.fixed);
  return typeTold(`${by} --detector ${shown(detector.fixed)}`, `${from.fixed} ${detector.fixed}`);
}

/**
 * What refuses a row by what it says of its unit: in its type, against the heading of the readings, or in a column that
 * nobody asked for.
 *
 * @param headings - the header with the units of a row below it
 * @param value - index of the column of readings
 * @throws {@link VeladisError} `unknown-option` for a heading that contradicts what is told of all rows
 */
export function unitCheck(
  header: Cells,
  headings: Cells,
  value: number,
  settings: TableSettings,
): (cells: Cells, type: string) => void {
  const { written, from, detector, at, speedColumn, machineColumns } = settings;
  const told = toldOfAll(settings);
  if (told !== undefined) {
    const asked = [from.column, detector.column, at.column, speedColumn, ...machineColumns];
    const others = asked.flatMap((column) => (column === undefined ? [] : [headedColumn(header, column, written)]));
    const instead = "--from-column reads each row by its own, ";
    const refused = rowUnitsRefusal(headings, { read: [value], others, instead }, told, written);
    return (cells) => {
      const error = refused(cells);
      if (error !== undefined) throw error;
    };
  }
  const heading = headings[value] as string;
  const says = written.fileUnits === "none" ? [] : headingSays(heading);
  if (says.length === 0) return () => undefined;
  const check = cachedWithRefusals((type) => {
    const by = `a row in ${shown(type)}`;
    const other = contradicted(typeTold(by, type), says);
    if (other !== undefined) throw headingRefused(by, other, heading, value);
    return true;
  }, rowCache);
  return (_, type) => void check(type);
}
