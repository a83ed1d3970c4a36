import { significant } from "../../reading/index";
import type { TripEvent, TripLogic, TripStatus } from "../../trip/index";
import { textTable } from "./text-table";

/** One delay tried on a history. */
export interface Simulation {
  readonly logic: TripLogic;
  readonly onDelay: number;
  readonly events: readonly TripEvent[];
  readonly status: TripStatus;
}

function seconds(time: number): string {
  return Number(time.toPrecision(10)).toString();
}

/** What happened with each delay, one row a delay. */
export function runTable(simulations: readonly Simulation[]): string {
  return textTable(
    [
      { title: "on-delay, s", align: "right" },
      { title: "trips", align: "right" },
      { title: "first trip, s", align: "right" },
      { title: "last clear, s", align: "right" },
      { title: "at the end" },
    ],
    simulations.map(({ onDelay, events, status }) => {
      const trips = events.filter(({ event }) => event === "trip");
      const clears = events.filter(({ event }) => event === "clear" || event === "reset");
      const last = clears[clears.length - 1];
      return [
        seconds(onDelay),
        `${trips.length}`,
        trips[0] === undefined ? "-" : seconds(trips[0].time),
        last === undefined ? "-" : seconds(last.time),
        status.state,
      ];
    }),
  );
}

/** Every event of one history. */
export function eventTable({ events, status }: Simulation, relay: boolean): string {
  const contact = relay ? `, contact ${status.contact}` : "";
  const end = `${events.length > 0 ? "\n" : ""}at the end: ${status.state}, output ${status.output}${contact}\n`;
  if (events.length === 0) return `\nnothing happened\n${end}`;
  const rows = events.map(({ time, event, level, cause, reason }) => [
    seconds(time),
    event,
    level === null ? "-" : significant(level),
    reason ?? (cause === "sensor fault" ? cause : ""),
  ]);
  return (
    textTable(
      [{ title: "time, s", align: "right" }, { title: "event" }, { title: "level", align: "right" }, { title: "" }],
      rows,
    ) + end
  );
}
