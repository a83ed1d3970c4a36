export { type DetectedLevelsOptions, detectedLevels, type LevelDetector } from "./detected-levels";
export type { HalfSine } from "./half-sine";
export type { ImmunitySettings } from "./immunity-settings";
export { mechanicalSwitch, type SwitchOptions, type SwitchReach, type SwitchRow } from "./mechanical-switch";
export { type PulseShape, pulseShapes } from "./pulse-shapes";
export {
  type BurstLimit,
  type Immunity,
  type ImmunityOptions,
  type ShockLimit,
  shockImmunity,
} from "./shock-immunity";
export { type ShockOnRunningOptions, shockOnRunning } from "./shock-on-running";
export { type Shock, type ShockResponse, shockResponse } from "./shock-response";
export { velocityOf } from "./velocity-of";
