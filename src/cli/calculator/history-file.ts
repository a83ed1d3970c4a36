import { appendFileSync, readFileSync, writeFileSync } from "node:fs";

/** Lines that are brought back; a file of more than twice as many is cut to them. */
export const REMEMBERED = 1000;

/** The lines that a history file holds, latest first; none where there is no file yet. */
export function remembered(file: string): string[] {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return [];
    throw error;
  }
  // a terminal would obey control characters
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== "" && !/\p{Cc}/u.test(line));
  const last = lines.slice(-REMEMBERED);
  if (lines.length > 2 * REMEMBERED) writeFileSync(file, `${last.join("\n")}\n`);
  return [...new Set(last.reverse())];
}

/** Writes one more line; each by itself, so that two open calculators keep the lines of both. */
export function remember(file: string, line: string): void {
  appendFileSync(file, `${line}\n`, { mode: 0o600 });
}
