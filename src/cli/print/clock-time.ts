/** A moment as a file has it. */
export interface Moment {
  /** Since 1970 in UTC, since midnight, or as the file counts. */
  readonly seconds: number;
  /** The zone of a date as it was written, such as `Z` or `+02:00`; empty without one. */
  readonly zone?: string;
  readonly by: "date" | "time of day" | "file";
}

/** Minutes that the clocks of a zone are ahead of UTC. */
function minutesAhead(zone: string): number {
  const [, sign, hours, minutes] = /^([+-])(\d\d):?(\d\d)$/.exec(zone) ?? [];
  return sign === undefined ? 0 : (sign === "-" ? -1 : 1) * (Number(hours) * 60 + Number(minutes));
}

/**
 * Date and time of day, in the zone that the first date of the file has; no part of a second where there is none. Times
 * without a date count the days behind the first, bare seconds go on as the file has them.
 */
export function clockTime({ seconds, zone = "", by }: Moment, later: number): string {
  if (by === "file") return `${Number((seconds + later).toPrecision(15))} s`;
  const local = new Date(Math.round((seconds + later + minutesAhead(zone) * 60) * 1000)).toISOString();
  const text = local.replace("T", " ").replace(/(?:\.000)?Z$/, "");
  if (by === "date") return text;
  const days = Math.floor(Math.round((seconds + later) * 1000) / 86_400_000);
  return `${text.slice(11)}${days === 0 ? "" : ` +${days} d`}`;
}

/** Writes times of a history as its file has them, and what such a column is called. */
export interface Clock {
  readonly title: string;
  text(time: number): string;
}

/** The clock of a history; without the date where all of it lies on one day. */
export function clockOf(begins: Moment, end: number): Clock {
  if (begins.by === "file") return { title: "in the file", text: (time) => clockTime(begins, time) };
  const [first, last] = [clockTime(begins, 0), clockTime(begins, end)];
  const isOneDay = begins.by === "date" && first.slice(0, 10) === last.slice(0, 10);
  return { title: "clock", text: (time) => clockTime(begins, time).slice(isOneDay ? 11 : 0) };
}

/** A time of a history, and in brackets what it is in its file. */
export function timeAndClock(seconds: string, time: number, clock: Clock | undefined): string {
  if (clock === undefined) return `${seconds} s`;
  return `${seconds} s (${clock.text(time)}${clock.title === "clock" ? "" : ` ${clock.title}`})`;
}

/** What times of a history, and of its commands, count from. */
export function countedFrom(begins: Moment | undefined): string {
  const at = begins === undefined ? "0 s" : clockTime(begins, 0);
  return `in s from the first row, which is at ${at}${begins?.by === "file" ? " in the file" : ""}`;
}
