import type { TripSettings } from "../../device/index";
import { significant } from "../../reading/index";
import type { TripEvent, TripLogic, TripStatus, UnmaskedTrips } from "../../trip/index";
import type { Clock } from "./clock-time";
import type { RiddenOut } from "./ridden-out";
import { numberColumn, textTable } from "./text-table";

/** One delay tried on a history. */
export interface Simulation {
  readonly logic: TripLogic;
  readonly settings: TripSettings;
  readonly onDelay: number;
  readonly events: readonly TripEvent[];
  readonly status: TripStatus;
  /** What would have happened without the masks. */
  readonly unmasked: UnmaskedTrips;
  /** What the on-delay rode out. */
  readonly rodeOut: RiddenOut;
}

/** Writes a time of a history. */
export type TimeText = (time: number) => string;

/** Seconds without the noise of sums. */
export function secondsText(time: number): string {
  return Number(time.toPrecision(10)).toString();
}

/** The highest of levels, faults left out. */
export function highestOf(levels: Float64Array): number {
  return levels.reduce((most, level) => (Number.isNaN(level) ? most : Math.max(most, level)), 0);
}

/** Whether settings with several thresholds are compared. */
export function hasThresholds(simulations: readonly Simulation[]): boolean {
  return new Set(simulations.map(({ logic }) => logic.rules.setAt)).size > 1;
}

const secondsOrNone = (time: number | null | undefined): string => (typeof time === "number" ? secondsText(time) : "-");

/** What happened with each threshold and delay, a row each; with the time of day where there is a clock. */
export function runTable(simulations: readonly Simulation[], clock: Clock | undefined): string {
  const several = hasThresholds(simulations);
  return textTable(
    [
      ...(several ? [numberColumn("threshold")] : []),
      numberColumn("on-delay, s"),
      numberColumn("trips"),
      numberColumn("first trip, s"),
      ...(clock ? [{ title: clock.title }] : []),
      numberColumn("last clear, s"),
      numberColumn("rode out"),
      numberColumn("longest, s"),
      numberColumn("margin, s"),
      { title: "at the end" },
    ],
    simulations.map(({ logic, onDelay, events, status, rodeOut }) => {
      const trips = events.filter(({ event }) => event === "trip");
      const clears = events.filter(({ event }) => event === "clear" || event === "reset");
      const last = clears[clears.length - 1];
      const [first] = trips;
      return [
        ...(several ? [significant(logic.rules.threshold.value)] : []),
        secondsText(onDelay),
        `${trips.length}`,
        first === undefined ? "-" : secondsText(first.time),
        ...(clock ? [first === undefined ? "-" : clock.text(first.time)] : []),
        last === undefined ? "-" : secondsText(last.time),
        `${rodeOut.times}`,
        secondsOrNone(rodeOut.longest),
        secondsOrNone(rodeOut.margin),
        status.state,
      ];
    }),
  );
}

/** Every event of one history. */
export function eventTable({ events, status, rodeOut }: Simulation, relay: boolean, clock: Clock | undefined): string {
  const contact = relay ? `, contact ${status.contact}` : "";
  const end = `${events.length > 0 ? "\n" : ""}at the end: ${status.state}, output ${status.output}${contact}\n`;
  if (events.length === 0)
    return `\n${rodeOut.times > 0 ? "no trip: what was ridden out stands above" : "nothing happened"}\n${end}`;
  const rows = events.map(({ time, event, level, cause, reason }) => [
    secondsText(time),
    ...(clock ? [clock.text(time)] : []),
    event,
    level === null ? "-" : significant(level),
    reason ?? (cause === undefined || cause === "level" ? "" : cause),
  ]);
  return (
    textTable(
      [
        numberColumn("time, s"),
        ...(clock ? [{ title: clock.title }] : []),
        { title: "event" },
        numberColumn("level"),
        { title: "" },
      ],
      rows,
    ) + end
  );
}
