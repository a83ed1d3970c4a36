import { requireChoice, shown, VeladisError } from "../../core/index";
import { type FrequencyUnitSymbol, findFrequencyUnit, frequency, frequencyUnits } from "../../frequency/index";
import { columnsListed } from "../delimited/column-index";
import { headingSays } from "../delimited/heading-says";
import type { WrittenAs } from "../delimited/written-as";
import { densityIn } from "./density-heading";
import { headedColumn } from "./headed-column";

/** What a column of frequencies is written in: a unit, or multiples of the running speed. */
export type FrequencyIn = FrequencyUnitSymbol | "orders";

/** What is told of a column of frequencies. */
export interface FrequencyTold {
  /** Name or number. */
  readonly column: string | undefined;
  readonly unit: string | undefined;
  /** Speed of the shaft in hertz, for orders. */
  readonly shaft: number | undefined;
}

/** A heading of multiples of the running speed. */
const orders = /^(?:orders?|x ?(?:speed|rpm|r\/min)|multiples?)\b/i;

/** What a heading says of frequencies: its unit, `unsaid` for a frequency without one, undefined for another column. */
function frequencySaid(heading: string): FrequencyIn | "unsaid" | undefined {
  if (densityIn(heading) !== undefined) return undefined;
  const says = headingSays(heading);
  if (says.some(({ unit, level }) => unit !== undefined || level !== undefined)) return undefined;
  if (orders.test(heading.trim())) return "orders";
  const unit = says.find(({ frequency }) => frequency !== undefined)?.frequency;
  return unit ?? (says.some(({ axis }) => axis === "frequency") ? "unsaid" : undefined);
}

/**
 * Index of the column of frequencies: the one that is told, else the only one that its heading tells, else the first of two.
 *
 * @throws {@link VeladisError} `missing-option` where that leaves none or several
 */
function frequencyIndex(
  header: readonly string[],
  headings: readonly string[],
  { column }: FrequencyTold,
  written: WrittenAs,
): number {
  if (column !== undefined) return headedColumn(header, column, written);
  const found = headings.flatMap((heading, i) =>
    written.fileUnits !== "none" && frequencySaid(heading) !== undefined ? [i] : [],
  );
  if (found.length === 1) return headedColumn(header, found[0] as number, written);
  if (found.length === 0 && header.length === 2) return headedColumn(header, 0, written);
  throw new VeladisError("missing-option", {
    expected: "which of the columns holds the frequencies, as in --at-column frequency",
    received: found.length === 0 ? `${header.length} columns` : `${found.length} columns of frequencies`,
    allowed: columnsListed(header),
  });
}

/** The unit that is told, orders too. */
function unitTold(unit: string): FrequencyIn {
  if (/^(?:orders?|x)$/i.test(unit.trim())) return "orders";
  const found = findFrequencyUnit(unit);
  return (
    found ??
    requireChoice(
      unit as FrequencyIn,
      [...(Object.keys(frequencyUnits) as FrequencyIn[]), "orders"],
      "--at-unit, the unit of the frequencies, or orders",
    )
  );
}

/**
 * The column of frequencies, what it is written in, and how many hertz a number there is.
 *
 * @throws {@link VeladisError} `missing-option` for a unit or a speed that is not told, `unknown-option` for a heading that
 *   contradicts the unit
 */
export function frequencyColumn(
  header: readonly string[],
  headings: readonly string[],
  told: FrequencyTold,
  written: WrittenAs,
): { readonly index: number; readonly unit: FrequencyIn; readonly hertz: number } {
  const index = frequencyIndex(header, headings, told, written);
  const heading = (headings[index] as string).trim();
  const said = written.fileUnits === "none" ? undefined : frequencySaid(heading);
  const asked = told.unit === undefined ? undefined : unitTold(told.unit);
  if (asked !== undefined && said !== undefined && said !== "unsaid" && said !== asked) {
    throw new VeladisError("unknown-option", {
      expected: "frequencies in what their heading says, or --file-units none where it is wrong",
      received: `--at-unit ${asked}, and the heading ${shown(heading)}`,
    });
  }
  const unit = asked ?? (said === "unsaid" ? undefined : said);
  if (unit === undefined) {
    throw new VeladisError("missing-option", {
      expected: "--at-unit such as Hz, r/min or orders: between Hz and r/min lies a factor of 60",
      received: `the heading ${shown(heading)}, which says none`,
    });
  }
  if (unit !== "orders") return { index, unit, hertz: frequency(`1 ${unit}`).hertz };
  if (told.shaft !== undefined) return { index, unit, hertz: told.shaft };
  throw new VeladisError("missing-option", {
    expected: '--speed such as "1180 r/min": frequencies in orders are multiples of it',
    received: "nothing",
  });
}
