import { wholeSteps } from "../reading/index";

const DIGITS = [1, 2, 3, 4] as const;

/** A multiple of a step within two levels, the nearest to the middle; undefined without one. */
function stepWithin(lowest: number, highest: number, step: number): number | undefined {
  const middle = (lowest + highest) / 2;
  const slack = 1e-9 * highest;
  return (["nearest", "up", "down"] as const)
    .map((side) => wholeSteps(middle, step, side))
    .find((level) => level > 0 && level >= lowest - slack && level <= highest + slack);
}

/** A level within two that can be set: in the steps of the shaker, else in as few digits as there may be. */
export function levelWithin(lowest: number, highest: number, step: number | undefined): number {
  const middle = (lowest + highest) / 2;
  const decade = Math.floor(Math.log10(middle));
  const steps = step === undefined ? DIGITS.map((digits) => 10 ** (decade - digits + 1)) : [step];
  for (const one of steps) {
    const level = stepWithin(lowest, highest, one);
    if (level !== undefined) return level;
  }
  return middle;
}
