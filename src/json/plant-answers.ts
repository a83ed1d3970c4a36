import type { LimitsTaken, PlantAudit, PlantFinding, RefusedRow, RuleNotChecked } from "../plant/index";

/** What is told of a plant's list. */
export interface PlantAnswers {
  readonly "plant audit": PlantAudit;
  readonly "plant finding": PlantFinding;
  readonly "rule not checked": RuleNotChecked;
  readonly "limits taken": LimitsTaken;
  readonly "refused row": RefusedRow;
}
