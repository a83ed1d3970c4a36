import { parseNumeral } from "../../core/index";
import type { Shaker } from "../../verification/index";
import type { OptionRow, ParsedOptions } from "./option-row";
import { requireOption } from "./option-values";
import { shakerOption } from "./shaker-option";
import type { shakerRows } from "./shaker-rows";

/** The rows that tell of a shaker. */
type ShakerOptionRows = typeof shakerRows & {
  readonly resolution: OptionRow & { readonly argument: string };
  readonly uncertainty: OptionRow & { readonly argument: string };
};

/** A mass; a bare number is one of kilograms. */
export function massOption(value: string | undefined): string | undefined {
  return value === undefined || /[a-z]/i.test(value) ? value : `${parseNumeral(value, "a mass in kg")} kg`;
}

/**
 * The shaker that the options tell of.
 *
 * @throws {@link VeladisError} `missing-option` without one, and as {@link shakerOption}
 */
export function shakerOf(given: ParsedOptions<ShakerOptionRows>): Shaker {
  const { values } = given;
  const { stroke, velocity, acceleration, force, resolution, uncertainty } = values;
  const movingMass = massOption(values["moving-mass"]);
  const payload = massOption(values.payload);
  return {
    ...shakerOption(requireOption(given, "shaker")),
    ...(stroke !== undefined && { displacement: stroke }),
    ...(velocity !== undefined && { velocity }),
    ...(acceleration !== undefined && { acceleration }),
    ...(force !== undefined && { force: { newtons: parseNumeral(force, "a force in N") } }),
    ...(movingMass !== undefined && { movingMass }),
    ...(payload !== undefined && { payload }),
    ...(resolution !== undefined && { resolution }),
    ...(uncertainty !== undefined && { uncertainty }),
  };
}
