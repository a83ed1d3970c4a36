import type { VeladisErrorCode } from "../../core/index";
import type { Portion } from "./portions";

/** What the thread that reads is told. */
export interface WorkerTask {
  readonly path: string;
  /** Two numbers that both threads see: what was done, and portions that were taken. */
  readonly shared: SharedArrayBuffer;
}

/** Places of the shared numbers. */
export const BEATS = 0;
export const TAKEN = 1;

/** Why a file is refused: an error loses its class between threads. */
export interface Refused {
  readonly code: VeladisErrorCode;
  readonly expected: string;
  readonly received: string;
}

/** What the thread that reads says: a portion, its end, or why it refuses the file. */
export type WorkerMessage = { readonly portion: Portion } | { readonly done: true } | { readonly refused: Refused };
