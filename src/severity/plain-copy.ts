import { placeOf, requireFinite, shown, VeladisError } from "../core/index";

const DEEPEST = 12;

/**
 * A copy of plain data: texts, finite numbers, true, false, null, arrays and objects of them; parts that are undefined
 * are left out.
 *
 * @throws {@link VeladisError} `wrong-type` for anything else, `not-a-number`, `not-finite`
 */
export function plainCopy(value: unknown, where: string, depth = 0): unknown {
  if (typeof value === "string" || typeof value === "boolean" || value === null) return value;
  if (typeof value === "number") return requireFinite(value, `${where}: a finite number`, placeOf(where));
  if (typeof value !== "object" || depth > DEEPEST) {
    throw new VeladisError("wrong-type", {
      expected: `${where}: plain data, as JSON holds it`,
      received: shown(value),
      ...placeOf(where),
    });
  }
  if (Array.isArray(value)) return value.map((part, i) => plainCopy(part, `${where}[${i}]`, depth + 1));
  const copy: Record<string, unknown> = {};
  for (const [name, part] of Object.entries(value)) {
    if (part === undefined) continue;
    // a plain assignment to "__proto__" would change what the copy is
    Object.defineProperty(copy, name, {
      value: plainCopy(part, `${where}.${name.slice(0, 40)}`, depth + 1),
      enumerable: true,
    });
  }
  return copy;
}
