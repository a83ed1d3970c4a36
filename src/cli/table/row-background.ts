import { cachedWithRefusals, plainNumeral, VeladisError } from "../../core/index";
import { type Amplitude, parseAmplitude } from "../../reading/index";
import { checkBackground, NOT_RELIABLE } from "../../severity/index";
import { contradicted, headingRefused, typeTold } from "../delimited/heading-agrees";
import { headingSays } from "../delimited/heading-says";
import { pointed } from "../delimited/number-cell";
import { headedColumn } from "../input/headed-column";
import { measured } from "../input/signal-column";
import { readingAtRest } from "../options/background-option";
import { rowCache } from "./row-cache";
import type { RowFacts } from "./row-reader";
import { judges, signalOf, type TableSettings } from "./settings";

type Cells = readonly string[];
type Facts = Pick<RowFacts, "value" | "type" | "hertz">;

/** What the reading with the machine stopped says of a row, in words that many rows share. */
export const backgroundTexts = {
  valid: "background: more than 3 times the reading at rest, so that it may be judged",
  "too high": `${NOT_RELIABLE}: not more than 3 times the reading at rest`,
  "not told": "background: no reading at rest in this row",
} as const;

/** Which of these holds for a row. */
export type Background = keyof typeof backgroundTexts;

/** The readings at rest of a column, bare ones in the type of their row. */
function columnOfRest(header: Cells, headings: Cells, column: string, settings: TableSettings) {
  const { written, source } = settings;
  const signal = signalOf(settings);
  const index = headedColumn(header, column, written);
  const { decimalComma } = written;
  const says = written.fileUnits === "none" ? [] : headingSays(headings[index] as string);
  const agrees = cachedWithRefusals((type) => {
    const by = `a reading at rest in ${type}, as its row is`;
    const other = contradicted(typeTold(by, type), says);
    if (other !== undefined) throw headingRefused(by, other, headings[index] as string, index);
    return true;
  }, rowCache);
  return (cells: Cells, type: string): Amplitude | undefined => {
    const written = (cells[index] as string).trim();
    if (written === "") return undefined;
    const cell = decimalComma ? pointed(written) : written;
    if (!plainNumeral.test(cell)) return readingAtRest(cell, source);
    if (signal !== undefined) return parseAmplitude(`${measured(signal, Number(cell))} ${type}`);
    agrees(type);
    return parseAmplitude(`${cell} ${type}`);
  };
}

/**
 * Tells of each row whether its reading stands out from the one with the machine stopped; undefined where none was told.
 *
 * @throws {@link VeladisError} `missing-option` where nothing is judged, `unknown-option` for both of a column and one for
 *   all; later, for a row, what `checkBackground` throws
 */
export function rowBackground(
  header: Cells,
  headings: Cells,
  settings: TableSettings,
): ((cells: Cells, facts: Facts) => Background) | undefined {
  const { column, fixed } = settings.background;
  if (column === undefined && fixed === undefined) return undefined;
  if (!judges(settings)) {
    throw new VeladisError("missing-option", {
      expected: "--machine, --machine-column or --scheme beside the reading at rest: without them nothing is judged",
      received: `--background${column === undefined ? "" : "-column"} alone`,
    });
  }
  if (column !== undefined && fixed !== undefined) {
    throw new VeladisError("unknown-option", {
      expected: "one of --background and --background-column",
      received: "both",
    });
  }
  const ofAll = fixed === undefined ? undefined : readingAtRest(fixed, settings.source);
  const restOf = column === undefined ? () => ofAll : columnOfRest(header, headings, column, settings);
  return (cells, { value, type, hertz }) => {
    const atRest = restOf(cells, type);
    if (atRest === undefined) return "not told";
    const running = parseAmplitude(`${value} ${type}`);
    const { valid } = checkBackground(hertz === undefined ? running : { ...running, hertz }, atRest);
    return valid ? "valid" : "too high";
  };
}
