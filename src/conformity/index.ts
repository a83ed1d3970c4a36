export type { CriterionWithin, IntervalWithin } from "./criterion-within";
export { boundNotes, decidedVerdict, intervalText } from "./decided-verdict";
export { type PointsWithin, pointsWithin } from "./points-within";
export { uncertainPoints } from "./uncertain-points";
export type { ZoneProbabilities } from "./zone-probabilities";
export { type ZoneRule, zoneRules } from "./zone-rules";
export { type ZonesWithin, type ZonesWithinOptions, zonesWithin } from "./zones-within";
