import { plainNumeral } from "../../core/index";
import { numberCell, pointed } from "../delimited/number-cell";

/** A short plain decimal, exactly: digits and power of ten are both whole numbers that 64 bits hold. */
function shortNumber(cell: string): number {
  const { length } = cell;
  if (length === 0 || length > 15) return Number.NaN;
  let digits = 0;
  let point = -1;
  for (let i = 0; i < length; i++) {
    const code = cell.charCodeAt(i) - 48;
    if (code >= 0 && code <= 9) digits = digits * 10 + code;
    else if (code === -2 && point < 0) point = i;
    else return Number.NaN;
  }
  if (point < 0) return digits;
  return length === 1 ? Number.NaN : digits / (tens[length - point - 1] as number);
}

const tens = Array.from({ length: 16 }, (_, power) => 10 ** power);

/** The number of a cell; a short plain one without the engine's parser. */
export function numberIn(cell: string, decimalComma: boolean): number {
  const text = decimalComma ? pointed(cell) : cell;
  const short = shortNumber(text);
  if (short >= 0) return short;
  const value = plainNumeral.test(text) ? Number(text) : Number.NaN;
  return Number.isFinite(value) ? value : numberCell(cell, "a reading", decimalComma);
}
