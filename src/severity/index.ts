export type { MachineRef } from "./class-of";
export { type ClassifyOptions, classify, type Judgement } from "./classify";
export { type Fact, facts } from "./facts";
export type { MissingFact } from "./fit";
export type { Interval } from "./interval";
export type { CriterionJudgement, Margin } from "./judge-criterion";
export { type LimitName, type SchemeKind, type Zone, type ZonesByKind, zoneWord } from "./kinds";
export type { Limit, PrintedLimit } from "./limit";
export { type Ceilings, type CriterionLimits, type LimitsForOptions, limitsFor } from "./limits-for";
export type { KnownFacts, Machine } from "./machine";
export { type MachineType, machineTypes } from "./machine-types";
export { parseMachine } from "./parse-machine";
export type { ReadingRef, Unjudged } from "./reading-for";
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
export { type KindOf, type SchemeRef, schemeById } from "./scheme-of";
export * from "./schemes/index";
export { supportOf } from "./support";
