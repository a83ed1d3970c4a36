import type { Io } from "../input/io";
import { linesOf } from "../input/lines";
import { exitCodes } from "../print/exit-codes";
import { failureText } from "../print/failure";

/** Whether a line says nothing: blank, or a remark. */
export function isRemark(text: string): boolean {
  return text.trim() === "" || text.startsWith("#");
}

/**
 * Answers each line of standard input as it comes; refused ones go to standard error with their number.
 *
 * @param answer - the text to print for a line
 */
export async function answerLines(
  io: Io,
  { json, keepGoing }: { readonly json: boolean; readonly keepGoing: boolean },
  answer: (text: string, line: number) => string,
): Promise<number> {
  let refused = 0;
  for await (const { number, text } of io.piped === undefined ? [] : linesOf(io.piped)) {
    if (isRemark(text)) continue;
    try {
      await io.out(answer(text, number));
    } catch (error) {
      refused++;
      io.err(failureText(error, json, { line: number }));
    }
  }
  return refused > 0 && !keepGoing ? exitCodes.refused : exitCodes.done;
}
