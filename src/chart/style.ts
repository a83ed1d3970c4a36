import { type ChartColours, chartColours } from "./palette";

/** Whose colours a chart takes: those of the reader's system, or one set in any case. */
export const chartThemes = /* @__PURE__ */ Object.freeze(["auto", "light", "dark"] as const);

/** How a chart chooses its colours. */
export type ChartTheme = (typeof chartThemes)[number];

function fixed(colours: ChartColours): string {
  return Object.entries(colours)
    .map(([name, colour]) => `--${name}:${colour}`)
    .join(";");
}

function open(colours: ChartColours): string {
  return Object.entries(colours)
    .map(([name, colour]) => `--${name}:var(--veladis-${name},${colour})`)
    .join(";");
}

const rules = [
  "max-width:100%;height:auto;font-family:ui-sans-serif,system-ui,sans-serif;font-size:12px",
  " text{fill:var(--ink)}",
  " .paper{fill:var(--paper)}",
  " .heading{font-size:15px;font-weight:600}",
  " .note,.unit{fill:var(--muted)}",
  " .grid{stroke:var(--grid);stroke-width:1}",
  " .axis{stroke:var(--muted);stroke-width:1}",
  " .zone{fill:var(--zone)}",
  " .bound{fill:none;stroke:var(--zone);stroke-width:1.5}",
  " .letter{font-size:14px;font-weight:600}",
  " .possible{fill:var(--paper);fill-opacity:.6;stroke:var(--data);stroke-width:1.5}",
  " .possible-text{font-size:11px}",
  " .halo{paint-order:stroke;stroke:var(--paper);stroke-width:4px;stroke-linejoin:round}",
  " .data{fill:none;stroke:var(--data);stroke-width:1.75;stroke-linejoin:round}",
  " .point{fill:var(--data);stroke:var(--paper);stroke-width:1.5}",
  " .trip,.alarm,.reset,.baseline,.mark{fill:none;stroke:var(--ink)}",
  " .trip{stroke-width:2}",
  " .alarm{stroke-width:1.5;stroke-dasharray:8 4}",
  " .reset{stroke-width:1.25;stroke-dasharray:8 3 2 3}",
  " .baseline{stroke-width:1.5;stroke-dasharray:2 3}",
  " .mark{stroke-width:1;stroke-dasharray:3 3}",
  " .rise{fill:none;stroke:var(--muted);stroke-width:.75}",
  " .fall{fill:none;stroke:var(--muted);stroke-width:.75;stroke-dasharray:5 3}",
  " .diagonal{font-size:10.5px;fill:var(--muted)}",
  " .lane{fill:var(--zone);fill-opacity:.12}",
  " .timer{fill:var(--data);fill-opacity:.55;stroke:var(--data)}",
  " .on{fill:var(--ink)}",
  " .on-text{fill:var(--paper);font-weight:600}",
];

/** The style sheet of a chart, bound to the class `veladis-chart` so that it leaves the page around it alone. */
export function styleOf(theme: ChartTheme): string {
  const own = ".veladis-chart";
  const { light, dark } = chartColours;
  const colours =
    theme === "auto"
      ? `${own}{${open(light)}}@media (prefers-color-scheme:dark){${own}{${open(dark)}}}`
      : `${own}.${theme}{${fixed(chartColours[theme])}}`;
  const print = theme === "dark" ? "" : `@media print{${own}{${fixed(light)}}}`;
  const [first, ...rest] = rules;
  return `${colours}${print}${own}{${first}}${rest.map((rule) => own + rule).join("")}`;
}
