import { requireFinite } from "./guards";

/**
 * The result itself if a number can hold it.
 *
 * @throws {@link VeladisError} `not-finite` or `not-a-number`
 */
export function finiteResult(result: number): number {
  return requireFinite(result, "a result that a number can hold");
}
