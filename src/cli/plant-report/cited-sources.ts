import type { Source } from "../../core/index";
import { citedText } from "../../report/index";
import { type Markup, markup } from "./markup";

/** The sources of a page by their numbers, from 1, in the order in which they are cited. */
export class CitedSources {
  readonly #texts: string[] = [];

  /** The number of a source, as data or in words, in brackets, leading to where it stands. */
  cite(source: Source | string): Markup {
    const text = typeof source === "string" ? source : citedText(source);
    const at = this.#texts.indexOf(text);
    const number = at < 0 ? this.#texts.push(text) : at + 1;
    return markup`<a class="cite" href="#source-${number}" aria-label="source ${number}">[${number}]</a>`;
  }

  /** All that were cited; nothing where none was. */
  section(): Markup | undefined {
    if (this.#texts.length === 0) return undefined;
    const rows = this.#texts.map((text, i) => markup`<li id="source-${i + 1}">${text}</li>\n`);
    return markup`<section class="sources">
<h2>Sources, and how each is known</h2>
<ol>
${rows}</ol>
</section>
`;
  }
}
