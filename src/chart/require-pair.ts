import { requireList } from "../core/index";

/**
 * Two numbers as they were given, low and high; what they may be is for the caller to say.
 *
 * @throws {@link VeladisError} `missing-option` or `wrong-type`
 */
export function requirePair(given: readonly [number, number], what: string): readonly [number, number] {
  return requireList(given, `${what}, as [low, high]`) as readonly [number, number];
}
