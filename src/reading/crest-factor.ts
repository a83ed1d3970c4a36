import { type ErrorPlace, requirePositive, shown, VeladisError } from "../core/index";

const FORM = "a crest factor (peak over RMS) of 1 or more";

/** The crest factor itself: no peak is below the RMS value. */
export function requireCrestFactor(crestFactor: number, place?: ErrorPlace): number {
  if (requirePositive(crestFactor, FORM, place) >= 1) return crestFactor;
  throw new VeladisError("out-of-range", { expected: FORM, received: shown(crestFactor), ...place });
}
