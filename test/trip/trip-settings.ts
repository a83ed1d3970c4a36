/** The trip of the Low-street booster pump, latched: the settings that a test starts from. */
export const settings = {
  threshold: "0.35 in/s pk",
  hysteresis: "10 %",
  onDelay: 2,
  timerResets: "below threshold",
  sensorFault: "alarm",
  latching: true,
  contact: "normally open",
  coil: "normally energised",
} as const;

/** The same at thresholds that a 64-bit number holds exactly: set at 1, reset below 0.5. */
export const atOne = {
  ...settings,
  threshold: "1 mm/s rms",
  hysteresis: "50 %",
  onDelay: 6,
  latching: false,
} as const;
