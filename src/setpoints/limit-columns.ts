import { suits } from "../detectors/index";
import { type ParsedType, parsedType } from "../reading/index";
import type { CriterionLimits } from "../severity/index";

/**
 * Of the columns of limits of a class, one for each quantity: as a judgement takes them, the one whose detector suits the
 * setpoints best, the first of several that suit alike.
 */
export function limitColumns(
  criteria: readonly CriterionLimits[],
  { detector }: ParsedType,
): readonly CriterionLimits[] {
  const score = ({ as }: CriterionLimits): number => suits(parsedType(as).detector, detector);
  const columns = new Map<string, CriterionLimits>();
  for (const one of criteria) {
    const known = columns.get(one.quantity);
    if (known === undefined || score(one) > score(known)) columns.set(one.quantity, one);
  }
  return [...columns.values()];
}
