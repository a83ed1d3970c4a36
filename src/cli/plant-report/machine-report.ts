import type { TrendReading } from "../../chart/index";
import type { Source } from "../../core/index";
import type {
  DueCheck,
  PlantChange,
  PlantMachine,
  RefusedReading,
  RouteBasis,
  RouteVerdict,
  ScheduledMachine,
} from "../../plant/index";
import type { Verdict } from "../../severity/index";
import type { KnownCheckResult } from "../../verification/index";

/** How grave a finding is, the gravest first. */
export const gravities = /* @__PURE__ */ Object.freeze(["error", "warning", "note"] as const);

/** Something in the row of a machine, or in what stands beside it, that someone should look at. */
export interface ReportFinding {
  /** The line of the row; 0 for what is on no row of the list. */
  readonly line: number;
  readonly tag: string;
  readonly gravity: (typeof gravities)[number];
  /** The name of its rule, by which the audit tells it too. */
  readonly name: string;
  readonly what: string;
  readonly why: string;
  readonly mend: string;
  /** As data, or in words. */
  readonly source: Source | string;
}

/** A reading of the last route, with what its verdict rests on. */
export interface ReadPoint {
  readonly verdict: RouteVerdict;
  readonly basis: RouteBasis;
}

/** How a machine stands, as the index and the head of its page say it. */
export interface Standing {
  readonly machine: PlantMachine;
  /** The gravest first. */
  readonly findings: readonly ReportFinding[];
  /** Worst first; empty for a machine of which no reading was judged. */
  readonly points: readonly ReadPoint[];
  /** Its readings of the last route that were refused. */
  readonly unjudged: readonly RefusedReading[];
  readonly due: DueCheck;
}

/** Readings of a point over time. */
export interface ReportHistory {
  /** Where they are from, and of which point. */
  readonly name: string;
  readonly as: string;
  readonly readings: readonly TrendReading[];
  /** What numbers of time count. */
  readonly timeUnit?: string;
  /** What was left out of the file, and anything else to know of it. */
  readonly notes: readonly string[];
}

/** A check of the device, as found or as left. */
interface ReportCheck {
  readonly name: "as found" | "as left";
  readonly check: KnownCheckResult;
}

/** A limit of a machine, without a reading. */
interface ReportLimit {
  readonly name: string;
  readonly level: string;
  readonly source: Source;
}

/** The limits of one table, or of the maker or the site. */
export interface ReportLimits {
  /** The table and the class of the machine in it. */
  readonly title: string;
  readonly limits: readonly ReportLimit[];
  /** What was taken for facts not given, and what was set aside. */
  readonly notes: readonly string[];
}

/** All that the page of a machine tells. */
export interface MachineReport extends Standing {
  /** The whole verdict on the worst point. */
  readonly verdict?: Verdict;
  /** Readings of it that were refused, in words. */
  readonly refused: readonly string[];
  readonly limits: readonly ReportLimits[];
  readonly scheduled?: ScheduledMachine;
  readonly checks: readonly ReportCheck[];
  /** What the last check means, and what cannot be said of it. */
  readonly checkNotes: readonly string[];
  readonly histories: readonly ReportHistory[];
  readonly changes: readonly PlantChange[];
  /** What the audit could not look for, in words with the reason. */
  readonly notChecked: readonly string[];
  /** What could not be answered, in words with the reason. */
  readonly unanswered: readonly string[];
}
