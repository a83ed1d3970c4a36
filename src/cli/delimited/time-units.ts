/** A unit of time: its length in seconds, and how people write it. */
interface TimeUnit {
  readonly seconds: number;
  readonly spoken: readonly string[];
}

/** Units of time in headings; a single letter is read to the letter, a word without regard to case. */
const timeUnits = {
  ns: { seconds: 1e-9, spoken: ["nsec", "nanos", "nanosec", "nanosecond", "nanoseconds"] },
  us: { seconds: 1e-6, spoken: ["µs", "μs", "usec", "usecs", "micros", "microsec", "microsecond", "microseconds"] },
  ms: { seconds: 1e-3, spoken: ["msec", "msecs", "millis", "millisec", "millisecond", "milliseconds"] },
  s: { seconds: 1, spoken: ["sec", "secs", "second", "seconds"] },
  min: { seconds: 60, spoken: ["mins", "minute", "minutes"] },
  h: { seconds: 3600, spoken: ["hr", "hrs", "hour", "hours"] },
  d: { seconds: 86_400, spoken: ["day", "days"] },
} as const satisfies Record<string, TimeUnit>;

/** The symbol of a unit of time. */
export type TimeUnitSymbol = keyof typeof timeUnits;

/** The unit of time that a word names, if it names one. */
export function findTimeUnit(word: string): TimeUnitSymbol | undefined {
  const folded = word.length > 1 ? word.toLowerCase() : word;
  const all = Object.entries<TimeUnit>(timeUnits) as [TimeUnitSymbol, TimeUnit][];
  return all.find(([symbol, { spoken }]) => symbol === folded || spoken.includes(folded))?.[0];
}

/** A time in this unit, in seconds. */
export function secondsIn(unit: TimeUnitSymbol, time: number): number {
  const { seconds } = timeUnits[unit];
  // a division keeps 3 ms at 0.003 s
  return seconds < 1 ? time / Math.round(1 / seconds) : time * seconds;
}
