import { attempt } from "./attempt";

/** Whether a call is answered, and not refused; what is a fault of the program goes on. */
export function isAnswered(call: () => unknown): boolean {
  return attempt(call).ok;
}
