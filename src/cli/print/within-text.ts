import { boundNotes, intervalText, type ZonesWithin } from "../../conformity/index";
import { significant } from "../../reading/index";
import { labelled } from "./labelled";

function percent(probability: number): string {
  if (probability < 0.001) return "below 0.1 %";
  return probability > 0.999 ? "above 99.9 %" : `${significant(100 * probability, probability > 0.99 ? 3 : 2)} %`;
}

/** How likely each zone is, or why that is not told. */
function probabilityText({ probabilities, why }: ZonesWithin): string {
  if (probabilities === null) return `not given: ${why}`;
  return Object.entries(probabilities)
    .map(([zone, probability]) => `${zone} ${percent(probability)}`)
    .join(", ");
}

const takes = {
  "guard band": "the worst zone that the interval touches",
  "simple acceptance": "the zone of the best value, whatever the interval touches",
} as const;

/** The interval of a reading, the zones within it, how likely they are and how the verdict was decided. */
export function withinText(within: ZonesWithin, digits: number): string {
  const { interval, uncertainty, zones, rule, bestValue } = within;
  const { method, draws, seed } = uncertainty;
  const how = method === "first order" ? method : `${method}, ${draws} draws, seed ${seed}`;
  const expanded = significant(interval.expanded, Math.min(digits, 3));
  const other = rule === "guard band" ? `; by simple acceptance ${bestValue.headline}` : "";
  const taken = boundNotes(within);
  return [
    labelled("within", [`${intervalText(within, digits)} (U = ${expanded}, k = 2, ${how}): ${zones.join(", ")}`], 12),
    labelled("taken", taken, 12),
    labelled("likely", [probabilityText(within)], 12),
    labelled("decided", [`by ${rule}: ${takes[rule]}${other}`], 12),
  ].join("");
}

/** The same in a few words, for a line. */
export function withinLine(within: ZonesWithin, digits: number): string {
  const { zones, rule, probabilities } = within;
  const likely = probabilities === null ? "" : `; likely ${probabilityText(within)}`;
  const taken = boundNotes(within).map((text) => `; ${text}`);
  return `by ${rule}; within ${intervalText(within, digits)}: ${zones.join(", ")}${taken.join("")}${likely}`;
}
