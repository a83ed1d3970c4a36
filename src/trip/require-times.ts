import { shown, VeladisError } from "../core/index";

/** Refuses times that are not as many as levels, not finite, falling, or before the clock. */
export function requireTimes(levels: Float64Array, times: ArrayLike<number>, clock: number): void {
  if (times.length !== levels.length) {
    throw new VeladisError("length-mismatch", {
      expected: `${levels.length} times, one a level`,
      received: shown(times.length),
      parameter: "dt",
    });
  }
  let last = clock;
  for (let i = 0; i < times.length; i++) {
    const time = times[i] as number;
    if (Number.isFinite(time) && time >= last) last = time;
    else {
      throw new VeladisError("out-of-range", {
        expected:
          last === Number.NEGATIVE_INFINITY
            ? `a time in s at index ${i}`
            : `a time of ${last} s or more at index ${i}, since times never fall`,
        received: shown(time),
        parameter: "dt",
        index: i,
      });
    }
  }
}
