import { kinds } from "./kinds";
import { type ChartColours, chartColours } from "./palette";

/** Whose colours a chart takes: those of the reader's system, or one set in any case. */
export const chartThemes = /* @__PURE__ */ Object.freeze(["auto", "light", "dark"] as const);

/** How a chart chooses its colours. */
export type ChartTheme = (typeof chartThemes)[number];

/** What all elements of a chart inherit. */
export const ROOT = /* @__PURE__ */ Object.freeze({
  fill: "{ink}",
  "font-family": "ui-sans-serif,system-ui,sans-serif",
  "font-size": "12px",
});

/**
 * A document whose colours, named in braces so far, are those of its theme; a page may choose others by the style sheet
 * within. No text can hold such a name, since its quotes are escaped.
 */
export function coloured(document: string, theme: ChartTheme): string {
  const colours: Readonly<Record<string, string>> = { ...chartColours[theme === "auto" ? "light" : theme] };
  return document.replace(/="\{([a-z]+)\}"/g, (_, name: string) => `="${colours[name]}"`);
}

function variables(colours: ChartColours, open: boolean): string {
  return Object.entries(colours)
    .map(([name, colour]) => `--${name}:${open ? `var(--veladis-${name},${colour})` : colour}`)
    .join(";");
}

/** A look as declarations of CSS, its colours as variables. */
function declared(look: object): string {
  return Object.entries(look)
    .map(([name, value]) => `${name}:${String(value).replace(/^\{(.*)\}$/, "var(--$1)")}`)
    .join(";");
}

/**
 * The style sheet of a chart: every rule is bound to the class `veladis-chart`, so that it leaves the page around it
 * alone. A renderer that knows no variables of CSS passes over the block, and takes the attributes.
 */
export function styleOf(theme: ChartTheme): string {
  const own = ".veladis-chart";
  const { light, dark } = chartColours;
  const colours =
    theme === "auto"
      ? `${own}{${variables(light, true)}}@media (prefers-color-scheme:dark){${own}{${variables(dark, true)}}}`
      : `${own}.veladis-${theme}{${variables(chartColours[theme], false)}}`;
  const print = theme === "dark" ? "" : `@media print{${own}{${variables(light, false)}}}`;
  const rules = Object.entries(kinds).map(([kind, look]) => `${own} .veladis-${kind}{${declared(look)}}`);
  const root = `${own}{max-width:100%;height:auto;${declared(ROOT)}}`;
  // a text of no kind is ink, whatever a page says of its texts
  const texts = `${own} text{fill:var(--ink)}`;
  return `@supports (fill:var(--ink)){${colours}${print}${root}${texts}${rules.join("")}}`;
}
