/**
 * Check values: common practice, no source. They hold the arithmetic of the library and belong to no machine.
 * `test/figures.test.ts` holds that they stand in this file alone.
 */
const source = "common practice, no source";

/** A known level, what a device shows for it, and the same level as displacement and acceleration. */
export const practiceCheck = {
  velocity: 0.4,
  speed: 1800,
  known: "0.40 in/s pk at 1800 r/min",
  indicated: "0.43 in/s pk",
  error: 0.03,
  percent: 7.5,
  decibels: 0.63,
  displacement: { mils: 4.24, digits: 2 },
  acceleration: { g: 0.195, digits: 3 },
  source,
} as const;

/** A threshold with the level below which it resets: threshold less hysteresis. */
export const practiceTrip = {
  threshold: "0.51 in/s pk",
  level: 0.51,
  hysteresis: "3 %",
  resetsBelow: 0.4947,
  delay: 6,
  source,
} as const;

/** What a device that knows steps alone stores for a threshold. */
export const practiceStep = {
  step: "0.03 in/s pk",
  asked: "0.50 in/s pk",
  stored: "0.51 in/s pk",
  percent: 2,
  source,
} as const;

/** A stroke over frequencies, and the velocity in mm/s peak that it comes to at the lowest: pi f times the stroke. */
export const practiceStroke = {
  frequencies: "7 Hz to 10 kHz",
  displacement: "3.8 mm pp",
  velocity: 83.6,
  digits: 1,
  source,
} as const;
