/** A moment by the clock, as a file has it. */
export interface Moment {
  /** Since 1970, UTC. */
  readonly seconds: number;
  /** Its zone as it was written, such as `Z` or `+02:00`; empty without one. */
  readonly zone?: string;
}

/** Minutes that the clocks of a zone are ahead of UTC. */
function minutesAhead(zone: string): number {
  const [, sign, hours, minutes] = /^([+-])(\d\d):?(\d\d)$/.exec(zone) ?? [];
  return sign === undefined ? 0 : (sign === "-" ? -1 : 1) * (Number(hours) * 60 + Number(minutes));
}

/** Date and time of day, in the zone that the first date of the file has; no part of a second where there is none. */
export function clockTime({ seconds, zone = "" }: Moment, later: number): string {
  const local = new Date(Math.round((seconds + later + minutesAhead(zone) * 60) * 1000));
  return local
    .toISOString()
    .replace("T", " ")
    .replace(/(?:\.000)?Z$/, "");
}

/** Writes times of a history by its clock; without the date where all of it lies on one day. */
export function clockOf(begins: Moment, end: number): (time: number) => string {
  const isOneDay = clockTime(begins, 0).slice(0, 10) === clockTime(begins, end).slice(0, 10);
  return (time) => clockTime(begins, time).slice(isOneDay ? 11 : 0);
}
