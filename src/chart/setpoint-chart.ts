import { scaleLinear } from "d3-scale";
import {
  inPlace,
  isVerified,
  orNothing,
  orNull,
  provenanceShape,
  provenances,
  requireChoice,
  requireShape,
  type Shape,
  VeladisError,
  withParameters,
} from "../core/index";
import type { StoredSetpoint } from "../device/index";
import { type Baseline, type Proposal, type ScaleRow, scaleOfProposal } from "../setpoints/index";
import { assumedNotes } from "./assumed-notes";
import { footAxis, roundTicks, tickText } from "./axis";
import { chartDocument } from "./chart-document";
import { type ChartOptions, requireHeight, requireOptions, requireWidth } from "./chart-options";
import type { Kind } from "./kinds";
import { label, stroke, tag } from "./markup";
import { shortened, widthOf } from "./text-width";

/** What {@link setpointChart} draws. */
export interface SetpointChartOptions extends ChartOptions {
  /** What `proposeSetpoints` of `veladis/protection` returned. */
  readonly proposal: Proposal;
  /** The statistics of its baseline: how far the readings reach is drawn. */
  readonly statistics?: Baseline;
  /** A setpoint of one's own, as `storedSetpoint` returns it. */
  readonly asked?: StoredSetpoint;
}

const own = /* @__PURE__ */ Object.freeze({ proposal: true, statistics: true, asked: true, height: true } as const);

const limitsKind = (kind: string, where: string) => requireChoice(kind, ["zones", "operation"], where);
const level = { value: "number", unit: "text", detector: "text" } as const;
const setpoint: Shape = /* @__PURE__ */ orNull({ stored: level, reset: level, range: ["number"] });
const shape = {
  as: "text",
  baseline: "number or null",
  alarm: setpoint,
  trip: setpoint,
  limits: /* @__PURE__ */ orNothing({ kind: limitsKind, lower: "number", upper: "number or null" }),
  raised: /* @__PURE__ */ orNothing({ alarm: /* @__PURE__ */ orNull(level), trip: /* @__PURE__ */ orNull(level) }),
  provenance: provenanceShape,
  verified: "truth",
  confirmed: ["text"],
  assumed: ["text"],
  assumedFacts: ["text"],
} as const satisfies Shape;

const baselineShape = /* @__PURE__ */ orNothing({ level, count: "number", lowest: "number", highest: "number" });
const askedShape = /* @__PURE__ */ orNothing({ stored: level });

const RIGHT = 16;
const ROW = 40;
const BAR = 16;

/** A row: what is allowed as a bar, the level as an upright line, the level below which it clears as a dashed one. */
function drawnRow(row: ScaleRow, top: number, x: (value: number) => number, width: number): string {
  const { value, text, span, reset, kind } = row;
  const [middle, at] = [top + ROW / 2 + 6, x(value)];
  const [upper, lower] = [middle - BAR / 2, middle + BAR / 2];
  const upright = (place: number, of: Kind): string => stroke([place, upper - 3], [place, lower + 3], of);
  const half = widthOf(text) / 2 + 2;
  const middleOfText = Math.min(Math.max(at, half), width - half);
  return [
    span === undefined
      ? ""
      : tag("rect", {
          kind: "lane",
          x: x(span[0]),
          y: upper,
          width: Math.max(x(span[1]) - x(span[0]), 1),
          height: BAR,
        }),
    reset === undefined ? "" : upright(x(reset), "reset"),
    kind === "baseline" ? tag("circle", { kind: "point", cx: at, cy: middle, r: 5 }) : upright(at, "trip"),
    label(middleOfText, top + 12, text, { kind: "halo", "text-anchor": "middle" }),
  ].join("");
}

/** What rows and limits are, for those who do not see them. */
function inWords({ rows, marks }: ReturnType<typeof scaleOfProposal>, as: string): string {
  const levels = rows.map(({ name, text, span, kind }) => {
    const allowed =
      span === undefined || kind === "baseline"
        ? ""
        : ` (the rules allow ${tickText(span[0])} to ${tickText(span[1])})`;
    return `${name} ${text}${allowed}`;
  });
  const limits = marks.map(({ name, value }) => `${name} ${tickText(value)}`);
  return `In ${as}: ${levels.join("; ")}.${limits.length === 0 ? " No limits." : ` Limits: ${limits.join(", ")}.`}`;
}

