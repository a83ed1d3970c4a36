import type { ConvertedAmplitude } from "../amplitude/index";
import type { Amplitude, Assumption } from "../reading/index";
import type { LimitCount, Scheme, Verdict } from "../severity/index";
import type { Descriptors, LinesOverall, OrderLine, Overall, SpectrumLine } from "../signal/index";
import type { LimitRow } from "../sql/index";
import type { LevelGaps, TripEvent, UnmaskedTrips, VoteAlternative, VotedEvent, VotedStatus } from "../trip/index";

/** Answers that the command alone gives. */
export interface CommandAnswers {
  /** Of `convert`: the reading beside what it was converted to. */
  readonly conversion: ConvertedAmplitude & { readonly from: Amplitude };
  /** Of `overall`. */
  readonly record: {
    readonly levels: readonly Overall[];
    /** Not of a record that is too long to be held in memory. */
    readonly descriptors?: Descriptors | undefined;
    readonly lines: readonly SpectrumLine[];
    readonly orders?: readonly OrderLine[];
    readonly judgement?: Verdict;
  };
  /** Of `overall --spectrum`: each line with its frequency. */
  readonly "record of lines": {
    readonly levels: readonly LinesOverall[];
    readonly lines: readonly Amplitude[];
    readonly judgement?: Verdict;
  };
  /** Of `simulate`, one for each delay. */
  readonly simulation: {
    readonly threshold: Amplitude;
    readonly reset: Amplitude;
    readonly events: readonly TripEvent[];
    readonly unmasked: UnmaskedTrips;
    readonly gaps?: LevelGaps;
    readonly assumed: readonly Assumption[];
  };
  /** Of `simulate --vote`. */
  readonly "voted simulation": {
    readonly threshold: Amplitude;
    readonly reset: Amplitude;
    /** Threshold of the alerts, where the vote counts them. */
    readonly alert?: Amplitude;
    readonly events: readonly VotedEvent[];
    readonly end: VotedStatus;
    readonly alternatives: readonly VoteAlternative[];
    readonly assumed: readonly Assumption[];
  };
  readonly "vote alternative": VoteAlternative;
  /** Of `balance --unbalance`: the grade, and the force in newtons. */
  readonly "grade of unbalance": { readonly grade: number; readonly force: number; readonly note: string };
  /** Of `balance --unbalance` without a mass: the force in newtons. */
  readonly "force of unbalance": { readonly force: number; readonly unbalance: number };
  /** Of `schemes`: what a table is, and how many of its limits are known in which way. */
  readonly "scheme summary": Pick<
    Scheme,
    "id" | "kind" | "standard" | "edition" | "title" | "status" | "replacedBy" | "place" | "scope"
  > &
    LimitCount;
  /** Of `sql`: an expression or a query. */
  readonly sql: { readonly sql: string };
  /** Of `sql --machines`: one limit of a machine, or why it has none. */
  readonly "limit row": LimitRow;
}
