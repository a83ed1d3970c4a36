import { cellText, knownText, sourceText } from "../../core/index";
import type { ChangeFinding, PlantFinding } from "../../plant/index";
import { quotedCell } from "../delimited/cells";

const titles = ["severity", "tag", "line", "code", "what", "why", "mend", "source", "known"];

/** Findings as a table with commas, a row each; no cell is run by a spreadsheet. */
export function findingsCsv(findings: readonly (PlantFinding | ChangeFinding)[]): string {
  const rows = findings.map(({ severity, tag, line, code, what, why, mend, source }) =>
    [severity, tag, `${line}`, code, what, why, mend, sourceText(source), knownText(source)].map(cellText),
  );
  return [titles, ...rows].map((row) => `${row.map((cell) => quotedCell(cell, ",")).join(",")}\n`).join("");
}
