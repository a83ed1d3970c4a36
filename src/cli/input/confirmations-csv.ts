import { cellText, provenances } from "../../core/index";
import { type ConfirmableLimit, confirmableLimits, type Scheme } from "../../severity/index";
import { quotedCell } from "../delimited/cells";
import { confirmationTitles } from "./confirmation-columns";
import { type ConfirmationCells, signatureLine } from "./confirmation-signature";

function cellsOf({
  scheme,
  edition,
  row,
  limit,
  as,
  shipped,
  provenance,
  source,
}: ConfirmableLimit): ConfirmationCells {
  const grade = provenances[provenance].cell;
  return { scheme, edition, row, limit, as, shipped: `${shipped}`, grade, where: source.where ?? "" };
}

function lineOf(cells: ConfirmationCells): string {
  return confirmationTitles.map((name) => quotedCell(cellText(cells[name] ?? ""), ",")).join(",");
}

/**
 * The file of confirmations of schemes, ready to be filled in: a line for the signature, and one for each limit that is not
 * confirmed yet.
 */
export function confirmationsCsv(schemes: readonly Scheme[]): string {
  const rows = schemes.flatMap((scheme) => {
    const left = confirmableLimits(scheme).filter(({ provenance }) => provenance !== "confirmed");
    const { id, edition } = scheme;
    const signature = left.length > 0 ? [lineOf({ scheme: id, edition, ...signatureLine })] : [];
    return [...signature, ...left.map((one) => lineOf(cellsOf(one)))];
  });
  return `${[confirmationTitles.join(","), ...rows].join("\n")}\n`;
}
