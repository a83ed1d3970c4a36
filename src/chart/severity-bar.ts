import { scaleLinear } from "d3-scale";
import { format, significant, typeOf } from "../reading/index";
import type { Judgement, SchemeKind } from "../severity/index";
import { assumedNotes } from "./assumed-notes";
import { chartDocument } from "./chart-document";
import { type ChartOptions, requireHeight, requireOptions, requireWidth } from "./chart-options";
import { label, rounded, stroke, tag } from "./markup";
import { zoneStrength } from "./palette";
import { requireJudgement } from "./require-judgement";
import { shortened, widthOf } from "./text-width";

/** What {@link severityBar} draws. */
export interface SeverityBarOptions<K extends SchemeKind = SchemeKind> extends ChartOptions {
  /** What {@link classify} returned. */
  readonly judgement: Judgement<K>;
}

const SIDE = 16;

function notesOf({ standard, edition, verified, assumed, assumedFacts, criteria }: Judgement): string[] {
  return [
    `${standard}:${edition}${verified ? "" : ", limits from memory: check them against the standard before relying on them"}.`,
    ...(criteria.length > 1 ? ["The worst of several criteria is shown."] : []),
    ...assumedNotes(assumed, assumedFacts),
  ];
}

/** The middle of the words of a zone: its own, or that of the wider part beside the reading if this would cross them. */
function wordPlace(from: number, to: number, reading: number, long: number): number {
  const middle = (from + to) / 2;
  if (Math.abs(reading - middle) > long / 2 + 4) return middle;
  const [start, end] = reading - from > to - reading ? [from, reading] : [reading, to];
  return end - start >= long + 8 ? (start + end) / 2 : middle;
}

/**
 * One reading on the zones of a table: a bar from zero, the limits below it, the reading above.
 *
 * @param options - `judgement` as `classify` returns it, and {@link ChartOptions}
 * @returns an SVG document as text; lengths in the unit and detector of the standard
 * @throws {@link VeladisError} `missing-fact`, `wrong-type`, `out-of-range` for a size
 * @example
 * ```ts
 * import { severityBar } from "veladis/chart";
 * import { classify } from "veladis/severity";
 *
 * const judgement = classify("3.9 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 2 rigid" });
 * const svg = severityBar({ judgement });
 * svg.startsWith("<svg "); // => true
 * /<title>(.*?)<\/title>/.exec(svg)?.[1]; // => "3.90 mm/s rms: zone C"
 * ```
 */
export function severityBar(options: SeverityBarOptions): string {
  const { judgement } = requireOptions(options, 'options such as { judgement: classify("3.9 mm/s rms", ...) }');
  const { zones, limits, judged, zone, word, kind } = requireJudgement(judgement as Judgement);
  const bounds = Object.values(limits).map(({ printed }) => printed.value);
  const width = requireWidth(options) - 2 * SIDE;
  const height = requireHeight(options, 80);
  const { type } = typeOf(judged.unit, judged.detector);
  const most = Math.max((bounds.at(-1) as number) * 1.4, judged.value * 1.15);
  const x = scaleLinear([0, most], [0, width]);
  const edges = [0, ...bounds.map((value) => x(value)), width];
  const at = x(judged.value);
  const bands = zones.map((name, i) => {
    const [from, to] = [edges[i] as number, edges[i + 1] as number];
    const room = to - from;
    const text = shortened(name, room - 6, 14);
    const body = {
      class: "zone",
      x: from,
      y: 0,
      width: room,
      height,
      "fill-opacity": rounded(zoneStrength(i, zones.length)),
    };
    const readable = widthOf(name, 14) <= room - 6 || text.length > 3;
    const middle = wordPlace(from, to, at, widthOf(text, 15.5));
    return (
      tag("rect", body) +
      (readable ? label(middle, height / 2 + 5, text, { class: "letter", "text-anchor": "middle" }) : "")
    );
  });
  let taken = Number.NEGATIVE_INFINITY;
  const marks = bounds.map((value) => {
    const at = x(value);
    const text = significant(value);
    const half = widthOf(text) / 2;
    const row = at - half < taken + 6 ? 1 : 0;
    taken = row === 0 ? at + half : taken;
    return (
      stroke([at, 0], [at, height + 5 + row * 15], "bound") +
      label(at, height + 19 + row * 15, text, { "text-anchor": "middle" })
    );
  });
  const reading = format(judged);
  const anchor = at < width * 0.2 ? "start" : at > width * 0.8 ? "end" : "middle";
  const known = kind === "zones" ? `zone ${zone}` : String(zone);
  return chartDocument(options, {
    title: `${reading}: ${known}`,
    description:
      `${reading} on the ${zones.length} zones of ${judgement.standard}:${judgement.edition}: ${known}, ${word}. ` +
      `Limits: ${Object.values(limits)
        .map(({ name, printed }) => `${name} ${significant(printed.value)} ${type}`)
        .join(", ")}.`,
    notes: [...(kind === "grades" ? [] : [`${word[0]?.toUpperCase()}${word.slice(1)}.`]), ...notesOf(judgement)],
    left: SIDE,
    right: SIDE,
    top: 34,
    bottom: 42,
    plotHeight: height,
    plot: [
      ...bands,
      ...marks,
      label(width, height + 36, type, { class: "unit", "text-anchor": "end" }),
      stroke([0, height], [width, height], "axis"),
      tag("path", { class: "point", d: `M${rounded(at)},0l-8,-13h16z` }),
      tag("line", { class: "data", x1: at, x2: at, y1: 0, y2: height }),
      label(at, -18, reading, { "text-anchor": anchor }),
    ].join(""),
  });
}
