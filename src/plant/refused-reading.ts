import type { VeladisError } from "../core/index";
import type { RouteReading } from "./route-reading";
import type { RefusedReading } from "./route-verdict";

const columns = ["tag", "date", "point"] as const;

/**
 * A reading that was refused, as data.
 *
 * @param column - the column in which the trouble stands, where the error does not say it
 */
export function refusedReading(
  from: RefusedReading["from"],
  { tag, line, point }: Pick<RouteReading, "tag" | "line" | "point">,
  { code, message, expected, received, didYouMean, option }: VeladisError,
  column: "tag" | "date" | "point" | "at" | undefined = columns.find((one) => one === option),
): RefusedReading {
  return Object.freeze({
    ...{ from, line, tag, code, message, expected, received },
    ...(point !== undefined && { point }),
    ...(column !== undefined && { column }),
    ...(didYouMean !== undefined && { didYouMean }),
  });
}
