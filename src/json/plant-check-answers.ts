import type { BenchDevice, BenchSetting, ChangeFinding, DoubtfulPeriod, DueCheck, LeftOut, OpenResult, PlantChange, TakenResult } from "../plant/index";

/** Checks of the devices of a plant: what is due, a round on the bench, results, and a record of changes. */
export interface PlantCheckAnswers {
  readonly "due check": DueCheck;
  readonly "bench setting": BenchSetting;
  readonly "bench device": BenchDevice;
  readonly "device left out": LeftOut;
  readonly "check result": TakenResult;
  readonly "open result": OpenResult;
  readonly "doubtful period": DoubtfulPeriod;
  readonly "plant change": PlantChange;
  readonly "change finding": ChangeFinding;
}
