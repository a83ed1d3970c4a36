import type { ConvertedAmplitude } from "../amplitude/index";
import type { Step } from "../reading/index";
import type { Vector, VectorAnswer } from "./vector";

/** A vector that was made of others as an answer: what was assumed, and the steps, stand beside it too. */
export function vectorAnswer(vector: Vector & { readonly amplitude: ConvertedAmplitude }): VectorAnswer {
  const { amplitude, assumedFacts = [], cautions = [] } = vector;
  return Object.freeze({
    ...vector,
    assumed: amplitude.assumed,
    history: amplitude.history as readonly Step[],
    assumedFacts: Object.freeze([...new Set(assumedFacts)]),
    cautions: Object.freeze([...new Set(cautions)]),
  });
}
