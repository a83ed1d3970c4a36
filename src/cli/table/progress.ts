import { basename } from "node:path";
import { counted } from "../../core/index";
import type { Io } from "../input/io";

/** Shows how far a table is, where a person watches. */
export interface Progress {
  show(rows: number, share: number | undefined): void;
  /** Clears the line. */
  end(): void;
}

const EVERY_MS = 100;
const FULL = 24;

/** A count with thin groups of three digits: `1 234 567`. */
export function grouped(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, " ");
}

/** The line that says how far a table is. */
function progressText(name: string, rows: number, share: number | undefined, seconds: number): string {
  const rate = seconds > 0 ? `, ${grouped(Math.round(rows / seconds))} a second` : "";
  if (share === undefined) return `${name}  ${counted(rows, "row", grouped(rows))}${rate}`;
  const filled = Math.floor(share * FULL);
  const bar = `${"#".repeat(filled)}${".".repeat(FULL - filled)}`;
  return `${name}  ${bar} ${Math.floor(share * 100)} %  ${counted(rows, "row", grouped(rows))}${rate}`;
}

/** Shows progress ten times a second at most; nothing where nobody watches. */
export function progressOf({ progress }: Io, name = "standard input"): Progress {
  if (progress === undefined) return { show: () => undefined, end: () => undefined };
  const start = performance.now();
  let shown = start;
  return {
    show(rows, share) {
      const now = performance.now();
      if (now - shown < EVERY_MS) return;
      shown = now;
      progress(progressText(basename(name), rows, share, (now - start) / 1000));
    },
    end() {
      if (shown > start) progress("");
    },
  };
}
