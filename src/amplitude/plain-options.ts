import { checkedOptions, refusedOptions } from "./checked-options";
import type { ConvertOptions } from "./convert-options";

/**
 * As {@link checkedOptions}, and refused where they hold their own otherwise than by keys, as a Map, a Date or a list does.
 * `convert` alone does not ask, whose bundle is kept small; its types refuse such options.
 */
export function plainOptions(options?: ConvertOptions): ConvertOptions {
  const checked = checkedOptions(options);
  if (!(Symbol.iterator in checked || checked instanceof Date)) return checked;
  throw refusedOptions(options);
}
