import { plainNumerals, splitNumeral, VeladisError } from "../../core/index";
import { frequency, hertz as hertzOf } from "../../frequency/index";
import type { Amplitude } from "../../reading/index";
import { uncertainAmplitude } from "../../uncertainty/index";
import { cellShown, type Unread } from "./level-cell";

/** A column of frequencies or speeds. */
export interface PointFrequencies {
  readonly index: number;
  /** A known level at the frequency of its cell, or what stands there instead. */
  readonly place: (cell: string, known: string | Amplitude) => { readonly known: Amplitude } | Unread;
}

const EXPECTED = 'a frequency with its unit, in the cell or in the heading, as in "frequency (Hz)" or "speed (r/min)"';

/** The unit in brackets behind a heading. */
function unitOf(heading: string): string | undefined {
  return /(?:\(([^)]+)\)|\[([^\]]+)\])\s*$/.exec(heading)?.slice(1).find(Boolean)?.trim();
}

/**
 * The column that is headed `frequency` or `speed`; undefined without one.
 *
 * @throws {@link VeladisError} `out-of-range` for several
 */
export function pointFrequencies(
  plain: readonly string[],
  headings: readonly string[],
  decimalComma: boolean,
): PointFrequencies | undefined {
  const found = plain.flatMap((title, i) => (title === "frequency" || title === "speed" ? [i] : []));
  const [index, ...more] = found;
  if (index === undefined) return undefined;
  if (more.length > 0) {
    throw new VeladisError("out-of-range", {
      expected: "one column of frequencies or speeds",
      received: found.map((i) => headings[i]).join(" and "),
    });
  }
  const unit = unitOf(headings[index] as string);
  return {
    index,
    place(cell, level) {
      const text = decimalComma ? plainNumerals(cell.trim(), { decimal: "," }) : cell.trim();
      const known = typeof level === "string" ? uncertainAmplitude(level) : level;
      try {
        const [digits, own] = splitNumeral(text);
        const hertz = hertzOf(frequency(digits !== "" && own === "" && unit !== undefined ? `${text} ${unit}` : text));
        const isOther = known.hertz !== undefined && Math.abs(known.hertz - hertz) > 1e-6 * hertz;
        if (isOther)
          return { what: `${cellShown(text)} beside a level at ${known.hertz} Hz`, expected: "one frequency" };
        return { known: { ...known, hertz } };
      } catch (error) {
        if (!VeladisError.is(error)) throw error;
        return { what: cellShown(text), expected: EXPECTED };
      }
    },
  };
}
