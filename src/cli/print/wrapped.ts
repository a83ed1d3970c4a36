import { visibleText } from "../../core/index";

/** Text broken at spaces to a width, later lines indented; it may come from outside. */
export function wrapped(text: string, indent = "", first = indent, width = 100): string {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of visibleText(text).split(" ")) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return `${[...lines, line].join("\n")}\n`;
}

/** A list of remarks, each behind a dash. */
export function dashed(texts: readonly string[]): string {
  return texts.map((text) => wrapped(text, "  ", "- ")).join("");
}
