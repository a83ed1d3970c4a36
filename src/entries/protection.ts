/**
 * Protection and verification: setpoints, trip logic, proof on the bench, and the sheet that records them.
 *
 * @module veladis/protection
 */
export { cautions, VeladisError } from "../core/index";
export * from "../protection/index";
export {
  type Sheet,
  type SheetRequest,
  type SheetSection,
  type SheetTable,
  setpointSheet,
  sheetHtml,
  sheetJson,
  sheetMarkdown,
} from "../report/index";
export * from "../verification/index";
