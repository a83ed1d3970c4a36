import { VeladisError } from "../../core/index";
import { toldOf, type WrittenAs } from "../delimited/written-as";

/** Whether a name says that its file is Parquet. */
export function isParquet(file: string | undefined): file is string {
  return file?.toLowerCase().endsWith(".parquet") === true;
}

/**
 * How a file is read whose columns have names for certain; refuses what is told of delimited text.
 *
 * @throws {@link VeladisError} `unknown-option`
 */
export function writtenParquet(written: WrittenAs): WrittenAs {
  // columns of Parquet have names, too, that may say a unit
  const { fileUnits: _, ...text } = written;
  const told = toldOf(text);
  if (told.length === 0) return { ...written, headerLine: 1 };
  throw new VeladisError("unknown-option", {
    expected: "a file of delimited text, for the options that say how one and its numbers are written",
    received: `${told.join(" ")}, and Parquet`,
  });
}
