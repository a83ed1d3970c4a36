import { visibleLines } from "./visible-text";

/** Data as JSON on one line, that a terminal can print: JSON itself leaves some control characters as they are. */
export function jsonText(value: unknown, replacer?: (key: string, value: unknown) => unknown): string {
  return visibleLines(JSON.stringify(value, replacer));
}
