import { shown, VeladisError } from "../../core/index";
import { type Amplitude, hasPlusMinus } from "../../reading/index";
import { hasCoverage, parseUncertain, withoutSign } from "../../uncertainty/index";

/** A reading as it was written, with the uncertainty that stands in an option; it is left as text where it has none. */
export function uncertainReading(written: string, uncertainty: string | undefined): string | Amplitude {
  if (uncertainty === undefined) return hasPlusMinus(written) ? parseUncertain(written) : written;
  const [subject = "", ...at] = written.split(/(?=\sat\s|@)/i);
  if (hasPlusMinus(subject)) {
    throw new VeladisError("unknown-option", {
      expected: "one uncertainty of a reading: behind ± or in --uncertainty",
      received: `both, ${shown(written)}`,
    });
  }
  const amount = withoutSign(uncertainty);
  if (/^[\d.eE+-]+\s*(?:\(|$)/.test(amount)) {
    throw new VeladisError("missing-unit", {
      expected: 'an uncertainty with its unit, such as "5 %", "0.5 dB" or "0.3 mm/s rms"',
      received: shown(uncertainty),
    });
  }
  // as in a check, what is stated is the expanded uncertainty; behind ± it is read as in a reading
  const isBare = !hasPlusMinus(` ${uncertainty}`) && !hasCoverage(amount);
  return parseUncertain(`${subject} ± ${amount}${isBare ? " (k=2)" : ""}${at.join("")}`);
}
