import type { RelayStatus, TripRules } from "../device/index";
import type {
  BypassCost,
  LevelGap,
  LevelGaps,
  ResetOutcome,
  TripEvent,
  TripOutcome,
  TripState,
  TripStatus,
  UnmaskedTrips,
  VotedEvent,
  VotedState,
  VotedStatus,
  VoteOutcome,
} from "../trip/index";
import type {
  AsFoundAsLeft,
  BenchFact,
  BenchPlan,
  BenchSignal,
  BenchStep,
  CheckPoint,
  CheckPoints,
  DelayTest,
  InjectionPlan,
  InjectionStep,
  KnownCheckResult,
  Linearity,
  LinearityPoint,
  Margins,
  ShakerReach,
  SwitchingPoint,
} from "../verification/index";

/** What protective devices did, and what they were in the middle of. */
export interface TripAnswers {
  readonly "trip event": TripEvent;
  readonly "trip status": TripStatus;
  readonly "trip state": TripState;
  readonly "trip rules": TripRules;
  readonly "trip outcome": TripOutcome;
  readonly "masked outcome": UnmaskedTrips["without"][number];
  readonly "latched outcome": UnmaskedTrips["otherLatch"];
  readonly "unmasked trips": UnmaskedTrips;
  readonly "relay status": RelayStatus;
  readonly "reset outcome": ResetOutcome;
  readonly "level gaps": LevelGaps;
  readonly "level gap": LevelGap;
  readonly "voted event": VotedEvent;
  readonly "voted status": VotedStatus;
  readonly "voted state": VotedState;
  readonly "vote outcome": VoteOutcome;
  readonly "bypass cost": BypassCost;
}

/** Checks and bench tests. */
export interface VerificationAnswers {
  readonly "known check": KnownCheckResult;
  readonly "as found as left": AsFoundAsLeft;
  readonly linearity: Linearity;
  readonly "linearity point": LinearityPoint;
  readonly "check points": CheckPoints;
  readonly "check point": CheckPoint;
  readonly "switching point": SwitchingPoint;
  readonly "delay test": DelayTest;
  readonly margins: Margins;
  readonly "bench plan": BenchPlan;
  readonly "bench fact": BenchFact;
  readonly "bench signal": BenchSignal;
  readonly "bench step": BenchStep;
  readonly "injection plan": InjectionPlan;
  readonly "injection step": InjectionStep;
  readonly "shaker reach": ShakerReach;
}
