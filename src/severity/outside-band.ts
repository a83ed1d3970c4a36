import type { CriterionPlan } from "./criterion-plan";
import type { FactValue } from "./machine";

/** The share of a sine that a third-order edge passes (the order after ISO 2954:2012, as a survey reports it). */
function shareAt(hertz: number, edge: number): number {
  const octaves = hertz < edge ? edge / hertz : hertz / edge;
  return 1 / Math.sqrt(1 + octaves ** 6);
}

/** A share in percent, in words. */
function percent(share: number): string {
  const size = share * 100;
  return size < 1 ? "less than 1 %" : `about ${Math.round(size)} %`;
}

/** What to know where the running frequency lies outside the measuring band of a criterion. */
export function outsideBand(criteria: readonly Pick<CriterionPlan, "band">[], speed: FactValue | undefined): string[] {
  if (speed === undefined) return [];
  const speeds = typeof speed === "object" ? speed : [speed as number];
  const told = criteria.flatMap(({ band }) => {
    if (band === null) return [];
    const [low, high] = band;
    return speeds.flatMap((one) => {
      const hertz = one / 60;
      if (hertz >= low && hertz <= high) return [];
      const share = percent(shareAt(hertz, hertz < low ? low : high));
      const [turns, cycles] = [one, hertz].map((value) => Number(value.toPrecision(4)));
      return [
        `1x of ${turns} r/min is ${cycles} Hz, outside the measuring band of ${low} to ${high} Hz: a reading in that band holds ${share} of it`,
      ];
    });
  });
  return [...new Set(told)];
}
