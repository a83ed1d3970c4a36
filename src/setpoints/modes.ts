import {
  lengthOf,
  parseNumeral,
  requireFinite,
  requireKnownOptions,
  requireText,
  shown,
  VeladisError,
} from "../core/index";
import { significant } from "../reading/index";
import { bandNames } from "./mode-bands";
import { quantile, robustSpread } from "./statistics";

/** The operating mode, the load or the speed at each reading, in which a machine may run at different levels. */
export interface ModesOptions {
  /** For each reading the name of a mode, or a number such as the load. */
  readonly readings: ArrayLike<string | number>;
  /** The one mode whose readings count; of numbers a value or a range such as `"60 to 80"`. */
  readonly only?: string;
}

/** The readings of one operating mode. */
export interface BaselineMode {
  readonly mode: string;
  readonly count: number;
  readonly median: number;
  /** 1.4826 times the median distance from the median. */
  readonly spread: number;
}

const keys: Readonly<Record<keyof ModesOptions, true>> = /* @__PURE__ */ Object.freeze({ readings: true, only: true });

const PLACE = { option: "modes" };
/** Numbers of at most so many values are modes each by itself; others make bands; common practice, no source. */
const MOST_VALUES = 6;
/** Fewest readings of a mode that has a median worth comparing; common practice, no source. */
const FEWEST = 3;
/** Standard error of the median of normal scatter, over that of the mean: root(pi / 2), from memory. */
const OF_MEDIAN = 1.2533;
/** What medians differ by: so many standard errors, and so much of the lower; common practice, no source. */
const ERRORS = 3;
const SHARE = 0.1;

/** The modes themselves, one for each reading. */
export function requireModes(modes: ModesOptions, length: number): ModesOptions {
  const form = 'modes such as { readings: ["summer", "winter", ...] }';
  requireKnownOptions(modes, keys, { what: "a part of the modes", form, place: PLACE });
  const found = lengthOf(modes.readings, "a list of modes", { option: "readings" });
  const known = Array.from(modes.readings, (mode) => typeof mode);
  const at = known.findIndex((type) => type !== known[0] || (type !== "string" && type !== "number"));
  if (at >= 0) {
    throw new VeladisError("wrong-type", {
      expected: "modes that are all texts or all numbers",
      received: shown(modes.readings[at]),
      option: "readings",
      index: at,
    });
  }
  if (found === length) return modes;
  throw new VeladisError("length-mismatch", {
    expected: `${length} modes, one a reading`,
    received: `${found}`,
    option: "readings",
  });
}

/** Whether each of the modes is a number. */
function areNumbers(readings: ModesOptions["readings"]): readings is ArrayLike<number> {
  return typeof readings[0] === "number";
}

/** The lowest and highest number that a text names, the same for one. */
function rangeIn(only: string): readonly [number, number] {
  const [low, high = low, ...more] = only.split(/\s+to\s+/i).map((end) => parseNumeral(end.trim(), "an end of a mode"));
  if (low !== undefined && high !== undefined && more.length === 0 && low <= high) return [low, high];
  throw new VeladisError("syntax", {
    expected: 'a value or a rising range of the modes, such as "60 to 80"',
    received: shown(only),
    option: "only",
  });
}

/** For each reading whether it is of the one mode that counts. */
export function ofMode(modes: ModesOptions): (index: number) => boolean {
  const { readings, only } = modes;
  if (only === undefined) return () => true;
  const wanted = requireText(only, 'the name of a mode such as "winter"', { option: "only" }).trim();
  if (areNumbers(readings)) {
    const [low, high] = rangeIn(wanted);
    return (i) => (readings[i] as number) >= low && (readings[i] as number) <= high;
  }
  const folded = wanted.toLowerCase();
  if (Array.from(readings).some((mode) => String(mode).trim().toLowerCase() === folded))
    return (i) => String(readings[i]).trim().toLowerCase() === folded;
  throw new VeladisError("unknown-option", {
    expected: "one of the modes of the readings",
    received: shown(only),
    allowed: [...new Set(Array.from(readings, (mode) => String(mode).trim()))].slice(0, 20),
    option: "only",
  });
}

/** The name of the mode at each reading: that of a band where numbers are many. */
function namesOf(modes: ModesOptions, kept: readonly number[]): (index: number) => string {
  const { readings } = modes;
  if (!areNumbers(readings)) {
    return (i) =>
      requireText(readings[i] as string, `the name of a mode at index ${i}`, { option: "readings", index: i }).trim();
  }
  const numberAt = (i: number): number =>
    requireFinite(readings[i] as number, `a number for the mode at index ${i}`, { option: "readings", index: i });
  if (new Set(kept.map(numberAt)).size <= MOST_VALUES) return (i) => significant(numberAt(i), 6);
  const names = bandNames(kept.map(numberAt));
  return (i) => names.get(numberAt(i)) as string;
}

/** The modes by rising median, and whether they differ. */
export interface ModesFound {
  readonly modes: readonly BaselineMode[];
  readonly modesDiffer: boolean;
  /** How many readings are of modes with too few for a median of their own. */
  readonly unjudged: number;
}

/** The operating modes among the readings that count. */
export function modesOf(modes: ModesOptions, values: Float64Array, kept: readonly number[]): ModesFound {
  const name = namesOf(modes, kept);
  const groups = new Map<string, number[]>();
  for (const i of kept) {
    const mode = name(i);
    const group = groups.get(mode);
    if (group === undefined) groups.set(mode, [i]);
    else group.push(i);
  }
  const all = [...groups].map(([mode, indices]) => {
    const sorted = Float64Array.from(indices, (i) => values[i] as number).sort();
    const median = quantile(sorted, 0.5);
    return Object.freeze({ mode, count: sorted.length, median, spread: robustSpread(sorted, median) });
  });
  const found = all.filter(({ count }) => count >= FEWEST).sort((a, b) => a.median - b.median);
  const [lowest, highest] = [found[0], found[found.length - 1]];
  const unjudged = all.reduce((sum, { count }) => sum + (count < FEWEST ? count : 0), 0);
  if (lowest === undefined || highest === undefined || lowest === highest)
    return { modes: Object.freeze(found), modesDiffer: false, unjudged };
  const error =
    OF_MEDIAN * Math.hypot(lowest.spread / Math.sqrt(lowest.count), highest.spread / Math.sqrt(highest.count));
  const apart = highest.median - lowest.median;
  return {
    modes: Object.freeze(found),
    modesDiffer: apart > ERRORS * error && apart > SHARE * lowest.median,
    unjudged,
  };
}

/** The mode that is taken for a baseline whose modes differ, the lowest; undefined where they do not. */
export function lowestMode({
  modes = [],
  modesDiffer,
}: {
  readonly modes?: readonly BaselineMode[];
  readonly modesDiffer?: boolean;
}): BaselineMode | undefined {
  return modesDiffer ? modes[0] : undefined;
}

/** What is said of a baseline whose modes differ. */
export function differingModesText(modes: readonly BaselineMode[], as: string): string {
  return `the operating modes differ in their medians: ${modesText(modes, as)}; better a baseline of each mode`;
}

/** The medians of modes, in words. */
export function modesText(modes: readonly BaselineMode[], as: string): string {
  return `${modes.map(({ mode, median, count }) => `${shown(mode)} ${significant(median)} (${count} readings)`).join(", ")} ${as}`;
}
