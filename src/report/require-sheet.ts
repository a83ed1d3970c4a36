import { orNothing, requireShape } from "../core/index";
import type { Sheet } from "./sheet";

/**
 * The sheet itself if it is one.
 *
 * @throws {@link VeladisError} `missing-option` or `wrong-type` with the place that is wrong
 */
export function requireSheet(sheet: Sheet): Sheet {
  const lines = orNothing(["text"]);
  const table = orNothing({ columns: ["text"], rows: [["text"]] });
  const shape = {
    title: "text",
    subject: "text",
    cautions: ["text"],
    sections: [{ title: "text", text: lines, table, list: lines }],
    picture: orNothing({ svg: "text", text: "text", file: orNothing("text") }),
    blanks: ["text"],
    data: {},
  } as const satisfies { readonly [Name in keyof Sheet]: unknown };
  requireShape(sheet, shape, "sheet");
  return sheet;
}
