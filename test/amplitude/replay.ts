import type { ExplainedStep } from "veladis/explain";

/** A value on a step; one that lies a millionth of a step beside it is taken for that step. */
function onStep(x: number, step: number, side: (steps: number) => number): number {
  const steps = x / step;
  return step * (Math.abs(steps - Math.round(steps)) < 1e-6 ? Math.round(steps) : side(steps));
}

/** Carries out what the steps say, by itself: the lines are arithmetic, not words. */
export function replay(steps: readonly ExplainedStep[]): number[] {
  const values: number[] = [];
  for (const { operation, of, by = Number.NaN, value } of steps) {
    const [x = Number.NaN, ...rest] = of.map((at) => values[at] as number);
    values.push(
      {
        given: () => value,
        times: () => x * by,
        over: () => x / (rest[0] ?? by),
        plus: () => x + by,
        sum: () => [x, ...rest].reduce((sum, one) => sum + one),
        difference: () => x - rest.reduce((sum, one) => sum + one, 0),
        largest: () => [x, ...rest].sort((a, b) => b - a)[0] as number,
        smallest: () => [x, ...rest].sort((a, b) => a - b)[0] as number,
        rss: () => Math.sqrt([x, ...rest].reduce((sum, one) => sum + one * one, 0)),
        // law of cosines
        "vector difference": () => {
          const [y = 0] = rest;
          return Math.sqrt(Math.max(0, x * x + y * y - 2 * x * y * Math.cos((by * Math.PI) / 180)));
        },
        "rss difference": () => Math.sqrt(x * x - (rest[0] as number) ** 2),
        "steps down": () => onStep(x, by, Math.floor),
        "nearest step": () => onStep(x, by, Math.round),
        "steps up": () => onStep(x, by, Math.ceil),
        linear: () => by * Math.exp((x / 20) * Math.LN10),
        decibels: () => (20 * Math.log(x / by)) / Math.LN10,
        "limit over": () => by / x,
      }[operation](),
    );
  }
  return values;
}
