import type { VeladisErrorCode } from "./error-codes";
import { visibleText } from "./visible-text";

/** What a {@link VeladisError} says besides its code. */
export interface ErrorDetail {
  /** What would have been right, as a noun phrase. */
  readonly expected: string;
  /** What came instead; texts are quoted, and cut at 60 characters. */
  readonly received: string;
  /** The closed list the value could have come from, if there is one. */
  readonly allowed?: readonly string[];
  /** The nearest allowed values, best first. */
  readonly didYouMean?: readonly string[];
}

/**
 * A value as an error message shows it: texts quoted and cut at 60 characters, so that a megabyte of junk
 * gives a short message.
 */
export function shown(value: unknown): string {
  if (typeof value === "object" && value !== null) return Array.isArray(value) ? "a list" : "an object";
  if (value === "\t") return "a tab";
  const text = String(value ?? "nothing");
  const cut = text.replace(/(.{60}).+/s, "$1…");
  return visibleText(typeof value === "string" ? JSON.stringify(cut) : cut);
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
  declare readonly code: VeladisErrorCode;
  declare readonly expected: string;
  declare readonly received: string;
  declare readonly allowed?: readonly string[];
  declare readonly didYouMean?: readonly string[];

  constructor(code: VeladisErrorCode, { expected, received, allowed, didYouMean }: ErrorDetail) {
    const near = didYouMean?.length ? `; did you mean ${didYouMean.join(" or ")}?` : "";
    const list = allowed?.length ? `; allowed: ${allowed.join(", ")}` : "";
    const said = (text: string): string => text.replaceAll("\t", " (a tab) ");
    super(visibleText(`expected ${said(expected)}, received ${said(received)}${near || list}`));
    this.code = code;
    this.expected = expected;
    this.received = received;
    if (list) this.allowed = allowed as readonly string[];
    if (near) this.didYouMean = didYouMean as readonly string[];
  }
}
