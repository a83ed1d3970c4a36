import { convertAmplitude } from "../amplitude/index";
import { attempt, numeralAndUnit, parseNumeral } from "../core/index";
import { parseAmplitude } from "../reading/index";
import { type CellKind, type PlantColumn, plantColumns } from "./columns";

function isSame(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));
}

/** A text without blanks that mean nothing. */
function plain(text: string): string {
  return text.trim().replace(/\s+/g, " ");
}

function isSameReading(one: string, other: string): boolean {
  const read = attempt(() => [parseAmplitude(one), parseAmplitude(other)] as const);
  if (!read.ok) return false;
  const [a, b] = read.value;
  if ((a.hertz === undefined) !== (b.hertz === undefined)) return false;
  if (a.hertz !== undefined && !isSame(a.hertz, b.hertz as number)) return false;
  if (a.detector !== b.detector) return false;
  const as = attempt(() => convertAmplitude(b, `${a.unit} ${a.detector}`));
  return as.ok && isSame(a.value, as.value.value);
}

function isSameAmount(one: string, other: string): boolean {
  const read = attempt(() => {
    const [digits, unit] = numeralAndUnit(one, "an amount");
    const [digits2, unit2] = numeralAndUnit(other, "an amount");
    return unit === unit2 && isSame(parseNumeral(digits), parseNumeral(digits2));
  });
  return (read.ok && read.value) || isSameReading(one, other);
}

const ways: Readonly<Record<CellKind, (one: string, other: string) => boolean>> = {
  text: () => false,
  date: () => false,
  choice: (one, other) => one.toLowerCase() === other.toLowerCase(),
  number(one, other) {
    const read = attempt(() => isSame(parseNumeral(one), parseNumeral(other)));
    return read.ok && read.value;
  },
  reading: isSameReading,
  amount: isSameAmount,
};

/** Whether two cells of a column say the same: as a number or a reading where it holds one, else by their words. */
export function isSameCell(column: PlantColumn, one: string, other: string): boolean {
  const [a, b] = [plain(one), plain(other)];
  return a === b || (a !== "" && b !== "" && ways[plantColumns[column].holds](a, b));
}
