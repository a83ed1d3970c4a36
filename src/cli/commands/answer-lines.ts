import { VeladisError } from "../../core/index";
import type { Io } from "../input/io";
import { linesOf } from "../input/lines";
import { isRemark } from "../input/remark";
import { exitCodes } from "../print/exit-codes";
import { failureText } from "../print/failure";

/**
 * Answers each line of standard input as it comes; refused ones go to standard error with their number.
 *
 * @param answer - the text to print for a line
 * @throws {@link VeladisError} `missing-option` where no line says anything: a gate is not to pass because nothing came
 */
export async function answerLines(
  io: Io,
  {
    json,
    keepGoing,
    from,
  }: { readonly json: boolean; readonly keepGoing: boolean; readonly from?: string | undefined },
  answer: (text: string, line: number) => string,
): Promise<number> {
  let lines = 0;
  let refused = 0;
  for await (const { number, text } of io.piped === undefined ? [] : linesOf(io.piped)) {
    try {
      if (isRemark(text, { bare: from !== undefined })) continue;
      lines++;
      await io.out(answer(text, number));
    } catch (error) {
      refused++;
      io.err(failureText(error, json, { line: number }));
    }
  }
  if (lines + refused === 0) {
    throw new VeladisError("missing-option", {
      expected: "at least one line with a reading, piped in",
      received: "nothing",
    });
  }
  return refused > 0 && !keepGoing ? exitCodes.refused : exitCodes.done;
}
