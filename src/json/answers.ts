import type {
  EquivalentsRow,
  ExplainedResult,
  ExplainedStep,
  Explanation,
  LoopCurrent,
  LoopReading,
  ProbeGap,
  ProbeLength,
  VoltageReading,
} from "../amplitude/index";
import type { JournalUnbalance, PermissibleUnbalance } from "../balance/index";
import type { CriterionWithin, IntervalWithin, ZonesWithin } from "../conformity/index";
import type { StoredSetpoint } from "../device/index";
import type { Amplitude, Step } from "../reading/index";
import type {
  Baseline,
  BaselineMode,
  DelayAdvice,
  Outlier,
  Proposal,
  ProposalScheme,
  ProposedSetpoint,
  RaisedSetpoints,
  Reason,
  SetpointWarning,
} from "../setpoints/index";
import type {
  BackgroundCheck,
  Candidate,
  Ceilings,
  Change,
  ConfirmableLimit,
  Criterion,
  CriterionJudgement,
  CriterionLimits,
  Excluded,
  Exclusion,
  Judgement,
  Limit,
  MachineClass,
  Margin,
  MissingFact,
  PointReading,
  PointsVerdict,
  PointVerdict,
  PrintedLimit,
  Scheme,
  Selection,
  SupportRule,
  Unjudged,
  Verdict,
} from "../severity/index";
import type { BurstLimit, Immunity, ShockLimit, ShockResponse, SwitchReach, SwitchRow } from "../shock/index";
import type {
  BandOverall,
  BandWaveform,
  Density,
  Descriptors,
  GaussianPeak,
  LinesOverall,
  OrderLine,
  Overall,
  ProfileOverall,
  ResolvingSettings,
  Spectrum,
  SpectrumLine,
} from "../signal/index";
import type { RatioOf, UncertaintyOf, UncertaintyOfPhase, UncertaintyPart } from "../uncertainty/index";
import type { UncertaintyOfVector, Vector } from "../vector/index";
import type { CommandAnswers } from "./command-answers";
import type { PlantCheckAnswers } from "./plant-check-answers";
import type { TripAnswers, VerificationAnswers } from "./device-answers";
import type { RouteAnswers } from "./route-answers";
import type { PlantAnswers } from "./plant-answers";

/** How well a number of a step is known. */
type StepUncertainty = NonNullable<Step["uncertainty"]>;

/** Readings, sensors, loops, and what explains them. */
export interface ReadingAnswers {
  readonly amplitude: Amplitude;
  readonly level: NonNullable<Amplitude["level"]>;
  readonly step: Step;
  readonly "uncertainty of step": StepUncertainty;
  readonly equivalents: EquivalentsRow;
  readonly "explained step": ExplainedStep;
  readonly "explained result": ExplainedResult;
  readonly explanation: Explanation;
  readonly "loop reading": LoopReading;
  readonly "loop current": LoopCurrent;
  readonly "voltage reading": VoltageReading;
  readonly "probe gap": ProbeGap;
  readonly "probe length": ProbeLength;
  readonly "probe room": ProbeGap["room"];
  readonly "probe movement": NonNullable<ProbeGap["movement"]>;
  readonly "probe swing": NonNullable<ProbeGap["swing"]>;
}

/** What is computed from samples. */
export interface SignalAnswers {
  readonly spectrum: Spectrum;
  readonly density: Density;
  readonly descriptors: Descriptors;
  readonly overall: Overall;
  readonly "band overall": BandOverall;
  readonly "band waveform": BandWaveform;
  readonly "lines overall": LinesOverall;
  readonly "spectrum line": SpectrumLine;
  readonly "order line": OrderLine;
  readonly "resolving settings": ResolvingSettings;
  readonly "gaussian peak": GaussianPeak;
  readonly "profile overall": ProfileOverall;
}

/** What `judge` tells beside a verdict: the zones within the uncertainty, and the change from a baseline. */
export interface WithinAndChange {
  readonly within?: ZonesWithin;
  readonly change?: Change;
}

