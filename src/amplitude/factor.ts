import { shown, VeladisError } from "../core/index";
import { hertz } from "../frequency/index";
import { irrational } from "./constants";
import type { Kind } from "./kind";
import { typeText } from "./reading-type";
import type { ConvertOptions } from "./types";

/** A conversion between two linear kinds: multiply by `num`, then divide by `den`. One of the two may be 1. */
export interface Factor {
  readonly num: number;
  readonly den: number;
}

/** The frequency in hertz for a conversion; 1 when the quantity stays and none is needed. */
export function bridge(from: Kind, to: Kind, at: ConvertOptions["at"]): number {
  if (at !== undefined) return hertz(at);
  if (from.order === to.order) return 1;
  throw new VeladisError("missing-frequency", {
    expected: `a frequency, since ${from.quantity} becomes ${to.quantity}, as in { at: "1500 r/min" }`,
    received: `${shown(typeText(from))} to ${shown(typeText(to))} without one`,
  });
}

/**
 * Factor by the ratios of a sine wave at one frequency.
 *
 * All but the last line of a conversion; exact integers as long as nothing irrational enters.
 */
export function sineFactor(from: Kind, to: Kind, hz: number): Factor {
  const steps = to.order - from.order;
  const power = to.pi - from.pi + steps;
  const rootTwo = to.rootTwo - from.rootTwo;
  const num = from.num * to.den;
  const den = from.den * to.num;
  if (steps === 0)
    return power === 0 && rootTwo === 0 ? { num, den } : { num: (irrational(power, rootTwo) * num) / den, den: 1 };
  const k = (irrational(power, rootTwo) * num) / den;
  const twice = 2 * hz;
  if (steps > 0) return { num: k * (steps === 1 ? twice : twice * twice), den: 1 };
  return { num: k / (steps === -1 ? twice : twice * twice), den: 1 };
}

/**
 * Factor by a stated crest factor: peak = crest factor x RMS, peak-to-peak = 2 x peak.
 *
 * @throws {@link VeladisError} `out-of-range` below 1, `not-a-sine` for the average or another quantity
 */
export function crestFactored(from: Kind, to: Kind, crestFactor: number): Factor {
  if (!(crestFactor >= 1 && crestFactor < Number.POSITIVE_INFINITY)) {
    throw new VeladisError("out-of-range", {
      expected: "a crest factor (peak over RMS) of 1 or more",
      received: shown(crestFactor),
    });
  }
  const average = from.pi !== to.pi;
  if (from.order !== to.order || average) {
    throw new VeladisError("not-a-sine", {
      expected: average
        ? "no crest factor with the rectified average, whose ratio is the form factor"
        : "no crest factor when the quantity changes, since each quantity of a wave has its own",
      received: `a crest factor of ${crestFactor} for ${shown(typeText(from))} to ${shown(typeText(to))}`,
    });
  }
  const num = from.num * to.den;
  const den = from.den * to.num;
  const rootTwo = to.rootTwo - from.rootTwo;
  if (rootTwo === 0) return { num, den };
  return {
    num: rootTwo > 0 ? (crestFactor * num) / den : num / den / crestFactor,
    den: 1,
  };
}

/** The factor between two kinds as the options ask for it. */
export function factorOf(from: Kind, to: Kind, options: ConvertOptions | undefined): Factor {
  const hz = bridge(from, to, options?.at);
  const crest = options?.crestFactor;
  return crest === undefined ? sineFactor(from, to, hz) : crestFactored(from, to, crest);
}
