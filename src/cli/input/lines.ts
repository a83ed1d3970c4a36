import type { Readable } from "node:stream";
import { VeladisError } from "../../core/index";

/** One line of an input, counted from 1. */
export interface Line {
  readonly number: number;
  readonly text: string;
}

/** Beyond any line a person writes; what is longer is no text file. */
const LONGEST = 1 << 20;

/**
 * The lines of a stream, without their ends, blank ones too; memory for one chunk and one line.
 *
 * @throws {@link VeladisError} `syntax` for a line beyond a megabyte
 */
export async function* linesOf(stream: Readable): AsyncGenerator<Line> {
  stream.setEncoding("utf8");
  let rest = "";
  let number = 0;
  for await (const chunk of stream) {
    const pieces = (rest + chunk).split("\n");
    rest = pieces.pop() as string;
    if (rest.length > LONGEST) {
      throw new VeladisError("syntax", {
        expected: `lines of text, none longer than ${LONGEST} characters`,
        received: `line ${number + pieces.length + 1} without an end`,
      });
    }
    for (const piece of pieces) yield { number: ++number, text: piece.replace(/\r$/, "").replace(/^\uFEFF/, "") };
  }
  if (rest !== "") yield { number: ++number, text: rest.replace(/\r$/, "").replace(/^\uFEFF/, "") };
}