/** Tables of limits, and judgements by them. */
export interface SeverityAnswers {
  readonly verdict: Verdict & WithinAndChange;
  readonly judgement: Judgement;
  readonly "criterion judgement": CriterionJudgement;
  readonly margin: Margin;
  readonly limit: Limit;
  readonly "printed limit": PrintedLimit;
  readonly unjudged: Unjudged;
  readonly "background check": BackgroundCheck;
  readonly "support rule": SupportRule;
  readonly "points verdict": PointsVerdict;
  readonly "point verdict": PointVerdict & Pick<WithinAndChange, "within">;
  readonly "point reading": PointReading;
  readonly change: Change;
  readonly "criterion limits": CriterionLimits;
  readonly ceilings: Ceilings;
  readonly selection: Selection;
  readonly candidate: Candidate;
  readonly excluded: Excluded;
  readonly "missing fact": MissingFact;
  readonly "confirmable limit": ConfirmableLimit;
  readonly scheme: Scheme;
  readonly exclusion: Exclusion;
  readonly "machine class": MachineClass;
  readonly criterion: Criterion;
  readonly "criterion ceilings": NonNullable<Criterion["ceilings"]>;
  readonly "slow band": NonNullable<Scheme["slowBand"]>;
  readonly "limit by height": NonNullable<Criterion["height"]>;
}

/** Uncertainties, zones within them, and vectors. */
export interface UncertaintyAnswers {
  readonly uncertainty: UncertaintyOf;
  readonly "uncertainty part": UncertaintyPart;
  readonly ratio: RatioOf;
  readonly "zones within": ZonesWithin;
  readonly "criterion within": CriterionWithin;
  readonly "interval within": IntervalWithin;
  readonly "best value": ZonesWithin["bestValue"];
  readonly vector: Vector;
  readonly "uncertainty of phase": UncertaintyOfPhase;
  readonly "uncertainty of vector": UncertaintyOfVector;
}

/** Setpoints, shocks, and unbalance. */
export interface SetpointAnswers {
  readonly baseline: Baseline;
  readonly percentile: Baseline["percentile"];
  readonly outlier: Outlier;
  readonly "without outliers": Baseline["withoutOutliers"];
  readonly proposal: Proposal & { readonly statistics?: Baseline; readonly asked?: StoredSetpoint };
  readonly "baseline mode": BaselineMode;
  readonly "proposal limits": NonNullable<Proposal["limits"]>;
  readonly "raised setpoints": RaisedSetpoints;
  readonly "proposed setpoint": ProposedSetpoint;
  readonly "stored setpoint": StoredSetpoint;
  readonly "proposal scheme": ProposalScheme;
  readonly "statistical alarm": NonNullable<Proposal["statistical"]>;
  readonly "delay advice": DelayAdvice;
  readonly "hysteresis advice": Proposal["hysteresis"];
  readonly reason: Reason;
  readonly "setpoint warning": SetpointWarning;
  readonly immunity: Immunity;
  readonly "shock limit": ShockLimit;
  readonly "shock response": ShockResponse;
  readonly "burst limit": BurstLimit;
  readonly "switch reach": SwitchReach;
  readonly "switch row": SwitchRow;
  readonly "blind below": NonNullable<SwitchReach["blindBelow"]>;
  readonly "permissible unbalance": PermissibleUnbalance;
  readonly "journal unbalance": JournalUnbalance;
  readonly "unbalance by plane": PermissibleUnbalance["planes"];
}

/** Every kind of answer that goes to JSON and back, by its name. */
export interface Answers
  extends ReadingAnswers,
    SignalAnswers,
    SeverityAnswers,
    UncertaintyAnswers,
    SetpointAnswers,
    TripAnswers,
    VerificationAnswers,
    RouteAnswers,
    PlantCheckAnswers,
    PlantAnswers,
    CommandAnswers {}

/** The name of a kind of answer, such as `"verdict"`, or of a list of them, such as `"trip event[]"`. */
export type AnswerKind = keyof Answers | `${keyof Answers}[]`;

/** What an answer of this kind is. */
export type AnswerOf<Kind extends AnswerKind> = Kind extends keyof Answers
  ? Answers[Kind]
  : Kind extends `${infer One extends keyof Answers}[]`
    ? readonly Answers[One][]
    : never;
