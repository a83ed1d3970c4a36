export type { Bound, Unjudged } from "./applicable-criteria";
export { type BackgroundCheck, backgroundRule, checkBackground, NOT_RELIABLE } from "./background";
export { type BackgroundOfPoints, namesPoints } from "./background-of-points";
export { type Change, type ChangeOptions, changeFromBaseline } from "./change-from-baseline";
export { classifier } from "./classifier";
export { type ClassifyOptions, classify } from "./classify";
export type { Classifier, ClassifierOptions, CompiledClassifier } from "./compiled-classifier";
export { confirmScheme } from "./confirm-scheme";
export { type ConfirmableLimit, confirmableLimits } from "./confirmable-limits";
export type { Confirmation } from "./confirmation";
export { confirmedDifferences } from "./confirmed-differences";
export { confirmedSchemes } from "./confirmed-schemes";
export { countLimits, type LimitCount, type SchemeCount } from "./count-limits";
export { defineScheme, type SchemeInput } from "./define-scheme";
export { digitsBeside } from "./digits-beside";
export type { ByDirection, Direction, DirectionFacts } from "./directions";
export { editionText } from "./edition-text";
export { type ExactZone, type ExactZoneOptions, exactZone } from "./exact-zone";
export { type Fact, facts, type NumberFact, type TextFact } from "./facts";
export { type FanApplication, fanCategoryRule } from "./fan-applications";
export { inListOrder } from "./in-list-order";
export type { Interval } from "./interval";
export { type JudgeOptions, judge } from "./judge";
export type { CriterionJudgement, Margin } from "./judge-criterion";
export {
  type JudgePointsOptions,
  judgePoints,
  type PointsVerdict,
  type PointVerdict,
  pointsVerdict,
} from "./judge-points";
export type { Judgement } from "./judgement";
export { type LimitName, limitNames, type SchemeKind, type Zone, type ZonesByKind, zoneWord } from "./kinds";
export type { Limit, PrintedLimit } from "./limit";
export { type Ceilings, type CriterionLimits, type LimitsForOptions, limitsFor } from "./limits-for";
export type { FactValue, KnownFacts, Machine, NotUnderstood, PowerRange, RatedPower, SpeedRange } from "./machine";
export { conditionText } from "./machine-class";
export {
  type MachineClassifier,
  type MachineClassifierOptions,
  type MachineLadder,
  machineClassifier,
  machineLadder,
} from "./machine-classifier";
export { type MachineNotes, type MachineRef, machineFacts, machineNotes } from "./machine-facts";
export { type MachineType, machineTypes } from "./machine-types";
export { marginText } from "./margin-text";
export type { MissingFact } from "./match-machine";
export { defineMachineKind, type OwnMachineKind } from "./own-kind";
export type { OwnMachine } from "./own-machine";
export { severityColour, severityPalette } from "./palette";
export { parseMachine } from "./parse-machine";
export { peakOfLimits } from "./peak-meaning";
export { WORSE_PLACE } from "./place-text";
export type { Assume } from "./placed-machine";
export type { PlainType } from "./plain-type";
export { LONGEST_POINTS, type PointReading, parsePoints, requirePlacedName, requirePointName } from "./points";
export { headlineOf, isOrWorse, type PossibleZones, possibleZones } from "./possible-zones";
export { BEST_VALUE, ZERO_READING } from "./reading-cautions";
export type { ReadingRef } from "./readings";
export type {
  Condition,
  Criterion,
  Exclusion,
  LimitValue,
  MachineClass,
  PeakMeaning,
  Scheme,
  SpeedLaw,
} from "./scheme";
export { schemeLadder } from "./scheme-ladder";
export { type IdOf, type KindOf, type SchemeRef, schemeById, schemeOf } from "./scheme-of";
export * from "./schemes/index";
export { type AdmittedScheme, type SchemesForOptions, schemesFor } from "./schemes-for";
export { sealedScheme } from "./sealed-scheme";
export { type Candidate, type Excluded, type Selection, selectSchemes } from "./select-schemes";
export {
  type OwnMachineOptions,
  type SeverityToolkit,
  type SeverityToolkitParts,
  severityToolkit,
} from "./severity-toolkit";
export { kilowattsPer, type LengthText, millimetresPer, type PowerText } from "./size";
export { supportOf, supportRule, unknownSupportRule } from "./support";
export type { SupportRule } from "./support-rule-of";
export type { Verdict } from "./verdict-of";
export type { ZonesOptions } from "./zone-ladder";
export { zoneLevel } from "./zone-level";
