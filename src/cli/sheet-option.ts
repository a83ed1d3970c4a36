import { shown, VeladisError } from "../core/index";
import { type SheetRequest, setpointSheet, sheetHtml, sheetMarkdown } from "../report/index";

const writers = { markdown: sheetMarkdown, html: sheetHtml } as const;

/** The sheet that `--sheet` asks for. */
export function sheetText(kind: string, request: SheetRequest): string {
  if (!Object.hasOwn(writers, kind)) {
    throw new VeladisError("unknown-option", {
      expected: "--sheet markdown or --sheet html",
      received: shown(kind),
      allowed: Object.keys(writers),
    });
  }
  return writers[kind as keyof typeof writers](setpointSheet(request));
}
