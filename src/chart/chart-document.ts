import { markupText } from "../core/index";
import { type ChartOptions, requireTheme, requireWidth, textOrDefault } from "./chart-options";
import { label, tag } from "./markup";
import { coloured, ROOT, styleOf } from "./style";
import { wrappedLines } from "./text-width";

/** Room around a plot, in pixels. */
interface Margins {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** What a chart puts into its frame. */
export interface Content extends Margins {
  readonly title: string;
  readonly description: string;
  /** Small print below the plot: provenance, what was assumed. */
  readonly notes: readonly string[];
  readonly plotHeight: number;
  /** Markup of the plot, whose upper left corner is 0, 0. */
  readonly plot: string;
}

const EDGE = 12;
const LINE = 17;

/** The whole chart as an SVG text: heading, plot, small print, and the words for those who do not see it. */
export function chartDocument(options: ChartOptions, content: Content): string {
  const width = requireWidth(options);
  const theme = requireTheme(options);
  const { left, top, bottom, plotHeight, plot } = content;
  const title = textOrDefault(options.title, content.title, "a title", "title");
  const description = textOrDefault(options.description, content.description, "a description", "description");
  // Bold letters are wider than the estimate for plain ones.
  const heading = wrappedLines(title, width - 2 * EDGE, 16.5);
  const plotTop = EDGE + heading.length * 19 + top;
  // some faces are wider than the estimate
  const notes = content.notes.flatMap((note) => wrappedLines(note, width - 2 * EDGE, 12.6));
  const notesTop = plotTop + plotHeight + bottom + (notes.length > 0 ? LINE : 0);
  const height = notesTop + Math.max(notes.length - 1, 0) * LINE + EDGE;
  const document = tag(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      class: theme === "auto" ? "veladis-chart" : `veladis-chart veladis-${theme}`,
      role: "img",
      viewBox: `0 0 ${Math.round(width)} ${Math.ceil(height)}`,
      width: Math.round(width),
      height: Math.ceil(height),
      ...ROOT,
    },
    tag("title", {}, markupText(title)),
    tag("desc", {}, markupText(description)),
    tag("style", {}, styleOf(theme)),
    tag("rect", { kind: "paper", width: "100%", height: "100%" }),
    ...heading.map((line, i) => label(EDGE, EDGE + 14 + i * 19, line, { kind: "heading" })),
    tag("g", { transform: `translate(${left},${Math.round(plotTop)})` }, plot),
    ...notes.map((line, i) => label(EDGE, notesTop + i * LINE, line, { kind: "note" })),
  );
  return coloured(document, theme);
}

/** Markup cut off at the edges of a plot; a nested picture does it without names that could clash in a page. */
export function clipped(width: number, height: number, ...inner: readonly string[]): string {
  return tag("svg", { width, height, overflow: "hidden" }, ...inner);
}
