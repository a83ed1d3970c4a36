import { type SheetRequest, setpointSheet, sheetHtml, sheetJson, sheetMarkdown } from "../../report/index";
import type { sheet } from "./shared-options";

type Format = (typeof sheet.values)[number];

const writers = { markdown: sheetMarkdown, html: sheetHtml, json: sheetJson } as const satisfies Record<
  Format,
  unknown
>;

/** The sheet that `--sheet` asks for. */
export function sheetText(format: Format, request: SheetRequest): string {
  return writers[format](setpointSheet(request));
}
