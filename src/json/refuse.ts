import { placeOf, shown, VeladisError } from "../core/index";

/** Refuses what stands in a place of an answer. */
export function refuse(value: unknown, where: string, expected: string): never {
  throw new VeladisError(value === undefined ? "missing-fact" : "wrong-type", {
    expected: `${where}: ${expected}`,
    received: shown(value),
    ...placeOf(where),
  });
}

/** The object itself if it is one, and no list; a key that reaches its prototype is refused. */
export function requireRecord(value: unknown, where: string): Readonly<Record<string, unknown>> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) refuse(value, where, "an object");
  if (Object.hasOwn(value, "__proto__")) refuse("__proto__", where, "a key of its own");
  return value as Readonly<Record<string, unknown>>;
}
