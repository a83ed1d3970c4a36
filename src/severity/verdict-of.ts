import type { Fact } from "./facts";
import type { Judgement } from "./judgement";

/** What the schemes for a machine say of a reading: the worst of them, and what else is possible. */
export interface Verdict extends Judgement {
  /** One judgement for each scheme that the known facts admit, worst first. */
  readonly judgements: readonly Judgement[];
  /** Facts that were not given and decide between these schemes. */
  readonly deciding: readonly Fact[];
}
