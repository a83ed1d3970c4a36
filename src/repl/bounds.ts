import { frozen, shown, VeladisError } from "../core/index";

/** What an expression may be at the most; a line beyond it is refused before anything is evaluated. */
export const bounds = /* @__PURE__ */ frozen({
  /** Characters of a line. */
  length: 500,
  /** Brackets within brackets. */
  depth: 30,
  /** Nodes of the parsed expression, which bounds the work. */
  nodes: 500,
  /** Variables of a session. */
  variables: 1000,
} as const);

/** Refuses a line that is too long or nested too deeply to be read. */
export function requireBounds(line: string): void {
  if (line.length > bounds.length) {
    throw new VeladisError("out-of-range", {
      expected: `a line of at most ${bounds.length} characters`,
      received: shown(line),
    });
  }
  let depth = 0;
  for (const letter of line) {
    if ("([{".includes(letter)) depth++;
    else if (")]}".includes(letter)) depth--;
    if (depth > bounds.depth) {
      throw new VeladisError("out-of-range", {
        expected: `brackets nested at most ${bounds.depth} deep`,
        received: shown(line),
      });
    }
  }
}
