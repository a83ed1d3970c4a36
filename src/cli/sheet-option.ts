import { shown, VeladisError } from "../core/index";
import { type SheetRequest, setpointSheet, sheetHtml, sheetJson, sheetMarkdown } from "../report/index";

const writers = { markdown: sheetMarkdown, html: sheetHtml, json: sheetJson } as const;

/** The sheet that `--sheet` asks for. */
export function sheetText(kind: string, request: SheetRequest): string {
  if (!Object.hasOwn(writers, kind)) {
    throw new VeladisError("unknown-option", {
      expected: "--sheet markdown, --sheet html or --sheet json",
      received: shown(kind),
      allowed: Object.keys(writers),
    });
  }
  return writers[kind as keyof typeof writers](setpointSheet(request));
}
