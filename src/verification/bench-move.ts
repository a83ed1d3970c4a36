/** One step of a bench test before it is put to a frequency. */
export interface BenchMove {
  readonly what: string;
  /** Level over the threshold; null for a step without vibration. */
  readonly share: number | null;
  readonly expect: string;
  /** A step that only checks the reading, repeated at every frequency. */
  readonly reading?: true;
  /** What the output has to be for what is expected; left out where either will do. */
  readonly from?: "set" | "clear";
  /** What the output is behind it; left out where it stays as it was. */
  readonly leaves?: Output;
}

/** An output as far as a plan knows it: a level near the threshold may set it or not. */
export type Output = "set" | "clear" | "either";
