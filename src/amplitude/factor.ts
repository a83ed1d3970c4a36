import { inPlace, shown, VeladisError } from "../core/index";
import { requireRelated } from "../detectors/index";
import { type Frequency, inHertz } from "../frequency/index";
import type { Factor } from "../reading/index";
import type { Pair } from "./pair";

const parameter = "options";
const AT = { parameter, option: "at" } as const;

/** Factor by a stated crest factor: peak = crest factor x RMS, peak-to-peak = 2 x peak. */
function crestFactored({ from, to, steps, num, den }: Pair, crestFactor: number): Factor {
  const isNone = !(Number.isFinite(crestFactor) && crestFactor >= 1);
  if (isNone || steps !== 0 || from.pi !== to.pi) {
    throw new VeladisError(isNone ? "out-of-range" : "not-a-sine", {
      expected: `a crest factor ${isNone ? "(peak over RMS) of 1 or more" : "only between peak and RMS of one quantity"}`,
      received: shown(crestFactor),
      parameter,
      option: "crestFactor",
    });
  }
  const rootTwo = to.rootTwo - from.rootTwo;
  return { num: rootTwo > 0 ? num * crestFactor : num, den: rootTwo < 0 ? den * crestFactor : den };
}

/**
 * The factor of a pair at a frequency, by a crest factor if one is stated.
 *
 * @throws {@link VeladisError} `missing-frequency`, `out-of-range` or `not-a-sine` for the crest factor, and as
 *   {@link hertz}
 */
export function factorOf(pair: Pair, at: Frequency | undefined, crestFactor: number | undefined): Factor {
  if (!pair.ofSine) requireRelated(pair.from.detector, pair.to.detector, crestFactor, pair.steps);
  if (at === undefined && pair.steps !== 0) {
    throw new VeladisError("missing-frequency", {
      expected: `a frequency, as in "at 1500 r/min", since ${pair.from.quantity} becomes ${pair.to.quantity}`,
      received: shown(at),
      ...AT,
    });
  }
  const hz = at === undefined ? 1 : inPlace(AT, () => inHertz(at));
  return crestFactor === undefined ? pair.sine(hz) : crestFactored(pair, crestFactor);
}
