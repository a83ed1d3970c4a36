import type { ZonesWithin } from "../conformity/index";
import { raised, requireShape, same, VeladisError } from "../core/index";
import { isLevelType, isUncertain, type Step, significant } from "../reading/index";
import { BEST_VALUE, type Judgement } from "../severity/index";
import { rounded, tag } from "./markup";

/** What says that a chart of readings shows their best values; nothing where none has an uncertainty. */
export function notDrawnNotes(readings: readonly { readonly history?: readonly Step[] | undefined }[]): string[] {
  const count = readings.filter(({ history = [] }) => isUncertain(history)).length;
  return count === 0
    ? []
    : [`± NOT DRAWN: ${count} of ${readings.length} readings have one; shown are the best values.`];
}

/** True for a verdict on a reading with an uncertainty. */
export function isOfBestValue({ judged, cautions }: Judgement): boolean {
  return cautions.includes(BEST_VALUE) || isUncertain(judged.history ?? []);
}

/** The interval of a reading on the scale of a severity bar, and what it says. */
export interface DrawnInterval {
  readonly low: number;
  readonly high: number;
  readonly title: string;
  readonly notes: readonly string[];
}

const interval = { value: "number", low: "number", high: "number", type: "text" } as const;

const shape = {
  headline: "text",
  rule: "text",
  word: "text",
  worst: "text",
  zones: ["text"],
  interval,
  bestValue: { headline: "text" },
  criteria: [
    {
      scheme: "text",
      quantity: "text",
      zones: ["text"],
      interval,
      uncertainty: { value: "number", expanded: "number", type: "text" },
    },
  ],
} as const;

/** What is said of zones within an interval that are not those of the judgement. */
function ofAnother(): VeladisError {
  return new VeladisError("out-of-range", {
    expected: "within: what zonesWithin returns for the judgement that is drawn",
    received: "that of another judgement",
  });
}

/**
 * The interval of the judged reading among those of its criteria, in the unit of the standard.
 *
 * @throws {@link VeladisError} `wrong-type` for what `zonesWithin` did not return, `out-of-range` for that of another
 *   judgement
 */
export function drawnInterval(judgement: Judgement, within: ZonesWithin): DrawnInterval {
  const { scheme, judged, headline: best, limits, zones: scale } = judgement;
  requireShape(within, shape, "within");
  const own = within.criteria.find(
    (one) => one.scheme === scheme && one.quantity === judged.quantity && same(one.uncertainty.value, judged.value),
  );
  if (own === undefined || within.bestValue.headline !== best) throw ofAnother();
  const { value, low, high, type } = own.interval;
  // an interval in decibels is carried over by ratios
  const carried = (end: number): number =>
    judged.value * (isLevelType(type) ? 10 ** ((end - value) / 20) : end / value);
  const [from, to] = value === 0 ? [0, own.uncertainty.expanded] : [carried(low), carried(high)];
  const above = (end: number): number => bounds.filter((one) => end > raised(one)).length;
  const bounds = Object.values(limits).map(({ printed }) => printed.value);
  if (own.zones.join() !== scale.slice(above(from), above(to) + 1).join()) throw ofAnother();
  const { zones, worst, rule, headline } = within;
  const touched = zones.length === 1 ? `one zone, ${worst}` : `the zones ${zones.join(", ")}; the worst is ${worst}`;
  return {
    low: from,
    high: to,
    title: `, ${significant(from)} to ${significant(to)} (k=2)`,
    notes: [`The interval of the reading (k=2) touches ${touched}. By ${rule}: ${headline}.`],
  };
}

/** The interval as a bar with ends across the plot, at the height of the reading. */
export function intervalMark(low: number, high: number, height: number): string {
  const [from, to, middle] = [rounded(low), rounded(high), rounded(height * 0.25)];
  return tag("path", { kind: "data", d: `M${from},${middle}H${to}M${from},${middle - 6}v12M${to},${middle - 6}v12` });
}

/** What a bar without the interval says of it. */
export const notDrawn = /* @__PURE__ */ Object.freeze({
  title: ", ± NOT DRAWN",
  note: "The uncertainty of the reading is not drawn: the verdict is that of the best value.",
});
