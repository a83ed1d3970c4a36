import { provenances } from "../../core/index";
import type { CitedSources } from "./cited-sources";
import { bullets, section, table } from "./list-parts";
import type { MachineReport } from "./machine-report";
import { type Markup, markup } from "./markup";

const titles = ["limit", "level", "how it is known", "source"];

/** The limits of each table that is for the machine, with grade and source. */
export function limitsSection({ limits }: MachineReport, sources: CitedSources): Markup | undefined {
  const parts = limits.map(({ title, limits: rows, notes }) => {
    const cells = rows.map(({ name, level, source }) => [
      name,
      level,
      provenances[source.provenance].text,
      sources.cite(source),
    ]);
    return markup`${table(title, titles, cells, ["limit", "level"])}${bullets(notes)}`;
  });
  return section("limits", "Limits", ...parts);
}
