/**
 * The calculator: lines with readings, arithmetic, variables and functions, evaluated safely by mathjs; and amplitudes
 * for an instance of mathjs of your own.
 *
 * @module veladis/mathjs
 */
export { VeladisError } from "../core/index";
export {
  type AmplitudeMath,
  type Answer,
  bounds,
  completions,
  evaluateLine,
  helpText,
  type LevelDifference,
  newSession,
  type Report,
  registerAmplitudes,
  type Session,
  type Value,
} from "../repl/index";
