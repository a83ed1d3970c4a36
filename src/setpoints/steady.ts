import {
  inPlace,
  requireFinite,
  requireGiven,
  requireKnownKeys,
  requireNonNegative,
  requireText,
  shown,
  VeladisError,
} from "../core/index";
import { frequency } from "../frequency/index";

/** Which readings are steady running: a mask, the shaft speed at each reading, or its time. */
export interface SteadyOptions {
  /** For each reading whether it counts. */
  readonly mask?: readonly boolean[];
  /** Shaft speed at each reading, and the lowest and highest that count. */
  readonly speed?: {
    readonly readings: ArrayLike<number>;
    /** What the speeds are in, `"r/min"` if not given. */
    readonly unit?: string;
    readonly atLeast?: string;
    readonly atMost?: string;
  };
  /** Time of each reading in seconds, and the first and last that count. */
  readonly time?: { readonly readings: ArrayLike<number>; readonly start?: number; readonly end?: number };
}

const speedKeys: Readonly<Record<keyof NonNullable<SteadyOptions["speed"]>, true>> = /* @__PURE__ */ Object.freeze({
  readings: true,
  unit: true,
  atLeast: true,
  atMost: true,
});

const timeKeys: Readonly<Record<keyof NonNullable<SteadyOptions["time"]>, true>> = /* @__PURE__ */ Object.freeze({
  readings: true,
  start: true,
  end: true,
});

function requireLength(given: ArrayLike<unknown>, length: number, what: string): void {
  if (given?.length === length) return;
  throw new VeladisError("length-mismatch", {
    expected: `${length} ${what}, one a reading`,
    received: shown(given?.length),
    option: what === "marks" ? "mask" : "readings",
  });
}

/** For each reading whether it counts as steady running. */
export function steadyOf(length: number, { mask, speed, time }: SteadyOptions): (index: number) => boolean {
  const tests: ((index: number) => boolean)[] = [];
  if (mask !== undefined) {
    requireLength(mask, length, "marks");
    tests.push((i) => mask[i] === true);
  }
  if (speed !== undefined) {
    requireKnownKeys(
      requireGiven(speed, 'speeds such as { readings, atLeast: "1400 r/min" }', { option: "speed" }),
      speedKeys,
      "a part of the speeds",
    );
    requireLength(speed.readings, length, "speeds");
    const per = inPlace({ option: "unit" }, () =>
      frequency(`1 ${requireText(speed.unit ?? "r/min", "a unit of speed")}`),
    ).hertz;
    const least =
      speed.atLeast === undefined ? 0 : inPlace({ option: "atLeast" }, () => frequency(speed.atLeast as string)).hertz;
    const most =
      speed.atMost === undefined
        ? Number.POSITIVE_INFINITY
        : inPlace({ option: "atMost" }, () => frequency(speed.atMost as string)).hertz;
    tests.push((i) => {
      const hertz =
        requireNonNegative(speed.readings[i] as number, `a shaft speed of zero or more at index ${i}`, {
          option: "speed",
          index: i,
        }) * per;
      return hertz >= least * (1 - 1e-9) && hertz <= most * (1 + 1e-9);
    });
  }
  if (time !== undefined) {
    requireKnownKeys(
      requireGiven(time, "times such as { readings, start: 0 }", { option: "time" }),
      timeKeys,
      "a part of the times",
    );
    requireLength(time.readings, length, "times");
    const from =
      time.start === undefined
        ? Number.NEGATIVE_INFINITY
        : requireFinite(time.start, "a first time, in s", { option: "start" });
    const to =
      time.end === undefined
        ? Number.POSITIVE_INFINITY
        : requireFinite(time.end, "a last time, in s", { option: "end" });
    tests.push((i) => {
      const at = requireFinite(time.readings[i] as number, `a time in s at index ${i}`, { option: "time", index: i });
      return at >= from && at <= to;
    });
  }
  return (i) => tests.every((test) => test(i));
}
