import { choice } from "../../core/index";
import { type SheetRequest, setpointSheet, sheetHtml, sheetJson, sheetMarkdown } from "../../report/index";

const writers = { markdown: sheetMarkdown, html: sheetHtml, json: sheetJson } as const;

/** The sheet that `--sheet` asks for. */
export function sheetText(kind: string, request: SheetRequest): string {
  const format = choice(kind, Object.keys(writers) as (keyof typeof writers)[], "--sheet with a format");
  return writers[format](setpointSheet(request));
}
