import { shown, unknownOption, VeladisError } from "../../core/index";
import type { Confirmation } from "../../severity/index";

/** The lines on which the values of a list begin, from 1, in the text of JSON that can be parsed. */
function elementLines(text: string): number[] {
  const lines: number[] = [];
  let depth = 0;
  let line = 1;
  let isNext = false;
  // texts are passed over whole: what looks like a bracket in one is none
  for (const [token] of text.matchAll(/"(?:[^"\\]|\\.)*"|[^\s"]|\n/g)) {
    if (token === "\n") {
      line++;
      continue;
    }
    const opens = token === "[" || token === "{";
    if (isNext && depth === 1 && token !== "]" && token !== ",") {
      lines.push(line);
      isNext = false;
    }
    if (depth === 1 && token === ",") isNext = true;
    if (opens) depth++;
    if (token === "]" || token === "}") depth--;
    if (opens && depth === 1) isNext = true;
  }
  return lines;
}

/**
 * The confirmations of a JSON file: a list of objects as {@link confirmScheme} takes them.
 *
 * @throws {@link VeladisError} `syntax` for what is no JSON or no list, `wrong-type` or `unknown-option` with the line
 */
export function confirmationsOfJson(text: string, name: string): Confirmation[] {
  let read: unknown;
  try {
    read = JSON.parse(text);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    throw new VeladisError("syntax", {
      expected: "confirmations as JSON",
      received: `${shown(name)}: ${error.message}`,
    });
  }
  if (!Array.isArray(read)) {
    throw new VeladisError("syntax", { expected: `${name}: a list of confirmations`, received: shown(read) });
  }
  const lines = elementLines(text);
  return read.map((one, i): Confirmation => {
    const readAt = `line ${lines[i]} of ${name}`;
    if (typeof one !== "object" || one === null || Array.isArray(one)) {
      throw new VeladisError("wrong-type", { expected: `${readAt}: a confirmation`, received: shown(one) });
    }
    if (Object.hasOwn(one, "readAt")) throw unknownOption("readAt", [], `${readAt}: a part of a confirmation`);
    return { ...one, readAt };
  });
}
