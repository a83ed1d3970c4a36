import { scaleLinear, scaleLog } from "d3-scale";
import { largestOf, orNothing, requireList, requireShape, VeladisError, withParameters } from "../core/index";
import { type Amplitude, amplitudeOf } from "../reading/index";
import { type ErrorMark, type ErrorMarks, errorMarks, type KnownCheckResult } from "../verification/index";
import { footAxis, logTicks, sideAxis, spacedTicks, type Tick, tickText } from "./axis";
import { chartDocument } from "./chart-document";
import { type ChartOptions, requireHeight, requireOptions, requireWidth } from "./chart-options";
import { label, stroke, tag } from "./markup";
import { shortened, widthOf } from "./text-width";

/** What a chart of checks is drawn of. */
export interface CheckChartOptions extends ChartOptions {
  /** Checks with their names, as found and as left or several points; a name may be empty. */
  readonly checks: readonly { readonly name: string; readonly check: KnownCheckResult }[];
}

const own = /* @__PURE__ */ Object.freeze({ checks: true, height: true });
const LEFT = 56;
const RIGHT = 24;
/** Half the width of a tolerance, and of the ends of an uncertainty. */
const HALF = 9;
const CAP = 4;

const reading = (value: Amplitude): unknown => amplitudeOf(value);

/** The checks themselves if they are such, as far as a chart draws them. */
function requireChecks({ checks }: CheckChartOptions): CheckChartOptions["checks"] {
  const list = requireList(checks, "a list of checks with their names", { option: "checks" });
  const shape = {
    name: (value: unknown, where: string) => {
      if (typeof value === "string" && value.length <= 200) return value;
      throw new VeladisError("wrong-type", {
        expected: `${where}: a name, which may be empty`,
        received: typeof value,
      });
    },
    check: {
      known: reading,
      as: "text",
      errorPercent: "number",
      tolerance: "number",
      toleranceBelow: orNothing("number"),
      uncertainty: "number or null",
      verdict: "text",
    },
  } as const;
  for (const [i, one] of list.entries()) requireShape(one, shape, `checks[${i}]`);
  if (list.length > 0) return list;
  throw new VeladisError("missing-option", {
    expected: "at least one check to draw",
    received: "an empty list",
    option: "checks",
  });
}

/** The foot of the chart: places, and what stands there. */
function footOf({ over, marks }: ErrorMarks, width: number): { x: (at: number) => number; foot: Tick[] } {
  const [low, high] = [marks[0]?.at ?? 0, marks.at(-1)?.at ?? 1];
  if (over === "frequency") {
    const x = scaleLog([low / 1.3, high * 1.3], [0, width]);
    return { x, foot: spacedTicks(logTicks(low / 1.3, high * 1.3, x, 40), (text) => widthOf(text) + 6) };
  }
  if (over === "level") {
    const x = scaleLinear([0, high * 1.1], [0, width]);
    return { x, foot: x.ticks(Math.max(3, Math.round(width / 70))).map((at) => ({ at: x(at), text: tickText(at) })) };
  }
  const x = scaleLinear([0.5, marks.length + 0.5], [0, width]);
  const room = width / marks.length - 6;
  const named = marks.map(({ at, name }) => ({ at: x(at), text: shortened(name === "" ? `${at}` : name, room) }));
  return { x, foot: spacedTicks(named, (text) => widthOf(text) + 6) };
}

/** The furthest from zero that a mark goes. */
function reachOf({ percent, tolerance, uncertainty }: ErrorMark): number {
  return Math.max(Math.abs(percent) + (uncertainty ?? 0), -tolerance[0], tolerance[1]);
}

