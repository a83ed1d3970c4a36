/**
 * Whether what a step is written in is decibels: a level, or a difference of levels, which has no reference. Steps are
 * written in the one spelling that the parser of reading types gives: what comes before a reading (`"mA"`, `"mV rms"`) or
 * is none (`"%"`, `"g·mm"`) is never in decibels.
 */
export function isLevelType(type: string): boolean {
  return type === "dB" || type.startsWith("dB re ");
}
