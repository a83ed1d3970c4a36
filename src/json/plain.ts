import { refuse, requireRecord } from "./refuse";

/** Deeper than any answer goes: a text nested without end would take the stack. */
const DEEPEST = 32;

/** A copy of plain data, frozen; what JSON cannot hold, or would give back as something else, is refused. */
export function plainCopy(value: unknown, where: string, depth = 0): unknown {
  if (depth > DEEPEST) refuse(value, where, `data at most ${DEEPEST} levels deep`);
  if (value === null || typeof value === "string" || typeof value === "boolean") return value;
  if (typeof value === "number" && Number.isFinite(value) && !Object.is(value, -0)) return value;
  if (Array.isArray(value)) {
    return Object.freeze(Array.from(value, (one, i) => plainCopy(one, `${where}[${i}]`, depth + 1)));
  }
  if (typeof value !== "object") refuse(value, where, "data that JSON can hold");
  if (!isPlain(value as object)) refuse(value, where, "plain data");
  const parts = Object.entries(requireRecord(value, where)).filter(([, part]) => part !== undefined);
  return Object.freeze(
    Object.fromEntries(parts.map(([key, part]) => [key, plainCopy(part, `${where}.${key}`, depth + 1)])),
  );
}

/** An object as `{}` makes one, of this realm or of another; no map, date, class or typed array. */
function isPlain(value: object): boolean {
  const prototype = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}
