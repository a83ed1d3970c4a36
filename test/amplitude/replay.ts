import type { ExplainedStep } from "veladis";

/** Carries out what the steps say, by itself: the lines are arithmetic, not words. */
export function replay(steps: readonly ExplainedStep[]): number[] {
  const values: number[] = [];
  for (const { operation, of, by = Number.NaN, value } of steps) {
    const [x = Number.NaN, ...rest] = of.map((at) => values[at] as number);
    values.push(
      {
        given: () => value,
        times: () => x * by,
        over: () => x / by,
        plus: () => x + by,
        sum: () => [x, ...rest].reduce((sum, one) => sum + one),
        difference: () => x - rest.reduce((sum, one) => sum + one, 0),
        largest: () => [x, ...rest].sort((a, b) => b - a)[0] as number,
        smallest: () => [x, ...rest].sort((a, b) => a - b)[0] as number,
        rss: () => Math.sqrt([x, ...rest].reduce((sum, one) => sum + one * one, 0)),
        linear: () => by * Math.exp((x / 20) * Math.LN10),
        decibels: () => (20 * Math.log(x / by)) / Math.LN10,
        "limit over": () => by / x,
      }[operation](),
    );
  }
  return values;
}
