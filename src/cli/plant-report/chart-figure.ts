import { escapedElsewhere, type Markup, markup } from "./markup";

const SHEET = /<style>(.*?)<\/style>/s;

/** The charts of a page. The style sheet of all is one, so that the page holds it once. */
export class PageCharts {
  #style = "";

  /** The rules that the charts drawn so far need. */
  get style(): string {
    return this.#style;
  }

  /** A chart without its style sheet, which is kept for the page. */
  figure(svg: string, kind = ""): Markup {
    this.#style = SHEET.exec(svg)?.[1] ?? this.#style;
    return markup`<figure${kind === "" ? "" : markup` class="${kind}"`}>${escapedElsewhere(svg.replace(SHEET, ""))}</figure>\n`;
  }
}
