export { convertVector } from "./convert-vector";
export { formatVector } from "./format-vector";
export { parseVector } from "./parse-vector";
export { shaftAbsolute } from "./shaft-absolute";
export { type SlowRollOptions, slowRollCompensated } from "./slow-roll";
export { differenceOfVectors, sumOfVectors } from "./sums";
export { type UncertaintyOfVector, uncertaintyOfVector } from "./uncertainty-of-vector";
export type { Vector, VectorAnswer } from "./vector";
