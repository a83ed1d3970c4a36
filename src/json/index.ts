export type {
  AnswerKind,
  AnswerOf,
  Answers,
  ReadingAnswers,
  SetpointAnswers,
  SeverityAnswers,
  SignalAnswers,
  UncertaintyAnswers,
  WithinAndChange,
} from "./answers";
export type { CommandAnswers } from "./command-answers";
export type { TripAnswers, VerificationAnswers } from "./device-answers";
export { envelopeOf, jsonVersion } from "./envelope";
export { fromJson } from "./from-json";
export { answerKinds } from "./shapes/index";
export { toJson } from "./to-json";
