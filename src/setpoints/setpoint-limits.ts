import type { ConvertedAmplitude } from "../amplitude/index";
import type { Source } from "../core/index";
import type { Assumption } from "../reading/index";
import type { Quantity } from "../units/index";
import type { ProposalScheme } from "./proposal";
import type { Reason } from "./reason";

/** A limit to set from, in the type of the setpoints. */
export interface SetpointLimit {
  readonly amplitude: ConvertedAmplitude;
  readonly text: string;
  readonly source: Source;
}

/** The highest settings that a table has. */
export interface SetpointCeilings {
  readonly alarm: SetpointLimit;
  readonly trip: SetpointLimit;
}

/** Limits to set from, in the type of the setpoints. */
export interface SetpointLimits {
  /** `zones`: B/C and C/D, to which the rules of ISO 10816-3 apply; `operation`: alarm and shutdown as printed. */
  readonly kind: "zones" | "operation";
  /** The rule that gives alarm and shutdown, where it is not a standard for fans. */
  readonly rule?: Reason;
  /** B/C, or alarm. */
  readonly lower: SetpointLimit;
  /** C/D, or shutdown; null where the standard prints none. */
  readonly upper: SetpointLimit | null;
  /** The highest settings that the table has. */
  readonly ceilings: SetpointCeilings | null;
  /** Every limit and highest setting that was looked at, the lowest of which these are: in a few words, with its source. */
  readonly compared: readonly Reason[];
  /** What was assumed in writing the limits in the type of the setpoints. */
  readonly assumed: readonly Assumption[];
  /** Quantities that a scheme limits too and that this proposal leaves out. */
  readonly leftOut: readonly Quantity[];
  /** Quantities of which a trip guards only what running speed makes of it: there may be more. */
  readonly atSpeedOnly: readonly Quantity[];
  /** Whether that speed is the lowest of a range. */
  readonly speedVaries: boolean;
  /** The schemes that were looked at, the one that these limits are of in front; none for limits of the site. */
  readonly schemes: readonly ProposalScheme[];
  /** What was taken for facts of the machine that were not given, in words. */
  readonly assumedFacts: readonly string[];
  /** What was given of the machine and plays no part, in words. */
  readonly setAside: readonly string[];
  /** Which peak limits in peak mean, in words. */
  readonly peaks?: readonly string[];
}
