import { counted } from "../../core/index";
import type { DoubtfulPeriod, TakenResults } from "../../plant/index";
import { signed } from "../../report/index";
import type { KnownCheckResult } from "../../verification/index";
import { dashed, wrapped } from "./wrapped";
import { wrappedTable } from "./wrapped-table";

/** What a device showed, its error and the verdict. */
function shownText(cell: string | undefined, check: KnownCheckResult | null): readonly string[] {
  return check === null ? ["as found"] : [cell ?? "", `${signed(check.errorPercent)} %, ${check.verdict}`];
}

/** A time in which readings are in doubt, in words. */
function doubtText({ tag, from, to, what, why, mend }: DoubtfulPeriod): string {
  const when = `${from === null ? "all readings" : `readings after ${from}`}${to === null ? " and from now on" : ` up to ${to}`}`;
  return `${tag}, ${when}: ${what}; ${why}; ${mend}`;
}

/** Results of checks: what goes into the list, and which readings are in doubt. */
export function resultsText({ results, open }: TakenResults, periods: readonly DoubtfulPeriod[]): string {
  const head = `${counted(results.length, "result")}${open.length > 0 ? `, ${open.length} still open: ${open.map(({ number }) => number).join(", ")}` : ""}`;
  const table = wrappedTable(
    [
      { title: "tag" },
      { title: "check date" },
      { title: "known", wraps: true },
      { title: "as found" },
      { title: "as left" },
      { title: "checked by", wraps: true },
    ],
    results.map(({ tag, date, cells, asFound, asLeft, by }) => [
      [tag],
      [date],
      [cells.known ?? ""],
      shownText(cells["as found"], asFound),
      shownText(cells["as left"], asLeft),
      [by],
    ]),
  );
  const remarks = results.flatMap(({ tag, remarks: own }) => own.map((text) => `${tag}: ${text}`));
  return `${wrapped(head)}${results.length > 0 ? `\n${table}` : ""}${remarks.length > 0 ? `\n${dashed(remarks)}` : ""}${
    periods.length > 0 ? `\nreadings in doubt\n${dashed(periods.map(doubtText))}` : ""
  }`;
}
