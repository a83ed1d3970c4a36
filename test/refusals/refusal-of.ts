import { VeladisError } from "veladis";

function refused(act: () => unknown): VeladisError | undefined {
  try {
    act();
  } catch (error) {
    if (error instanceof VeladisError) return error;
    throw error;
  }
  return undefined;
}

/** The error that an act refuses with; a test fails when it throws another or none. */
export function refusalOf(act: () => unknown): VeladisError {
  const error = refused(act);
  if (error === undefined) throw new Error("accepted");
  return error;
}

/** The code that an act refuses with, or `accepted`. */
export function codeOf(act: () => unknown): string {
  return refused(act)?.code ?? "accepted";
}

/** The code that an act refuses with and what it expected, or `accepted`. */
export function codeAndExpectedOf(act: () => unknown): string {
  const error = refused(act);
  return error === undefined ? "accepted" : `${error.code}: ${error.expected}`;
}
