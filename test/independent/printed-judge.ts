import type { Row } from "../references/severity-limits";

/** A number as a quotient of whole numbers. */
type Exact = readonly [over: bigint, under: bigint];

const times = (...all: readonly Exact[]): Exact => all.reduce(([a, b], [c, d]) => [a * c, b * d], [1n, 1n]);
const inverse = ([over, under]: Exact): Exact => [under, over];
const isMore = ([a, b]: Exact, [c, d]: Exact): boolean => a * d > c * b;

/** What a decimal numeral such as "0.0254" or "1.2e-7" says, to the last digit. */
function exactly(numeral: string): Exact {
  const [, whole = "", decimals = "", power = "0"] = /^(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/.exec(numeral) ?? [];
  if (whole === "") throw new Error(`no numeral: ${numeral}`);
  const shift = Number(power) - decimals.length;
  const digits = BigInt(whole + decimals);
  return shift >= 0 ? [digits * 10n ** BigInt(shift), 1n] : [digits, 10n ** BigInt(-shift)];
}

/**
 * Units as exact multiples of m, m/s and m/s2, and how often each is differentiated. International Yard and Pound
 * Agreement 1959 (in, ft); third CGPM 1901 (g); SI.
 */
const unitTable: Readonly<Record<string, readonly [order: number, metres: string]>> = {
  m: [0, "1"],
  mm: [0, "1e-3"],
  um: [0, "1e-6"],
  in: [0, "0.0254"],
  mil: [0, "0.0000254"],
  "m/s": [1, "1"],
  "cm/s": [1, "1e-2"],
  "mm/s": [1, "1e-3"],
  "in/s": [1, "0.0254"],
  "ft/s": [1, "0.3048"],
  "m/s2": [2, "1"],
  "mm/s2": [2, "1e-3"],
  g: [2, "9.80665"],
  "in/s2": [2, "0.0254"],
};
export const unitsOfOrder = (order: number): string[] =>
  Object.keys(unitTable).filter((unit) => unitTable[unit]?.[0] === order);

/** pi to 50 digits: NIST Digital Library of Mathematical Functions, 3.12.1. */
const pi = exactly("3.14159265358979323846264338327950288419716939937510");

/** The square of the RMS value of a sine over the square of what each detector reads: ISO 2041, relations of a sine. */
const toRmsSquared: Readonly<Record<string, Exact>> = {
  rms: [1n, 1n],
  pk: [1n, 2n],
  pp: [1n, 8n],
  avg: times(pi, pi, [1n, 8n]),
};

/** Keeps what was made of each text. */
function kept<T>(make: (text: string) => T): (text: string) => T {
  const made = new Map<string, T>();
  return (text) => {
    const known = made.get(text) ?? make(text);
    made.set(text, known);
    return known;
  };
}

const typeOf = kept((as) => {
  const [unit = "", detector = ""] = as.split(" ");
  const [order, metres] = unitTable[unit] ?? [];
  if (order === undefined || metres === undefined) throw new Error(`no unit: ${as}`);
  return { order, metres: exactly(metres), detector, rms: toRmsSquared[detector] as Exact };
});
export const orderOf = (as: string): number => typeOf(as).order;
export const detectorOf = (as: string): string => typeOf(as).detector;

/** A value at a limit belongs to the better zone, with a tolerance of 2^-23 (the guide "Judging a reading"). */
const tolerance: Exact = [2n ** 23n + 1n, 2n ** 23n];

/** The square of a limit, with its tolerance; from "4.5 mm/s rms". */
const limitSquared = kept((text) => {
  const [numeral = "", ...as] = text.split(" ");
  return times(squared(numeral, as.join(" ")), tolerance, tolerance);
});

/** The square of the RMS value in SI units. */
function squared(numeral: string, as: string): Exact {
  const { metres, rms } = typeOf(as);
  const value = times(exactly(numeral), metres);
  return times(value, value, rms);
}

/** A reading as it is written, all at one frequency if that is told. */
export interface Written {
  readonly numeral: string;
  readonly as: string;
  readonly hertz?: string;
}

/**
 * How many limits of a row the reading exceeds; across quantities as a sine at so many hertz. Where the limits are
 * over the root of a speed, its square meets the square of the reading times that speed.
 */
function exceeded({ numeral, as }: Written, [, rowAs, limits]: Row, hertz?: string, rpm = 1): number {
  const steps = orderOf(rowAs) - orderOf(as);
  let reading = times(squared(numeral, as), [BigInt(rpm), 1n]);
  if (steps !== 0) {
    const omega = times([2n, 1n], pi, exactly(hertz as string));
    for (let i = 0; i < 2 * Math.abs(steps); i++) reading = times(reading, steps > 0 ? omega : inverse(omega));
  }
  const printed = limits.filter((limit) => limit !== null);
  return printed.filter((limit) => isMore(reading, limitSquared(`${limit} ${rowAs}`))).length;
}

/** The zones of a table, best first, as its standard calls them; where A/B is not printed, A and B are one. */
export function zonesOf(kind: string, [, , limits]: Row, names: readonly string[] = []): readonly string[] {
  if (kind === "acceptance") return ["pass", "fail"];
  if (kind === "operation") return ["start-up", "service", "alarm", "shutdown"].slice(0, limits.indexOf(null) + 1 || 4);
  // above the only value printed, the worst word: what would part it from the one before has no value
  if (kind === "grades") return limits.includes(null) ? [names[0] as string, names.at(-1) as string] : names;
  return limits[0] === null ? ["AB", "C", "D"] : ["A", "B", "C", "D"];
}

/**
 * Where a reading stands by the rows of one machine: how many limits are exceeded for certain, and at the most.
 *
 * By the guide "What a verdict rests on": the worse of all quantities governs; a reading with its frequency is carried
 * to every quantity; without one it says, at running speed, of a higher derivative the least and of a lower one the
 * most; without a speed the other quantities are not judged, and the worst zone is possible.
 */
export function printedJudgement(reading: Written, rows: readonly Row[], speedHertz?: string, rpm?: number) {
  const own = orderOf(reading.as);
  let [zone, worst] = [0, 0];
  for (const row of rows) {
    const last = row[2].filter((limit) => limit !== null).length;
    const order = orderOf(row[1]);
    const exact = order === own || reading.hertz !== undefined;
    const hertz = reading.hertz ?? speedHertz;
    const index = order === own || hertz !== undefined ? exceeded(reading, row, hertz, rpm) : undefined;
    if (index !== undefined && (exact || order > own)) zone = Math.max(zone, index);
    worst = Math.max(worst, index !== undefined && (exact || order < own) ? index : last);
  }
  return { zone, worst: Math.max(zone, worst) };
}
