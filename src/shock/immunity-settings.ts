import type { ChannelSettings } from "../device/index";
import type { LevelDetector } from "./detected-levels";

/** Settings that decide what a device rides through. */
export interface ImmunitySettings
  extends Pick<ChannelSettings, "threshold" | "hysteresis" | "onDelay" | "timerResets"> {
  /** How the device makes a level of the waveform. */
  readonly detector: LevelDetector;
  /** Corner in hertz of the device's high-pass, 40 000 at the most, for a threshold in velocity; 10 if not given. */
  readonly highPass?: number;
}
