import { type PlantColumnEntry, plantColumns } from "../../plant/index";
import { wrappedTable } from "./wrapped-table";

/** The words for what the cells of a column hold. */
const holding = {
  text: "text",
  number: "number",
  reading: "reading",
  amount: "% or reading",
  date: "date",
  choice: "word",
} as const satisfies Record<PlantColumnEntry["holds"], string>;

/** What each column of a plant's list holds, as a table at most 100 columns wide. */
export function plantColumnsText(): string {
  const rows = Object.entries<PlantColumnEntry>(plantColumns).map(([name, { holds, says, example }]) => [
    [name],
    [holding[holds]],
    [says],
    [example],
  ]);
  return wrappedTable(
    [
      { title: "column" },
      { title: "holds" },
      { title: "what it says", wraps: true },
      { title: "example", wraps: true },
    ],
    rows,
  );
}
