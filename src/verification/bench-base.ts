import { amountAmplitude, derivedAmplitude } from "../amplitude/index";
import { finiteResult, inPlace, shown, VeladisError } from "../core/index";
import { resetLevel, thresholdOf } from "../device/index";
import { type Amplitude, type Assumption, format, union } from "../reading/index";
import type { BenchNumbers } from "./bench-moves";
import type { PlacedMove } from "./bench-order";
import type { BenchSettings } from "./bench-settings";
import { expandedMargins } from "./tolerance";

/** What a bench test is made of, on a shaker or by injection. */
export interface BenchBase {
  readonly threshold: Amplitude;
  readonly reset: Amplitude;
  readonly assumed: readonly Assumption[];
  readonly numbers: Pick<
    BenchNumbers,
    "tolerance" | "moved" | "resetShare" | "reset" | "threshold" | "text" | "within"
  >;
}

/**
 * Threshold and reset level of a device, and what device and `source` may be off.
 *
 * @param uncertainty - of the level that the source gives, as it was stated
 * @throws {@link VeladisError} `out-of-range` for what is as large as the threshold
 */
export function benchBase(
  settings: BenchSettings,
  uncertainty: string | undefined,
  source: "shaker" | "source",
): BenchBase {
  const threshold = thresholdOf(settings);
  const reset = resetLevel(threshold, settings.hysteresis);
  const stated = { parameter: source === "shaker" ? "shaker" : "injection", option: "uncertainty" };
  const unsure = uncertainty === undefined ? 0 : inPlace(stated, () => expandedMargins(uncertainty, threshold).above);
  const within = settings.tolerance ?? "5 %";
  const allowed = amountAmplitude(within, threshold);
  const tolerance = finiteResult(allowed.value / threshold.value);
  if (tolerance >= 1 || unsure >= threshold.value) {
    throw new VeladisError("out-of-range", {
      expected: `a tolerance of the device and an uncertainty of the ${source} below the threshold, or no level proves that it trips`,
      received: shown(tolerance >= 1 ? settings.tolerance : uncertainty),
      ...(tolerance >= 1 ? { parameter: "settings", option: "tolerance" } : stated),
    });
  }
  const text = (share: number): string => format({ ...threshold, value: threshold.value * share });
  const sure = 1 - unsure / threshold.value;
  const resetShare = reset.value / threshold.value;
  return {
    threshold,
    reset,
    assumed: union(reset.assumed, allowed.assumed),
    numbers: {
      tolerance,
      moved: (share, side) => (side === "up" ? share / sure : share * sure),
      resetShare,
      reset: format({ ...threshold, value: reset.value }),
      threshold: format(threshold),
      text,
      within,
    },
  };
}

/** The level of a move; null for one without. */
export function levelOfMove(threshold: Amplitude, { share, hertz }: PlacedMove): Amplitude | null {
  if (share === null) return null;
  const value = Number((threshold.value * share).toPrecision(12));
  const step = { does: "scale", by: share, note: "share of the threshold, as it can be set" } as const;
  const level = derivedAmplitude([threshold], value, step);
  return Object.freeze(hertz === null ? level : { ...level, hertz });
}
