import type { VeladisErrorCode } from "./error-codes";
import { visibleText } from "./visible-text";

/** Where the trouble is, as far as it is known; each is left out where it has no meaning. */
export interface ErrorPlace {
  /** The parameter of the called function, by its name in the documentation. */
  readonly parameter?: string;
  /** Which element of a list, from zero. */
  readonly index?: number;
  /** The option or setting, by its key; for an unknown one, the key that was given. */
  readonly option?: string;
  /** The fact of the machine or the reading to ask the user for, such as `"speed"`. */
  readonly fact?: string | undefined;
}

/** What a {@link VeladisError} says besides its code. */
export interface ErrorDetail extends ErrorPlace {
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

/** What marks an error of this library in every copy of it: one for all module systems and realms of a process. */
const BRAND = "veladis.error";

/** A {@link VeladisError} as data: what JSON, a worker or another service gets of it. */
export interface VeladisErrorData extends ErrorDetail {
  readonly name: "VeladisError";
  readonly code: VeladisErrorCode;
  readonly message: string;
}

/**
 * The one error this library throws.
 *
 * `instanceof` holds for errors of other copies of the library too (ES module beside CommonJS, another realm). A worker
 * and `structuredClone` pass on the message of an error alone: send `error.toJSON()` instead.
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
  declare readonly parameter?: string;
  declare readonly index?: number;
  declare readonly option?: string;
  declare readonly fact?: string | undefined;

  /** Holds for errors of every copy of the library, as {@link VeladisError.is} does. */
  static override [Symbol.hasInstance](value: unknown): boolean {
    // biome-ignore lint/complexity/noThisInStatic: a class that names itself within is given another name by bundlers
    return this.is(value);
  }

  /**
   * Whether a value is an error of this library, of whichever copy.
   *
   * @example
   * ```ts
   * import { VeladisError } from "veladis";
   *
   * VeladisError.is(new Error("another")); // => false
   * ```
   */
  static is(value: unknown): value is VeladisError {
    return Symbol.for(BRAND) in Object(value);
  }

  /** What is of no kind since it was left out is missing: `wrong-type` of nothing becomes `missing-option`. */
  constructor(code: VeladisErrorCode, detail: ErrorDetail) {
    const { expected, received, allowed, didYouMean } = detail;
    const choice = allowed?.length ? `; allowed: ${allowed.join(", ")}` : "";
    const hint = didYouMean?.length ? `; did you mean ${didYouMean.join(" or ")}?` : choice;
    if (code === "wrong-type" && received === "nothing") code = "missing-option";
    super(visibleText(`expected ${expected}, received ${received}`.replaceAll("\t", " (a tab) ") + hint));
    for (const [name, told] of Object.entries<string | number | readonly string[] | undefined>({ code, ...detail })) {
      // an empty list says nothing
      if (told !== undefined && (told as string).length !== 0) this[name as "message"] = told as string;
    }
    // seen by `is` alone
    Object.defineProperty(this, Symbol.for(BRAND), { value: true });
  }

  /** The error as data, its message included, which JSON leaves out of other errors. */
  toJSON(): VeladisErrorData {
    return { ...(this as VeladisErrorData), message: this.message };
  }
}
