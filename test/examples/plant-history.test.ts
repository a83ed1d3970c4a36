import { mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import { afterAll, describe, expect, it } from "vitest";
import { type Fence, pageFences, root } from "./fences";
import { runInShell } from "./run-shell";

const page = "docs/guides/plant-history.md";
const folder = mkdtempSync(join(tmpdir(), "veladis-history-"));
symlinkSync(join(root, "docs"), join(folder, "docs"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const connection = await (await DuckDBInstance.create(":memory:")).connect();
const rowsOf = async (sql: string): Promise<string[]> =>
  (await connection.runAndReadAll(sql)).getRows().map((row) => row.map(String).join(" | "));

/** The SQL of a fence as DuckDB takes it: files from the folder, the query where the page says that it stands. */
function runnable({ code }: Fence): string {
  return code
    .replaceAll("'limits.csv'", `'${join(folder, "limits.csv")}'`)
    .replace("-- here stands the text of judged.sql", () => readFileSync(join(folder, "judged.sql"), "utf8"));
}

describe("the guide to five years of a plant, step by step in DuckDB", () => {
  // commands without a prompt write files, and run here; those with one are run with the others
  const steps = pageFences(page).filter(
    ({ language, code }) => language === "sql" || (language === "sh" && !code.startsWith("$")),
  );

  it.each(steps.map((fence) => [`${fence.language} on line ${fence.line}`, fence] as const))("%s", async (_, fence) => {
    if (fence.language === "sh") {
      expect(runInShell(fence.code, folder)).toEqual({
        out: "rows: 5 in = 5 answered + 0 refused + 0 skipped; separator: comma\n",
        status: 0,
      });
      return;
    }
    const rows = await rowsOf(runnable(fence));
    const told = fence.code.split("\n").flatMap((line) => (line.startsWith("-- => ") ? [line.slice(6)] : []));
    if (told.length > 0) expect(rows).toEqual(told);
    // as they are here: the page goes on to edit the limits
    if (fence.code.includes("CREATE VIEW months")) await rowsOf("CREATE TABLE sixty_months AS SELECT * FROM months");
  });

  it("the list on the page is the one that is judged", () => {
    const list = pageFences(page).find(({ language }) => language === "text")?.code;
    expect(list).toBe(readFileSync(join(root, "docs/examples/machines.csv"), "utf8").trim());
  });

  it("the months of the chart are those of the query", async () => {
    const rows = await rowsOf(
      "SELECT strftime(month, '%Y-%m'), readings, no_zone, alarms, highest FROM sixty_months ORDER BY month",
    );
    const [, ...lines] = readFileSync(join(root, "docs/examples/plant-months.csv"), "utf8").trim().split("\n");
    expect(rows.map((row) => row.replaceAll(" | ", ","))).toEqual(lines);
  });
});
