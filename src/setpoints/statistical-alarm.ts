import { derivedAmplitude, multipliedAmplitude } from "../amplitude/index";
import type { Amplitude } from "../reading/index";
import type { Baseline } from "./baseline";
import { statisticAmplitude } from "./statistic-amplitude";

/** Mean plus k standard deviations of readings, in the type of their baseline. */
export function statisticalAlarm(
  { count, mean, standardDeviation }: Baseline["withoutOutliers"],
  level: Amplitude,
  k: number,
): Amplitude {
  const middle = statisticAmplitude(mean, `mean of ${count} readings`, level);
  const deviation = statisticAmplitude(standardDeviation, "their standard deviation", level);
  const above = multipliedAmplitude(deviation, k, `${k} standard deviations`);
  return derivedAmplitude([middle, above], middle.value + above.value, { does: "sum", note: "statistical alarm" });
}
