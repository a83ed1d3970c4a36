import { FLOAT_NOISE } from "../core/index";
import { format, significant } from "../reading/index";
import { type Baseline, OUTLYING } from "./baseline";
import type { ProposedSetpoint } from "./proposal";
import type { SetpointWarning } from "./setpoint-warnings";

/**
 * What is said of readings of the baseline that have reached the trip, where the level of the baseline has not: the machine
 * would have tripped at each. They are counted where all of them lie so far off that the baseline lists them.
 *
 * @param inDevice - a value of the baseline in the type of the setpoints
 */
export function readingsAtTrip(
  trip: ProposedSetpoint | null,
  statistics: Baseline | null,
  inDevice: (value: number) => number,
): SetpointWarning[] {
  if (trip === null || statistics === null || trip.atOnce) return [];
  const { highest, count, median, spread, outliers } = statistics;
  const least = trip.stored.value * (1 - FLOAT_NOISE);
  const most = inDevice(highest);
  if (!(most >= least)) return [];
  // all in one linear type, so that one ratio serves every reading
  const ratio = most / highest;
  const isListed = spread > 0 && (least / ratio - median) / spread > OUTLYING;
  const many = outliers.filter(({ value }) => value * ratio >= least).length;
  const which = isListed ? `${many} of ${count} readings of the baseline stand` : "readings of the baseline stand";
  const top = `the highest${isListed ? "" : ` of ${count}`} at ${significant(most)}`;
  return [
    {
      code: "readings at trip",
      text: `${which} at or above the trip of ${format(trip.stored)}, ${top}: it would have tripped the machine there; look at each`,
    },
  ];
}
