import { visibleText } from "../core/index";

/**
 * A text as it stays text in Markdown, on one line: marks, tables, HTML, entities, links, images, formulas, rules and
 * lists are none. White space becomes one space, as a reader of Markdown shows it anyway.
 */
export function markdownText(text: string): string {
  return (
    visibleText(text.replace(/\s+/g, " ").trim())
      .replace(/[\\`*_[\]<>|#~$]/g, "\\$&")
      .replace(/&(?=#?\w)/g, "\\&")
      // addresses that are links by themselves
      .replace(/:(?=\/\/)|(?<=\w)@(?=\w)|(?<=\bwww)\./gi, "\\$&")
      // lists, rules and underlines of a heading, which a line begins
      .replace(/^(\d+)([.)])(?=\s|$)/, "$1\\$2")
      .replace(/^[-+](?=\s|$)|^-(?=[-\s]+$)|^=(?==*$)/, "\\$&")
  );
}
