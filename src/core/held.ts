import { finite } from "./guards";

/**
 * The result itself if a number can hold it.
 *
 * @throws {@link VeladisError} `not-finite` or `not-a-number`
 */
export function held(result: number): number {
  return finite(result, "a result that a number can hold");
}
