export { checkRemarks, linearityRemarks, pairRemarks } from "./check-remarks";
export { proposalCitations } from "./citations";
export { setpointSheet } from "./setpoint-sheet";
export type { Sheet, SheetSection, SheetTable } from "./sheet";
export { sheetHtml } from "./sheet-html";
export { sheetJson } from "./sheet-json";
export { sheetMarkdown } from "./sheet-markdown";
export type { SheetRequest } from "./sheet-request";
export { signed } from "./verification-sections";
