import type { Provenance } from "../core/index";
import type { StoredSetpoint } from "../device/index";
import type { Amplitude, Assumption } from "../reading/index";
import type { DelayAdvice } from "./delay-advice";
import type { RaisedSetpoints } from "./raised-setpoints";
import type { Reason } from "./reason";
import type { SetpointWarning } from "./setpoint-warnings";

/** A proposed setpoint: what the rules give, what to enter and what the device holds. */
export interface ProposedSetpoint extends StoredSetpoint {
  /** The level below which the output clears, in the device's unit, with the proposed hysteresis. */
  readonly reset: Amplitude;
  /**
   * The lowest and highest that the rules allow, in the device's unit; never falling. The lowest of an alarm is the
   * baseline; both are the highest where the baseline is above it, so that no alarm above the running level is allowed. The
   * lowest of a trip is the lower limit, the alarm or the baseline, whichever is the highest.
   */
  readonly range: readonly [lowest: number, highest: number];
  /** Whether the machine has reached it already, and would alarm or trip at once. */
  readonly atOnce: boolean;
  readonly reasons: readonly Reason[];
}

/** A scheme that was looked at for a proposal. */
export interface ProposalScheme {
  readonly scheme: string;
  readonly standard: string;
  readonly edition: string;
  /** The class of the machine, in words; empty where the scheme has one only. */
  readonly machineClass: string;
  /** The limit an alarm is set from (B/C, or a fan's alarm), in the type of the setpoints. */
  readonly lower: number;
  /** The limit of a trip (C/D, or a fan's shutdown); null where it has none. */
  readonly upper: number | null;
}

/** Proposed settings with the reason and the source of every number. */
export interface Proposal {
  /** Unit and detector of the setpoints. */
  readonly as: string;
  /** Baseline level the rules started from, in the device's unit; null without one. */
  readonly baseline: number | null;
  readonly alarm: ProposedSetpoint | null;
  readonly trip: ProposedSetpoint | null;
  /** The limits that they are set from, in `as`; left out without limits. */
  readonly limits?: {
    /** `zones`: B/C and C/D; `operation`: alarm and shutdown as printed. */
    readonly kind: "zones" | "operation";
    readonly lower: number;
    readonly upper: number | null;
  };
  /** Alarm and trip within a range of speeds; left out where none is raised. */
  readonly raised?: RaisedSetpoints;
  /** Mean + k standard deviations, beside the rule; null for a baseline without scatter. */
  readonly statistical: {
    readonly k: number;
    /** Of all steady readings. */
    readonly value: number;
    /** The same without the readings flagged as outliers. */
    readonly withoutOutliers: number;
    readonly reasons: readonly Reason[];
  } | null;
  readonly delay: DelayAdvice;
  /** Percent of the threshold. */
  readonly hysteresis: { readonly percent: number; readonly reasons: readonly Reason[] };
  readonly warnings: readonly SetpointWarning[];
  /** The schemes that the machine's facts admit, or the one that was named; the first has the lowest trip. */
  readonly schemes: readonly ProposalScheme[];
  /** What was taken for facts of the machine that were not given, in words. */
  readonly assumedFacts: readonly string[];
  /** What was given of the machine and plays no part, in words. */
  readonly setAside: readonly string[];
  /** What was assumed in baseline, limits, sensor and device, and in bringing them to one unit. */
  readonly assumed: readonly Assumption[];
  /** How the least known of the limits and rules used is known. */
  readonly provenance: Provenance;
  /** True only if every limit and rule used was read in the publication itself or confirmed against a copy. */
  readonly verified: boolean;
  /** Who confirmed limits among them against a printed copy, when and on which page; empty where nobody did. */
  readonly confirmed: readonly string[];
  readonly cautions: readonly string[];
}
