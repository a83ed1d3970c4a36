import { parseNumeral, shown, splitNumeral, VeladisError } from "../core/index";
import { frequency } from "./frequency";

/** The edges of a band in hertz: of `10-1000`, `10 to 1000 Hz` or `"10 Hz to 1 kHz"`; bare numbers are hertz. */
export function bandOfText(value: string): [low: number, high: number] {
  const [low, high, ...more] = value.trim().split(/\s*(?:–|\.\.|\bto\b)\s*|(?<=[^eE])\s*-\s*/);
  if (low === undefined || high === undefined || more.length > 0) {
    throw new VeladisError("syntax", {
      expected: 'a band such as 10-1000 or "10 Hz to 1000 Hz"',
      received: shown(value),
    });
  }
  const unit = splitNumeral(high)[1] || "Hz";
  const hertzOf = (edge: string, which: string): number => {
    const [digits, own] = splitNumeral(edge);
    return digits === "" || own === ""
      ? parseNumeral(edge, `${which} edge of the band in Hz`) * frequency(`1 ${unit}`).hertz
      : frequency(edge).hertz;
  };
  return [hertzOf(low, "a lower"), hertzOf(high, "an upper")];
}
