/** A half-sine shock: acceleration that rises and falls once. */
export interface HalfSine {
  /** Its peak, e.g. `"20 g pk"`. */
  readonly peak: string;
  /** Its length in milliseconds. */
  readonly milliseconds: number;
}

/** Value of a half-sine of peak 1 at a time. */
export function halfSine(time: number, seconds: number): number {
  return time > 0 && time < seconds ? Math.sin((Math.PI * time) / seconds) : 0;
}
