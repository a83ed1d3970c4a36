import { bounds, isExit, isUnfinished, newSession, respond } from "../../repl/index";
import type { Scheme } from "../../severity/index";
import type { Io } from "../input/io";
import { linesOf } from "../input/lines";
import { exitCodes } from "../print/exit-codes";
import { failureText } from "../print/failure";

/** Answers the lines of standard input, one by one; refused ones go to standard error with their number. */
export async function calculateLines(io: Io, schemes?: readonly Scheme[]): Promise<number> {
  const session = newSession(schemes);
  let refused = 0;
  let unfinished = "";
  for await (const { number, text } of io.piped === undefined ? [] : linesOf(io.piped)) {
    if (isExit(text)) break;
    const line = `${unfinished}${text}`;
    if (isUnfinished(line) && line.length < bounds.length) {
      unfinished = `${line} `;
      continue;
    }
    unfinished = "";
    try {
      const response = await respond(line, session);
      if (response !== "exit" && response.text !== "") await io.out(`${response.text}\n`);
    } catch (error) {
      refused++;
      io.err(failureText(error, false, { line: number }));
    }
  }
  if (unfinished !== "") {
    refused++;
    io.err("veladis: the last line breaks off, and is dropped\n");
  }
  return refused > 0 ? exitCodes.refused : exitCodes.done;
}