/**
 * Baseline, alarm, trip and limits of a proposal on one scale: each level on a row of its own with what the rules allow as a
 * bar, the level below which it clears as a dashed line, and the limits across all rows.
 *
 * @param options - `proposal`, `statistics`, `asked`, and {@link ChartOptions}
 * @returns an SVG document as text
 * @throws {@link VeladisError} `wrong-type` for what is no proposal, `missing-fact` for one with nothing to draw,
 *   `out-of-range` for a size, `unknown-option`
 * @example
 * ```ts
 * import { setpointChart } from "veladis/chart";
 * import { proposeSetpoints } from "veladis/protection";
 *
 * const proposal = proposeSetpoints({ baseline: "2 mm/s rms", machine: "pump 250 kW 2980 r/min category I" });
 * const svg = setpointChart({ proposal });
 * /<title>(.*?)<\/title>/.exec(svg)?.[1]; // => "Setpoints in mm/s rms: ALARM 3.25, TRIP 7.6"
 * ```
 */
export function setpointChart(options: SetpointChartOptions): string {
  return withParameters({ options }, () => {
    const { proposal, statistics, asked } = requireOptions(options, own, "options such as { proposal }");
    inPlace({ parameter: "options", option: "proposal" }, () => requireShape(proposal, shape, "options.proposal"));
    inPlace({ parameter: "options", option: "statistics" }, () =>
      requireShape(statistics, baselineShape, "options.statistics"),
    );
    inPlace({ parameter: "options", option: "asked" }, () => requireShape(asked, askedShape, "options.asked"));
    const scale = scaleOfProposal(proposal, { ...(statistics && { statistics }), ...(asked && { asked }) });
    const { rows, marks, most } = scale;
    if (rows.length === 0)
      throw new VeladisError("missing-fact", {
        expected: "a proposal with a baseline, an alarm or a trip to draw",
        received: "none of them",
        option: "proposal",
      });
    const { as, alarm, trip, provenance, confirmed, assumed, assumedFacts } = proposal;
    const left = 24 + Math.max(...rows.map(({ name }) => widthOf(name)));
    const width = requireWidth(options) - left - RIGHT;
    const height = requireHeight(options, Math.max(80, rows.length * ROW + 12));
    const x = scaleLinear([0, most], [0, width]);
    const ticks = roundTicks(x, Math.max(2, Math.round(width / 80)));
    let taken = Number.NEGATIVE_INFINITY;
    const limitLines = marks.map(({ name, value }) => {
      const text = `${name} ${tickText(Number(value.toPrecision(4)))}`;
      const [at, half] = [x(value), widthOf(text) / 2];
      const middle = Math.min(Math.max(at, half - left + 8), width - half);
      const lifted = middle - half < taken + 6 ? 15 : 0;
      taken = middle + half;
      return (
        stroke([at, -4 - lifted], [at, height], "bound") + label(middle, -8 - lifted, text, { "text-anchor": "middle" })
      );
    });
    const pitch = height / rows.length;
    const level = (one: typeof alarm, name: string): string[] =>
      one === null ? [] : [`${name} ${tickText(Number(one.stored.value.toPrecision(4)))}`];
    const headline = [...level(alarm, "ALARM"), ...level(trip, "TRIP")];
    return chartDocument(options, {
      title: `Setpoints in ${as}${headline.length === 0 ? "" : `: ${headline.join(", ")}`}`,
      description: inWords(scale, as),
      notes: [
        ...(isVerified(provenance)
          ? []
          : [`Limits or rules used are ${provenances[provenance].text}: check them before relying on them.`]),
        ...confirmed.map((text) => `Limits ${text}.`),
        ...assumedNotes(assumed, assumedFacts),
        "Bars are what the rules allow, of the baseline its readings; a dashed line beside a setpoint is where it clears.",
      ],
      left,
      right: RIGHT,
      top: marks.length > 0 ? 40 : 12,
      bottom: 40,
      plotHeight: height,
      plot: [
        footAxis({ ticks, width, height, unit: as }),
        ...limitLines,
        ...rows.map((row, i) => drawnRow(row, i * pitch + (pitch - ROW) / 2, x, width)),
        ...rows.map(({ name }, i) =>
          label(-10, i * pitch + pitch / 2 + 10, shortened(name, left), { "text-anchor": "end" }),
        ),
      ].join(""),
    });
  });
}
