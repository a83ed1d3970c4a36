import { convertAmplitude } from "../amplitude/index";
import { attempt, raised } from "../core/index";
import { type Amplitude, writtenIn } from "../reading/index";
import type { RouteBasis, RouteChange } from "./route-verdict";

/** What a reading is held against: a value in its type. */
interface Before extends Pick<RouteChange, "before" | "assumed"> {
  readonly date?: RouteChange["date"];
  /** Whether a fall is one: false where the value is of another point, maybe. */
  readonly isFallKnown: boolean;
}

/** How a value has changed since another in its type; one that may be larger than it says has changed significantly. */
export function routeChange(
  now: Pick<Amplitude, "value" | "state">,
  { before, date, assumed, isFallKnown }: Before,
  { allowedChange }: Pick<RouteBasis, "allowedChange">,
): RouteChange {
  const change = now.value - before;
  const size = Math.abs(change);
  const isKnown = allowedChange !== null && (change >= 0 || isFallKnown);
  return {
    before,
    date,
    assumed,
    change,
    direction: change > 0 ? "rise" : change < 0 ? "fall" : "none",
    significant: isKnown ? now.state === "above range" || size > raised(allowedChange.value) : null,
    ratio: allowedChange === null ? null : size / allowedChange.value,
  };
}

/** The value of an earlier reading in the type of a later one, or why it has none there. */
export function earlierValue(earlier: Amplitude, now: Amplitude): Pick<RouteChange, "before" | "assumed"> | string {
  const { unit, detector, value: before, assumed = [] } = earlier;
  if (unit === now.unit && detector === now.detector) return { before, assumed };
  const found = attempt(() => convertAmplitude(earlier, writtenIn(now)));
  if (!found.ok) return `the last route cannot be held against it: ${found.error.message}`;
  return { before: found.value.value, assumed: found.value.assumed };
}
