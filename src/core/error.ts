import type { VeladisErrorCode } from "./error-codes";

/** What a {@link VeladisError} says besides its code. */
export interface ErrorDetail {
  /** What would have been right, as a noun phrase. */
  readonly expected: string;
  /** What came instead; texts are quoted and cut by {@link shown}. */
  readonly received: string;
  /** The closed list the value could have come from, if there is one. */
  readonly allowed?: readonly string[];
  /** The nearest allowed values, best first. */
  readonly didYouMean?: readonly string[];
}

const LONGEST = 60;

/**
 * A value as an error message shows it: texts quoted and cut at 60 characters, so that a megabyte of junk
 * gives a short message.
 */
export function shown(value: unknown): string {
  if (typeof value === "string") {
    return JSON.stringify(value.length > LONGEST ? `${value.slice(0, LONGEST)}…` : value);
  }
  if (typeof value === "number" || value == null || typeof value === "boolean") return String(value);
  if (Array.isArray(value)) return `an array of ${value.length}`;
  return typeof value === "object" ? "an object" : `a ${typeof value}`;
}

/**
 * The one error this library throws.
 *
 * @example
 * ```ts
 * import { convert, VeladisError } from "veladis";
 *
 * try {
 *   convert(-1, "mm/s rms", "in/s pk");
 * } catch (error) {
 *   if (!(error instanceof VeladisError)) throw error;
 *   error.code; // => "negative"
 *   error.expected; // => "an amplitude of zero or more"
 *   error.received; // => "-1"
 * }
 * ```
 */
export class VeladisError extends Error implements ErrorDetail {
  override readonly name = "VeladisError";
  readonly code: VeladisErrorCode;
  readonly expected: string;
  readonly received: string;
  declare readonly allowed?: readonly string[];
  declare readonly didYouMean?: readonly string[];

  constructor(code: VeladisErrorCode, detail: ErrorDetail) {
    const { expected, received, allowed, didYouMean } = detail;
    super(
      `expected ${expected}, received ${received}` +
        (didYouMean?.length
          ? `; did you mean ${didYouMean.join(" or ")}?`
          : allowed?.length
            ? `; allowed: ${allowed.join(", ")}`
            : ""),
    );
    this.code = code;
    this.expected = expected;
    this.received = received;
    if (allowed?.length) this.allowed = allowed;
    if (didYouMean?.length) this.didYouMean = didYouMean;
  }

  /** The error as plain data, for logs and `--json`. */
  toJSON(): ErrorDetail & { code: VeladisErrorCode; message: string } {
    const { code, message, expected, received, allowed, didYouMean } = this;
    return {
      code,
      message,
      expected,
      received,
      ...(allowed && { allowed }),
      ...(didYouMean && { didYouMean }),
    };
  }
}
