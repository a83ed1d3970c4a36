import { jsonText, visibleText } from "../../core/index";
import type { RefusedReading } from "../../plant/index";

/** Why a reading of a route was refused, with line and column, for standard error. */
export function refusedReadingText(refused: RefusedReading, file: string, json: boolean): string {
  if (json) return `${jsonText({ error: { file, ...refused } })}\n`;
  const { line, tag, point, column, code, expected, received, didYouMean } = refused;
  const where = [file, `line ${line}`, [tag, point].filter(Boolean).join(" "), column && `column ${column}`];
  const rows = [
    `veladis: ${where.filter(Boolean).join(", ")}: ${code}`,
    `  expected: ${expected}`,
    `  received: ${received}`,
    ...(didYouMean === undefined ? [] : [`  did you mean: ${didYouMean.join(", ")}`]),
  ];
  return `${rows.map((text) => visibleText(text)).join("\n")}\n`;
}
