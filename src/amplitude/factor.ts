import { shown, VeladisError } from "../core/index";
import { hertz } from "../frequency/index";
import type { Pair } from "./pair";
import { typeText } from "./reading-type";
import type { ConvertOptions } from "./types";

/** A conversion between two linear kinds: multiply by `num`, then divide by `den`. One of the two may be 1. */
export interface Factor {
  readonly num: number;
  readonly den: number;
}

function missingFrequency({ from, to }: Pair): VeladisError {
  return new VeladisError("missing-frequency", {
    expected: `a frequency, since ${from.quantity} becomes ${to.quantity}, as in "at 1500 r/min"`,
    received: `${shown(typeText(from))} to ${shown(typeText(to))} without one`,
  });
}

/** Factor by the ratios of a sine wave at one frequency; exact integers as long as nothing irrational enters. */
function sineFactor({ steps, num, den, exact, factor }: Pair, hz: number): Factor {
  if (exact) return { num, den };
  if (steps === 0) return { num: factor, den: 1 };
  const power = steps === 1 || steps === -1 ? hz : hz * hz;
  return { num: steps > 0 ? factor * power : factor / power, den: 1 };
}

/** Factor by a stated crest factor: peak = crest factor x RMS, peak-to-peak = 2 x peak. */
function crestFactored({ from, to, steps, num, den }: Pair, crestFactor: number): Factor {
  if (!(crestFactor >= 1 && crestFactor < Number.POSITIVE_INFINITY)) {
    throw new VeladisError("out-of-range", {
      expected: "a crest factor (peak over RMS) of 1 or more",
      received: shown(crestFactor),
    });
  }
  const average = from.pi !== to.pi;
  if (steps !== 0 || average) {
    throw new VeladisError("not-a-sine", {
      expected: average
        ? "no crest factor with the rectified average, whose ratio is the form factor"
        : "no crest factor when the quantity changes, since each quantity of a wave has its own",
      received: `a crest factor of ${crestFactor} for ${shown(typeText(from))} to ${shown(typeText(to))}`,
    });
  }
  const rootTwo = to.rootTwo - from.rootTwo;
  if (rootTwo === 0) return { num, den };
  return { num: rootTwo > 0 ? (crestFactor * num) / den : num / den / crestFactor, den: 1 };
}

/**
 * The factor of a pair as the options ask for it.
 *
 * @throws {@link VeladisError} `missing-frequency`, `out-of-range` or `not-a-sine` for the crest factor, and as
 *   {@link hertz}
 */
export function factorOf(pair: Pair, options: ConvertOptions | undefined): Factor {
  const at = options?.at;
  if (at === undefined && pair.steps !== 0) throw missingFrequency(pair);
  const hz = at === undefined ? 1 : hertz(at);
  const crest = options?.crestFactor;
  return crest === undefined ? sineFactor(pair, hz) : crestFactored(pair, crest);
}
