import { shown, VeladisError } from "../../core/index";
import { type Amplitude, parseAmplitude, writtenIn } from "../../reading/index";

const FORM =
  '--threshold with one setpoint, or several in one unit such as "6, 7.5, 9 mm/s rms", with ", " or ";" between';

/**
 * The setpoints that a text lists; the unit behind the last is that of those without one. A comma without a space may
 * be one of decimals, and separates nothing.
 *
 * @throws {@link VeladisError} `syntax` for units that differ and one given twice, and as {@link parseAmplitude}
 */
export function thresholdsOf(threshold: string | Amplitude): (string | Amplitude)[] {
  if (typeof threshold !== "string") return [threshold];
  const all = threshold.split(/,\s+|\s*;\s*/).map((part) => part.trim());
  const last = all.at(-1);
  if (all.length === 1 || last === undefined) return [threshold];
  const as = writtenIn(parseAmplitude(last));
  const written = all.map((text) => (/[A-Za-z]/.test(text) ? text : `${text} ${as}`));
  const values = written.map((text) => parseAmplitude(text));
  const isOneUnit = values.every((one) => writtenIn(one) === as);
  if (isOneUnit && new Set(values.map(({ value }) => value)).size === values.length) return written;
  throw new VeladisError("syntax", { expected: `${FORM}, each once`, received: shown(threshold) });
}
