export type { Unjudged } from "./applicable-criteria";
export { type Change, type ChangeOptions, changeFromBaseline } from "./change-from-baseline";
export { type Classifier, type ClassifierOptions, classifier } from "./classifier";
export { type ClassifyOptions, classify, type Judgement } from "./classify";
export { countLimits, type LimitCount, type SchemeCount } from "./count-limits";
export { defineScheme, type SchemeInput } from "./define-scheme";
export { type Fact, facts, type NumberFact, type TextFact } from "./facts";
export type { Interval } from "./interval";
export type { CriterionJudgement, Margin } from "./judge-criterion";
export { type LimitName, limitNames, type SchemeKind, type Zone, type ZonesByKind, zoneWord } from "./kinds";

export type { Limit, PrintedLimit } from "./limit";
export { type Ceilings, type CriterionLimits, type LimitsForOptions, limitsFor } from "./limits-for";
export type { KnownFacts, Machine, NotUnderstood, SpeedRange } from "./machine";
export { conditionText } from "./machine-class";
export { type MachineNotes, type MachineRef, machineNotes } from "./machine-facts";
export { type MachineType, machineTypes } from "./machine-types";
export type { MissingFact } from "./match-machine";
export { severityColour, severityPalette } from "./palette";
export { parseMachine } from "./parse-machine";
export type { Assume } from "./placed-machine";
export type { ReadingRef } from "./readings";
export type {
  Condition,
  Criterion,
  Default,
  Exclusion,
  LimitValue,
  MachineClass,
  Scheme,
  SpeedLaw,
} from "./scheme";
export { type SchemeChoice, schemeChoice } from "./scheme-choice";
export { type KindOf, type SchemeRef, schemeById } from "./scheme-of";
export * from "./schemes/index";
export { type Candidate, type Excluded, type Selection, selectSchemes } from "./select-schemes";
export { kilowattsPer, type LengthText, millimetresPer, type PowerText } from "./size";
export { supportOf } from "./support";
