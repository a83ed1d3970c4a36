import { VeladisError } from "./error";

/** Whether a call is answered, and not refused; what is a fault of the program goes on. */
export function isAnswered(call: () => unknown): boolean {
  try {
    call();
    return true;
  } catch (error) {
    if (error instanceof VeladisError) return false;
    throw error;
  }
}
