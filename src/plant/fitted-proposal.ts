import { convertedAt, currentLoop } from "../amplitude/index";
import { format } from "../reading/index";
import {
  AS_STATED,
  COMMON_PRACTICE,
  type Proposal,
  type ProposedSetpoint,
  type Reason,
  type SetpointWarning,
  withSpread,
} from "../setpoints/index";
import { underCeiling } from "./ceiling-of-list";
import type { PlantMachine } from "./plant-machine";

/** A level that is not proposed, and what the rules say of it all the same. */
interface Unproposed {
  readonly why: string;
  readonly range?: readonly [lowest: number, highest: number];
  readonly reasons?: readonly Reason[];
}

/** A proposal as far as it suits its machine, and what is not proposed. */
export interface FittedProposal {
  readonly proposal: Proposal;
  readonly unproposed: { readonly trip?: Unproposed; readonly alarm?: Unproposed };
}

/** What is said of limits whose source the list alone tells. */
export const STATED_BY_LIST = "as stated by the list";

/** A setpoint whose reasons say that limits are stated by the list: nobody typed them. */
function statedByList(one: ProposedSetpoint | null): ProposedSetpoint | null {
  if (one === null) return null;
  const reasons = one.reasons.map((reason) =>
    reason.source.note === AS_STATED
      ? Object.freeze({ ...reason, source: Object.freeze({ ...reason.source, note: STATED_BY_LIST }) })
      : reason,
  );
  return Object.freeze({ ...one, reasons: Object.freeze(reasons) });
}

/** With a trip delay below the coast-down: one as long stops nothing sooner than the machine stops by itself. */
function withinCoastDown(proposal: Proposal, { coastDown, tripDelay }: PlantMachine): Proposal {
  const { delay, warnings } = proposal;
  if (coastDown === undefined) return proposal;
  const late: SetpointWarning[] =
    tripDelay === undefined || tripDelay < coastDown
      ? []
      : [
          {
            code: "long delay",
            text: `a trip delay of ${tripDelay} s is not below the coast-down of ${coastDown} s: the trip stops nothing sooner than the machine stops without drive`,
          },
        ];
  const text = `half of the coast-down of ${coastDown} s: a trip that waits as long as the machine coasts down stops nothing sooner`;
  return Object.freeze({
    ...proposal,
    delay:
      coastDown > delay.longest
        ? delay
        : Object.freeze({
            ...delay,
            longest: coastDown,
            ...(delay.trip >= coastDown && {
              trip: coastDown / 2,
              reasons: Object.freeze([...delay.reasons, { text, source: COMMON_PRACTICE }]),
            }),
          }),
    warnings: late.length === 0 ? warnings : Object.freeze([...late, ...warnings]),
  });
}

/** Why a level cannot come through the loop of its machine; undefined where it can. */
function beyondLoop(
  { stored }: ProposedSetpoint,
  as: string,
  loop: string | undefined,
  hertz: number | undefined,
): string | undefined {
  if (loop === undefined) return undefined;
  const own = currentLoop(loop);
  const [start, end] = [own.reading(4), own.reading(20)].map((one) => convertedAt(one, as, hertz).value) as [
    number,
    number,
  ];
  const by = `by the rules it is ${format(stored)}`;
  if (stored.value > end)
    return `${by}, which no level within the loop of ${loop} reaches; take a loop that carries it`;
  if (start > 0 && stored.value <= start) return `${by}, which lies below the start of the loop of ${loop}`;
  return undefined;
}

/** Why a trip at the ceiling of its row is none; undefined where it is one. */
function spoiltByCeiling(asked: Proposal, { trip, alarm, baseline }: Proposal): string | undefined {
  if (trip === null || asked.trip === null || trip.stored.value >= asked.trip.stored.value) return undefined;
  const at = `under the ceiling of the maker or the site it would be ${format(trip.stored)}`;
  if (baseline !== null && baseline >= trip.stored.value) return `${at}, which the machine has reached at its baseline`;
  if (alarm !== null && alarm.stored.value >= trip.stored.value)
    return `${at}, which is not above the proposed alarm of ${format(alarm.stored)}`;
  return undefined;
}

/** What the rules allow for a trip, no more than the ceiling. */
function capped(
  range: readonly [number, number] | undefined,
  as: string,
  { ceiling }: PlantMachine,
  hertz: number | undefined,
): { readonly range?: readonly [number, number] } {
  if (range === undefined) return {};
  const most = ceiling === undefined ? Number.POSITIVE_INFINITY : convertedAt(ceiling, as, hertz).value;
  return { range: [Math.min(range[0], most), Math.min(range[1], most)] };
}

/**
 * A proposal by what the row of its machine says besides: ceiling, deviation of the baseline, coast-down and loop.
 *
 * A level that would do nothing, or that would do it at once, is not proposed.
 */
export function fittedProposal(asked: Proposal, row: PlantMachine, hertz: number | undefined): FittedProposal {
  const { as } = asked;
  const deviation = row.baseline?.deviation;
  const spread = deviation === undefined ? asked : withSpread(asked, deviation, hertz);
  const within = withinCoastDown(underCeiling(spread, row, hertz), row);
  const proposal =
    row.limits === undefined
      ? within
      : { ...within, alarm: statedByList(within.alarm), trip: statedByList(within.trip) };
  const { trip, alarm } = proposal;
  const none = (one: ProposedSetpoint, why: string | undefined): Unproposed | undefined =>
    why === undefined ? undefined : { why, ...{ range: one.range, reasons: one.reasons } };
  const isHeld = (name: string): boolean =>
    asked.warnings.some(({ code, text }) => code === "beyond device" && text.startsWith(name));
  const noTrip: Unproposed | undefined =
    trip !== null
      ? none(trip, spoiltByCeiling(asked, proposal) ?? beyondLoop(trip, as, row.loop, hertz))
      : asked.trip !== null
        ? { why: "the device holds no setpoint as low as the ceiling", ...capped(asked.trip.range, as, row, hertz) }
        : isHeld("trip")
          ? { why: "the device does not hold what the rules give" }
          : undefined;
  const noAlarm: Unproposed | undefined =
    alarm !== null
      ? none(alarm, beyondLoop(alarm, as, row.loop, hertz))
      : isHeld("alarm")
        ? { why: "the device does not hold what the rules give" }
        : undefined;
  return {
    proposal: Object.freeze({
      ...proposal,
      ...(noTrip !== undefined && { trip: null }),
      ...(noAlarm !== undefined && { alarm: null }),
    }),
    unproposed: { ...(noTrip !== undefined && { trip: noTrip }), ...(noAlarm !== undefined && { alarm: noAlarm }) },
  };
}
