import { linearAmplitude, linearTypeOf, notedAmplitude } from "../amplitude/index";
import { requireShape, shown, VeladisError } from "../core/index";
import type { Amplitude } from "../reading/index";
import { uncertainAmplitude } from "../uncertainty/index";
import type { Baseline } from "./baseline";
import { baselineShape } from "./baseline-shape";
import { lowestMode } from "./modes";
import type { OwnLimits } from "./own-limits";
import { statisticAmplitude } from "./statistic-amplitude";

/** The baseline of a request, whatever form it was given in. */
export interface RequestedBaseline {
  readonly statistics: Baseline | null;
  /** Null without a baseline. */
  readonly level: Amplitude | null;
  /** What it is written in; without a baseline what the limits are written in, if there are any. */
  readonly type: string | undefined;
}

/** Baseline level, its statistics and its type. */
export function baselineOf(baseline: Baseline | Amplitude | string, limits: OwnLimits | undefined): RequestedBaseline {
  if (typeof baseline === "object" && baseline !== null && "median" in baseline) {
    requireShape(baseline, baselineShape, "baseline");
    const lowest = lowestMode(baseline);
    if (lowest !== undefined) {
      const note = `median of ${lowest.count} readings of the mode ${shown(lowest.mode)}, the lowest`;
      return {
        statistics: baseline,
        level: statisticAmplitude(lowest.median, note, baseline.level),
        type: baseline.as,
      };
    }
    // the median governs: where it was changed by hand, the history of the level says so
    return { statistics: baseline, level: { ...baseline.level, value: baseline.median }, type: baseline.as };
  }
  if (baseline === "none") {
    const own = limits?.["B/C"];
    return {
      statistics: null,
      level: null,
      type: own === undefined ? undefined : linearTypeOf(uncertainAmplitude(own)),
    };
  }
  if (baseline === undefined || baseline === null) {
    throw new VeladisError("missing-option", {
      expected: 'a baseline: statistics, one reading such as "2 mm/s rms", or "none"',
      received: "nothing",
      option: "baseline",
    });
  }
  const level = linearAmplitude(notedAmplitude(uncertainAmplitude(baseline), "baseline"));
  return { statistics: null, level, type: linearTypeOf(level) };
}
