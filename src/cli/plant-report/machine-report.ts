import type { Source } from "../../core/index";
import type { CalendarDay, PlantMachine } from "../../plant/index";
import type { TrendReading } from "../../chart/index";
import type { Proposal } from "../../setpoints/index";
import type { Verdict } from "../../severity/index";
import type { KnownCheckResult } from "../../verification/index";

/** How much a finding weighs, worst first. */
export const findingLevels = ["error", "warning", "note"] as const;

/** What was found wrong or lacking in the list, on one machine. */
export interface ReportFinding {
  readonly level: (typeof findingLevels)[number];
  readonly what: string;
  readonly why: string;
  readonly mend: string;
  /** As data, or in words. */
  readonly source: Source | string;
}

/** A point of a machine as the last route has it. */
export interface ReportPoint {
  /** Its name; empty for the only one. */
  readonly point: string;
  readonly written: string;
  readonly on?: CalendarDay;
  readonly verdict: Verdict;
  /** The changes since the baseline and since the route before, in words. */
  readonly changes: readonly string[];
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
export interface ReportCheck {
  readonly name: "as found" | "as left";
  readonly check: KnownCheckResult;
}

/** A limit of a machine, without a reading. */
export interface ReportLimit {
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

/** What was changed, bypassed or put back, as the record has it. */
export interface ReportChange {
  readonly date: CalendarDay;
  readonly what: string;
  readonly reason: string;
  readonly by: string;
  /** What is still open of it, in words; empty for nothing. */
  readonly open: string;
}

/** When the device is to be checked. */
export interface ReportDue {
  readonly isDue: boolean;
  /** In a word or two, such as overdue. */
  readonly state: string;
  readonly day?: CalendarDay;
}

/** All that the page of a machine tells. */
export interface MachineReport {
  readonly machine: PlantMachine;
  readonly findings: readonly ReportFinding[];
  /** Worst first; empty for a machine that no route has. */
  readonly points: readonly ReportPoint[];
  /** Readings of it that were refused, in words. */
  readonly refused: readonly string[];
  readonly limits: readonly ReportLimits[];
  readonly proposal?: Proposal;
  readonly checks: readonly ReportCheck[];
  /** What the last check means, when the next is due, what cannot be said. */
  readonly checkNotes: readonly string[];
  readonly due: ReportDue;
  readonly histories: readonly ReportHistory[];
  readonly changes: readonly ReportChange[];
  /** What could not be answered, in words with the reason. */
  readonly unanswered: readonly string[];
}
