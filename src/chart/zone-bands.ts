import { significant } from "../reading/index";
import { type Box, meet } from "./levels";
import { type Attributes, label, rounded, stroke, tag } from "./markup";
import { zoneStrength } from "./palette";
import { widthOf } from "./text-width";

/** A plot with an upright value axis, and the zones in it, best first. */
export interface BandedPlot {
  readonly names: readonly string[];
  /** Where each zone but the last ends. */
  readonly bounds: readonly number[];
  readonly y: (value: number) => number;
  readonly width: number;
  readonly height: number;
}

/** Zones as bands across a plot whose value axis is upright; letters stand at the right of it, longer names inside. */
export function zoneBands({ names, bounds, y, width, height }: BandedPlot): string {
  const edges = [height, ...bounds.map((value) => Math.min(Math.max(y(value), 0), height)), 0];
  return names
    .map((name, i) => {
      const [below, above] = [edges[i] as number, edges[i + 1] as number];
      const tall = below - above;
      if (tall < 0.5) return "";
      const fill: Attributes = { kind: "zone", x: 0, y: above, width, height: tall };
      const long = name.length > 2;
      const place: Attributes = { kind: long ? ["letter", "halo"] : ["letter"], "text-anchor": long ? "end" : "start" };
      const text = tall >= 15 ? label(width + (long ? -6 : 5), (below + above) / 2 + 5, name, place) : "";
      const bound = above > 0 ? stroke([0, above], [width, above], "bound") : "";
      return tag("rect", { ...fill, "fill-opacity": rounded(zoneStrength(i, names.length)) }) + bound + text;
    })
    .join("");
}

/** The limits between zones as numbers above their lines, at the right or the left where nothing else stands; others in a note. */
export function boundWords(
  bounds: readonly number[],
  y: (value: number) => number,
  width: number,
  drawn: readonly Box[],
): { drawn: string; notes: string[] } {
  const taken = [...drawn];
  const told: string[] = [];
  const words = bounds.map((value) => {
    const text = significant(value);
    const [at, long] = [y(value) - 4, widthOf(text)];
    const boxes = [width - long - 6, 6].map((left) => ({ left, right: left + long, top: at - 11, bottom: at + 2 }));
    const free = at < 11 ? undefined : boxes.find((box) => !taken.some((other) => meet(box, other)));
    if (free === undefined) {
      told.push(text);
      return "";
    }
    taken.push(free);
    return label(free.left, at, text, { kind: ["unit", "halo"] });
  });
  return {
    drawn: words.join(""),
    notes: told.length === 0 ? [] : [`Limits between the zones: ${bounds.map((one) => significant(one)).join(", ")}.`],
  };
}
