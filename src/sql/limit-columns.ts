import { frozen } from "../core/index";
import { dialectOf, type SqlDialect } from "./dialects";

/** One row of a table of limits: a machine, one criterion that judges it, one limit; or a machine that is refused. */
export interface LimitRow {
  /** The name of the machine, as the readings have it. */
  readonly machine: string;
  /** What its readings are written in. */
  readonly readings: string;
  /** The id of the scheme. */
  readonly scheme: string | null;
  readonly standard: string | null;
  readonly edition: string | null;
  /** The row of the scheme, in words. */
  readonly row: string | null;
  /** What the limit is written in, in the scheme. */
  readonly as: string | null;
  /** The name of the limit, e.g. `"B/C"`. */
  readonly name: string | null;
  /** The limit as the scheme has it. */
  readonly printed: number | null;
  /** The number of the limit among those of its criterion, 1 for the best. */
  readonly step: number | null;
  /** The zone below the limit. */
  readonly zone: string | null;
  /** The zone above it. */
  readonly beyond: string | null;
  /** The last zone of the machine. */
  readonly last: string | null;
  /** The limit in the type of the readings: what decides. A reading is within it up to a share of 2^-23 above, for float noise. */
  readonly limit: number | null;
  /** `"zone"`: it counts for the zone and for the worst that is possible; `"worst"`: for the latter alone. */
  readonly decides: "zone" | "worst" | null;
  /** 1 where something is not judged, so that the last zone is always possible. */
  readonly open: 0 | 1 | null;
  /** The number of its criterion among those that judge the machine, from 1: its limits are a ladder. */
  readonly criterion: number | null;
  /** How many rows the machine has, in this type of readings: where one is missing it is not judged. */
  readonly rows: number;
  /** How many of them decide its zone. */
  readonly deciding: number;
  /** How the limit is known. */
  readonly grade: string | null;
  readonly source: string | null;
  /** What was assumed, set aside and not judged, for the machine. */
  readonly assumed: string | null;
  /** Why the machine has no limits; null where it has. */
  readonly refused: string | null;
}

/** The columns of a table of limits, and what each holds. Their names are words that no engine keeps for itself. */
export const limitColumns = /* @__PURE__ */ frozen({
  machine: ["machine", "text"],
  readings: ["readings_in", "text"],
  scheme: ["scheme", "text"],
  standard: ["standard", "text"],
  edition: ["edition", "text"],
  row: ["scheme_row", "text"],
  as: ["printed_in", "text"],
  name: ["limit_name", "text"],
  printed: ["printed", "real"],
  step: ["step", "whole"],
  zone: ["zone_below", "text"],
  beyond: ["zone_above", "text"],
  last: ["last_zone", "text"],
  limit: ["limit_value", "real"],
  decides: ["decides", "text"],
  open: ["is_open", "whole"],
  criterion: ["criterion", "whole"],
  rows: ["rows_of_machine", "whole"],
  deciding: ["rows_that_decide", "whole"],
  grade: ["grade", "text"],
  source: ["source", "text"],
  assumed: ["assumed", "text"],
  refused: ["refused", "text"],
} as const satisfies Record<keyof LimitRow, readonly [string, "text" | "real" | "whole"]>);

/** The names of the columns with what each holds, in their order. */
export const columnList = /* @__PURE__ */ Object.entries(limitColumns) as readonly [
  keyof LimitRow,
  (typeof limitColumns)[keyof LimitRow],
][];

/** How an engine names what a column holds. */
export function typeName(dialect: SqlDialect, kind: "text" | "real" | "whole"): string {
  return dialectOf(dialect)[kind];
}
