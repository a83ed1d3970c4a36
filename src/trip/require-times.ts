import { shown, VeladisError } from "../core/index";

/** Whether times never fall and are finite: where they never fall, the first and the last tell of all. */
function areInOrder(times: Float64Array, clock: number): boolean {
  let last = clock;
  for (let i = 0; i < times.length; i++) {
    const time = times[i] as number;
    if (!(time >= last)) return false;
    last = time;
  }
  return Number.isFinite(times[0]) && Number.isFinite(last);
}

/** Refuses times that are not as many as levels, not finite, falling, or before the clock. */
export function requireTimes(levels: Float64Array, times: ArrayLike<number>, clock: number): void {
  if (times.length !== levels.length) {
    throw new VeladisError("length-mismatch", {
      expected: `${levels.length} times, one a level`,
      received: shown(times.length),
      parameter: "dt",
    });
  }
  if (times instanceof Float64Array && areInOrder(times, clock)) return;
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
