import { VeladisError } from "../../core/index";

/**
 * Refuses a file whose rows are evenly spaced in time where a line among them was skipped: a row may be missing there,
 * and what stands behind it would move in time.
 *
 * @param what - what each row holds: `a sample`
 * @param line - of the first row behind such a line; 0 for none
 */
export function requireNoHole(file: string, what: string, line: number): void {
  if (line === 0) return;
  throw new VeladisError("missing-fact", {
    expected: `${what} in each row of ${file}, with no blank line or remark among rows that are evenly spaced`,
    received: `one above line ${line}, where ${what} may be missing`,
  });
}
