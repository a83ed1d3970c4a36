import { type ErrorPlace, shown, VeladisError } from "./error";

/** The truth value itself; there is no default for it. */
export function requireBoolean(given: unknown, what: string, place?: ErrorPlace): boolean {
  if (typeof given === "boolean") return given;
  throw new VeladisError("wrong-type", {
    expected: what,
    received: shown(given),
    allowed: ["true", "false"],
    ...place,
  });
}
