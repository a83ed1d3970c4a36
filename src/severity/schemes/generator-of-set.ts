import type { Exclusion } from "../scheme";

/** Keeps the generator of a gas turbine set out of the rows of the turbine, whose limits are higher than its own. */
export function generatorOfSet(standard: string): Exclusion {
  return {
    when: { type: ["gas turbine", "aero-derivative gas turbine"], part: "generator" },
    reason: `the generator of a gas turbine set: the row of ${standard} is for the turbine; give the generator as the machine, such as "generator 60 MW 3000 r/min"`,
  };
}
