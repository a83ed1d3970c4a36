import type { VeladisError } from "../core/index";
import type { RouteReading } from "./route-reading";
import type { RefusedReading } from "./route-verdict";

const columns = ["tag", "date", "point", "at"] as const;

/**
 * A reading that was refused, as data.
 *
 * @param column - the column in which the trouble stands, where the error does not say it
 */
export function refusedReading(
  list: RefusedReading["list"],
  { tag, line, point }: Pick<RouteReading, "tag" | "line" | "point">,
  { code, message, expected, received, didYouMean, option }: VeladisError,
  column = columns.find((one) => one === option),
): RefusedReading {
  return Object.freeze({
    ...{ list, line, tag, code, message, expected, received },
    ...(point !== undefined && { point }),
    ...(column !== undefined && { column }),
    ...(didYouMean !== undefined && { didYouMean }),
  });
}
