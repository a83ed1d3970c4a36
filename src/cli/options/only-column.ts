import { VeladisError } from "../../core/index";

/** The column that is named, where one alone is read. */
export function onlyColumn([column, ...more]: readonly string[]): string | undefined {
  if (more.length === 0) return column;
  throw new VeladisError("unknown-option", {
    expected: "one --column here; several are for files of samples",
    received: `${more.length + 1} of them`,
  });
}