/** A check: its tolerance as a field between two bounds, its error as a dot, its uncertainty as a whisker. */
function markText(
  { percent, tolerance, uncertainty, verdict }: ErrorMark,
  x: number,
  y: (p: number) => number,
): string {
  const [bottom, top] = [y(tolerance[0]), y(tolerance[1])];
  const whisker = uncertainty === null ? [] : [y(percent - uncertainty), y(percent + uncertainty)];
  const word = verdict === "pass" ? "" : verdict;
  const beside = percent < 0 ? 16 : -9;
  const ends = whisker.length === 0 ? y(percent) : percent < 0 ? Math.max(...whisker) : Math.min(...whisker);
  return [
    tag("rect", { kind: "lane", x: x - HALF, y: top, width: 2 * HALF, height: Math.max(bottom - top, 0) }),
    ...[bottom, top].map((at) => stroke([x - HALF, at], [x + HALF, at], "trip")),
    ...(whisker.length === 0
      ? []
      : [
          stroke([x, whisker[0] as number], [x, whisker[1] as number], "data"),
          ...whisker.map((at) => stroke([x - CAP, at], [x + CAP, at], "data")),
        ]),
    tag("circle", { kind: "point", cx: x, cy: y(percent), r: 5 }),
    label(x, ends + beside, word, { kind: ["halo", "letter"], "text-anchor": "middle" }),
  ].join("");
}

const footUnits = { frequency: "Hz", check: "check" } as const;

/**
 * Checks against a known vibration: the error of each in percent of its known level, against its tolerance, with the
 * uncertainty where one is stated; over the level, over the frequency, or one beside the other.
 *
 * What does not pass says so in words.
 *
 * @param options - `checks`, and {@link ChartOptions}
 * @returns an SVG document as text
 * @throws {@link VeladisError} `missing-option` for no checks, `wrong-type` for what {@link checkAgainstKnown} did not return
 * @example
 * ```ts
 * import { checkChart } from "veladis/chart";
 * import { asFoundAsLeft } from "veladis/protection";
 *
 * const { asFound, asLeft } = asFoundAsLeft({
 *   known: "8 mm/s rms at 2400 r/min",
 *   asFound: "7.3 mm/s rms",
 *   asLeft: "7.9 mm/s rms",
 *   tolerance: "5 %",
 * });
 * const svg = checkChart({ checks: [{ name: "as found", check: asFound }, { name: "as left", check: asLeft }] });
 * svg.includes(">fail<"); // => true
 * ```
 */
export function checkChart(options: CheckChartOptions): string {
  return withParameters({ options }, () => {
    const checks = requireChecks(requireOptions(options, own, "options such as { checks }"));
    const found = errorMarks(checks);
    const { over, unit, marks } = found;
    const width = requireWidth(options) - LEFT - RIGHT;
    const height = requireHeight(options, 220);
    const most = largestOf(marks.map(reachOf)) * 1.25 || 1;
    const y = scaleLinear([-most, most], [height, 0]);
    const ticks = y.ticks(Math.max(3, Math.round(height / 40))).map((at) => ({ at: y(at), text: tickText(at) }));
    const { x, foot } = footOf(found, width);
    const isKnown = marks.some(({ uncertainty }) => uncertainty !== null);
    const counts = (["pass", "undecided", "fail"] as const)
      .map((verdict) => [verdict, marks.filter((mark) => mark.verdict === verdict).length] as const)
      .flatMap(([verdict, count]) => (count === 0 ? [] : [`${count} ${verdict}`]));
    const texts = marks.map(({ name, at, percent, verdict }) => {
      const where =
        over === "check" ? (name === "" ? "check" : name) : `${tickText(Number(at.toPrecision(4)))} ${unit}`;
      return `${where}: ${Number(percent.toPrecision(3))} %, ${verdict}`;
    });
    return chartDocument(options, {
      title: `Error against tolerance: ${counts.join(", ")}`,
      description: `Error in percent of the known level over the ${over}. ${texts.join("; ")}.`,
      notes: [
        `A field between two bars is the tolerance of a check, the dot its error${isKnown ? ", the line through it the uncertainty (k = 2)" : ""}; what does not pass says so.`,
      ],
      ...{ left: LEFT, right: RIGHT, top: 34, bottom: 38, plotHeight: height },
      plot: [
        sideAxis({ ticks, width, height, unit: "error, % of the known level" }, -16),
        footAxis({ ticks: foot, width, height, unit: over === "level" ? unit : footUnits[over] }),
        stroke([0, y(0)], [width, y(0)], "axis"),
        ...marks.map((mark) => markText(mark, x(mark.at), y)),
      ].join(""),
    });
  });
}
