import type { Source } from "../../core/index";
import type { AuditCase } from "./audit-case";

/** How bad what is found is, worst first: it leaves the machine without what the rules ask for, or may, or is to be known. */
export const findingSeverities = /* @__PURE__ */ Object.freeze(["error", "warning", "note"] as const);

/** How bad a finding is: one of {@link findingSeverities}. */
export type FindingSeverity = (typeof findingSeverities)[number];

/** What a rule found in a case: what, and where these differ from those of its row, the source and what would mend it. */
export interface Found {
  readonly what: string;
  readonly source?: Source;
  readonly mend?: string;
}

/** A rule of the audit, as it is told. */
export interface AuditRule {
  readonly severity: FindingSeverity;
  /** What it looks for. */
  readonly says: string;
  readonly why: string;
  readonly source: Source;
  /** What would mend it. */
  readonly mend: string;
}

/** A rule with what it does: a row of a table. */
export interface CheckedRule extends AuditRule {
  /**
   * What it finds in a machine; nothing where all is well.
   *
   * @throws {@link VeladisError} where it cannot be checked, with the fact that is missing
   */
  readonly check: (machine: AuditCase) => Found | undefined;
}

/** Rules by their codes. */
export type AuditRules = Readonly<Record<string, CheckedRule>>;
