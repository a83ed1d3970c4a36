import { finiteResult, requireKnownOptions, VeladisError, withParameters } from "../core/index";
import { type Assumption, union } from "../reading/index";
import { checkAgainstKnown, type KnownCheck, type KnownCheckResult } from "./check-against-known";

/** A check before and after an adjustment. */
export interface AsFoundAsLeft {
  readonly asFound: KnownCheckResult;
  readonly asLeft: KnownCheckResult;
  /** What the device shows after the adjustment over what it showed before; null when it showed nothing. */
  readonly adjustment: number | null;
  /** What the as-found state means for the time since the last check. */
  readonly meaning: string;
  /** What was assumed in either check. */
  readonly assumed: readonly Assumption[];
}

/** What the verdict on a device as found means for the time since its last check. */
export const foundMeanings = /* @__PURE__ */ Object.freeze({
  pass: "found within tolerance: readings since the last check stand",
  fail: "found out of tolerance: readings and trips since the last check are in doubt; look back at them",
  undecided: "found neither within nor out of tolerance for certain: judge readings since the last check with care",
} as const);

const keys: Readonly<Record<keyof Parameters<typeof asFoundAsLeft>[0], true>> = /* @__PURE__ */ Object.freeze({
  known: true,
  asFound: true,
  asLeft: true,
  tolerance: true,
  uncertainty: true,
  rule: true,
});

/** One of the two checks; a refusal of what is indicated names it as the pair does. */
function checkOf(check: Omit<KnownCheck, "indicated">, option: string, indicated: KnownCheck["indicated"]) {
  try {
    return checkAgainstKnown({ ...check, indicated });
  } catch (error) {
    if (VeladisError.is(error) && error.option === "indicated") Object.assign(error, { option });
    throw error;
  }
}

/**
 * A pair of checks, as found and as left, against one known level and tolerance.
 *
 * @throws {@link VeladisError} `missing-fact` where one reading has a ± and the other none, so that two rules would decide;
 *   and as {@link checkAgainstKnown}
 * @example
 * ```ts
 * import { asFoundAsLeft } from "veladis/protection";
 *
 * const pair = asFoundAsLeft({
 *   known: "8 mm/s rms at 2400 r/min",
 *   tolerance: "5 %",
 *   asFound: "7.3 mm/s rms",
 *   asLeft: "7.9 mm/s rms",
 * });
 * [pair.asFound.verdict, pair.asLeft.verdict]; // => ["fail", "pass"]
 * pair.adjustment?.toFixed(3); // => "1.082"
 * ```
 */
export function asFoundAsLeft(
  pair: Omit<KnownCheck, "indicated"> & {
    readonly asFound: KnownCheck["indicated"];
    readonly asLeft: KnownCheck["indicated"];
  },
): AsFoundAsLeft {
  return withParameters({ pair }, () => {
    const { asFound, asLeft, ...check } = requireKnownOptions(pair, keys, {
      what: "a part of a pair of checks",
      form: "a pair of checks with known level, asFound, asLeft and tolerance",
      place: { parameter: "pair" },
    });
    const found = checkOf(check, "asFound", asFound);
    const left = checkOf(check, "asLeft", asLeft);
    // what is known of a display before is known of it after: without it the easier rule would pass the second
    if (found.rule !== left.rule) {
      throw new VeladisError("missing-fact", {
        expected: "a ± behind both readings, as found and as left, or behind neither, since one rule decides both",
        received: `${found.rule} as found, ${left.rule} as left`,
      });
    }
    return Object.freeze({
      asFound: found,
      asLeft: left,
      adjustment: found.indicated.value > 0 ? finiteResult(left.indicated.value / found.indicated.value) : null,
      meaning: foundMeanings[found.verdict],
      assumed: union(found.assumed, left.assumed),
    });
  });
}
