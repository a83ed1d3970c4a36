import { parseNumeral, VeladisError } from "../../core/index";
import { parts } from "./option-values";

/** The multiples of the running speed that are asked for, as in `1, 2, 12x`. */
export function ordersOption(written: string | undefined): number[] {
  if (written === undefined) return [1, 2, 3, 4];
  return parts(written).map((one) => parseNumeral(one.replace(/x$/i, ""), "an order of the running speed such as 2"));
}

/**
 * Refuses multiples of a speed that is not told.
 *
 * @throws {@link VeladisError} `missing-option`
 */
export function requireSpeed({
  speed,
  orders,
}: {
  readonly speed?: string | undefined;
  readonly orders?: string | undefined;
}): void {
  if (orders === undefined || speed !== undefined) return;
  throw new VeladisError("missing-option", {
    expected: '--speed such as "1180 r/min" beside --orders, which are multiples of it',
    received: "--orders alone",
  });
}
