import { same, shown, VeladisError } from "../core/index";
import type { Frequency } from "../frequency/index";
import { isDualRating } from "./dual-rating";
import type { Machine } from "./machine";
import type { SpeedSaid } from "./machine-numbers";

/** A number of poles as it was written. */
export interface Poles {
  readonly count: number;
  readonly written: string;
}

const lineFrequencies = [50, 60];

/** An induction motor turns this much slower than its field at most (common practice, no source). */
const MOST_SLIP = 0.1;

const rounded = (value: number): number => Number(value.toPrecision(6));
const perMinute = (hertz: number): string => `${rounded(hertz * 60)} r/min`;

/** The frequency of a shaft that turns with its field. */
function synchronous(poles: number, line: number): number {
  return (2 * line) / poles;
}

function hertzOf(speed: Frequency | { readonly from: Frequency; readonly to: Frequency }): number | undefined {
  return typeof speed === "object" && "hertz" in speed ? speed.hertz : undefined;
}

function rangeText({ speed, written }: SpeedSaid): string {
  const single = hertzOf(speed);
  return single === undefined ? `speed as in "${written}"` : `speed ${perMinute(single)}`;
}

/** True for a speed in hertz beside the same in r/min, each rounded on its own: the latter is taken. */
function isSecond(one: SpeedSaid, other: SpeedSaid): boolean {
  const [a, b] = [hertzOf(one.speed), hertzOf(other.speed)];
  return one.inHertz && !other.inHertz && a !== undefined && b !== undefined && isDualRating(a, b);
}

/** The only one of what was said of one thing; refuses two that differ. */
function only<One extends { readonly written: string }>(
  said: readonly One[],
  what: string,
  value: (one: One) => string,
  refusal: (what: string, a: string, b: string) => VeladisError,
): One | undefined {
  const [first, ...others] = said;
  const other = others.find((one) => value(one) !== value(first as One));
  if (other !== undefined) throw refusal(what, (first as One).written, other.written);
  return first;
}

function requireSlip({ written, speed }: SpeedSaid, poles: Poles, lines: readonly number[]): void {
  const single = hertzOf(speed);
  const range = rangeOf({ speed, written } as SpeedSaid);
  if (single === undefined && range === undefined) return;
  const [slow, fast] = range ?? [single as number, single as number];
  const explains = (line: number): boolean => {
    const field = synchronous(poles.count, line);
    const isReached = slow < field || same(slow, field);
    // a line whose frequency is varied turns a shaft slower than the mains, and no faster unless it is told
    if (range !== undefined) return isReached && (fast < field || same(fast, field));
    return isReached && (fast > field * (1 - MOST_SLIP) || same(fast, field * (1 - MOST_SLIP)));
  };
  if (lines.some(explains)) return;
  const ranges = lines.map((line) => {
    const field = synchronous(poles.count, line);
    return `${rounded(field * 60 * (1 - MOST_SLIP))} to ${perMinute(field)} at ${line} Hz`;
  });
  throw new VeladisError("out-of-range", {
    expected: `a speed that ${poles.count} poles explain: ${ranges.join(", ")}`,
    received: `${shown(poles.written)} and ${shown(written)}`,
  });
}

/** What a line says of speeds: speeds, line frequencies and numbers of poles, and whether the machine is electrical. */
interface SpeedsSaid {
  readonly speeds: readonly SpeedSaid[];
  readonly lines: readonly SpeedSaid[];
  readonly poles: readonly Poles[];
  readonly isElectrical: boolean;
  /** Ranges of the line's frequency, as written. */
  readonly lineRanges: readonly string[];
}

/** The ends of a range of speeds in Hz; undefined for one speed. */
function rangeOf({ speed }: SpeedSaid): readonly [number, number] | undefined {
  if (typeof speed !== "object" || !("from" in speed)) return undefined;
  const [from, to] = [hertzOf(speed.from), hertzOf(speed.to)];
  return from === undefined || to === undefined ? undefined : [from, to];
}

/**
 * Refuses a range in hertz beside poles, of an electrical machine or with 50 or 60 Hz at an end: it may be that of a line whose
 * frequency is varied, and is then no range of the shaft's speed.
 *
 * @throws {@link VeladisError} `syntax`
 */
