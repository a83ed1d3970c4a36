import { finiteResult, inPlace, requireText, shown, VeladisError } from "../core/index";
import type { Amplitude } from "../reading/index";
import { divisorOf, statedAlone } from "../uncertainty/index";
import type { BenchNumbers } from "./bench-moves";
import { expandedMargins } from "./tolerance";

/** A line from levels to currents: `current = offset + slope x level`, in mA. */
interface CurrentLine {
  readonly offset: number;
  readonly slope: number;
}

const FORM = 'the uncertainty of a current in per cent of it or in mA, such as "0.5 % (k=2)" or "0.02 mA (k=2)"';

/** A share of the threshold that no test ever asks for. */
const BEYOND = 1e6;

const place = { parameter: "injection", option: "uncertainty" } as const;

/**
 * How a share of the threshold moves by what the source of a current may be off. Per cent are of the current that is
 * injected, whose live zero is off too; milliamperes are an amount, and so is a vibration, by the range of the loop.
 *
 * @throws {@link VeladisError} `unknown-unit` for decibels, which of a current with a live zero say nothing; `out-of-range`
 *   for so much that no current proves the level
 */
export function movedByCurrent(
  uncertainty: string,
  threshold: Amplitude,
  { offset, slope }: CurrentLine,
): BenchNumbers["moved"] {
  return inPlace(place, () => {
    const stated = statedAlone(requireText(uncertainty, FORM));
    const amount = (stated.amount * 2) / divisorOf(stated);
    if (/^dB$/i.test(stated.unit)) {
      throw new VeladisError("unknown-unit", {
        expected: FORM,
        received: shown(uncertainty),
      });
    }
    const share = stated.unit === "%" ? amount / 100 : 0;
    const absolute =
      share > 0 || amount === 0
        ? 0
        : stated.unit === "mA"
          ? amount
          : finiteResult(expandedMargins(uncertainty, threshold).above * slope);
    return (level, side) => {
      const current = offset + slope * threshold.value * level;
      const moved = side === "up" ? current / (1 - share) + absolute : current * (1 - share) - absolute;
      const found = (moved - offset) / (slope * threshold.value);
      if (share < 1 && found > 0 && found < BEYOND) return found;
      throw new VeladisError("out-of-range", {
        ...place,
        expected:
          "an uncertainty of the source that leaves a current to prove each level, threshold and reset level too",
        received: shown(uncertainty),
      });
    };
  });
}
