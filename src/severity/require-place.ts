import { VeladisError } from "../core/index";
import type { Amplitude } from "../reading/index";
import { isOfDisplacement } from "./of-displacement";
import type { PlacedMachine } from "./placed-machine";

/**
 * Refuses a velocity or acceleration for a shaft table, unless it is said to be of the shaft or was made of a
 * displacement: it looks like a housing's.
 *
 * @throws {@link VeladisError} `missing-fact`
 */
export function requirePlace({ scheme, facts }: PlacedMachine, readings: readonly Amplitude[]): void {
  const other = readings.find((one) => !isOfDisplacement(one));
  if (scheme.place === "housing" || facts.place === "shaft" || other === undefined) return;
  throw new VeladisError("missing-fact", {
    expected: `a reading of the shaft against its housing, as ${scheme.standard} needs; say place "shaft" if it is one`,
    received: `a reading of ${other.quantity} of unknown place`,
    allowed: ["shaft"],
    fact: "place",
  });
}
