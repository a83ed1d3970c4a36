import type { Amplitude } from "../reading/index";
import type { Reason } from "./reason";

/** Setpoints within a range of speeds. */
export interface RaisedSetpoints {
  readonly factor: number;
  /** The range in hertz. */
  readonly hertz: readonly [from: number, to: number];
  /** The range in r/min. */
  readonly speed: readonly [from: number, to: number];
  /** How long they may be up at the most, in s; left out in answers kept from before a time had to be stated. */
  readonly seconds?: number;
  readonly alarm: Amplitude | null;
  readonly trip: Amplitude | null;
  /** What nothing acts on meanwhile, in words. */
  readonly unprotected: readonly string[];
  readonly reasons: readonly Reason[];
}
