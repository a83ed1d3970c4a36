import { VeladisError } from "../../core/index";

/** Beyond this a row has an opening quote that nothing closes, or the file is no text. */
export const LONGEST = 1 << 20;

/** The error for a file that cannot be read as it is written, with the line. */
export function refusedFile(expected: string, received: string, line: number, name: string): VeladisError {
  return new VeladisError("syntax", { expected: `${expected}, at line ${line} of ${name}`, received });
}

/** The error for a row without an end. */
export function endlessRow(line: number, name: string): VeladisError {
  const received = "a longer one, perhaps by a quotation mark that nothing closes (--quotes none: a plain character)";
  return refusedFile(`rows of at most ${LONGEST} bytes`, received, line, name);
}
