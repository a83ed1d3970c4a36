export { type DetectedLevelsOptions, detectedLevels, type LevelDetector } from "./detected-levels";
export type { HalfSine } from "./half-sine";
export { mechanicalSwitch, type SwitchOptions, type SwitchReach, type SwitchRow } from "./mechanical-switch";
export {
  type BurstLimit,
  type Immunity,
  type ImmunityOptions,
  type ImmunitySettings,
  type ShockLimit,
  shockImmunity,
} from "./shock-immunity";
export { type ShockOnRunningOptions, shockOnRunning } from "./shock-on-running";
export { velocityOf } from "./velocity-of";
