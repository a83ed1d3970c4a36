import { frozen } from "../core/index";

/** The colours of a chart. Zones are one hue, told apart by how far they stand from the paper. */
export interface ChartColours {
  readonly paper: string;
  readonly ink: string;
  /** Second text: units, captions. */
  readonly muted: string;
  readonly grid: string;
  /** Full strength of the zones; the best zone has the least of it. */
  readonly zone: string;
  /** What was measured. */
  readonly data: string;
}

/**
 * The colours of charts in light and dark. A page may set its own as `--veladis-paper`, `--veladis-ink`,
 * `--veladis-muted`, `--veladis-grid`, `--veladis-zone` and `--veladis-data`; in print the light ones are used.
 *
 * Nothing is told by colour alone: zones carry their letters and differ in lightness, levels in their dashes.
 *
 * @example
 * ```ts
 * import { chartColours } from "veladis/chart";
 *
 * chartColours.light.paper; // => "#ffffff"
 * ```
 */
// biome-ignore format: a row of a table is a line
export const chartColours: Readonly<Record<"light" | "dark", ChartColours>> = /* @__PURE__ */ frozen({
  light: { paper: "#ffffff", ink: "#14212e", muted: "#4a5865", grid: "#d3dbe2", zone: "#2f6391", data: "#a83b0a" },
  dark: { paper: "#10161c", ink: "#eef3f7", muted: "#aab7c3", grid: "#33404c", zone: "#6aa5d8", data: "#ffb066" },
});

/** Share of the full colour that a zone has, by its place from best (0) to worst. */
export function zoneStrength(at: number, count: number): number {
  return count > 1 ? 0.05 + (0.33 * at) / (count - 1) : 0.05;
}
