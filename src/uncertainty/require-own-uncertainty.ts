import { shown, splitNumeral, VeladisError } from "../core/index";
import { type FrequencyText, findFrequencyUnit, hertz, splitOrder } from "../frequency/index";
import { plainNumber } from "../reading/index";
import { type Stated, statedText } from "./stated";

/** A frequency with an amount that is a share of it, in a unit of its own: `40 ± 0.8 Hz`. */
function inOwnUnit(frequency: string, { amount, digits, unit, coverage }: Stated): string {
  const [order] = splitOrder(frequency);
  const [number, own] = order === undefined ? splitNumeral(frequency) : [`${hertz(frequency as FrequencyText)}`, "Hz"];
  const plain = unit === "%" ? plainNumber((Number(number) * amount) / 100) : digits;
  const of = order === undefined ? number : plainNumber(Number(number));
  return `${of} ± ${plain} ${own}${coverage === undefined ? "" : ` (${coverage.words})`}`;
}

/**
 * Refuses a ± at the end of a line whose reading has none of its own, where it may be that of the reading or that of the
 * frequency before it: taken for that of the frequency, the reading would be judged as if it were known exactly.
 *
 * @param frequency - what stands before the ±
 * @param reading - what stands before `at`
 * @throws {@link VeladisError} `syntax`, with both ways to write it
 */
export function requireOwnUncertainty(reading: string, frequency: string, stated: Stated): void {
  // 2x 1500 r/min ± 10 is refused as it is
  const isOrder = splitOrder(frequency)[0] !== undefined;
  if (findFrequencyUnit(stated.unit) !== undefined || (isOrder && stated.unit === "")) return;
  const own = statedText(stated).replace(/ {2,}| $/g, (run) => (run.length > 1 ? " " : ""));
  const isShare = stated.unit === "%" || stated.unit === "";
  const other = isShare ? `, of the frequency "at ${inOwnUnit(frequency, stated)}"` : "";
  throw new VeladisError("syntax", {
    expected: `the ± right behind what it is of: of the reading "${reading} ${own} at ${frequency}"${other}`,
    received: shown(`at ${frequency} ${own}`),
  });
}
