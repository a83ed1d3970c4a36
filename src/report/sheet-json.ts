import type { Sheet } from "./sheet";

/**
 * A sheet as JSON: its text, and under `data` what it was made of, with every number whole.
 *
 * @example
 * ```ts
 * import { setpointSheet, sheetJson } from "veladis/protection";
 *
 * JSON.parse(sheetJson(setpointSheet({ machine: "Circulation pump 3, gear side" }))).data;
 * // => { machine: "Circulation pump 3, gear side" }
 * ```
 */
export function sheetJson(sheet: Sheet): string {
  return `${JSON.stringify(sheet, undefined, 2)}\n`;
}
