import { findDetector } from "../../detectors/index";
import { findUnit } from "../../units/index";

/** A number that a comma for decimals has cut, or could have: digits alone, with points between thousands in front. */
const cutFront = /^[+-]?(\d+|\d{1,3}(\.\d{3})+)$/;
/** What is behind that comma: digits, and perhaps a unit, a mark or a word; no second number, as in a time or a date. */
const cutBehind = /^\d+([eE][+-]?\d+)?((?![.:/-]\d|\.|\d).*)?$/;

/** Whether two cells side by side may be one number. */
function mayBeOne(front: string | undefined, behind: string | undefined): boolean {
  return front !== undefined && behind !== undefined && cutFront.test(front) && cutBehind.test(behind);
}

/** What a comma of the header may be, beside one that separates. */
type Doubt = "in brackets" | "blank" | "unit" | undefined;

/** Whether what is behind a comma may go on with a heading: it begins with a unit or a detector, or is nothing. */
function goesOn(piece: string): boolean {
  const first = piece.split(/[\s()[\]]+/).find((word) => word !== "") ?? "";
  return (
    /^(units?|effektiv\p{L}*|efficace)?$/iu.test(first) ||
    findUnit(first) !== undefined ||
    findDetector(first) !== undefined
  );
}

/** A blank of any kind; what is no UTF-8 is one as well, as a no-break space of Latin-1 is. */
const startsBlank = /^[\s\ufffd]/;

const depthBehind = (text: string, depth: number): number =>
  Math.max(0, depth + text.split(/[([]/).length - text.split(/[)\]]/).length);

/** One for each comma of the header. */
function doubtsOf(pieces: readonly string[]): Doubt[] {
  let depth = 0;
  return pieces.slice(1).map((piece, before) => {
    depth = depthBehind(pieces[before] as string, depth);
    if (depth > 0) return "in brackets";
    if (startsBlank.test(piece)) return "blank";
    return goesOn(piece) ? "unit" : undefined;
  });
}

/** What stands between the commas outside quotes; what was in quotes is none of a number. */
const piecesOf = (line: string): string[] => line.replaceAll(/"(?:[^"]|"")*"/g, '""').split(",");

const cells = (row: string): string[] => piecesOf(row).map((piece) => piece.trim());

/** Whether the pieces of a row between its commas are all digits: one number with a comma for decimals, or several. */
export function mayBeDecimal(row: string): boolean {
  const [front, ...behind] = cells(row);
  return behind.length > 0 && behind.every((piece) => mayBeOne(front, piece));
}

/**
 * The first row of which nobody can tell whether its commas separate or mark the decimals, below a header whose commas
 * may belong to a heading: `Vibration, mm/s` or `Velocity (mm/s,rms)` above `4,9`.
 *
 * @param header - the header's line
 * @param count - how many rows there are below it
 * @param rowText - the text of one of them
 */
export function doubtfulRow(header: string, count: number, rowText: (index: number) => string): number | undefined {
  const pieces = piecesOf(header);
  const doubts = doubtsOf(pieces);
  const rows = Array.from({ length: count }, (_, index) => index);
  // where a blank is behind every comma it may as well be how the file writes its commas
  const isStyle = doubts.every((doubt) => doubt === "blank");
  if (isStyle) return rows.find((row) => mayBeDecimal(rowText(row)));
  const joins = (row: number, comma: number): boolean => {
    const own = piecesOf(rowText(row));
    // a blank behind each of several commas is how the file separates
    if (own.length !== pieces.length || (own.length > 2 && own.slice(1).every((one) => startsBlank.test(one))))
      return false;
    return mayBeOne(own[comma]?.trim(), own[comma + 1]?.trim());
  };
  const commas = [...doubts.keys()];
  const told = commas.filter((comma) => doubts[comma] === "in brackets" || doubts[comma] === "blank");
  const byRow = rows.find(
    (row) => told.some((comma) => joins(row, comma)) || (told.length > 0 && mayBeDecimal(rowText(row))),
  );
  if (byRow !== undefined) return byRow;
  // `time,g` is two columns where any row has a point for decimals, or text
  const byUnit = commas.some(
    (comma) => doubts[comma] === "unit" && count > 0 && rows.every((row) => joins(row, comma)),
  );
  return byUnit ? 0 : undefined;
}
