import { shown, VeladisError } from "../core/index";
import { writtenIn } from "./history";
import { parseAmplitude } from "./parse-amplitude";

/**
 * Limits that a text lists, each with its unit; the unit behind the last is that of those without one.
 *
 * @throws {@link VeladisError} `syntax` for another number of limits or units that differ, `not-a-number` where some commas may
 *   stand before decimals, `out-of-range` for limits that are not above zero and ascending, and as {@link parseAmplitude}
 */
export function limitsListed(written: string, counts: readonly number[], form: string) {
  // semicolons where numbers had a decimal comma
  const all = written
    .replaceAll(";", ",")
    .split(",")
    .map((part) => part.trim())
    .filter((part) => part !== "");
  const last = all.at(-1);
  if (!counts.includes(all.length) || last === undefined) {
    throw new VeladisError("syntax", { expected: form, received: shown(written), option: "limits" });
  }
  if (/\d,\d/.test(written) && /;|,\s/.test(written)) {
    throw new VeladisError("not-a-number", {
      expected: "limits that are read one way: numbers with a point for decimals, a comma and a space between them",
      received: shown(written),
      option: "limits",
    });
  }
  const as = writtenIn(parseAmplitude(last));
  const limits = all.map((text) => parseAmplitude(/[A-Za-z]/.test(text) ? text : `${text} ${as}`));
  if (limits.some((limit) => writtenIn(limit) !== as || limit.level !== undefined || limit.hertz !== undefined)) {
    throw new VeladisError("syntax", { expected: `${form}, in one unit`, received: shown(written), option: "limits" });
  }
  if (limits.some(({ value }, i) => !(value > (limits[i - 1]?.value ?? 0)))) {
    throw new VeladisError("out-of-range", {
      expected: "ascending limits above zero",
      received: shown(written),
      option: "limits",
    });
  }
  return { as, limits };
}
