import { expect } from "vitest";
import type { Reference } from "./reference";

/**
 * Holds a computed value against print: within the printed digits where print is right, outside them where print
 * is known to be wrong.
 */
export function expectAgreement(reference: Reference, computed: number): void {
  const { printed, tolerance, agrees } = reference;
  const difference = Math.abs(computed - printed);
  // half a unit in the last place of the double, for printed values that are exact
  const allowed = tolerance + Math.abs(printed) * 2e-16;
  expect(difference <= allowed, `${reference.id}: computed ${computed}, printed ${printed} +- ${tolerance}`).toBe(
    agrees,
  );
}
