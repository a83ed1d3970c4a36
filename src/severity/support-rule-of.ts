import type { Source } from "../core/index";
import { labels } from "./machine-class";
import type { PlacedMachine } from "./placed-machine";
import { supportRule, unknownSupportRule } from "./support";

/** The rule that gave a machine its support, and where it was read. */
export interface SupportRule {
  readonly text: string;
  readonly source: Source;
}

/**
 * The rule that a class rests on whose support was computed from a natural frequency, or taken for one that nobody
 * stated; undefined where the support was stated or plays no part.
 */
export function supportRuleOf({ machineClass, given }: PlacedMachine): SupportRule | undefined {
  const { support } = machineClass;
  if (support === undefined) return undefined;
  if (given.support === undefined) return labels(support).includes("rigid") ? unknownSupportRule : undefined;
  return given.naturalFrequency !== undefined && given.speed !== undefined ? supportRule : undefined;
}
