import { scaleLinear } from "d3-scale";
import type { ZonesWithin } from "../conformity/index";
import { withParameters } from "../core/index";
import { format, historyOf, significant, typeOf } from "../reading/index";
import { digitsBeside, editionText, type Judgement, type SchemeKind, type Verdict } from "../severity/index";
import { chartDocument } from "./chart-document";
import { type ChartOptions, requireHeight, requireOptions, requireWidth } from "./chart-options";
import { type Attributes, label, rounded, stroke, tag } from "./markup";
import { zoneStrength } from "./palette";
import { possibleMark } from "./possible-mark";
import { requireJudgement } from "./require-judgement";
import { shortened, widthOf } from "./text-width";
import { isPlaceOpen, verdictNotes } from "./verdict-notes";
import { drawnInterval, intervalMark, isOfBestValue, notDrawn } from "./within";

/** What {@link severityBar} draws. */
export interface SeverityBarOptions<K extends SchemeKind = SchemeKind> extends ChartOptions {
  /** What {@link classify} or {@link judge} returned. */
  readonly judgement: Judgement<K> | Verdict;
  /**
   * What `zonesWithin` of `veladis/uncertainty` returned for the judgement: the interval of the reading is drawn, and the
   * verdict is that of its rule. Without it the bar of a reading with an uncertainty says that this is not drawn.
   */
  readonly within?: ZonesWithin;
}

const own = /* @__PURE__ */ Object.freeze({
  judgement: true,
  within: true,
  height: true,
} as const);

const SIDE = 16;

/** The middle of the words of a zone: its own, or that of the wider part beside the reading if this would cross them. */
function wordPlace(from: number, to: number, reading: number, long: number): number {
  const middle = (from + to) / 2;
  if (Math.abs(reading - middle) > long / 2 + 4) return middle;
  const [start, end] = reading - from > to - reading ? [from, reading] : [reading, to];
  return end - start >= long + 8 ? (start + end) / 2 : middle;
}

/** A judgement of the best value as the rule of an interval has it. */
function decidedBy(judgement: Judgement, { headline, word, zones }: ZonesWithin): Judgement {
  return { ...judgement, headline, word, possible: zones };
}

/**
 * One reading on the zones of a scheme: a bar from zero, the limits below it, the reading above. The title is the
 * headline of the judgement; where more than one zone of its scale is possible, a frame marks them.
 *
 * A reading with an uncertainty: give `within`, and its interval (k = 2) is drawn and the zones are named that it touches.
 *
 * Of a verdict by several schemes the bar has the limits of the worst, and the small print what the others say.
 *
 * @param options - `judgement` as `classify` or `judge` returns it, `within` as `zonesWithin` does, and {@link ChartOptions}
 * @returns an SVG document as text; lengths in the unit and detector of the standard
 * @throws {@link VeladisError} `missing-fact`, `wrong-type`, `out-of-range` for a size and for `within` of another judgement,
 *   `unknown-option`
 * @example
 * ```ts
 * import { severityBar } from "veladis/chart";
 * import { judge } from "veladis/severity";
 *
 * const svg = severityBar({ judgement: judge("4.1 mm/s rms", "pump 90 kW 2980 r/min category II") });
 * svg.startsWith("<svg "); // => true
 * /<title>(.*?)<\/title>/.exec(svg)?.[1]; // => "4.10 mm/s rms: zone B"
 * const open = severityBar({ judgement: judge("2.0 mm/s rms", "motor 1485 r/min rigid") });
 * /<title>(.*?)<\/title>/.exec(open)?.[1]; // => "2.00 mm/s rms: zone B to C"
 *
 * import { parseUncertain, zonesWithin } from "veladis/uncertainty";
 *
 * const judgement = judge(parseUncertain("4.9 ± 0.3 mm/s rms (k=2)"), "pump 90 kW 2980 r/min category II");
 * const bar = severityBar({ judgement, within: zonesWithin(judgement) });
 * /<title>(.*?)<\/title>/.exec(bar)?.[1]; // => "4.90 mm/s rms, 4.60 to 5.20 (k=2): zone C"
 * /<title>(.*?)<\/title>/.exec(severityBar({ judgement }))?.[1]; // => "4.90 mm/s rms, ± NOT DRAWN: zone B"
 * ```
 */
export function severityBar(options: SeverityBarOptions): string {
  return withParameters({ options }, () => {
    const { judgement: given, within } = requireOptions(
      options,
      own,
      'options such as { judgement: classify("3.9 mm/s rms", ...) }',
    );
    const best = requireJudgement(given as Judgement);
    const interval = within === undefined ? undefined : drawnInterval(best, within);
    const judgement = within === undefined ? best : decidedBy(best, within);
    const { zones, limits, judged, headline, word, possible, bound } = judgement;
    const isLost = interval === undefined && isOfBestValue(best);
    const bounds = Object.values(limits).map(({ printed }) => printed.value);
    const width = requireWidth(options) - 2 * SIDE;
    const height = requireHeight(options, 80);
    const { type } = typeOf(judged.unit, judged.detector);
    const most = Math.max((bounds.at(-1) as number) * 1.4, judged.value * 1.15, (interval?.high ?? 0) * 1.08);
    const x = scaleLinear([0, most], [0, width]);
    const edges = [0, ...bounds.map((value) => x(value)), width];
    const at = x(judged.value);
    const bands = zones.map((name, i) => {
      const [from, to] = [edges[i] as number, edges[i + 1] as number];
      const room = to - from;
      const text = shortened(name, room - 6, 14);
      const body: Attributes = {
        kind: "zone",
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
        (readable ? label(middle, height / 2 + 5, text, { kind: "letter", "text-anchor": "middle" }) : "")
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
    // a bound is not what was read: the title has the reading itself
    const isBound = bound !== "exact";
    const [first] = historyOf(judged);
    const read = format(judged, { digits: digitsBeside(judged.value, bounds) });
    const reading = isBound && first !== undefined ? `${significant(first.value)} ${first.type}` : read;
    const spread = interval?.title ?? (isLost ? notDrawn.title : "");
    const anchor = at < width * 0.2 ? "start" : at > width * 0.8 ? "end" : "middle";
    return chartDocument(options, {
      title: `${reading}${spread}: ${headline}`,
      description:
        `${reading}${spread} on the ${zones.length} zones of ${editionText(judgement)}: ${headline}, ${word}. ` +
        `${possible.length > 1 ? `Possible: ${possible.join(", ")}. ` : ""}` +
        `Limits: ${Object.values(limits)
          .map(({ name, printed }) => `${name} ${significant(printed.value)} ${type}`)
          .join(", ")}.`,
      notes: [...(interval?.notes ?? []), ...(isLost ? [notDrawn.note] : []), ...verdictNotes(judgement)],
      left: SIDE,
      right: SIDE,
      top: 34,
      bottom: 42,
      plotHeight: height,
      plot: [
        ...bands,
        // what is possible at the other place is no zone of this scale
        isPlaceOpen(judgement) ? "" : possibleMark(zones, possible, edges, height),
        ...marks,
        label(width, height + 36, type, { kind: "unit", "text-anchor": "end" }),
        stroke([0, height], [width, height], "axis"),
        tag("path", { kind: "point", d: `M${rounded(at)},0l-8,-13h16z` }),
        tag("line", { kind: "data", x1: at, x2: at, y1: 0, y2: height }),
        interval === undefined ? "" : intervalMark(x(interval.low), x(interval.high), height),
        label(at, -18, isBound ? `at least ${read}` : reading, { "text-anchor": anchor }),
      ].join(""),
    });
  });
}
