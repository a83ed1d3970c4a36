import { plainNumeral, shown, VeladisError } from "../../core/index";
import { PLUS_MINUS } from "../../reading/index";
import { isOverRange } from "./over-range";

/** What stands in a row in the place of what was to be read. */
export interface Unread {
  /** In words, for the count: `empty`, `"N/A"`. */
  readonly what: string;
  /** Why such a row may not be left out. */
  readonly never?: NeverLeftOut;
  /** What would have been right, where that is more than the row's. */
  readonly expected?: string;
}

/** Why a row may not be left out: the level was beyond the range, is there and written otherwise, or should be there. */
export type NeverLeftOut = "over range" | "decimals" | "unit" | "uncertainty" | "uncertain level" | "no level shown";

/** What a cell says where there was no good signal. */
export const faultWord = /^(?:fault|nan)?$/i;

const otherwiseWritten = { comma: /^[+-]?\d*\.\d+$/, point: /^[+-]?\d*,\d+$/ } as const;

/** A level with its uncertainty, which is no bad one. */
const uncertain = /* @__PURE__ */ new RegExp(`^[+-]?[\\d.,]+\\s*(?:${PLUS_MINUS.source})`);

/** What is told of a text at most. */
const LONGEST = 24;

/** A text as it is told: in quotes, cut. */
export function cellShown(text: string): string {
  return text === "" ? "empty" : shown(text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text);
}

/** The number that a cell says, or what stands there instead. */
export function levelCell(cell: string, decimalComma: boolean): number | Unread {
  const text = cell.trim();
  const pointed = decimalComma ? (text.includes(".") ? "" : text.replace(",", ".")) : text;
  const value = plainNumeral.test(pointed) ? Number(pointed) : Number.NaN;
  if (Number.isFinite(value)) return value;
  if (isOverRange(pointed) || isOverRange(text)) return { what: cellShown(text), never: "over range" };
  if (otherwiseWritten[decimalComma ? "comma" : "point"].test(text))
    return { what: cellShown(text), never: "decimals" };
  return uncertain.test(text) ? { what: cellShown(text), never: "uncertainty" } : { what: cellShown(text) };
}

/** Takes the time that a cell says; what stands there where it says none. */
export function takeTime(cell: string, take: () => void): Unread | undefined {
  try {
    take();
    return undefined;
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    return { what: `time ${cellShown(cell.trim())}`, expected: error.expected };
  }
}
