import { attempt } from "../core/index";
import type { Decision } from "../verification/index";
import { checkAgainstKnown } from "../verification/index";
import type { PlantMachine } from "./plant-machine";

/** What the last check in the list says of the device as it was left. */
export interface LeftState {
  /** Null where the list does not hold enough to decide. */
  readonly verdict: Decision["verdict"] | null;
  /** Why not, or what the verdict goes by. */
  readonly why: string;
}

const NOTHING = "what it showed is not in the list, so that its date alone counts";

/** How the device was left by its last check: what it showed as left, else as found, against the known level. */
export function leftState({ check }: PlantMachine): LeftState {
  if (check === undefined) return { verdict: null, why: "no check is in the list" };
  const { known, asFound, asLeft, tolerance } = check;
  const indicated = asLeft ?? asFound;
  if (known === undefined || indicated === undefined) return { verdict: null, why: NOTHING };
  if (tolerance === undefined) {
    return { verdict: null, why: "no tolerance is in the list, so that its date alone counts" };
  }
  const decided = attempt(() => checkAgainstKnown({ known, indicated, tolerance }));
  if (!decided.ok) return { verdict: null, why: `what it showed cannot be judged: ${decided.error.message}` };
  const { verdict, errorPercent } = decided.value;
  const size = Math.abs(errorPercent).toFixed(1);
  const words = size === "0.0" ? "the known level" : `${size} % ${errorPercent < 0 ? "low" : "high"}`;
  return { verdict, why: `${asLeft === undefined ? "as found, with nothing as left" : "as left"} it read ${words}` };
}
