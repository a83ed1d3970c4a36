import { cellText, provenances } from "../../core/index";
import { type ConfirmableLimit, confirmableLimits, type Scheme } from "../../severity/index";
import { quotedCell } from "../delimited/cells";
import { type ConfirmationColumn, confirmationTitles } from "./confirmation-columns";

function cellsOf({
  scheme,
  edition,
  row,
  limit,
  as,
  shipped,
  provenance,
  source,
}: ConfirmableLimit): Partial<Record<ConfirmationColumn, string>> {
  const grade = provenances[provenance].cell;
  return { scheme, edition, row, limit, as, shipped: `${shipped}`, grade, where: source.where ?? "" };
}

/** The file of confirmations of schemes, ready to be filled in: a row for each limit that is not confirmed yet. */
export function confirmationsCsv(schemes: readonly Scheme[]): string {
  const rows = schemes
    .flatMap((scheme) => confirmableLimits(scheme))
    .filter(({ provenance }) => provenance !== "confirmed")
    .map((one) => {
      const cells = cellsOf(one);
      return confirmationTitles.map((name) => quotedCell(cellText(cells[name] ?? ""), ",")).join(",");
    });
  return `${[confirmationTitles.join(","), ...rows].join("\n")}\n`;
}
