import { inPlace, same, VeladisError } from "../core/index";
import { type Frequency, inHertz } from "../frequency/index";

const AT = { parameter: "options", option: "at" };

/** A frequency as it is told of, without the noise of its last digits. */
function hertzText(hz: number): string {
  return `${Number(hz.toPrecision(12))} Hz`;
}

/**
 * The frequency of a reading, in hertz: its own, or the one that is told beside it. Told twice, both must be the same
 * but for float noise: which of two was meant nobody can tell, and the answers differ.
 *
 * @throws {@link VeladisError} `out-of-range` for two that differ, and as {@link hertz}
 */
export function agreedHertz(own: number | undefined, told: Frequency | undefined): number | undefined {
  if (told === undefined) return own;
  const beside = inPlace(AT, () => inHertz(told));
  if (own === undefined) return beside;
  if (same(own, beside)) return own;
  throw new VeladisError("out-of-range", {
    expected: `one frequency for the reading, which itself says ${hertzText(own)}`,
    received: `${hertzText(beside)} beside it`,
    ...AT,
  });
}
