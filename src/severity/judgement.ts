import type { Provenance } from "../core/index";
import type { Assumption } from "../reading/index";
import type { Unjudged } from "./applicable-criteria";
import type { BackgroundCheck } from "./background";
import type { CriterionJudgement } from "./judge-criterion";
import type { SchemeKind } from "./kinds";
import type { KnownFacts } from "./machine";
import type { PossibleZones } from "./possible-zones";
import type { Condition } from "./scheme";
import type { SupportRule } from "./support-rule-of";

/** What a scheme says of a reading: the governing criterion's answer, and what it rests on. */
export interface Judgement<K extends SchemeKind = SchemeKind> extends CriterionJudgement<K>, PossibleZones<K> {
  readonly kind: K;
  /** The id of the scheme. */
  readonly scheme: string;
  readonly standard: string;
  readonly edition: string;
  /** Where the standard has the reading taken, in words. */
  readonly measuredOn: string;
  /** The class of the machine, as the standard tells classes apart. */
  readonly machineClass: Condition;
  readonly machine: KnownFacts;
  /** Every criterion that was applied; the worst governs. */
  readonly criteria: readonly CriterionJudgement<K>[];
  /** Criteria of the scheme that could not be applied, with the reason. */
  readonly unjudged: readonly Unjudged[];
  /** All that was assumed of any reading, on its way here or in its conversion, over all criteria. */
  readonly assumed: readonly Assumption[];
  /** What was taken for facts not given, in words: always the lower limits. */
  readonly assumedFacts: readonly string[];
  /** What was given of the machine and plays no part, in words. */
  readonly setAside: readonly string[];
  /** How the least known limit of all criteria that were applied is known. */
  readonly provenance: Provenance;
  /** True only if every limit of every criterion was read in the publication itself or confirmed against a copy. */
  readonly verified: boolean;
  /** Who confirmed limits among them against a printed copy, when and on which page; empty where nobody did. */
  readonly confirmed: readonly string[];
  /** Where a confirmed copy prints other values than the table had; also first among the cautions. */
  readonly differences: readonly string[];
  /** Whether the broadband reading may be judged, where a reading at rest was given. */
  readonly background?: BackgroundCheck;
  /** The rule by which the support was computed or taken, with where it was read; left out where the support was stated or plays no part. */
  readonly supportRule?: SupportRule;
  /** What to know before relying on the answer. */
  readonly cautions: readonly string[];
}
