import { type ErrorPlace, shown, VeladisError } from "./error";

/**
 * The value itself if there is one.
 *
 * @throws {@link VeladisError} `missing-option` for null and undefined, `missing-fact` where the place is a fact
 */
export function requireGiven<Value>(value: Value, what: string, place?: ErrorPlace): NonNullable<Value> {
  if (value !== undefined && value !== null) return value;
  throw new VeladisError(place?.fact ? "missing-fact" : "missing-option", {
    expected: what,
    received: shown(value),
    ...place,
  });
}

/**
 * The list itself if it is one, and every element of it is there.
 *
 * @throws {@link VeladisError} `missing-option` or `wrong-type`
 */
export function requireList<Element>(value: readonly Element[], what: string, place?: ErrorPlace): readonly Element[] {
  if (!Array.isArray(requireGiven(value, what, place))) {
    throw new VeladisError("wrong-type", { expected: what, received: shown(value), ...place });
  }
  const index = value.findIndex((element) => element === undefined || element === null);
  if (index >= 0) requireGiven(value[index], what, { ...place, index });
  return value;
}
