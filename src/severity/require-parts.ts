import { type ErrorPlace, shown, unknownOption, VeladisError } from "../core/index";

/** Refuses names that an object may not have. */
export function requireKeys(given: object, allowed: readonly string[], where: string): void {
  for (const name of Object.keys(given)) {
    if (allowed.includes(name)) continue;
    throw unknownOption(name, allowed, `a part of ${where}`, { option: name });
  }
}

/** The value itself if it is an object and no array. */
export function requireObject(given: unknown, what: string, place?: ErrorPlace): Record<string, unknown> {
  if (typeof given === "object" && given !== null && !Array.isArray(given)) return given as Record<string, unknown>;
  throw new VeladisError("wrong-type", { expected: what, received: shown(given), ...place });
}

/** The value itself if it is an array with something in it. */
export function requireList(given: unknown, what: string, place?: ErrorPlace): readonly unknown[] {
  if (!Array.isArray(given)) throw new VeladisError("wrong-type", { expected: what, received: shown(given), ...place });
  // as data, in which a hole is nothing
  if (given.length > 0) return Array.from(given);
  throw new VeladisError("missing-option", { expected: what, received: "an empty list", ...place });
}
