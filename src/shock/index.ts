export { type DetectedLevelsOptions, detectedLevels, type LevelDetector } from "./front-end";
export { mechanicalSwitch, type SwitchOptions, type SwitchReach, type SwitchRow } from "./mechanical-switch";
export { type HalfSine, type ShockOnRunningOptions, shockOnRunning, velocityOf } from "./shock";
export {
  type BurstLimit,
  type Immunity,
  type ImmunityOptions,
  type ImmunitySettings,
  type ShockLimit,
  shockImmunity,
} from "./shock-immunity";
