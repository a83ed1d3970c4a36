import type {
  AllowedChange,
  BaselineInType,
  RefusedReading,
  RouteBasis,
  RouteChange,
  RouteLimit,
  RouteVerdict,
  ScheduledMachine,
  SetpointChange,
  UnscheduledMachine,
} from "../plant/index";

/** Verdicts on a route, and a schedule of setpoints. */
export interface RouteAnswers {
  readonly "route verdict": RouteVerdict;
  readonly "route limit": RouteLimit;
  readonly "route change": RouteChange;
  readonly "route basis": RouteBasis;
  readonly "allowed change": AllowedChange;
  readonly "baseline in type": BaselineInType;
  readonly "refused reading": RefusedReading;
  readonly "scheduled machine": ScheduledMachine;
  readonly "setpoint change": SetpointChange;
  readonly "unscheduled machine": UnscheduledMachine;
}
