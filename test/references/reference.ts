/** A value found in print, to hold the library against. */
export interface Reference {
  readonly id: string;
  readonly statement: string;
  readonly printed: number;
  /** Largest difference that the printed digits allow. */
  readonly tolerance: number;
  /** False for a misprint or a slip in print: the library must NOT reproduce it. */
  readonly agrees: boolean;
  readonly source: string;
  readonly page?: string;
  /** `memory`: recalled, not checked against a printed copy. */
  readonly provenance: "published" | "memory";
  readonly note?: string;
}
