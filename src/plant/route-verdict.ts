import type { Provenance, Source } from "../core/index";
import type { Amplitude, Assumption, ReadingType, Step } from "../reading/index";
import type { Limit, SchemeKind, Unjudged, Zone } from "../severity/index";
import type { LimitsChosenBy } from "./machine-verdict";
import type { CalendarDay, RefusedRow } from "./plant-machine";

/** A limit between two zones, in the type of the readings. */
export interface RouteLimit {
  /** As the table calls it, e.g. `"C/D"`. */
  readonly name: string;
  readonly value: number;
}

/** What a change may amount to: a quarter of the limit B/C, of several tables the lowest. */
export interface AllowedChange {
  /** In the type of the readings. */
  readonly value: number;
  readonly limit: Limit<"zones">;
  readonly source: Source;
  readonly provenance: Provenance;
}

/** The baseline of a machine, in the type of the readings that are held against it. */
export interface BaselineInType {
  readonly level: Amplitude;
  readonly value: number;
  readonly date?: CalendarDay;
  readonly count?: number;
  /** What was assumed in writing it in that type. */
  readonly assumed: readonly Assumption[];
}

/** What the verdicts on readings of one machine in one type rest on: told once for all of them. */
export interface RouteBasis {
  readonly tag: string;
  /** What the readings are written in. */
  readonly as: ReadingType;
  /** The frequency that the readings were told with, in hertz. */
  readonly hertz?: number;
  readonly chosenBy: LimitsChosenBy;
  /** The ids of the tables that judge; the worst governs. */
  readonly schemes: readonly string[];
  /** These tables in words, with the class of the machine. */
  readonly standards: readonly string[];
  readonly kind: SchemeKind;
  /** Best first. */
  readonly zones: readonly Zone[];
  /** Between the zones, lowest first: of several tables the lowest. */
  readonly limits: readonly RouteLimit[];
  readonly provenance: Provenance;
  readonly verified: boolean;
  readonly confirmed: readonly string[];
  readonly differences: readonly string[];
  readonly limitSources: readonly Source[];
  readonly assumed: readonly Assumption[];
  /** What was taken for facts that the row leaves empty, in words. */
  readonly assumedFacts: readonly string[];
  readonly setAside: readonly string[];
  readonly unjudged: readonly Unjudged[];
  readonly cautions: readonly string[];
  readonly allowedChange: AllowedChange | null;
  readonly baseline: BaselineInType | null;
  /** Why no change can be told, or not whether it is significant. */
  readonly notCompared: readonly string[];
}

/** How a reading has changed. */
export interface RouteChange {
  /** Before, in the type of the reading. */
  readonly before: number;
  readonly date: CalendarDay | undefined;
  /** What was assumed in writing it in that type. */
  readonly assumed: readonly Assumption[];
  /** Now less before. */
  readonly change: number;
  readonly direction: "rise" | "fall" | "none";
  /** Whether it is more than a quarter of the limit B/C; null where that is not known. */
  readonly significant: boolean | null;
  /** The size of the change over what is allowed; null where that is not known. */
  readonly ratio: number | null;
}

/** The verdict on a reading of a route. */
export interface RouteVerdict {
  readonly tag: string;
  /** Line of its row on the route. */
  readonly line: number;
  readonly point: string | undefined;
  readonly date: CalendarDay | undefined;
  readonly reading: Amplitude;
  readonly kind: SchemeKind;
  /** The zone that was judged, of several tables the worst. */
  readonly zone: Zone;
  /** The worst that is possible: act on this one. */
  readonly worst: Zone;
  /** From the one to the other in few words. */
  readonly headline: string;
  /** The limit that ends the zone upwards; in the worst zone the last one, exceeded. */
  readonly limit: RouteLimit;
  /** That limit over the reading; infinite for a reading of zero. */
  readonly ratio: number;
  /** The number of its basis among those of the answer. */
  readonly basis: number;
  readonly sinceBaseline: RouteChange | null;
  readonly sinceLast: RouteChange | null;
  /** What the reading itself had assumed on its way. */
  readonly assumed: readonly Assumption[];
  /** The steps that led from a reading with a history to its margin; undefined for one that was read as it stands. */
  readonly history: readonly Step[] | undefined;
  /** What to know of this reading, beside the cautions of its basis. */
  readonly cautions: readonly string[];
}

/** A reading that was refused: no verdict is given on it. */
export interface RefusedReading extends RefusedRow {
  /** Where it stands: on the route, or on the one before. */
  readonly from: "route" | "before";
  readonly point?: string;
  readonly expected: string;
  readonly received: string;
  /** The nearest tags there are. */
  readonly didYouMean?: readonly string[];
}

/** The verdicts on a route. */
export interface JudgedRoute {
  /** Worst first, then in the order of the route. */
  readonly verdicts: readonly RouteVerdict[];
  readonly bases: readonly RouteBasis[];
  readonly refused: readonly RefusedReading[];
  /**
   * Machines of the list that no row of the route names, by line; those whose row was refused are among them, with an empty
   * tag where it could not be read.
   */
  readonly unread: readonly { readonly tag: string; readonly line: number }[];
  /** Points that were read on the earlier route and not on this one. */
  readonly pointsUnread: readonly { readonly tag: string; readonly point: string; readonly line: number }[];
  readonly cautions: readonly string[];
}
