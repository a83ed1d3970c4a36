import { shown, unknownOption, VeladisError } from "../../core/index";
import type { Confirmation } from "../../severity/index";

/** What `JSON.parse` does not tell of a list. */
interface Scanned {
  /** The lines on which its values begin, from 1. */
  readonly lines: readonly number[];
  /** The first key that stands twice in an object, with its line. */
  readonly twice: { readonly key: string; readonly line: number } | undefined;
}

/** Lines and keys in the text of JSON that can be parsed. */
function scanned(text: string): Scanned {
  const lines: number[] = [];
  const keys: Set<string>[] = [];
  let twice: Scanned["twice"];
  let last = { token: "", line: 1 };
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
    if (token === "{") keys[depth] = new Set();
    if (token === ":") {
      const key: string = JSON.parse(last.token);
      const known = keys[depth - 1] as Set<string>;
      if (known.has(key)) twice ??= { key, line: last.line };
      known.add(key);
    }
    last = { token, line };
    if (isNext && depth === 1 && token !== "]" && token !== ",") {
      lines.push(line);
      isNext = false;
    }
    if (depth === 1 && token === ",") isNext = true;
    if (opens) depth++;
    if (token === "]" || token === "}") depth--;
    if (opens && depth === 1) isNext = true;
  }
  return { lines, twice };
}

/** What is wrong with an element that is no confirmation; undefined for one that may be. */
function elementFault(one: unknown, readAt: string): VeladisError | undefined {
  if (typeof one !== "object" || one === null || Array.isArray(one)) {
    return new VeladisError("wrong-type", { expected: `${readAt}: a confirmation`, received: shown(one) });
  }
  return Object.hasOwn(one, "readAt") ? unknownOption("readAt", [], `${readAt}: a part of a confirmation`) : undefined;
}

/**
 * The confirmations of a JSON file, a list of objects as {@link confirmScheme} takes them, and what is wrong with elements
 * that are none, each with its line.
 *
 * @throws {@link VeladisError} `syntax` for what is no JSON or no list, and for a key twice, of which the last would win
 */
export function confirmationsOfJson(
  text: string,
  name: string,
): { readonly confirmations: readonly Confirmation[]; readonly faults: readonly VeladisError[] } {
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
  const { lines, twice } = scanned(text);
  if (twice !== undefined) {
    throw new VeladisError("syntax", {
      expected: `line ${twice.line} of ${name}: each key once`,
      received: `${shown(twice.key)} twice`,
    });
  }
  const confirmations: Confirmation[] = [];
  const faults: VeladisError[] = [];
  for (const [i, one] of read.entries()) {
    const readAt = `line ${lines[i]} of ${name}`;
    const fault = elementFault(one, readAt);
    if (fault === undefined) confirmations.push({ ...one, readAt });
    else faults.push(fault);
  }
  return { confirmations, faults };
}
