import { indexPage } from "./index-page";
import { machinePage, type Neighbour } from "./machine-page";
import type { MachineReport, Standing } from "./machine-report";
import { pageNames } from "./page-names";
import type { ReportHead } from "./report-head";
import { rankOf } from "./standing";

/** A page by the name of its file. */
export interface ReportPage {
  readonly name: string;
  readonly text: string;
}

export const INDEX = "index.html";

/**
 * The pages of a report, one after another, so that no more than one is held: those of the machines, worst first, and the
 * index at the end.
 *
 * @param standings - how each machine stands, in the order of the list
 * @param reportOf - all that is told of the machine of a standing, made when its page is
 */
export async function* reportPages(
  head: ReportHead,
  standings: readonly Standing[],
  reportOf: (standing: Standing) => Promise<MachineReport>,
): AsyncGenerator<ReportPage> {
  const tags = standings.map(({ machine }) => machine.tag);
  const names = pageNames(tags, ["index"]);
  // sorting keeps the order of the list among equals
  const rows = standings
    .map((standing, i) => ({ standing, page: names[i] as string, rank: rankOf(standing) }))
    .sort((a, b) => b.rank - a.rank);
  const neighbour = (at: number): Neighbour | undefined => {
    const row = rows[at];
    return row && { tag: row.standing.machine.tag, page: row.page };
  };
  for (const [at, { standing, page }] of rows.entries()) {
    const beside = { index: INDEX, before: neighbour(at - 1), next: neighbour(at + 1) };
    yield { name: page, text: machinePage(await reportOf(standing), head, beside) };
  }
  const listed = rows.map(({ standing, page }) => ({ ...standing, page }));
  yield { name: INDEX, text: indexPage(head, listed) };
}
