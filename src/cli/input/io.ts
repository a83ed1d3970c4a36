import type { Readable } from "node:stream";

/** All that a command may touch of the world, so that a test can stand in for it. */
export interface Io {
  /** Standard input, or undefined when a person sits at it. */
  readonly piped: Readable | undefined;
  /** Whether standard output is a terminal, which obeys what it is sent; with or without colour. */
  readonly terminal?: boolean;
  /** How many columns the window has, where there is one. */
  readonly columns?: number;
  /** Whether a person reads standard output, in colour if so. */
  readonly colour: boolean;
  /** Writes text, or data as bytes, to standard output; resolves when more may be written. */
  out(text: string | Uint8Array): void | Promise<void>;
  /** Writes to standard error. */
  err(text: string): void;
  /** Shows how far a long task is, over what was shown before; undefined when no person watches standard error. */
  readonly progress?: (text: string) => void;
}
