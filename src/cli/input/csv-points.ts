import type { Readable } from "node:stream";
import { parseNumeral, shown, VeladisError } from "../../core/index";
import { readingType } from "../../reading/index";
import { csvRows } from "./csv-rows";

/** Known and indicated levels from CSV with columns of these names. */
export async function csvPoints(stream: Readable, from: string): Promise<{ known: string; indicated: string }[]> {
  const type = readingType(from);
  const points: { known: string; indicated: string }[] = [];
  let columns: [number, number] | undefined;
  for await (const { cells, line } of csvRows(stream)) {
    if (columns === undefined) {
      columns = [cells.indexOf("known"), cells.indexOf("indicated")];
      if (columns.includes(-1)) {
        throw new VeladisError("missing-fact", {
          expected: "a header with the columns known and indicated",
          received: shown(cells.join(",")),
        });
      }
      continue;
    }
    const [known, indicated] = columns.map((column) => parseNumeral(cells[column] ?? "", `a level at line ${line}`));
    points.push({ known: `${known} ${type}`, indicated: `${indicated} ${type}` });
  }
  return points;
}
