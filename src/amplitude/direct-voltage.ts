import { finiteResult, numeralAndUnit, parseNumeral, requireText, shown, VeladisError } from "../core/index";
import { voltageIn, voltageSymbol } from "./signal-voltage";

const FORM = 'a direct voltage such as "-9.8 V"';
const UNIT = /^([^\s\d]?V)\s*(?:d\.?\s?c\.?)?$/i;

/** The text with a plain minus: a typeset one means the same. */
function plain(text: string): string {
  return text.trim().replace(/^[\u2212\u2013]/, "-");
}

/**
 * A direct voltage in volts, with its sign: it has no detector.
 *
 * @throws {@link VeladisError} `syntax`, `missing-unit`, `unknown-unit`, `wrong-type` for a voltage with a detector
 */
export function directVolts(written: string): number {
  const [digits, rest] = numeralAndUnit(plain(requireText(written, FORM)), FORM);
  const unit = UNIT.exec(rest)?.[1];
  if (unit === undefined && /^[^\s\d]?V\s/.test(rest))
    throw new VeladisError("wrong-type", {
      expected: `${FORM}, which has no detector: the mean that a meter shows on its d.c. range`,
      received: shown(written),
    });
  return finiteResult(voltageIn(parseNumeral(digits, FORM), voltageSymbol(unit ?? rest), "V"));
}

/** The ends of a linear range in volts, the nearer gap first; of one sign. */
export function linearRange(written: string): readonly [near: number, far: number] {
  const form = 'a linear range such as "-2 to -18 V"';
  const [first, second, ...more] = requireText(written, form)
    .trim()
    .split(/\s+to\s+/i);
  if (first === undefined || second === undefined || more.length > 0)
    throw new VeladisError("syntax", { expected: form, received: shown(written) });
  const unit = plain(second).replace(/^[-+\d.\s]+/, "");
  const ends = [/V/i.test(first) ? first : `${first} ${unit}`, second].map(directVolts) as [number, number];
  const [near, far] = ends.sort((a, b) => Math.abs(a) - Math.abs(b));
  if (near * far > 0 && near !== far) return [near, far];
  throw new VeladisError("out-of-range", {
    expected: `${form}: two ends that differ, both on one side of zero`,
    received: shown(written),
  });
}
