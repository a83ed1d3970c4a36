import { requireFinite, shown, VeladisError, visibleLines, withParameters } from "../core/index";
import { requireSheet } from "./require-sheet";
import type { Sheet } from "./sheet";

const PLAIN = "data that JSON can hold";

/** A part of the data as it is; what JSON would turn into something else or could not write is refused. */
function plain(_name: string, part: unknown): unknown {
  if (typeof part === "number") return requireFinite(part, PLAIN);
  if (part === undefined || part === null || ["string", "boolean", "object"].includes(typeof part)) return part;
  throw new VeladisError("wrong-type", { expected: PLAIN, received: shown(part) });
}

/**
 * A sheet as JSON: its text, and under `data` what it was made of, with every number whole.
 *
 * @throws {@link VeladisError} `missing-option` or `wrong-type` for what is no sheet
 * @example
 * ```ts
 * import { setpointSheet, sheetJson } from "veladis/protection";
 *
 * JSON.parse(sheetJson(setpointSheet({ machine: "Circulation pump 3, gear side" }))).data;
 * // => { machine: "Circulation pump 3, gear side" }
 * ```
 */
export function sheetJson(sheet: Sheet): string {
  return withParameters({ sheet }, () => {
    return `${visibleLines(JSON.stringify(requireSheet(sheet), plain, 2))}\n`;
  });
}
