import type { Source } from "../core/index";
import type { AmplitudeType } from "../reading/index";
import type { Fact, NumberFact, TextFact } from "./facts";
import type { Interval } from "./interval";
import type { LimitName, SchemeKind } from "./kinds";
import type { MachineType } from "./machine-types";

/** A limit that falls with shaft speed: `sqrt(rootOf / n)` with n in r/min, and not more than `atMost`. */
export interface SpeedLaw {
  readonly rootOf: number;
  readonly atMost?: number;
}

/** A limit as a table holds it: a number, a law of speed, or null where the standard gives none. */
export type LimitValue = number | SpeedLaw | null;

/** What must be true of a machine: ranges for numbers, one label or several for words. */
export type Condition = { readonly [F in NumberFact]?: Interval } & {
  readonly [F in TextFact]?: string | readonly string[];
};

/**
 * Which peak limits in peak mean: `true`, read in the waveform (such limits are written in `true pk`); `rms`, 1.414 times
 * the RMS value; `open`, where the document does not say.
 */
export type PeakMeaning = "true" | "rms" | "open";

/** Limits of one quantity, as the standard prints them. */
export interface Criterion<K extends SchemeKind = SchemeKind> {
  /** What the limits are written in, e.g. `"mm/s rms"`. */
  readonly as: AmplitudeType;
  /** By name, ascending. A zone table may leave A/B out. */
  readonly limits: { readonly [Name in LimitName<K>]?: LimitValue };
  /** Where the limits come from. */
  readonly source: Source;
  /** Other sources, for single limits. */
  readonly limitSources?: { readonly [Name in LimitName<K>]?: Source };
  /** Highest alarm and trip settings that the standard prints, where it does. */
  readonly ceilings?: { readonly alarm: number; readonly trip: number; readonly source: Source };
  /** Measuring band in hertz, where it differs from the scheme's. */
  readonly band?: readonly [low: number, high: number];
  /** What the limits rise by for each metre of the measuring point above a height in metres; 0 while no height is given. */
  readonly height?: { readonly above: number; readonly perMetre: number };
  /** When this criterion applies; left out when always. */
  readonly when?: Condition;
}

/** The machines that one set of limits is for. */
export interface MachineClass<K extends SchemeKind = SchemeKind> {
  /** Labels the standard gives the class; naming them decides without `by`. */
  readonly named?: Condition;
  /** Facts that decide when the class is not named. Power and shaft height stand for one another. */
  readonly by?: Condition;
  /** Facts that are needed in any case. */
  readonly when?: Condition;
  /** Facts that must not lie outside, checked where they are given. */
  readonly within?: Condition;
  /** More than one quantity: all that can be applied are, and the worst governs. */
  readonly criteria: readonly Criterion<K>[];
  /** What the reader should know about this class. */
  readonly note?: string;
}

/** Machines that a scheme leaves to another. */
export interface Exclusion {
  readonly when: Condition;
  readonly reason: string;
}

/**
 * One published table of limits, or one of your own.
 *
 * Plain data: JSON in, JSON out. Built-in ones are exported one by one; make your own with {@link defineScheme}.
 */
export interface Scheme<K extends SchemeKind = SchemeKind, Id extends string = string> {
  readonly id: Id;
  readonly kind: K;
  readonly standard: string;
  readonly edition: string;
  readonly title: string;
  /** `guide`: no standard, or not in force as one. */
  readonly status: "current" | "withdrawn" | "guide";
  /** How the status is known, and what replaced a withdrawn edition. */
  readonly statusNote: string;
  /** The edition that replaced this one; given for every withdrawn edition. */
  readonly replacedBy?: string;
  readonly scope: string;
  /** Kinds of machine it is for; left out when it is for any. */
  readonly machines?: readonly MachineType[];
  /** Facts that must not lie outside, checked where they are given. */
  readonly within?: Condition;
  readonly exclusions?: readonly Exclusion[];
  readonly place: "housing" | "shaft";
  /** Where to measure, in words. */
  readonly measuredOn: string;
  /** Measuring band in hertz; null where the source gives none. */
  readonly band: readonly [low: number, high: number] | null;
  /** Which peak the limits in peak mean; `open` where this is left out. */
  readonly peakMeans?: PeakMeaning;
  /** Another band below a shaft speed in r/min. */
  readonly slowBand?: { readonly below: number; readonly band: readonly [low: number, high: number] };
  /** Facts that are never assumed, since the lowest limits would mean another machine. */
  readonly ask?: readonly Fact[];
  /** What the labels of a fact mean here, for the question to the machine's owner. */
  readonly meanings?: { readonly [F in TextFact]?: string };
  /** Names of the grades, best first: kind `grades` only. */
  readonly grades?: readonly string[];
  /** True where the limits are informative: for orientation, never a verdict or a setpoint. */
  readonly informative?: true;
  /** True where an order or a specification has to name the table: it judges by name only and is never chosen by itself. */
  readonly byContract?: true;
  readonly notes?: readonly string[];
  readonly classes: readonly MachineClass<K>[];
}
