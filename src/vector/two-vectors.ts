import { convertedAt, linearAmplitude, linearTypeOf, vectorDifference } from "../amplitude/index";
import { inPlace, VeladisError } from "../core/index";
import { type Amplitude, amplitudeOf, format } from "../reading/index";
import { ANGLE } from "./form";
import { vectorOf } from "./parse-vector";
import type { Vector } from "./vector";

/** The amplitude of what says no phase at all, be it a text or an amplitude that was taken apart. */
function bareAmplitude(one: string | Vector): Amplitude | undefined {
  if (typeof one === "string") return ANGLE.test(one) ? undefined : amplitudeOf(one);
  if (typeof one !== "object" || one === null || !("unit" in one) || "amplitude" in one) return undefined;
  return amplitudeOf(one as unknown as Amplitude);
}

/**
 * Both vectors; where one has no phase it is refused, with what is known without it: the two ends between which the answer
 * lies, and the function that takes an angle.
 *
 * @throws {@link VeladisError} `missing-fact`, and as `parseVector`
 */
export function twoVectors(given: Readonly<Record<string, string | Vector>>): [Vector, Vector] {
  const [[one, other], [its, others]] = [Object.values(given), Object.keys(given)] as [
    [string | Vector, string | Vector],
    [string, string],
  ];
  const ofFirst = <Of>(work: (vector: string | Vector) => Of): Of => inPlace({ parameter: its }, () => work(one));
  const ofOther = <Of>(work: (vector: string | Vector) => Of): Of => inPlace({ parameter: others }, () => work(other));
  const bare = [ofFirst(bareAmplitude), ofOther(bareAmplitude)] as const;
  if (bare[0] === undefined && bare[1] === undefined) return [ofFirst(vectorOf), ofOther(vectorOf)];
  const first = linearAmplitude(bare[0] ?? ofFirst(vectorOf).amplitude);
  const second = bare[1] ?? ofOther(vectorOf).amplitude;
  const alike = convertedAt(second, linearTypeOf(first), first.hertz);
  const [least, most] = [0, 180].map((degrees) => format(vectorDifference(first, alike, degrees)));
  throw new VeladisError("missing-fact", {
    expected: `a phase for both, as in "∠ 45° at 1x of 3600 r/min"; without one the answer lies anywhere from ${least} to ${most}, and vectorDifference takes an angle between the two`,
    received: `${format(bare[0] ?? (bare[1] as Amplitude))} alone`,
    fact: "phase",
  });
}
