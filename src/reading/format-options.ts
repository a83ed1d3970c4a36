/** How a reading is written. */
export interface FormatOptions {
  /** Significant digits, 1 to 17; 3 if not given. A level has the same number of digits to 0.1 dB at the least. */
  readonly digits?: number;
  /** Digits behind the point, 0 to 20, in place of significant digits. */
  readonly fixed?: number;
  /** A language tag such as `"de-DE"`, for the decimal comma or point; a point if not given. Digits are 0 to 9 in all. */
  readonly locale?: string;
  /**
   * `"plain"` signs of any keyboard, as if not given: `um/s2`, `1e-9`. `"typographic"` ones of print: `µm/s²`, `1 × 10⁻⁹` and
   * the minus sign.
   */
  readonly symbols?: "plain" | "typographic";
}
