import { markupText } from "../../core/index";

/** Markup that is safe to stand in a page: made by {@link markup} alone. */
export class Markup {
  constructor(readonly text: string) {}
}

/** What may stand in a template: a text, which is escaped; markup, as it is; several of them; nothing. */
export type Part = string | number | Markup | undefined | false | readonly Part[];

function partText(part: Part): string {
  if (part === undefined || part === false) return "";
  if (part instanceof Markup) return part.text;
  return typeof part === "object" ? part.map(partText).join("") : markupText(String(part));
}

/** Markup of a template: every text in it is escaped, so that what came from a file cannot but be shown as it is. */
export function markup(strings: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return new Markup(strings.reduce((all, one, i) => all + partText(parts[i - 1]) + one));
}

/** Markup that was made elsewhere and escaped there, such as a chart. */
export function escapedElsewhere(text: string): Markup {
  return new Markup(text);
}
