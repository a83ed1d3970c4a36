import { isSignal, type SignalSource, signalReading } from "../../amplitude/index";
import { shown, VeladisError } from "../../core/index";
import { type Amplitude, hasPlusMinus } from "../../reading/index";
import { isStated, parseUncertain, statedAlone, statedText } from "../../uncertainty/index";

/** A reading or signal as it was written, with the uncertainty that stands in an option; a reading is left as text where it has none. */
export function uncertainReading(
  written: string,
  uncertainty: string | undefined,
  source: SignalSource = {},
): string | Amplitude {
  if (isSignal(written)) {
    if (uncertainty === undefined) return signalReading(written, source);
    throw new VeladisError("unknown-option", {
      expected:
        "--uncertainty beside a vibration; of a signal, convert it first and state the uncertainty behind the answer",
      received: shown(written),
      option: "uncertainty",
    });
  }
  if (uncertainty === undefined) return isStated(written) ? parseUncertain(written) : written;
  const [subject = "", ...at] = written.split(/(?=\sat\s|@)/i);
  // one behind the frequency that may be the reading's is refused by what reads it
  const [own] = isStated(written) ? (parseUncertain(written).history ?? []) : [];
  if (own?.uncertainty !== undefined || hasPlusMinus(subject)) {
    throw new VeladisError("unknown-option", {
      expected: "one uncertainty of a reading: behind ± or in --uncertainty",
      received: `both, ${shown(written)}`,
    });
  }
  const stated = statedAlone(uncertainty);
  if (stated.unit === "") {
    throw new VeladisError("missing-unit", {
      expected: 'an uncertainty with its unit, such as "5 %", "0.5 dB" or "0.3 mm/s rms"',
      received: shown(uncertainty),
    });
  }
  return parseUncertain(`${subject} ${statedText(stated)}${at.join("")}`);
}
