import type { ChartColours } from "./palette";

/** A colour of the palette, which is known when the document is put together. */
type Colour = `{${keyof ChartColours}}`;

/** What an element of a chart looks like, in properties that SVG knows as attributes and CSS as properties. */
interface Look {
  readonly fill?: Colour | "none";
  readonly "fill-opacity"?: number;
  readonly stroke?: Colour;
  readonly "stroke-width"?: number;
  readonly "stroke-dasharray"?: string;
  readonly "stroke-linejoin"?: "round";
  readonly "paint-order"?: "stroke";
  readonly "font-size"?: string;
  readonly "font-weight"?: number;
}

/**
 * The kinds of elements and their looks. They are written twice into a chart: as attributes, which every renderer and
 * every policy of a page lets stand, and as rules of its style sheet, which follow the reader's colours.
 */
// biome-ignore format: a row of a table is a line
export const kinds = {
  paper: { fill: "{paper}" },
  heading: { fill: "{ink}", "font-size": "15px", "font-weight": 600 },
  note: { fill: "{muted}" },
  unit: { fill: "{muted}" },
  grid: { stroke: "{grid}", "stroke-width": 1 },
  axis: { stroke: "{muted}", "stroke-width": 1 },
  zone: { fill: "{zone}" },
  bound: { fill: "none", stroke: "{zone}", "stroke-width": 1.5 },
  letter: { fill: "{ink}", "font-size": "14px", "font-weight": 600 },
  possible: { fill: "{paper}", "fill-opacity": 0.6, stroke: "{data}", "stroke-width": 1.5 },
  "possible-text": { fill: "{ink}", "font-size": "11px" },
  halo: { "paint-order": "stroke", stroke: "{paper}", "stroke-width": 4, "stroke-linejoin": "round" },
  data: { fill: "none", stroke: "{data}", "stroke-width": 1.75, "stroke-linejoin": "round" },
  point: { fill: "{data}", stroke: "{paper}", "stroke-width": 1.5 },
  trip: { fill: "none", stroke: "{ink}", "stroke-width": 2 },
  alarm: { fill: "none", stroke: "{ink}", "stroke-width": 1.5, "stroke-dasharray": "8 4" },
  reset: { fill: "none", stroke: "{ink}", "stroke-width": 1.25, "stroke-dasharray": "8 3 2 3" },
  baseline: { fill: "none", stroke: "{ink}", "stroke-width": 1.5, "stroke-dasharray": "2 3" },
  mark: { fill: "none", stroke: "{ink}", "stroke-width": 1, "stroke-dasharray": "3 3" },
  rise: { fill: "none", stroke: "{muted}", "stroke-width": 0.75 },
  fall: { fill: "none", stroke: "{muted}", "stroke-width": 0.75, "stroke-dasharray": "5 3" },
  diagonal: { fill: "{muted}", "font-size": "10.5px" },
  lane: { fill: "{zone}", "fill-opacity": 0.12 },
  timer: { fill: "{data}", "fill-opacity": 0.55, stroke: "{data}" },
  on: { fill: "{ink}" },
  "on-text": { fill: "{paper}", "font-weight": 600 },
  small: { "font-size": "10.5px" },
} as const satisfies Readonly<Record<string, Look>>;

/** What an element of a chart is, which says how it looks. */
export type Kind = keyof typeof kinds;

const looks: Readonly<Record<Kind, Look>> = kinds;

/** The look of an element that is of these kinds, the later before the earlier. */
export function lookOf(of: readonly Kind[]): Look {
  return Object.assign({}, ...of.map((kind) => looks[kind]));
}
