export type {
  AnswerKind,
  AnswerOf,
  Answers,
  CommandAnswers,
  ReadingAnswers,
  SetpointAnswers,
  SeverityAnswers,
  SignalAnswers,
  TripAnswers,
  UncertaintyAnswers,
  VerificationAnswers,
  WithinAndChange,
} from "./answers";
export { type Envelope, envelopeOf, jsonVersion } from "./envelope";
export { fromJson } from "./from-json";
export { answerKinds } from "./shapes/index";
export { toJson } from "./to-json";
