import { requirePositive } from "../core/index";
import { type Amplitude, format, madeOf, significant } from "../reading/index";
import { operands } from "./operands";
import { behind, type Report } from "./value";

/** How far a reading has moved from an earlier one, as a share and in decibels, with what both brought along. */
export function changed(now: Amplitude, before: Amplitude): Report {
  const [x, y] = operands([now, before], "compare") as [Amplitude, Amplitude];
  const ratio = x.value / requirePositive(y.value, "a reading above zero to compare with");
  const percent = 100 * (ratio - 1);
  const decibels = x.value > 0 ? 20 * (Math.log10(x.value) - Math.log10(y.value)) : null;
  const sign = percent < 0 ? "" : "+";
  const way = madeOf([y, x], { does: "compare", by: x.value, value: ratio, type: "", note: "now over before" });
  return {
    report: `${sign}${significant(percent)} %${decibels === null ? "" : `, ${sign}${significant(decibels)} dB`} (${format(before)} to ${format(now)})${behind(way)}`,
    data: { percent, decibels, ...way },
  };
}
