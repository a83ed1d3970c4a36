import { VeladisError } from "../../src/index";

/** What the library says of a value, null where it refuses. */
export function orNull<T>(answer: () => T): T | null {
  try {
    return answer();
  } catch (error) {
    if (error instanceof VeladisError) return null;
    throw error;
  }
}
