export { type SheetRequest, setpointSheet, sourceText } from "./setpoint-sheet";
export type { Sheet, SheetSection, SheetTable } from "./sheet";
export { sheetHtml } from "./sheet-html";
export { sheetMarkdown } from "./sheet-markdown";