function requireOneFrequency({ speeds, poles, isElectrical, lineRanges }: SpeedsSaid): void {
  const [pole] = poles;
  const mayBeOfLine = (one: SpeedSaid): boolean =>
    pole !== undefined || isElectrical || (rangeOf(one) ?? []).some((end) => lineFrequencies.includes(end));
  const found = speeds.find((one) => one.inHertz && rangeOf(one) !== undefined && mayBeOfLine(one));
  const isOfLine = speeds.length === 0 && pole !== undefined;
  const written = found?.written ?? (isOfLine ? lineRanges[0] : undefined);
  if (written === undefined) return;
  const [low, high] = (found && rangeOf(found)) ?? [];
  const fields =
    pole === undefined || low === undefined || high === undefined
      ? "such as 600 to 1800 r/min"
      : `${rounded(synchronous(pole.count, low) * 60)} to ${perMinute(synchronous(pole.count, high))} without slip where the line has ${rounded(low)} to ${rounded(high)} Hz`;
  throw new VeladisError("syntax", {
    expected: `the range of the shaft's speed in r/min, ${fields}: a range in Hz may be that of the line`,
    received: shown(pole === undefined ? written : `${pole.written} and ${written}`),
  });
}

/**
 * The shaft speed that speeds, line frequencies and numbers of poles of a line say, and what that assumes.
 *
 * 50 or 60 Hz beside poles, another speed or an electrical machine is the line's. Poles without a speed give the synchronous speed,
 * 120 f / p in r/min; without the line frequency, the range of it over 50 and 60 Hz.
 *
 * @throws what `refusal` makes of two that differ, `syntax` for a range in hertz that may be the line's, and `out-of-range` for a speed that the
 *   poles do not explain
 */
export function speedOf(
  said: SpeedsSaid,
  refusal: (what: string, a: string, b: string) => VeladisError,
): { speed?: Machine["speed"]; because: readonly string[] } {
  requireOneFrequency(said);
  const { speeds, lines, poles, isElectrical } = said;
  const because: string[] = [];
  const couldBeLine = ({ speed, inHertz }: SpeedSaid): boolean =>
    inHertz && lineFrequencies.includes(hertzOf(speed) ?? 0);
  const shafts = speeds.filter((one) => !couldBeLine(one));
  const surely = shafts.filter((one) => !shafts.some((other) => isSecond(one, other)));
  const perhaps = speeds.filter(couldBeLine);
  const areLines = poles.length > 0 || surely.length > 0 || lines.length > 0 || isElectrical;
  const text = ({ speed }: SpeedSaid): string =>
    JSON.stringify(speed, (_, part) => (typeof part === "number" ? rounded(part) : part));
  const line = only(areLines ? [...lines, ...perhaps] : lines, "line frequency", text, refusal);
  const stated = only(areLines ? surely : perhaps, "speed", text, refusal);
  const pole = only(poles, "number of poles", ({ count }) => String(count), refusal);
  if (line !== undefined && stated !== undefined)
    because.push(`line frequency ${rounded(hertzOf(line.speed) ?? 0)} Hz: not the shaft's`);
  if (line !== undefined && stated === undefined && pole === undefined)
    because.push(`${rounded(hertzOf(line.speed) ?? 0)} Hz: taken for the line frequency; state the speed`);
  for (const one of shafts) {
    if (stated !== undefined && !surely.includes(one) && !same(hertzOf(one.speed) ?? 0, hertzOf(stated.speed) ?? 0))
      because.push(`${rangeText(stated)}: "${one.written}" is taken for the same`);
  }
  if (stated !== undefined) {
    if (pole !== undefined)
      requireSlip(stated, pole, line === undefined ? lineFrequencies : [hertzOf(line.speed) ?? 0]);
    if (couldBeLine(stated))
      because.push(`${rangeText(stated)}: for "${stated.written}", taken for the shaft's and not the line's`);
    if (stated.spaced) because.push(`${rangeText(stated)}: for "${stated.written}", taken for one number`);
    return { speed: stated.speed, because };
  }
  if (pole === undefined) return { because };
  const [low, high] = (line === undefined ? lineFrequencies : [hertzOf(line.speed) ?? 0]).map((one) =>
    synchronous(pole.count, one),
  ) as [number, number?];
  const slower = "the synchronous speed; the shaft of an induction motor turns a few per cent slower";
  if (high === undefined) {
    because.push(`speed ${perMinute(low)}: ${pole.written} at ${line?.written}, ${slower}`);
    return { speed: { hertz: low }, because };
  }
  because.push(
    `speed ${rounded(low * 60)} to ${perMinute(high)}: ${pole.written} at 50 or 60 Hz, which was not given, ${slower}`,
  );
  return { speed: { from: { hertz: low }, to: { hertz: high } }, because };
}
